import { ALL } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** A record that ended another one is not ended itself for the same cars: whether the first then holds again, nobody says. */
export const cancellationEnded: Rule = {
  id: "cancellation-ended",
  gravity: "warning",
  about: "A record that ends another one is not ended itself for cars of both.",
  why: "It is left open whether the first instruction holds again. The answers take its refusals as holding, and its permissions as ended.",
  mend: "End the first record too, or give its instruction anew in the record that came last; then accept this.",
  example: {
    wrong: {
      "changes/1959/HY59-02.md": [
        "",
        "---\nid: HY59-02\ntitle: As before\nissued: 1959-03-01\nkinds: [part]\ncomponents: [pump]\nstarts: now\nscope: line=B\ncancels: [{ record: HY59-01 }]\n---\n\nAs before.\n",
      ],
    },
    right: {
      "changes/1959/HY59-02.md": [
        "",
        "---\nid: HY59-02\ntitle: As before\nissued: 1959-03-01\nkinds: [part]\ncomponents: [pump]\nstarts: now\nscope: line=H\ncancels: [{ record: HY59-01, scope: line=H }]\n---\n\nAs before.\n",
      ],
    },
  },
  *find({ catalog }) {
    const { sets } = catalog.space;
    const cancels = [...catalog.records.values()].flatMap((record) =>
      record.statements.flatMap((it) => (it.type === "cancels" ? [it] : [])),
    );
    for (const last of cancels)
      for (const first of cancels) {
        const target = catalog.records.get(first.target);
        if (last.target !== first.record || !target) continue;
        const both = sets.and(last.scope?.cars ?? ALL, first.scope?.cars ?? ALL);
        const cars = sets.and(sets.and(both, target.scope.cars), catalog.buildable);
        // Whoever ends both leaves nothing open.
        const open = cancels
          .filter((it) => it.record === last.record && it.target === first.target)
          .reduce((left, it) => sets.minus(left, it.scope?.cars ?? ALL), cars);
        if (!sets.meet(open, ALL)) continue;
        yield {
          at: placeOf(catalog, last),
          message: `${last.target}, which is cancelled here, has itself cancelled ${first.target}: whether that holds again is not said`,
          hint: `cancel ${first.target} here too, or give its instruction anew and accept this`,
          records: [last.record, last.target, first.target],
          names: [],
          also: [{ ...placeOf(catalog, first), message: `${first.target} was cancelled here` }],
          cars: open,
        };
      }
  },
};
