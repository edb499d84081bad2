import { mkdir, mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
import { SearchIndex } from "../../../src/build/dev/search-index.ts";

async function begin(make?: (folder: string) => Promise<ReadonlyMap<string, string>>) {
  const home = await mkdtemp(join(tmpdir(), "yearmark-search-"));
  onTestFinished(() => rm(home, { recursive: true }));
  const said: string[] = [];
  let made = 0;
  const index = new SearchIndex(
    home,
    make ??
      (async (folder) => {
        await mkdir(folder);
        return new Map([["/records/a/", `name ${++made}`]]);
      }),
    (line) => said.push(line.replace(/\d+\.\d/, "…")),
  );
  onTestFinished(() => index.close());
  return { home, index, said };
}

test("whoever needs the first index waits for it; there is one at a time, and the old one is removed", async () => {
  const { home, index, said } = await begin();
  expect(index.names.size).toBe(0);
  const [one, other] = await Promise.all([index.ready(), index.ready()]);
  expect(one).toBe(other);
  expect(index.names.get("/records/a/")).toBe("name 1");
  await index.make();
  expect(index.names.get("/records/a/")).toBe("name 2");
  expect(await readdir(home)).toEqual(["search-2"]);
  expect(said).toEqual(["text search: indexed in … s", "text search: indexed in … s"]);
});

test("it is made again when nothing changed for a while", async () => {
  vi.useFakeTimers();
  onTestFinished(() => void vi.useRealTimers());
  const made: number[] = [];
  const start = Date.now();
  const { index } = await begin(async () => {
    made.push(Date.now() - start);
    return new Map();
  });
  index.changed();
  await vi.advanceTimersByTimeAsync(4000);
  index.changed();
  await vi.advanceTimersByTimeAsync(60_000);
  expect(made).toEqual([9000]);
});

test("an index that fails is said, and the one before stays", async () => {
  let fails = false;
  const { index, said } = await begin(async () => {
    if (fails) throw new Error("the disk is full");
    return new Map([["/records/a/", "name"]]);
  });
  await index.ready();
  fails = true;
  await index.make();
  expect(index.names.size).toBe(1);
  expect(said.at(-1)).toBe("text search: not indexed, the disk is full");
});
