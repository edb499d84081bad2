import { expect, test } from "vitest";
import { sayCars } from "../../../src/engine/answers/say-cars.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();
const { space, buildable } = catalog;

function carsOf(text: string) {
  const read = readScope(space, text);
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return space.sets.and(read.scope.cars, buildable);
}

test("some cars in words that hold for no other of those asked about", () => {
  const badgers = carsOf("line=B");
  const said = sayCars(catalog, carsOf("line=B; my>=1959"), badgers, 12);
  expect(said).toEqual({ text: "my=1959-1960", words: "cars of 1959 and 1960" });
  expect(space.sets.and(carsOf(said?.text ?? ""), badgers)).toBe(carsOf("line=B; my>=1959"));
});

test("nothing where too many kinds would have to be named", () => {
  expect(sayCars(catalog, carsOf("line=B; my=1957 || line=H; my=1960"), buildable, 1)).toBeUndefined();
});
