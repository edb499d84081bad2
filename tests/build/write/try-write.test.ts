import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { tryWrite } from "../../../src/build/write/try-write.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

test("what the disk refuses is said in one line", async () => {
  const folder = await onDisk({ "a.yaml": "a" });
  expect(tryWrite(folder, new Map([["a.yaml", "A"]]))).toBeUndefined();
  expect(readFileSync(join(folder, "a.yaml"), "utf8")).toBe("A");
  mkdirSync(join(folder, "b.yaml"));
  expect(tryWrite(folder, new Map([["b.yaml", "B"]]))).toMatch(/^EISDIR: .*\. Nothing was written\.$/);
});

test("a fault of the program is no matter of the disk", () => {
  expect(() => tryWrite("x", undefined as never)).toThrow(TypeError);
});
