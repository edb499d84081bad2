import { partsNamed } from "../../records/statement.ts";
import { inPart } from "../place-of.ts";
import type { Rule } from "../rule.ts";
import { textsOf } from "../texts-of.ts";

/** Every part is fitted, delivered, permitted, in a kit or for repair by some record, or at least spoken of in one. */
export const partNowhere: Rule = {
  id: "part-nowhere",
  gravity: "warning",
  about: "Every part is named by some record as more than what it replaced.",
  why: "Its page says nothing: no car has it, and nobody knows where it goes.",
  mend: "Say where it was fitted, what it stands in for or that it is for repair only; or take it out.",
  example: {
    wrong: {
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-299, name: square gasket }"],
    },
    right: {
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-299, name: square gasket }"],
      "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-201, HT-299]"],
    },
  },
  *find({ catalog }) {
    const named = new Set<string>();
    for (const record of catalog.records.values()) {
      if (record.facts.withdrawn !== undefined) continue;
      for (const it of record.stated)
        for (const part of partsNamed(it))
          if (!(it.type === "supersedes" && it.old === part) && !(it.type === "stands-in" && it.for === part))
            named.add(part);
      for (const { text } of textsOf(record))
        for (const word of text.split(/[^\w.-]+/)) named.add(word.replace(/\.$/, ""));
    }
    for (const part of catalog.parts.values())
      if (!named.has(part.number))
        yield {
          at: inPart(catalog, part, "number"),
          message: `no record says where ${part.number} goes`,
          hint: "say where it was fitted or what it stands in for, or that it is for repair only",
          records: [],
          names: [part.number],
        };
  },
};
