import { expect, test } from "vitest";
import { unitNamed } from "../../../src/engine/settings/unit-named.ts";

test.each([
  ["in", "length"],
  ["miles", "length"],
  ["deg BTDC", "crank position"],
  ["pegs", "count of pegs"],
  ["IN", "count of IN"],
  ["constructor", "count of constructor"],
])("'%s' is a %s", (id, dimension) => {
  expect(unitNamed(id)).toMatchObject({ id, dimension });
});
