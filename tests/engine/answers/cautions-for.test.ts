import { expect, test } from "vitest";
import { cautionsFor } from "../../../src/engine/answers/cautions-for.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();

// systems, components, the cautions
const CASES: [string[], string[], string[]][] = [
  [["hydraulics"], ["pump"], ["pressure"]], // both name it: once
  [[], ["pump"], ["pressure"]],
  [["frame"], ["lift"], []],
];
test.each(CASES)("the usual cautions of systems %j and components %j are %j", (systems, components, cautions) => {
  expect(cautionsFor(catalog, systems, components).map(({ id }) => id)).toEqual(cautions);
});
