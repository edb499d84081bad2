/** "What does this change record say?" The record whole, with what others say about it. */
import { z } from "zod";
import { address, nodeKey } from "../graph/node.ts";
import type { Catalog, ChangeRecord } from "../records/catalog.ts";
import { concerned } from "../records/concerned.ts";
import { partsNamed, statementsOf } from "../records/statement.ts";
import { KINDS, VERDICTS } from "../records/terms.ts";
import { ALL, NONE } from "../scope/diagram.ts";
import { nearest } from "../scope/nearest.ts";
import { inOtherUnits } from "../settings/in-other-units.ts";
import { answerBase, scopeWords } from "./answer.ts";
import { cautionViews } from "./cautions-for.ts";
import { findRecord } from "./find-record.ts";
import type { Knowledge } from "./knowledge.ts";
import { askOfMoved } from "./moved.ts";
import { anchor, reasonFor, reasonForRecord, sayInterval, sayScope } from "./say.ts";
import { viewMarks } from "./view-marks.ts";

const named = z.strictObject({ id: z.string(), title: z.string(), address: z.string() });
const placed = { anchor: z.string().describe("Where it stands on the record's page.") };
const fittedPart = z.strictObject({
  ...placed,
  parts: z.array(z.string()).describe("The part; several in a mixed stretch, none where nothing is fitted."),
  mixed: z.boolean(),
  scope: scopeWords,
});

export type MarksView = z.infer<typeof marksView>;
export const marksView = z.strictObject({
  component: z.string(),
  features: z.array(
    z.strictObject({
      name: z.string(),
      where: z.string(),
      wearsOff: z.boolean().describe("Its absence proves nothing."),
      unit: z.string().optional(),
      note: z.string().optional(),
      values: z.record(z.string(), z.union([z.string(), z.number()])).describe("Part number to what it shows."),
    }),
  ),
});

const recordView = z.strictObject({
  id: z.string(),
  title: z.string(),
  address: z.string(),
  issued: z.string(),
  revised: z.string().optional(),
  revision: z.int(),
  withdrawn: z.string().optional(),
  instead: z
    .array(named)
    .optional()
    .describe("Of a withdrawn record: what holds instead; none where nothing follows it."),
  kinds: z.array(z.enum(KINDS)),
  systems: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  components: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  starts: z.string(),
  scope: scopeWords,
  lines: z.array(z.string()).describe("Ids of the model lines with cars in the scope."),
  years: z.array(z.int()),
  story: z.string().describe("Markdown."),
  places: z
    .array(z.strictObject({ place: z.string(), before: z.array(fittedPart), after: z.array(fittedPart) }))
    .describe("What the plant fitted, place by place: on cars outside the change, and on cars inside it."),
  supersedes: z.array(
    z.strictObject({
      ...placed,
      old: z.string(),
      new: z.string(),
      with: z.array(z.string()),
      scope: scopeWords.optional(),
    }),
  ),
  standsIn: z.array(
    z.strictObject({
      ...placed,
      part: z.string(),
      for: z.string().optional().describe("Left out where the place holds nothing."),
      verdict: z.enum(VERDICTS),
      with: z.array(z.string()),
      do: z.string().optional(),
      why: z.string().optional(),
      scope: scopeWords.optional(),
    }),
  ),
  kits: z.array(
    z.strictObject({
      ...placed,
      kit: z.string(),
      contents: z.array(z.strictObject({ part: z.string().optional(), name: z.string().optional(), count: z.int() })),
    }),
  ),
  serviceOnly: z.array(z.string()),
  settings: z.array(
    z.strictObject({
      ...placed,
      name: z.string(),
      component: z.string().optional(),
      low: z.string().optional(),
      high: z.string().optional(),
      nominal: z.number().optional(),
      stated: z.string().optional(),
      unit: z.string(),
      converted: z
        .strictObject({ low: z.string().optional(), high: z.string().optional(), unit: z.string() })
        .optional()
        .describe("The window in the other unit system, limits rounded inward. Left out for units without one."),
      conditions: z.string().optional(),
      scope: scopeWords,
    }),
  ),
  intervals: z.array(z.strictObject({ ...placed, name: z.string(), every: z.string(), scope: scopeWords })),
  procedures: z.array(z.strictObject({ ...placed, when: z.string().optional(), steps: z.string() })),
  tools: z.array(z.strictObject({ ...placed, tool: z.string(), use: z.string(), scope: scopeWords.optional() })),
  leftAlone: z.array(z.strictObject({ ...placed, what: z.string() })),
  tellApart: z.string().optional(),
  marks: z.array(marksView).describe("Marks of the parts that the record is about, easiest to see first."),
  otherwise: z.string().optional(),
  caution: z.string().optional(),
  cautions: z
    .array(z.strictObject({ title: z.string(), text: z.string(), source: z.string() }))
    .describe("The usual cautions of its systems and components."),
  customer: z.string().optional(),
  links: z.array(named),
  linkedFrom: z.array(named),
  cancels: z.array(z.strictObject({ ...named.shape, scope: scopeWords.optional() })),
  cancelledBy: z.array(z.strictObject({ ...named.shape, scope: scopeWords.optional() })),
  citedBy: z.array(named).describe("Bulletins."),
  parts: z.array(z.string()).describe("Every part that its statements name."),
});

