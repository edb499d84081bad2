import { expect, test } from "vitest";
import { checkFolder } from "../../../src/build/data/check-folder.ts";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { withAgainst } from "../../../src/build/data/with-against.ts";
import { NoManifest } from "../../../src/build/publish/read-manifest.ts";
import { onDisk, spoiled, TINY } from "../../helpers/tiny-folder.ts";
import { tinyManifest } from "../../helpers/tiny-manifest.ts";

const GONE = { "bulletins/TB-1.md": undefined };

test("an address that would die is an error among the findings, with the line that keeps it", async () => {
  const read = await readFolder(await onDisk(spoiled(GONE)));
  const published = await onDisk({ "manifest.json": tinyManifest() });
  const { findings } = withAgainst(checkFolder(read), read, `${published}/manifest.json`);
  expect(findings).toMatchObject([
    {
      severity: "error",
      rule: "published-address",
      file: "moved.yaml",
      message: "the published address /bulletins/TB-1/ (bulletin TB-1) would lead nowhere",
    },
  ]);
  expect(findings[0]?.hint).toContain("- { kind: bulletin, from: TB-1");
});

test("a site that loses nothing is silent; one that is not there is said", async () => {
  const read = await readFolder(await onDisk(TINY));
  const published = await onDisk({ "manifest.json": tinyManifest() });
  expect(withAgainst(checkFolder(read), read, `${published}/manifest.json`).findings).toEqual([]);
  expect(() => withAgainst(checkFolder(read), read, `${published}/nowhere`)).toThrow(NoManifest);
});
