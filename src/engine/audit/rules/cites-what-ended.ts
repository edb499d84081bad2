import { groupBy } from "../../records/group-by.ts";
import type { Rule } from "../rule.ts";

/** A bulletin that cites a withdrawn or cancelled record, or a part for which another is always delivered, also cites what came after. */
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
        const orders = (index.ordersOf.get(id) ?? []).filter((it) => it.scope === undefined);
        const after = record ? [...by, ...record.facts.instead] : orders.map((it) => it.new);
        const isTold = after.some((one) => cited.has(one)) || orders.some((it) => cited.has(it.record));
        const isEnded = record?.facts.withdrawn !== undefined || after.length > 0;
        if (!isEnded || isTold) continue;
        told.add(id);
        const what =
          record?.facts.withdrawn !== undefined
            ? "is withdrawn"
            : record
              ? `is cancelled by ${by.join(", ")}`
              : `is delivered as ${after.join(" or ")}`;
        yield {
          at: { file: bulletin.file, path: ["text"], within: [from, to] },
          message: `${id} ${what}`,
          hint:
            after.length > 0 ? `cite ${after.map((one) => `[[${one}]]`).join(", ")} too` : "cite what holds instead",
          records: record ? [id, ...by] : orders.map((it) => it.record),
          names: [bulletin.id, id],
        };
      }
    }
  },
};
