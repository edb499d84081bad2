import { type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import { groupBy } from "../../records/group-by.ts";
import type { Supersedes } from "../../records/statement.ts";
import type { Rule } from "../rule.ts";

/**
 * A bulletin that cites a withdrawn or cancelled record also cites what came after; and one that cites a part for which another is
 * always delivered, whatever the car, also cites one that is delivered for it, or a record that says so.
 */
export const citesWhatEnded: Rule = {
  id: "cites-what-ended",
  gravity: "warning",
  about: "A bulletin that cites what has ended also cites what ended it.",
  why: "The bulletin hangs on the wall, and sends people to an instruction that no longer holds.",
  mend: "Cite the record that cancels it too, or the number that is delivered today.",
  example: {
    wrong: { "bulletins/TB-1.md": ["See [[HY59-01]],", "See [[FR58-01]],"] },
    right: { "bulletins/TB-1.md": ["See [[HY59-01]],", "See [[FR58-01]], [[HY59-01]],"] },
  },
  *find({ catalog, index }) {
    const cancelling = groupBy([...catalog.records.values()], (record) =>
      record.facts.withdrawn === undefined ? record.facts.cancels.map((it) => it.record) : [],
    );
    for (const bulletin of catalog.bulletins.values()) {
      const cited = new Set(bulletin.citations.map((it) => it.id));
      const told = new Set<string>();
      for (const { id, from, to } of bulletin.citations) {
        if (told.has(id)) continue;
        const record = catalog.records.get(id);
        const by = record ? (cancelling.get(id) ?? []).map((it) => it.id) : [];
        const orders = record ? [] : deliveries(index, id);
        const after = record ? [...by, ...record.facts.instead] : orders.map((it) => it.new);
        const today = record ? after : after.filter((one) => !isAlwaysDelivered(index, one));
        const isTold = after.some((one) => cited.has(one)) || orders.some((it) => cited.has(it.record));
        const isEnded = record?.facts.withdrawn !== undefined || after.length > 0;
        if (!isEnded || isTold) continue;
        told.add(id);
        const what =
          record?.facts.withdrawn !== undefined
            ? "is withdrawn"
            : record
              ? `is cancelled by ${by.join(", ")}`
              : `is delivered as ${today.join(" or ")}`;
        yield {
          at: { file: bulletin.file, path: ["text"], within: [from, to] },
          message: `${id} ${what}`,
          hint:
            today.length > 0 ? `cite ${today.map((one) => `[[${one}]]`).join(", ")} too` : "cite what holds instead",
          records: record ? [id, ...by] : orders.map((it) => it.record),
          names: [bulletin.id, id],
        };
      }
    }
  },
};

/** The delivery rules that every order of a number comes to, down to what is delivered today; none where some car still gets it. */
function deliveries(index: PartIndex, part: string): Supersedes[] {
  const numbers = [part];
  const rules: Supersedes[] = [];
  for (const number of numbers)
    for (const rule of isAlwaysDelivered(index, number) ? (index.ordersOf.get(number) ?? []) : []) {
      rules.push(rule);
      if (!numbers.includes(rule.new)) numbers.push(rule.new);
    }
  return rules;
}

/** Whether whoever orders this number gets another one, on every car. */
function isAlwaysDelivered(index: PartIndex, part: string): boolean {
  const { buildable } = index.catalog;
  return index.space.any((index.ordersOf.get(part) ?? []).map((it) => whereHolds(index, it, buildable))) === buildable;
}