export const recordAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("record"),
    verdict: z.enum(["on record", "cancelled in part", "cancelled", "withdrawn", "not on record"]),
    record: recordView.optional(),
  })
  .describe("answer record ID");
export type RecordAnswer = z.infer<typeof recordAnswer>;
export type RecordView = z.infer<typeof recordView>;
type Verdict = RecordAnswer["verdict"];

export function answerRecord(knowledge: Knowledge, typed: string): RecordAnswer {
  const { catalog } = knowledge;
  const id = typed.trim();
  const found = findRecord(catalog, id);
  if (!found) {
    const near = nearest(id, [...catalog.records.keys()]);
    const ask = { what: `Which record is meant? None is called '${id}'.`, options: near ? [near] : [] };
    return {
      question: "record",
      verdict: "not on record",
      because: [],
      ask: askOfMoved(catalog, "record", id) ?? ask,
    };
  }
  const record = viewRecord(knowledge, found);
  return {
    question: "record",
    verdict: verdictOf(knowledge, found),
    because: [
      reasonForRecord(catalog, found.id),
      ...found.stated.map((statement) => reasonFor(catalog, statement)),
      ...record.cancelledBy.map((by) => reasonForRecord(catalog, by.id)),
    ],
    record,
  };
}

/** Cancelled when no car that was built is left of its scope; several records may have ended it piece by piece. */
function verdictOf({ catalog, cancelsByRecord }: Knowledge, record: ChangeRecord): Exclude<Verdict, "not on record"> {
  if (record.facts.withdrawn !== undefined) return "withdrawn";
  const cancels = cancelsByRecord.get(record.id) ?? [];
  if (cancels.length === 0) return "on record";
  const { space, buildable } = catalog;
  const ended = space.any(cancels.map((it) => it.scope?.cars ?? ALL));
  const left = space.sets.minus(space.sets.and(buildable, record.scope.cars), ended);
  return left === NONE ? "cancelled" : "cancelled in part";
}

