import { expect, test } from "vitest";
import { cardFiles } from "../../../src/engine/ask/card-files.ts";
import { id } from "../../../src/engine/records/shapes/common.ts";

test("there is a file for each system, and where there is no system, one that none can be called like", () => {
  expect(cardFiles(["frame", "hydraulics"])).toEqual(["frame", "hydraulics"]);
  const [file, ...others] = cardFiles([]);
  expect(others).toEqual([]);
  expect(id.safeParse(file).success).toBe(false);
  expect(encodeURIComponent(file ?? "")).toBe(file);
});
