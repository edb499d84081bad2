import { type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** No kit that is still delivered holds a part for which every order gets another number, be it that of the kit itself. */
export const kitContentNotCurrent: Rule = {
  id: "kit-content-not-current",
  gravity: "warning",
  about: "What is in a kit is still supplied under its own number.",
  why: "The kit is packed with a part that is no longer made, or the list is out of date.",
  mend: "List the number that is delivered today.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "contents: [{ part: HT-201, count: 2 },",
        "contents: [{ part: HT-201, count: 2 }, { part: HT-101 },",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "contents: [{ part: HT-201, count: 2 },",
        "contents: [{ part: HT-201, count: 2 }, { part: HT-102 },",
      ],
    },
  },
  *find({ catalog, index }) {
    for (const record of catalog.records.values())
      for (const kit of record.statements) {
        if (kit.type !== "kit" || !isCurrent(index, kit.kit)) continue;
        for (const [i, { part }] of kit.contents.entries()) {
          if (part === undefined || isCurrent(index, part)) continue;
          const rules = index.ordersOf.get(part) ?? [];
          yield {
            at: placeOf(catalog, kit, "contents", i, "part"),
            message: `kit ${kit.kit} holds ${part}, for which ${[...new Set(rules.map((rule) => rule.new))].join(" or ")} is delivered`,
            hint: "list the number that is delivered today",
            records: [record.id, ...new Set(rules.map((rule) => rule.record))],
            names: [kit.kit, part],
            also: rules.map((rule) => ({ ...placeOf(catalog, rule), message: `${rule.old} → ${rule.new}` })),
          };
        }
      }
  },
};

/** Whether some order still gets this number. */
function isCurrent(index: PartIndex, part: string): boolean {
  const { buildable } = index.catalog;
  const sent = (index.ordersOf.get(part) ?? []).map((rule) => whereHolds(index, rule, buildable));
  return index.space.any(sent) !== buildable;
}
