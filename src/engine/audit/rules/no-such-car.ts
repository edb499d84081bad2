import type { Scope } from "../../scope/scope.ts";
import { inRecord, placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** Some built car is in the scope of every record, and in that of every statement. */
export const noSuchCar: Rule = {
  id: "no-such-car",
  gravity: "error",
  about: "Every scope has at least one car that was really built.",
  why: "The statement speaks to nobody: it was meant for other cars, and these are told nothing.",
  mend: "Compare the scope with vehicles/: most often a year, an engine or a plant is a slip.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": ["scope: line=B; at=K59#0412+\nbuilt", "scope: line=B; plant=D; my=1958\nbuilt"],
    },
    right: {},
  },
  *find({ catalog }) {
    const { space, buildable } = catalog;
    const isEmpty = (scope: Scope | undefined): boolean =>
      scope !== undefined && !space.sets.meet(buildable, scope.cars);
    const said = {
      message: "no car that was built is in this scope",
      hint: "compare it with the combinations in vehicles/",
    };
    for (const record of catalog.records.values()) {
      const records = [record.id];
      if (isEmpty(record.scope)) yield { ...said, at: inRecord(record, "scope"), records, names: [] };
      for (const statement of record.statements)
        if ("scope" in statement && isEmpty(statement.scope))
          yield { ...said, at: placeOf(catalog, statement, "scope"), records, names: [] };
    }
  },
};
