/** "What is on record about this part?" Where it was built in, what it may and may not stand in for, what replaced it. */
import { z } from "zod";
import { address, nodeKey } from "../graph/node.ts";
import type { Part } from "../records/catalog.ts";
import { type Statement, statementsOf } from "../records/statement.ts";
import { VERDICTS } from "../records/terms.ts";
import { nearest } from "../scope/nearest.ts";
import { answerBase, scopeWords } from "./answer.ts";
import { marksView } from "./answer-record.ts";
import { cautionViews } from "./cautions-for.ts";
import type { Knowledge } from "./knowledge.ts";
import { askOfMoved } from "./moved.ts";
import { findPart } from "./part-number.ts";
import { anchor, reasonFor, sayScope } from "./say.ts";
import { viewMarks } from "./view-marks.ts";

const cited = { record: z.string(), anchor: z.string() };
const standIn = z.strictObject({
  ...cited,
  part: z.string(),
  for: z.string().optional().describe("Left out where the place holds nothing."),
  verdict: z.enum(VERDICTS),
  with: z.array(z.string()),
  do: z.string().optional(),
  why: z.string().optional(),
  scope: scopeWords.optional().describe("Beyond it nothing is stated. Left out: wherever the other part belongs."),
});
const delivery = z.strictObject({
  ...cited,
  old: z.string(),
  new: z.string(),
  with: z.array(z.string()),
  scope: scopeWords.optional(),
});
const other = z.strictObject({ id: z.string(), title: z.string(), address: z.string() });

const partView = z.strictObject({
  number: z.string(),
  name: z.string(),
  address: z.string(),
  component: z.strictObject({ id: z.string(), name: z.string() }),
  system: z.strictObject({ id: z.string(), name: z.string() }),
  hand: z.enum(["left", "right"]).optional(),
  castings: z.array(z.string()).describe("Numbers cast into it, which are not part numbers."),
  origin: z
    .enum(["built in", "repair only", "not built in on record"])
    .describe("Whether some record says that cars left the plant with it."),
  built: z.array(z.strictObject({ ...cited, place: z.string(), mixed: z.boolean(), scope: scopeWords })),
  supersededBy: z.array(delivery).describe("Who orders this part gets these."),
  supersedes: z.array(delivery).describe("Who orders these gets this part."),
  standsInFor: z.array(standIn).describe("This part where another one belongs."),
  replacedBy: z.array(standIn).describe("Another part where this one belongs."),
  neededWith: z
    .array(z.strictObject({ ...cited, part: z.string() }))
    .describe("Parts that may only be fitted or ordered together with this one."),
  kits: z.array(z.strictObject({ ...cited, kit: z.string() })).describe("Kits it comes in."),
  contents: z
    .array(z.strictObject({ part: z.string().optional(), name: z.string().optional(), count: z.int() }))
    .describe("For a kit: what is in it."),
  marks: z.array(marksView).describe("Marks of this part and its relatives, easiest to see first."),
  relatives: z.array(other).describe("The other parts of the same component."),
  records: z.array(other),
  cautions: z.array(z.strictObject({ title: z.string(), text: z.string(), source: z.string() })),
  citedBy: z.array(other).describe("Bulletins."),
});

export const partAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("part"),
    verdict: z.enum(["on record", "casting number", "several", "not on record"]),
    part: partView.optional(),
  })
  .describe("answer part NUMBER");
export type PartAnswer = z.infer<typeof partAnswer>;
export type PartView = z.infer<typeof partView>;

export function answerPart(knowledge: Knowledge, typed: string): PartAnswer {
  const { catalog } = knowledge;
  const found = findPart(catalog, typed);
  switch (found.as) {
    case "part number": {
      const part = viewPart(knowledge, found.part);
      const statements = knowledge.statementsByPart.get(found.part.number) ?? [];
      return {
        question: "part",
        verdict: "on record",
        because: statements.map((statement) => reasonFor(catalog, statement)),
        part,
      };
    }
    case "casting number":
      return undecided(
        "casting number",
        `'${typed.trim()}' is cast into these parts; it is not a part number. Which one is it?`,
        found.parts,
      );
    case "several":
      return undecided("several", `'${typed.trim()}' may be any of these. Which one is meant?`, found.parts);
    case "unknown": {
      const near = nearest(typed.trim(), [...catalog.parts.keys()]);
      const ask = {
        what: `No part is called '${typed.trim()}'. Read the number again; the number cast into a part is often another one.`,
        options: near ? [near] : [],
      };
      return {
        question: "part",
        verdict: "not on record",
        because: [],
        ask: askOfMoved(catalog, "part", typed.trim()) ?? ask,
      };
    }
  }
}

