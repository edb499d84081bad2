import { expect, test } from "vitest";
import { bothFitted } from "../../../src/engine/audit/both-fitted.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf(
  spoiled({
    // A part is a trait of the car once a scope asks for it.
    "changes/1959/HY59-01.md": [
      "settings:\n",
      "settings:\n  - { name: play, window: ..1, unit: mm, scope: 'fitted=HT-101,HT-102,HT-201' }\n",
    ],
  }),
);

function scopeOf(text: string) {
  const read = readScope(catalog.space, text);
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return read.scope;
}

test("cars that have on them two parts of one component, of which each scope asks for one", () => {
  const [short, long] = [scopeOf("line=B; fitted=HT-101"), scopeOf("fitted=HT-102")];
  expect(bothFitted(catalog, short, long)).toBe(scopeOf("fitted=HT-101; fitted=HT-102").cars);
  expect(bothFitted(catalog, short, long, ({ id }) => id === "pump")).not.toBe(NONE);
  expect(bothFitted(catalog, short, long, ({ places }) => places.length > 1)).toBe(NONE);
});

test("none, where they ask for the same part, for parts of two components, or one for no part", () => {
  const short = scopeOf("fitted=HT-101");
  for (const other of [short, scopeOf("fitted=HT-201"), scopeOf("line=B"), undefined])
    expect(bothFitted(catalog, short, other)).toBe(NONE);
});
