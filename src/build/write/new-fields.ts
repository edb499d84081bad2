/** What is asked for a new record, part or bulletin: in which order, in which words, and what may be answered. */
import { KIND_WORDS } from "../../engine/records/kinds.ts";
import { bulletin } from "../../engine/records/shapes/bulletin.ts";
import { change } from "../../engine/records/shapes/change.ts";
import { parts } from "../../engine/records/shapes/parts.ts";
import { KINDS } from "../../engine/records/terms.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import { readScope } from "../../engine/scope/read-scope.ts";
import { OPTIONS } from "./answer-options.ts";
import type { Answers, Desk, Field } from "./field.ts";
import { nextBulletinId, nextRecordId, takenFault, yearFor } from "./known-ids.ts";

export const NEW_KINDS = ["record", "part", "bulletin"] as const;
export type NewKind = (typeof NEW_KINDS)[number];

const facts = change.shape;
const part = parts.shape.parts.element.shape;

const RECORD: readonly Field[] = [
  { name: "title", ask: "What changed, in a few words", needed: true, shape: facts.title },
  {
    name: "kinds",
    ask: "What sort of change",
    needed: true,
    many: true,
    options: () => KINDS.map((kind) => ({ value: kind, words: KIND_WORDS[kind].label })),
  },
  { name: "components", ask: "Components, the main one first", many: true, options: OPTIONS.components },
  { name: "starts", ask: "From when, in words", needed: true, shape: facts.starts },
  {
    name: "scope",
    ask: "Which cars, as a scope",
    needed: true,
    shape: facts.scope,
    options: OPTIONS.traits,
    fault: scopeFault,
  },
  { name: "issued", ask: "Issued on", needed: true, shape: facts.issued, suggest: ({ today }) => today },
  {
    name: "year",
    ask: "Model year, for its folder",
    needed: true,
    suggest: ({ catalog }, { issued }) => String(yearFor(catalog, String(issued))),
    fault: (text) => (/^\d{4}$/.test(text) ? undefined : "a year has four digits"),
  },
  {
    name: "id",
    ask: "Id",
    needed: true,
    shape: facts.id,
    suggest: ({ catalog }, answers) => nextRecordId(catalog, answers),
    fault: (id, { catalog }) => takenFault(id, catalog),
  },
  { name: "words", ask: "Further words people use for it", many: true, shape: facts.words },
  { name: "tell-apart", ask: "How to know which one it is", shape: facts["tell-apart"] },
  { name: "otherwise", ask: "What goes wrong if it is ignored", shape: facts.otherwise },
  { name: "caution", ask: "Where someone can be hurt or something ruined", shape: facts.caution },
  { name: "customer", ask: "One sentence for the customer", shape: facts.customer },
  { name: "links", ask: "Records to read along", many: true, options: OPTIONS.records },
  { name: "story", ask: "What changed and why", needed: true, long: true, shape: facts.story },
];

const PART: readonly Field[] = [
  { name: "component", ask: "Component", needed: true, options: OPTIONS.components },
  {
    name: "number",
    ask: "Part number, as printed on the box",
    needed: true,
    shape: part.number,
    fault: (number, { catalog }) => {
      const there = catalog.parts.get(number);
      return there ? `part ${number} is there already, under ${there.component}` : takenFault(number, catalog);
    },
  },
  {
    name: "name",
    ask: "Name",
    needed: true,
    shape: part.name,
    suggest: ({ catalog }, { component }) => catalog.components.get(String(component))?.name,
  },
  { name: "aliases", ask: "What people also call it", many: true, shape: part.aliases },
  {
    name: "hand",
    ask: "Left or right, seen from the driver's seat",
    options: () => ["left", "right"].map((value) => ({ value, words: "" })),
  },
  { name: "castings", ask: "Numbers cast into it", many: true, shape: part.castings },
  {
    name: "marks",
    ask: "Marks, as feature=value",
    many: true,
    options: OPTIONS.features,
    fault: markFault,
  },
];

const BULLETIN: readonly Field[] = [
  { name: "title", ask: "Title", needed: true, shape: bulletin.shape.title },
  { name: "issued", ask: "Issued on", needed: true, shape: bulletin.shape.issued, suggest: ({ today }) => today },
  {
    name: "id",
    ask: "Id",
    needed: true,
    shape: bulletin.shape.id,
    suggest: ({ catalog }, { issued }) => nextBulletinId(catalog, String(issued)),
    fault: (id, { catalog }) => takenFault(id, catalog),
  },
  { name: "about", ask: "One sentence for lists", needed: true, shape: bulletin.shape.about },
  {
    name: "text",
    ask: "The text; [[ID]] cites a record, part or component",
    needed: true,
    long: true,
    shape: bulletin.shape.text,
  },
];

export const NEW_FIELDS: Readonly<Record<NewKind, readonly Field[]>> = {
  record: RECORD,
  part: PART,
  bulletin: BULLETIN,
};

function scopeFault(text: string, { catalog }: Desk): string | undefined {
  const read = readScope(catalog.space, text);
  return "slips" in read ? read.slips.map(({ message, hint }) => `${message} (${hint})`).join("; ") : undefined;
}

function markFault(text: string, desk: Desk, answers: Answers): string | undefined {
  if (!/^[^=]+=./.test(text)) return "write feature=value; none where it shows nothing";
  const known = OPTIONS.features(desk, answers).map(({ value }) => value.slice(0, -1));
  const id = text.slice(0, text.indexOf("=")).trim();
  if (known.includes(id)) return undefined;
  const meant = nearest(id, known);
  const others = known.length > 0 ? `features are ${known.join(", ")}` : "it has none yet";
  return `the parts of this component have no feature '${id}': ${meant ? `did you mean '${meant}'?` : others}`;
}
