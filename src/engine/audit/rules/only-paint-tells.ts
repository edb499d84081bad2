import { compareMarks } from "../../lookalikes/alike.ts";
import type { Mark } from "../../lookalikes/mark-table.ts";
import type { Part } from "../../records/catalog.ts";
import { inPart } from "../place-of.ts";
import { refusedPairs } from "../refused-pairs.ts";
import type { Rule } from "../rule.ts";

/**
 * Of two parts of which one must not be used in place of the other, a mark that does not wear off tells them apart; or else the mark
 * that does has a note, which says what to do once it has gone.
 */
export const onlyPaintTells: Rule = {
  id: "only-paint-tells",
  gravity: "warning",
  about: "Look-alikes that must not be mixed up are not told apart by paint or ink alone.",
  why: "Paint washes off, and a part without its dab is taken for the one that never had any.",
  mend: "Add a second mark, or write at the painted one, as its note, what to do when it has gone.",
  example: {
    wrong: {
      "parts/pump.yaml": [
        "name: ribs on the body, made: cast,",
        "name: red rings, made: painted,",
        "marks: { ribs: two, bore: none }",
        "marks: { ribs: two }",
      ],
    },
    right: {
      "parts/pump.yaml": [
        "name: ribs on the body, made: cast,",
        "name: red rings, note: Without them measure the inlet., made: painted,",
        "marks: { ribs: two, bore: none }",
        "marks: { ribs: two }",
      ],
    },
  },
  *find(world) {
    for (const { table, one, other, refusal } of refusedPairs(world)) {
      const [row, otherRow] = [one, other].map((part) => table.parts.find((it) => it.number === part.number));
      if (!row || !otherRow) continue;
      const { apart } = compareMarks(table.marks, row, otherRow);
      if (apart.length === 0 || apart.some((mark) => !mark.wearsOff || hasNote(one, mark))) continue;
      yield {
        at: inPart(world.catalog, one, "marks"),
        message: `only what wears off tells ${one.number} from ${other.number}: ${apart.map((mark) => nameOf(one, mark)).join(", ")}`,
        hint: "add a second mark, or a note at this one that says what to do when it has gone",
        records: [refusal.record],
        names: [one.number, other.number],
      };
    }
  },
};

function hasNote(part: Part, { id }: Mark): boolean {
  return part.features.some((feature) => feature.id === id && feature.note !== undefined);
}

function nameOf(part: Part, { id }: Mark): string {
  return part.features.find((feature) => feature.id === id)?.name ?? id;
}
