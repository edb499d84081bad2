import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** The figure to aim for lies within the limits it is judged by; limits count as inside. */
export const aimOutsideWindow: Rule = {
  id: "aim-outside-window",
  gravity: "error",
  about: "The figure to aim for lies within the limits.",
  why: "What is set as the record says fails the check of the same record.",
  mend: "Correct the figure or the window.",
  example: {
    wrong: { "changes/1959/HY59-01.md": ["nominal: 130,", "nominal: 13,"] },
    right: {},
  },
  *find({ catalog, index }) {
    for (const it of index.settings) {
      const { nominal, low, high } = it;
      if (nominal === undefined) continue;
      if ((low === undefined || nominal >= Number(low)) && (high === undefined || nominal <= Number(high))) continue;
      yield {
        at: placeOf(catalog, it, "nominal"),
        message: `'${it.name}' is to be set at ${nominal} ${it.unit}, outside its window ${low ?? ""}..${high ?? ""}`,
        hint: "correct the figure or the window",
        records: [it.record],
        names: [it.name],
      };
    }
  },
};
