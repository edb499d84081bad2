import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** No part stands in for itself, and none is among what goes along with it. */
export const namesItself: Rule = {
  id: "names-itself",
  gravity: "error",
  about: "A part does not stand in for itself, and does not go along with itself.",
  why: "One of the two numbers is another one's: what was meant is nowhere on record.",
  mend: "Mend the number that was not meant.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "verdict: on-conditions, with: [HT-201]",
        "verdict: on-conditions, with: [HT-201, HT-102]",
      ],
    },
    right: {},
  },
  *find({ catalog }) {
    for (const record of catalog.records.values())
      for (const it of record.statements) {
        if (it.type !== "stands-in" && it.type !== "supersedes") continue;
        const part = it.type === "stands-in" ? it.part : it.new;
        const at = it.with.indexOf(part);
        const isForItself = it.type === "stands-in" && it.for === part;
        if (!isForItself && at < 0) continue;
        yield {
          at: isForItself ? placeOf(catalog, it, "for") : placeOf(catalog, it, "with", at),
          message: isForItself ? `${part} is to stand in for itself` : `${part} is to go along with itself`,
          hint: "mend the number that was not meant",
          records: [record.id],
          names: [part],
        };
      }
  },
};
