/** What is asked for a new record, part or bulletin: in which order, in which words, and what may be answered. */

import type { z } from "zod";
import type { Catalog } from "../../engine/records/catalog.ts";
import { KIND_WORDS } from "../../engine/records/kinds.ts";
import { bulletin } from "../../engine/records/shapes/bulletin.ts";
import { change } from "../../engine/records/shapes/change.ts";
import { parts } from "../../engine/records/shapes/parts.ts";
import { KINDS } from "../../engine/records/terms.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import { readScope } from "../../engine/scope/read-scope.ts";
import { modelYear } from "./model-year.ts";
import { type Neighbour, nextId } from "./next-id.ts";

export const NEW_KINDS = ["record", "part", "bulletin"] as const;
export type NewKind = (typeof NEW_KINDS)[number];
export type Answers = Readonly<Record<string, string | readonly string[] | undefined>>;

/** What is known while an answer is given. */
export interface Desk {
  readonly catalog: Catalog;
  /** A day, year-month-day. */
  readonly today: string;
}

export interface Option {
  readonly value: string;
  readonly words: string;
}

export interface Field {
  /** Its name in the file, and as a flag. */
  readonly name: string;
  readonly ask: string;
  readonly needed?: boolean;
  /** Several, with commas between them. */
  readonly many?: boolean;
  /** Several lines. */
  readonly long?: boolean;
  readonly shape?: z.ZodType;
  readonly options?: (desk: Desk, answers: Answers) => readonly Option[];
  readonly suggest?: (desk: Desk, answers: Answers) => string | undefined;
  /** What is wrong with one answer beyond its shape. */
  readonly fault?: (value: string, desk: Desk, answers: Answers) => string | undefined;
}

const facts = change.shape;
const part = parts.shape.parts.element.shape;

const components = ({ catalog }: Desk): Option[] =>
  [...catalog.components.values()].map(({ id, name, system }) => ({ value: id, words: `${name} (${system})` }));
const records = ({ catalog }: Desk): Option[] =>
  [...catalog.records.values()].map(({ id, facts: { title } }) => ({ value: id, words: title }));
const traits = ({ catalog }: Desk): Option[] =>
  catalog.space.declared.map((trait) => ({
    value: trait.kind === "flag" ? `eq=${trait.id}` : `${trait.id}=`,
    words:
      trait.kind === "list"
        ? `${trait.label}: ${trait.values.map(({ id, label }) => `${id} ${label}`).join(", ")}`
        : trait.label,
  }));

function scopeFault(text: string, { catalog }: Desk): string | undefined {
  const read = readScope(catalog.space, text);
  return "slips" in read ? read.slips.map(({ message, hint }) => `${message} (${hint})`).join("; ") : undefined;
}

function featuresOf({ catalog }: Desk, component: Answers[string]): Option[] {
  const features = [...catalog.parts.values()].find((other) => other.component === component)?.features ?? [];
  return features.map(({ id, name }) => ({ value: `${id}=`, words: name }));
}

function markFault(text: string, desk: Desk, { component }: Answers): string | undefined {
  if (!/^[^=]+=./.test(text)) return "write feature=value; none where it shows nothing";
  const known = featuresOf(desk, component).map(({ value }) => value.slice(0, -1));
  const id = text.slice(0, text.indexOf("=")).trim();
  if (known.includes(id)) return undefined;
  const meant = nearest(id, known);
  const hint = meant
    ? `did you mean '${meant}'?`
    : known.length > 0
      ? `features are ${known.join(", ")}`
      : "it has none yet";
  return `the parts of this component have no feature '${id}': ${hint}`;
}

