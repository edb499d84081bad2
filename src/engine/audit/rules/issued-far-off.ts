import { concerned } from "../../records/concerned.ts";
import { inRecord } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** A change is put on record a year before its first cars at the earliest; what is found out later follows within a few years. */
const FAR = 3;

/** A record was issued no more than three years before the first, or after the last, model year of the built cars that it is about. */
export const issuedFarOff: Rule = {
  id: "issued-far-off",
  gravity: "warning",
  about: "A record was issued in the years of the cars that it is about.",
  why: "By the day of issue a later record ends an earlier one; with a wrong year it is the other way round.",
  mend: "Mend the day or the scope; or accept the finding, where it was really issued then.",
  example: {
    wrong: { "changes/1958/FR58-01.md": ["issued: 1958-03-01", "issued: 1985-03-01"] },
    right: {},
  },
  *find({ catalog }) {
    for (const record of catalog.records.values()) {
      const { years } = concerned(catalog, record.scope);
      const [first, last] = [years[0], years.at(-1)];
      const issued = Number(record.facts.issued.slice(0, 4));
      if (first === undefined || last === undefined || (issued >= first - FAR && issued <= last + FAR)) continue;
      yield {
        at: inRecord(record, "issued"),
        message: `it was issued in ${issued}, and is about cars of ${first === last ? first : `${first} to ${last}`}`,
        hint: "mend the day or the scope; where it was really issued then, accept this",
        records: [record.id],
        names: [],
      };
    }
  },
};
