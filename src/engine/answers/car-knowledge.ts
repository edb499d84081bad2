/** What the answers about a car are drawn from. A page opens it for one model line, without the graph. */
import type { Catalog } from "../records/catalog.ts";
import { groupBy } from "../records/group-by.ts";
import { once } from "../records/once.ts";
import { partsNamed, type Statement, type StatementOf, statementsOf } from "../records/statement.ts";

export interface CarKnowledge {
  readonly catalog: Catalog;
  /** The statements that name a part. */
  readonly statementsByPart: ReadonlyMap<string, readonly Statement[]>;
  /** By the id of a record: the statements by which other records end instructions of it. */
  readonly cancelsByRecord: ReadonlyMap<string, readonly StatementOf<"cancels">[]>;
}

/** Each of the lists is made when it is first asked for. */
export function openCarKnowledge(catalog: Catalog): CarKnowledge {
  const statements = once(() => [...catalog.records.values()].flatMap((record) => record.statements));
  const statementsByPart = once(() => groupBy(statements(), partsNamed));
  const cancelsByRecord = once(() => groupBy(statementsOf(statements(), "cancels"), (statement) => [statement.target]));
  return {
    catalog,
    get statementsByPart() {
      return statementsByPart();
    },
    get cancelsByRecord() {
      return cancelsByRecord();
    },
  };
}
