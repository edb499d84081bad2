/** The build as a command; what it builds is looked at by every test of the site, and how it dies in build-killed.test.ts. */
import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { writeManifest } from "../../src/build/publish/write-manifest.ts";
import { onDisk } from "../helpers/tiny-folder.ts";

function build(...words: string[]): { status: number | null; stdout: string; stderr: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [resolve("scripts/build.ts"), ...words], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

test("--help tells how it is called, and builds nothing", () => {
  const { status, stdout, stderr } = build("--help");
  expect([status, stderr]).toEqual([0, ""]);
  expect(stdout).toMatch(/^npm run build \[-- --data DIR\] \[--site DIR\] .*\nnpm run build -- --verify FOLDER .*\n$/);
});

// words, what is said
test.each([
  [["--dta", "records"], "Unknown option '--dta'"],
  [["--data", "no-such-folder"], "--data no-such-folder: there is no such folder"],
  [["--verify", "no-such-folder"], "--verify no-such-folder: there is no such folder"],
])("%j: one line, the usage, exit code 2", (words, said) => {
  const { status, stdout, stderr } = build(...words);
  expect([status, stdout, stderr.split("\n").slice(0, 3)]).toEqual([
    2,
    "",
    [said, "", expect.stringMatching(/^npm run build /)],
  ]);
});

describe("--verify", () => {
  test("of a whole site, of one that an upload left half done, and of no site at all", async () => {
    const folder = await onDisk({ "index.html": "home", "data/x.json": "{}" });
    expect(build("--verify", folder)).toMatchObject({
      status: 1,
      stdout: "",
      stderr: expect.stringContaining("has no data/manifest.json"),
    });
    writeManifest(folder, "https://hollin.example/", []);
    expect(build("--verify", folder)).toEqual({
      status: 0,
      stdout: `${folder} holds the site whole: 2 files as they were built.\n`,
      stderr: "",
    });
    writeFileSync(join(folder, "index.html"), "ho");
    expect(build("--verify", folder)).toEqual({
      status: 1,
      stdout: "",
      stderr: `changed: index.html\n${folder} is not the site that was built: of 2 files 0 missing, 1 changed. Upload it again.\n`,
    });
  });
});
