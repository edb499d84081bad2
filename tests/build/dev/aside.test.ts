import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { Aside, NO_CATALOG } from "../../../src/build/dev/aside.ts";
import { onDisk, spoiled } from "../../helpers/tiny-folder.ts";

test("the folder is checked as it is then; without a catalog there is no map; after the end nothing is answered", async () => {
  const slip = spoiled({ "changes/1959/HY59-01.md": ["after a pump was fitted", "after the hydraulcis were fitted"] });
  const folder = await onDisk(slip);
  const aside = new Aside(folder);
  onTestFinished(() => aside.close());
  const found = await aside.ask("check", undefined);
  expect(found.map(({ message }) => message)).toContainEqual(expect.stringContaining("'hydraulcis' looks like a slip"));

  await writeFile(join(folder, "maker.yaml"), "name: [");
  expect((await aside.ask("check", undefined)).map(({ file }) => file)).toEqual(["maker.yaml"]);
  await expect(aside.ask("graph", undefined)).rejects.toThrow(NO_CATALOG);

  const late = aside.ask("check", undefined);
  await Promise.all([expect(late).rejects.toThrow("the thread has ended"), aside.close()]);
});
