import { expect, test } from "vitest";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { contradictions } from "../../../src/engine/scope/read-scope-either.ts";
import { tractorSpace } from "../../helpers/tractor-space.ts";

// a scope, the clause that can't hold beside another, what to write
test.each([
  ["line=B; line=H", "line=H", "write line=B,H for cars of either"],
  ["my=1958; eq=PT || line=B; my=1958 ; my=1960-1961", "my=1960-1961", "write my=1958,1960-1961 for cars of either"],
  ["line=B; line=B,H", undefined, undefined],
  ["line=B; my=1958 || line=H; my=1959", undefined, undefined],
  ["line=B; line!=B", undefined, undefined],
  ["all", undefined, undefined],
])("%s", (text, piece, hint) => {
  const read = readScope(tractorSpace(), text);
  const [slip] = "scope" in read ? contradictions(read.scope) : [];
  expect(slip && text.slice(slip.from, slip.to)).toBe(piece);
  expect(slip?.hint).toBe(hint);
});