function undecided(verdict: "casting number" | "several", what: string, parts: readonly Part[]): PartAnswer {
  return { question: "part", verdict, because: [], ask: { what, options: parts.map((part) => part.number) } };
}

export function viewPart(knowledge: Knowledge, part: Part): PartView {
  const { catalog } = knowledge;
  const { number } = part;
  const statements = knowledge.statementsByPart.get(number) ?? [];
  const component = catalog.components.get(part.component);
  const system = catalog.systems.find((one) => one.id === component?.system);
  const standIns = statementsOf(statements, "stands-in");
  const orders = statementsOf(statements, "supersedes");
  const kits = statementsOf(statements, "kit");
  const built = [...statementsOf(statements, "built"), ...statementsOf(statements, "mixed")];
  const cite = (statement: Statement): { record: string; anchor: string } => ({
    record: statement.record,
    anchor: anchor(statement),
  });
  const scoped = (scope: Parameters<typeof sayScope>[1] | undefined): object =>
    scope ? { scope: sayScope(catalog, scope) } : {};
  const viewStandIn = (it: (typeof standIns)[number]): z.infer<typeof standIn> => ({
    ...cite(it),
    part: it.part,
    for: it.for,
    verdict: it.verdict,
    with: [...it.with],
    do: it.do,
    why: it.why,
    ...scoped(it.scope),
  });
  const viewOrder = (it: (typeof orders)[number]): z.infer<typeof delivery> => ({
    ...cite(it),
    old: it.old,
    new: it.new,
    with: [...it.with],
    ...scoped(it.scope),
  });
  const neededWith = new Map<string, z.infer<typeof partView>["neededWith"][number]>();
  // A refusal may name what would not help either; that is needed for nothing.
  const permitted = standIns.filter((it) => it.verdict === "yes" || it.verdict === "on-conditions");
  for (const it of [...permitted, ...orders]) {
    const main = it.type === "supersedes" ? it.new : it.part;
    if (it.with.includes(number) && !neededWith.has(main)) neededWith.set(main, { ...cite(it), part: main });
  }
  return {
    number,
    name: part.name,
    address: address("part", number),
    component: { id: part.component, name: component?.name ?? part.component },
    system: { id: system?.id ?? "", name: system?.name ?? "" },
    hand: part.hand,
    castings: part.castings,
    origin:
      built.length > 0
        ? "built in"
        : statementsOf(statements, "service-only").length > 0
          ? "repair only"
          : "not built in on record",
    built: built.map((it) => ({
      ...cite(it),
      place: it.place,
      mixed: it.type === "mixed",
      scope: sayScope(catalog, it.scope),
    })),
    supersededBy: orders.filter((it) => it.old === number).map(viewOrder),
    supersedes: orders.filter((it) => it.new === number).map(viewOrder),
    standsInFor: standIns.filter((it) => it.part === number).map(viewStandIn),
    replacedBy: standIns.filter((it) => it.for === number).map(viewStandIn),
    neededWith: [...neededWith.values()],
    kits: kits.filter((it) => it.kit !== number).map((it) => ({ ...cite(it), kit: it.kit })),
    contents: kits.filter((it) => it.kit === number).flatMap((it) => it.contents.map((content) => ({ ...content }))),
    marks: viewMarks(catalog, [number, ...relativesOf(knowledge, part)]),
    relatives: relativesOf(knowledge, part).map((id) => ({
      id,
      title: catalog.parts.get(id)?.name ?? id,
      address: address("part", id),
    })),
    records: [...new Set(statements.map((statement) => statement.record))].sort().map((id) => ({
      id,
      title: catalog.records.get(id)?.facts.title ?? id,
      address: address("record", id),
    })),
    cautions: cautionViews(catalog, system ? [system.id] : [], [part.component]),
    citedBy: (knowledge.citationsOf.get(nodeKey("part", number)) ?? []).map(({ id, facts }) => ({
      id,
      title: facts.title,
      address: address("bulletin", id),
    })),
  };
}

function relativesOf(knowledge: Knowledge, part: Part): string[] {
  return (knowledge.partsByComponent.get(part.component) ?? []).filter((number) => number !== part.number);
}