/** The record as pages and answers show it. */
export function viewRecord(knowledge: Knowledge, record: ChangeRecord): RecordView {
  const { catalog } = knowledge;
  const { facts, stated: statements } = record;
  const key = nodeKey("record", record.id);
  const name = (id: string): z.infer<typeof named> => ({
    id,
    title: catalog.records.get(id)?.facts.title ?? catalog.bulletins.get(id)?.facts.title ?? id,
    address: address(catalog.records.has(id) ? "record" : "bulletin", id),
  });
  const cancelledBy = (knowledge.cancelsByRecord.get(record.id) ?? []).map((it) => ({
    ...name(it.record),
    ...withScope(catalog, it.scope),
  }));
  const parts = [...new Set(statements.flatMap(partsNamed))];
  return {
    id: record.id,
    title: facts.title,
    address: address("record", record.id),
    issued: facts.issued,
    revised: facts.revised,
    revision: facts.revision,
    withdrawn: facts.withdrawn,
    ...(facts.withdrawn === undefined ? {} : { instead: facts.instead.map(name) }),
    kinds: facts.kinds,
    systems: record.systems.map((id) => ({ id, name: catalog.systems.find((system) => system.id === id)?.name ?? id })),
    components: record.components.map(({ id, name: label }) => ({ id, name: label })),
    starts: facts.starts,
    scope: sayScope(catalog, record.scope),
    ...concerned(catalog, record.scope),
    story: facts.story,
    places: viewPlaces(catalog, record),
    supersedes: statementsOf(statements, "supersedes").map((it) => ({
      anchor: anchor(it),
      old: it.old,
      new: it.new,
      with: [...it.with],
      ...withScope(catalog, it.scope),
    })),
    standsIn: statementsOf(statements, "stands-in").map((it) => ({
      anchor: anchor(it),
      part: it.part,
      ...(it.for === undefined ? {} : { for: it.for }),
      verdict: it.verdict,
      with: [...it.with],
      ...(it.do === undefined ? {} : { do: it.do }),
      ...(it.why === undefined ? {} : { why: it.why }),
      ...withScope(catalog, it.scope),
    })),
    kits: statementsOf(statements, "kit").map((it) => ({
      anchor: anchor(it),
      kit: it.kit,
      contents: it.contents.map((content) => ({ ...content })),
    })),
    serviceOnly: statementsOf(statements, "service-only").map((it) => it.part),
    settings: statementsOf(statements, "setting").map((it) => ({
      anchor: anchor(it),
      name: it.name,
      component: it.component,
      low: it.low,
      high: it.high,
      nominal: it.nominal,
      stated: it.stated,
      unit: it.unit,
      converted: inOtherUnits(it.low, it.high, it.unit),
      conditions: it.conditions,
      scope: sayScope(catalog, it.scope),
    })),
    intervals: statementsOf(statements, "interval").map((it) => ({
      anchor: anchor(it),
      name: it.name,
      every: sayInterval(it),
      scope: sayScope(catalog, it.scope),
    })),
    procedures: statementsOf(statements, "procedure").map((it) => ({
      anchor: anchor(it),
      when: it.when,
      steps: it.steps,
    })),
    tools: statementsOf(statements, "tool").map((it) => ({
      anchor: anchor(it),
      tool: it.tool,
      use: it.use,
      ...withScope(catalog, it.scope),
    })),
    leftAlone: statementsOf(statements, "left-alone").map((it) => ({ anchor: anchor(it), what: it.what })),
    tellApart: facts["tell-apart"],
    marks: viewMarks(catalog, parts),
    otherwise: facts.otherwise,
    caution: facts.caution,
    cautions: cautionViews(
      catalog,
      record.systems,
      record.components.map((component) => component.id),
    ),
    customer: facts.customer,
    links: facts.links.map(name),
    linkedFrom: (knowledge.linksTo.get(key) ?? []).map(({ id }) => name(id)),
    cancels: statementsOf(statements, "cancels").map((it) => ({ ...name(it.target), ...withScope(catalog, it.scope) })),
    cancelledBy,
    citedBy: (knowledge.citationsOf.get(key) ?? []).map(({ id }) => name(id)),
    parts,
  };
}

function withScope(catalog: Catalog, scope: ChangeRecord["scope"] | undefined): { scope?: z.infer<typeof scopeWords> } {
  return scope ? { scope: sayScope(catalog, scope) } : {};
}

/**
 * Before and after, place by place. A part is "after" when some car that was built is both in the change's scope and in
 * the part's; otherwise it is what was fitted before, or stays on the cars that the change leaves out.
 */
function viewPlaces(catalog: Catalog, record: ChangeRecord): RecordView["places"] {
  const { space, buildable } = catalog;
  const changed = space.sets.and(buildable, record.scope.cars);
  const places = new Map<string, RecordView["places"][number]>();
  for (const statement of record.stated) {
    if (statement.type !== "built" && statement.type !== "mixed") continue;
    const view = places.get(statement.place) ?? { place: statement.place, before: [], after: [] };
    places.set(statement.place, view);
    const fitted = {
      anchor: anchor(statement),
      parts: statement.type === "mixed" ? [...statement.parts] : statement.part === undefined ? [] : [statement.part],
      mixed: statement.type === "mixed",
      scope: sayScope(catalog, statement.scope),
    };
    const isAfter = space.sets.and(changed, statement.scope.cars) !== NONE;
    (isAfter ? view.after : view.before).push(fitted);
  }
  return [...places.values()];
}
