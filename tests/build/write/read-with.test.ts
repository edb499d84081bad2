import { expect, test } from "vitest";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { readWith } from "../../../src/build/write/read-with.ts";
import { onDisk, spoiled, TINY } from "../../helpers/tiny-folder.ts";

test("the same is found as if the files lay there already", async () => {
  const folder = spoiled({
    "parts/pump.yaml": ["component: pump", "component: pomp"],
    "maker.yaml": "name: [",
    "parts/gasket.yaml": undefined,
  });
  const there = await readFolder(await onDisk(folder));
  const changed = new Map(["parts/pump.yaml", "maker.yaml"].map((path) => [path, folder[path] as string]));
  const as = readWith(await readFolder(await onDisk(TINY)), changed, ["parts/gasket.yaml"]);
  expect(as.findings).toEqual(there.findings);
  expect(as.findings.length).toBeGreaterThan(2);
  expect(as.catalog).toBeUndefined();
});

test("a new file is in the catalog", async () => {
  const text = (TINY["changes/1958/FR58-01.md"] as string).replace("FR58-01", "FR58-02");
  const { catalog } = readWith(await readFolder(await onDisk(TINY)), new Map([["changes/1958/FR58-02.md", text]]));
  expect([...(catalog?.records.keys() ?? [])]).toContain("FR58-02");
});
