import { distance } from "fastest-levenshtein";
import type { ChangeRecord } from "../../records/catalog.ts";
import type { Place } from "../../records/complaint.ts";
import { groupBy } from "../../records/group-by.ts";
import { statementsOf } from "../../records/statement.ts";
import { pairs } from "../pairs.ts";
import { inRecord, placeOf } from "../place-of.ts";
import type { Fault, Rule, World } from "../rule.ts";

/**
 * Of one component no two settings, intervals or conditions of a setting have names that differ by a slip only; and no two records of
 * the same components and scope have such titles, nor are any two the same in all but the id and the day. A slip: one word differs,
 * by one letter or, in a long word, two; or only spaces, hyphens, case or a plural do. Numbers differ on purpose.
 */
export const nearlyTheSame: Rule = {
  id: "nearly-the-same",
  gravity: "warning",
  about:
    "What is the same is called by the same words: settings, their conditions, intervals and records; and nothing is on record twice.",
  why: "Two spellings are two settings: each has half of the history, and both are in force.",
  mend: "Write the one as the other.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "name: oil pressure, window: ..90, unit: bar, component: lift,",
        "name: oil presure, window: ..90, unit: bar,",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "name: oil pressure, window: ..90, unit: bar, component: lift,",
        "name: oil pressure, window: ..90, unit: bar,",
      ],
    },
  },
  *find(world) {
    yield* copies(world);
    for (const { what, named } of kinds(world))
      for (const [, group] of groupBy(named, (it) => [it.among])) {
        // Of each spelling the first place, and the one written less often is taken for the slip.
        const spellings = [...groupBy(group, (it) => [it.text])].map(([text, all]) => ({ text, all }));
        for (const [one, other] of pairs(spellings)) {
          if (!isSlip(one.text, other.text)) continue;
          const [rare, usual] = other.all.length <= one.all.length ? [other, one] : [one, other];
          const [here, there] = [rare.all[0], usual.all[0]];
          if (!here || !there) continue;
          yield {
            at: here.at,
            message: `${what} '${rare.text}' differs from '${usual.text}' by a slip only`,
            hint: `write it as there, if the same is meant`,
            records: [here.record, there.record],
            names: [rare.text, usual.text],
            also: [{ ...there.at, message: `'${usual.text}'` }],
          };
        }
      }
  },
};

/** A record that was copied under another id, and never made another one. */
function* copies({ catalog }: World): Generator<Fault> {
  const records = [...catalog.records.values()].filter(isCounted);
  const byFacts = groupBy(records, ({ facts }) => [
    JSON.stringify({ ...facts, id: "", issued: "", revised: "", revision: 1 }),
  ]);
  for (const [, [first, ...more]] of byFacts)
    for (const record of first ? more : [])
      yield {
        at: inRecord(record, "id"),
        message: `${record.id} says word for word what ${first?.id} says`,
        hint: "take one of the two out, or say what is different",
        records: [record.id, ...(first ? [first.id] : [])],
        names: [],
        also: first ? [{ ...inRecord(first, "id"), message: "the same record" }] : [],
      };
}

interface Named {
  /** Only what is called so among the same is compared. */
  readonly among: string;
  readonly text: string;
  readonly at: Place;
  readonly record: string;
}

function kinds({ catalog, index }: World): { what: string; named: Named[] }[] {
  return [
    {
      what: "setting",
      named: index.settings.map((it) => ({
        among: it.component ?? "",
        text: it.name,
        at: placeOf(catalog, it, "name"),
        record: it.record,
      })),
    },
    {
      what: "condition",
      named: index.settings.flatMap((it) =>
        it.conditions === undefined
          ? []
          : [
              {
                among: `${it.component} ${it.name}`,
                text: it.conditions,
                at: placeOf(catalog, it, "conditions"),
                record: it.record,
              },
            ],
      ),
    },
    {
      what: "interval",
      named: [...catalog.records.values()].flatMap((record) =>
        statementsOf(record.statements, "interval").map((it) => ({
          among: record.facts.components[0] ?? "",
          text: it.name,
          at: placeOf(catalog, it, "name"),
          record: it.record,
        })),
      ),
    },
    {
      what: "record",
      named: [...catalog.records.values()].filter(isCounted).map((it) => ({
        among: `${it.facts.components.join()} ${it.facts.scope}`,
        text: it.facts.title,
        at: inRecord(it, "title"),
        record: it.id,
      })),
    },
  ];
}

function isSlip(one: string, other: string): boolean {
  if (bare(one) === bare(other)) return true;
  const [a, b] = [one, other].map((text) => wordsOf(text)) as [string[], string[]];
  const differing = a.flatMap((word, i): [string, string][] => (word === b[i] ? [] : [[word, b[i] ?? ""]]));
  const [[x, y] = ["", ""], ...more] = differing;
  if (a.length !== b.length || more.length > 0 || /\d/.test(x + y)) return false;
  const length = Math.min(x.length, y.length);
  return length >= 4 && distance(x, y) <= (length >= 7 ? 2 : 1);
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\d.-]+/gu) ?? [];
}

function bare(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s-]+/g, "")
    .replace(/s(?=,|$)/g, "");
}

function isCounted({ facts }: ChangeRecord): boolean {
  return facts.withdrawn === undefined;
}
