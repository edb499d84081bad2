import { describe, expect, test } from "vitest";
import { openKnowledge } from "../../../src/engine/answers/knowledge.ts";
import { partsNamed, statementsOf } from "../../../src/engine/records/statement.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

describe("what answers are drawn from", () => {
  const catalog = catalogOf();
  const knowledge = openKnowledge(catalog, { layout: false });

  test("each part has exactly the statements that name it, in the order of the records", () => {
    const statements = [...catalog.records.values()].flatMap((record) => record.statements);
    for (const number of catalog.parts.keys())
      expect(knowledge.statementsByPart.get(number)).toEqual(
        statements.filter((statement) => partsNamed(statement).includes(number)),
      );
  });

  test("records stand under each of their components and systems, parts under theirs", () => {
    const ids = (map: typeof knowledge.recordsByComponent): [string, string[]][] =>
      [...map].map(([key, records]) => [key, records.map(({ id }) => id)]);
    expect(ids(knowledge.recordsByComponent)).toEqual([
      ["pump", ["HY59-01"]],
      ["gasket", ["HY59-01"]],
    ]);
    expect(ids(knowledge.recordsBySystem)).toEqual([["hydraulics", ["HY59-01"]]]);
    expect([...knowledge.partsByComponent]).toEqual([
      ["gasket", ["HT-201", "HT-290"]],
      ["pump", ["HT-101", "HT-102"]],
    ]);
  });

  test("a record has the statements by which others end instructions of it", () => {
    const cancels = [...catalog.records.values()].flatMap((record) => statementsOf(record.statements, "cancels"));
    expect([...knowledge.cancelsByRecord]).toEqual([["FR58-01", cancels]]);
  });

  test("without a layout every node is at the centre, with one it is not", () => {
    const places = (layout: boolean): number =>
      new Set(openKnowledge(catalog, { layout }).graph.mapNodes((_, { x, y }) => `${x} ${y}`)).size;
    expect(places(false)).toBe(1);
    expect(places(true)).toBe(knowledge.graph.order);
  });
});
