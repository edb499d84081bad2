import { isPermission } from "../../interchange/part-index.ts";
import { sayKind, shareHome } from "../homes-of.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * A part that is refused in the place of another one is of the same component, or both were fitted in places of one component, or one
 * of them is a kit that holds a part of it.
 */
export const otherComponentRefused: Rule = {
  id: "other-component-refused",
  gravity: "warning",
  about: "What is refused in the place of a part is a part of the same component, or a kit with one.",
  why: "With one wrong digit the refusal speaks of something else, and nothing refuses what was meant.",
  mend: "Mend the number; or accept the finding with the reason: the two are really mixed up.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["{ part: HT-101, for: HT-102,", "{ part: HT-101, for: HT-201,"] },
    right: {},
  },
  *find({ catalog, index }) {
    for (const statements of index.standInsOf.values())
      for (const it of statements) {
        if (isPermission(it) || it.for === undefined || shareHome(index, it.part, it.for)) continue;
        yield {
          at: placeOf(catalog, it, "for"),
          message: `${sayKind(index, it.part)} is refused in place of a part of another component: ${sayKind(index, it.for)}`,
          hint: "mend the number; where the two are really mixed up, accept this",
          records: [it.record],
          names: [it.part, it.for],
        };
      }
  },
};
