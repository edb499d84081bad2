import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { onDisk, spoiled, TINY } from "../helpers/tiny-folder.ts";

const run = (...args: string[]) =>
  spawnSync(process.execPath, ["scripts/new.ts", ...args], { encoding: "utf8", input: "" });
const RECORD = [
  "record",
  "--title",
  "Longer",
  "--kinds",
  "part",
  "--components",
  "pump",
  "--starts",
  "1960",
  "--scope",
  "my=1960",
  "--issued",
  "1960-03-01",
  "--story",
  "It grew.",
];

test("a record is written, and never over another", async () => {
  const folder = await onDisk(TINY);
  const { status, stdout } = run(...RECORD, "--data", folder);
  expect(status).toBe(0);
  expect(stdout).toMatch(`Wrote ${folder}/changes/1960/HY60-01.md\nNext: `);
  const text = readFileSync(`${folder}/changes/1960/HY60-01.md`, "utf8");
  expect(run(...RECORD, "--data", folder, "--id", "HY60-01").stderr).toBe(
    "--id: 'HY60-01' is or was the id of something else\n",
  );
  expect(readFileSync(`${folder}/changes/1960/HY60-01.md`, "utf8")).toBe(text);
});

test("what would be wrong is said, with the command to mend, and nothing is written", async () => {
  const folder = await onDisk(TINY);
  const { status, stderr } = run(...RECORD, "--data", folder, "--set", "service-only=[HT-9]");
  expect(status).toBe(1);
  expect(stderr).toMatch(/HY60-01\.md:11:16: error: no part is called 'HT-9'[\s\S]*--set 'service-only=\[HT-9\]'\n$/);
  expect(existsSync(`${folder}/changes/1960`)).toBe(false);
  const broken = await onDisk(spoiled({ "maker.yaml": ["name:", "nome:"] }));
  expect(run(...RECORD, "--data", broken)).toMatchObject({
    status: 1,
    stderr: expect.stringMatching(/has errors.*Nothing was written/),
  });
});

test("settings for an editor", () => {
  const { status, stdout } = run("settings");
  expect(status).toBe(0);
  expect(JSON.parse(stdout)["yaml.schemas"]["./schemas/parts.json"]).toEqual(["data/parts/*.yaml"]);
});

// words after the command, what is said
test.each([
  [[], "say what: record, part or bulletin"],
  [["car"], "'car': new ones are record, part or bulletin"],
  [["part", "x"], "'x' is one word too many: put quotes round words that belong together"],
  [["part", "--story", "x"], "a part takes no --story"],
  [["part", "--set", "x"], "--set x: write FIELD=YAML"],
  [["part", "--set", "x=["], expect.stringMatching(/^--set x=\[: this is not YAML: /)],
  [["part"], "a new part also needs --component, --number, --name; in a terminal npm run new asks for them"],
])("%j is misuse", (args, said) => {
  const { status, stderr } = run(...args);
  expect(status).toBe(2);
  expect(stderr.split("\n")[0]).toEqual(said);
});
