import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { isSystemError } from "../../src/build/is-system-error.ts";

function faultOf(run: () => unknown): unknown {
  try {
    return run();
  } catch (error) {
    return error;
  }
}

test("what the system refuses is told from faults of the program", () => {
  expect(isSystemError(faultOf(() => readFileSync("nowhere/at/all")))).toBe(true);
  expect(isSystemError(faultOf(() => (undefined as unknown as string).length))).toBe(false);
  expect(isSystemError({ errno: 1, syscall: "open" })).toBe(false);
});
