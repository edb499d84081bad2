import type { PartIndex } from "../../interchange/part-index.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** No kit holds itself, directly or in another kit. */
export const kitInItself: Rule = {
  id: "kit-in-itself",
  gravity: "error",
  about: "No kit holds itself, directly or in another kit.",
  why: "Nobody can pack it, and the list of what is inside has no end.",
  mend: "Take the kit out of its own contents.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "contents: [{ part: HT-201, count: 2 },",
        "contents: [{ part: HT-201, count: 2 }, { part: HT-290 },",
      ],
    },
    right: {},
  },
  *find({ catalog, index }) {
    for (const record of catalog.records.values())
      for (const kit of record.statements) {
        if (kit.type !== "kit") continue;
        for (const [i, { part }] of kit.contents.entries()) {
          if (part === undefined || !holds(index, part, kit.kit)) continue;
          yield {
            at: placeOf(catalog, kit, "contents", i, "part"),
            message:
              part === kit.kit ? `kit ${part} holds itself` : `kit ${kit.kit} holds ${part}, which holds it in turn`,
            hint: "take it out of the contents",
            records: [record.id],
            names: [kit.kit, part],
          };
        }
      }
  },
};

/** Whether a part is that kit, or holds it at any depth. */
function holds(index: PartIndex, part: string, kit: string): boolean {
  const inside = [part];
  for (const one of inside)
    for (const content of index.contentsOf.get(one) ?? [])
      if (content.part !== undefined && !inside.includes(content.part)) inside.push(content.part);
  return inside.includes(kit);
}
