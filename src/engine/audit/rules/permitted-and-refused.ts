import { isPermission, whereHolds } from "../../interchange/part-index.ts";
import { groupBy } from "../../records/group-by.ts";
import { NONE } from "../../scope/diagram.ts";
import { bothFitted } from "../both-fitted.ts";
import { pairs } from "../pairs.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";
import { whose } from "../whose.ts";

/**
 * Of a permission and a refusal of the same part where the same other one belongs, no built car is in the scopes of both. No car
 * has two parts in the one place of a component.
 */
export const permittedAndRefused: Rule = {
  id: "permitted-and-refused",
  gravity: "error",
  about: "No record permits on a car what another one refuses on the same car.",
  why: "The answer is then always 'must not'; but one of the two records is wrong, and nobody knows which.",
  mend: "Give the permission or the refusal the scope that it really has, or cancel the record that no longer holds.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        'why: It runs dry. }\n  - { part: HT-101, for: HT-102, verdict: "yes", scope: line=B; my=1960 }',
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        'why: It runs dry., scope: line=B; my<=1959 }\n  - { part: HT-101, for: HT-102, verdict: "yes", scope: line=B; my=1960 }',
      ],
    },
  },
  *find({ catalog, index }) {
    const { sets } = catalog.space;
    for (const [part, statements] of index.standInsOf)
      for (const [other, about] of groupBy(statements, (it) => [it.for ?? ""]))
        for (const [one, later] of pairs(about)) {
          if (isPermission(one) === isPermission(later)) continue;
          const place = one.place ?? later.place;
          const both = sets.minus(
            sets.and(
              whereHolds(index, one, catalog.buildable, place),
              whereHolds(index, later, catalog.buildable, place),
            ),
            bothFitted(catalog, one.scope, later.scope, ({ places }) => places.length === 1),
          );
          if (both === NONE) continue;
          const [permission, refusal] = isPermission(one) ? [one, later] : [later, one];
          const where = other === "" ? "where nothing belongs" : `in place of ${other}`;
          yield {
            at: placeOf(catalog, permission),
            message: `${part} ${where} is permitted here and refused by ${whose(permission.record, refusal.record)} on the same cars`,
            hint: "the answer is 'must not' until one of the two scopes is mended or one of the records cancelled",
            records: [permission.record, refusal.record],
            names: [part, ...(other === "" ? [] : [other])],
            also: [{ ...placeOf(catalog, refusal), message: `the refusal: ${refusal.why ?? refusal.verdict}` }],
            cars: both,
          };
        }
  },
};
