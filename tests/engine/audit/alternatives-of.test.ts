import { expect, test } from "vitest";
import { alternativesOf } from "../../../src/engine/audit/alternatives-of.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const { space } = catalogOf();

function read(text: string) {
  const read = readScope(space, text);
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return read.scope;
}

test("each alternative has its own cars, and its place in the text", () => {
  const scope = read("line=B; my=1957  ||line=H");
  const told = alternativesOf(space, scope);
  expect(told.map(({ within }) => scope.text.slice(...within))).toEqual(["line=B; my=1957", "line=H"]);
  expect(told.map(({ cars }) => cars)).toEqual([read("my=1957; line=B").cars, read("line=H").cars]);
});

test("every car is one alternative", () => {
  const scope = read("all");
  expect(alternativesOf(space, scope)).toEqual([{ alternative: [], cars: scope.cars, within: [0, 3] }]);
});
