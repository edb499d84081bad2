import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { measure } from "../../../scripts/bench/measure.ts";

async function script(text: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "yearmark-measure-"));
  onTestFinished(() => rm(folder, { recursive: true }));
  const file = join(folder, "script.mjs");
  await writeFile(file, text);
  return file;
}

test("what a script printed comes back, with what it took of time, processor and memory", async () => {
  const cost = await measure([await script("console.log(Buffer.alloc(200e6, 1).length)")]);
  expect(cost.output).toBe("200000000\n");
  expect(cost.megabytes).toBeGreaterThan(200);
  expect(cost.seconds).toBeGreaterThan(0);
  expect(cost.busy).toBeGreaterThan(0);
});

test("a script that fails is no measurement", async () => {
  const file = await script("console.log('so far'); process.exit(3)");
  await expect(measure([file])).rejects.toThrow("ended with 3:\nso far");
});
