/** What the answers about a car are drawn from. A page opens it for one model line, without the graph. */
import type { Catalog } from "../records/catalog.ts";
import { partsNamed, type Statement, type StatementOf, statementsOf } from "../records/statement.ts";
import { groupBy } from "../records/group-by.ts";

export interface CarKnowledge {
  readonly catalog: Catalog;
  /** The statements that name a part. */
  readonly statementsByPart: ReadonlyMap<string, readonly Statement[]>;
  /** By the id of a record: the statements by which other records end instructions of it. */
  readonly cancelsByRecord: ReadonlyMap<string, readonly StatementOf<"cancels">[]>;
}

export function openCarKnowledge(catalog: Catalog): CarKnowledge {
  const statements = [...catalog.records.values()].flatMap((record) => record.statements);
  return {
    catalog,
    statementsByPart: groupBy(statements, partsNamed),
    cancelsByRecord: groupBy(statementsOf(statements, "cancels"), (statement) => [statement.target]),
  };
}
