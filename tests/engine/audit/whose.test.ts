import { expect, test } from "vitest";
import { whose } from "../../../src/engine/audit/whose.ts";

test("a record calls another one by its id, and a line of its own so", () => {
  expect(whose("A-1", "B-2")).toBe("B-2");
  expect(whose("A-1", "A-1")).toBe("another line of this record");
});