const RECORD: readonly Field[] = [
  { name: "title", ask: "What changed, in a few words", needed: true, shape: facts.title },
  {
    name: "kinds",
    ask: "What sort of change",
    needed: true,
    many: true,
    options: () => KINDS.map((kind) => ({ value: kind, words: KIND_WORDS[kind].label })),
  },
  { name: "components", ask: "Components, the main one first", many: true, options: components },
  { name: "starts", ask: "From when, in words", needed: true, shape: facts.starts },
  {
    name: "scope",
    ask: "Which cars, as a scope",
    needed: true,
    shape: facts.scope,
    options: traits,
    fault: scopeFault,
  },
  { name: "issued", ask: "Issued on", needed: true, shape: facts.issued, suggest: ({ today }) => today },
  {
    name: "year",
    ask: "Model year, for its folder",
    needed: true,
    suggest: ({ catalog }, { issued }) => String(modelYear(issuedIn(catalog), String(issued))),
    fault: (text) => (/^\d{4}$/.test(text) ? undefined : "a year has four digits"),
  },
  {
    name: "id",
    ask: "Id",
    needed: true,
    shape: facts.id,
    suggest: ({ catalog }, answers) => nextId(neighboursOf(catalog, answers), usedIds(catalog), Number(answers.year)),
    fault: (id, { catalog }) => takenFault(id, catalog),
  },
  { name: "words", ask: "Further words people use for it", many: true, shape: facts.words },
  { name: "tell-apart", ask: "How to know which one it is", shape: facts["tell-apart"] },
  { name: "otherwise", ask: "What goes wrong if it is ignored", shape: facts.otherwise },
  { name: "caution", ask: "Where someone can be hurt or something ruined", shape: facts.caution },
  { name: "customer", ask: "One sentence for the customer", shape: facts.customer },
  { name: "links", ask: "Records to read along", many: true, options: records },
  { name: "story", ask: "What changed and why", needed: true, long: true, shape: facts.story },
];

const PART: readonly Field[] = [
  { name: "component", ask: "Component", needed: true, options: components },
  {
    name: "number",
    ask: "Part number, as printed on the box",
    needed: true,
    shape: part.number,
    fault: (number, { catalog }) =>
      catalog.parts.has(number)
        ? `part ${number} is there already, under ${catalog.parts.get(number)?.component}`
        : undefined,
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
    options: (desk, { component }) => featuresOf(desk, component),
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
    suggest: ({ catalog }, { issued }) => {
      const year = (day: string): number => modelYear(issuedIn(catalog), day);
      const others = [...catalog.bulletins.values()].map(({ id, facts }) => ({ id, year: year(facts.issued) }));
      return nextId(others, usedIds(catalog), year(String(issued)));
    },
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

/** A name or an alias is as good as an id, as long as only one thing is called so. */
export function idMeant(typed: string, options: readonly Option[], { catalog }: Desk): string | undefined {
  const wanted = typed.toLowerCase();
  const exact = options.find(({ value }) => value.toLowerCase() === wanted);
  if (exact) return exact.value;
  const called = options.filter(({ value }) => {
    const component = catalog.components.get(value);
    return component && [component.name, ...component.aliases].some((name) => name.toLowerCase() === wanted);
  });
  return called.length === 1 ? called[0]?.value : undefined;
}

/** The names near what was typed: ids first, and what components are called. */
export function nearestOption(typed: string, options: readonly Option[], { catalog }: Desk): string | undefined {
  const ids = options.map(({ value }) => value);
  const names = ids.flatMap((id) => catalog.components.get(id)?.name ?? []);
  return nearest(typed, [...ids, ...names]);
}

function takenFault(id: string, catalog: Catalog): string | undefined {
  const taken = [...usedIds(catalog)].find((other) => other.toLowerCase() === id.toLowerCase());
  return taken === undefined ? undefined : `'${taken}' is or was the id of something else`;
}

function usedIds(catalog: Catalog): Set<string> {
  return new Set([...catalog.records.keys(), ...catalog.bulletins.keys(), ...catalog.moved.map((move) => move.from)]);
}

function neighboursOf(catalog: Catalog, { components }: Answers): Neighbour[] {
  const system = catalog.components.get(String([components].flat()[0] ?? ""))?.system;
  return [...catalog.records.values()]
    .filter((record) => record.systems[0] === system)
    .map((record) => ({
      id: record.id,
      year: yearOf(record.file) ?? modelYear(issuedIn(catalog), record.facts.issued),
    }));
}

function issuedIn(catalog: Catalog): { issued: string; year: number }[] {
  return [...catalog.records.values()].flatMap(({ file, facts }) => {
    const year = yearOf(file);
    return year === undefined ? [] : [{ issued: facts.issued, year }];
  });
}

/** The year of the folder that a record lies in. */
function yearOf(file: string): number | undefined {
  const year = /(?:^|\/)(\d{4})\/[^/]+$/.exec(file)?.[1];
  return year === undefined ? undefined : Number(year);
}
