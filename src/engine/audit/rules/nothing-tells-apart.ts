import { compareMarks } from "../../lookalikes/alike.ts";
import type { ChangeRecord } from "../../records/catalog.ts";
import { groupBy } from "../../records/group-by.ts";
import { partsNamed } from "../../records/statement.ts";
import { inPart } from "../place-of.ts";
import { refusedPairs } from "../refused-pairs.ts";
import type { Rule } from "../rule.ts";

/** Of two parts of which one must not be used in place of the other, a mark or a record's own words tell which is which. */
export const nothingTellsApart: Rule = {
  id: "nothing-tells-apart",
  gravity: "warning",
  about: "Look-alikes that must not be mixed up can be told apart by a mark on record, or by the words of a record.",
  why: "The box is gone, the part is in the hand, and nothing says which one it is.",
  mend: "Add a mark with its value for both parts, or write 'tell-apart' in a record that names them.",
  example: {
    wrong: {
      "parts/pump.yaml": ["marks: { ribs: two, bore: none }", "marks: { ribs: none }"],
    },
    right: {
      "parts/pump.yaml": ["marks: { ribs: two, bore: none }", "marks: { ribs: none }"],
      "changes/1959/HY59-01.md": ["links: [FR58-01]", "tell-apart: HT-102 is longer by a hand.\nlinks: [FR58-01]"],
    },
  },
  *find(world) {
    const { catalog } = world;
    const naming = groupBy([...catalog.records.values()], (record) => [
      ...new Set(record.statements.flatMap(partsNamed)),
    ]);
    for (const { table, one, other, refusal } of refusedPairs(world)) {
      const [row, otherRow] = [one, other].map((part) => table.parts.find((it) => it.number === part.number));
      if (!row || !otherRow || compareMarks(table.marks, row, otherRow).apart.length > 0) continue;
      const records = naming.get(one.number)?.filter((record) => naming.get(other.number)?.includes(record)) ?? [];
      if (records.some(saysHow(one.number, other.number))) continue;
      yield {
        at: inPart(catalog, one),
        message: `${one.number} must not be used for ${other.number}, and nothing on record tells the two apart`,
        hint: "add a mark with its value for both, or say how in 'tell-apart' of a record that names them",
        records: [refusal.record],
        names: [one.number, other.number],
      };
    }
  },
};

function saysHow(one: string, other: string): (record: ChangeRecord) => boolean {
  return ({ facts }) => [one, other].some((number) => facts["tell-apart"]?.includes(number));
}
