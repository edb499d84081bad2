import { existsSync, readFileSync, symlinkSync } from "node:fs";
import { expect, test } from "vitest";
import type { Terminal } from "../../../src/build/write/gather-answers.ts";
import { writeNew } from "../../../src/build/write/write-new.ts";
import { onDisk, spoiled, TINY } from "../../helpers/tiny-folder.ts";

const BULLETIN = { title: ["T"], about: ["A."], text: ["See [[pump]]."], id: ["TB-2"] };
const write = (folder: string, flags: Record<string, string[]>, more = {}, terminal?: Terminal) =>
  writeNew({ folder, kind: "bulletin", flags, more, today: "1960-03-01", terminal });

test("what was written lies there, and is said", async () => {
  const folder = await onDisk(TINY);
  const { code, said } = await write(folder, BULLETIN);
  expect({ code, said }).toEqual({ code: 0, said: expect.stringContaining(`Wrote ${folder}/bulletins/TB-2.md\n`) });
  expect(readFileSync(`${folder}/bulletins/TB-2.md`, "utf8")).toMatch(
    /^---\n# yaml-language-server: [\s\S]*\[\[pump\]\]\.\n$/,
  );
});

test("nothing is written when something is missing, wrong, or there already, or nobody answers", async () => {
  const folder = await onDisk(TINY);
  const { text: _, ...missing } = BULLETIN;
  expect(await write(folder, missing)).toMatchObject({ code: 2, said: expect.stringContaining("also needs --text") });
  const unknown = { ...BULLETIN, text: ["[[pomp]]"], set: ["accept=[]"] };
  expect(await write(folder, unknown)).toMatchObject({
    code: 1,
    said: expect.stringMatching(/cites 'pomp'[\s\S]*--set 'accept=\[\]'$/),
  });
  expect(await write(folder, BULLETIN, { colour: "red" })).toMatchObject({
    code: 1,
    said: expect.stringContaining("no field is called 'colour'"),
  });
  const away: Terminal = { ask: async () => undefined, say: () => {} };
  expect(await write(folder, {}, {}, away)).toEqual({ code: 1, said: "\nStopped. Nothing was written." });
  // What was said until then is not lost.
  expect(await write(folder, missing, {}, away)).toMatchObject({
    code: 1,
    said: expect.stringMatching(/^\nStopped\. Nothing was written\. To go on from here:\nnpm run new -- bulletin /),
  });
  expect(existsSync(`${folder}/bulletins/TB-2.md`)).toBe(false);
  symlinkSync(`${folder}/maker.yaml`, `${folder}/bulletins/TB-2.md`);
  expect((await write(folder, BULLETIN)).code).toBe(1);
  expect(readFileSync(`${folder}/maker.yaml`, "utf8")).toBe(TINY["maker.yaml"]);
});

test("a folder with errors has nothing to learn from", async () => {
  const folder = await onDisk(spoiled({ "maker.yaml": ["name:", "nome:"] }));
  expect(await write(folder, BULLETIN)).toMatchObject({
    code: 1,
    said: expect.stringMatching(/has errors.*Nothing was written\.$/),
  });
});

test("a record lies in the model year of its cars, and a day that nobody said is said or asked for", async () => {
  const folder = await onDisk(TINY);
  const flags = { title: ["T"], kinds: ["part"], components: ["pump"], starts: ["then"], story: ["S."] };
  const record = (scope: string, today: string) =>
    writeNew({ folder, kind: "record", flags: { ...flags, scope: [scope] }, more: {}, today });
  expect(await record("my=1958", "2026-11-26")).toEqual({
    code: 2,
    said: "a new record also needs --issued; in a terminal npm run new asks for them\n--issued: today, 2026-11-26, is far from the model years of these cars, so it is not taken",
  });
  const { code, said } = await record("line=B; my=1958", "1959-03-01");
  expect({ code, said }).toEqual({
    code: 0,
    said: expect.stringMatching(
      /^Taken as issued today, 1959-03-01, [^\n]*\nTaken as of model year 1958; [^\n]*\nWrote [^\n]*\/changes\/1958\/HY58-01\.md\n/,
    ),
  });
});

const PART = { component: ["pump"], number: ["HT-9"], name: ["pump, odd"] };
const writePart = (folder: string) =>
  writeNew({ folder, kind: "part", flags: PART, more: {}, today: "1960-03-01", terminal: undefined });

test("a part goes into the file in the manner of the others there, and every other byte stays", async () => {
  const text = (TINY["parts/pump.yaml"] as string)
    .replaceAll(/^( *)- (?=number)/gm, "$1-   ")
    .replaceAll(/^ {4}(?=[a-z])/gm, "      ");
  const folder = await onDisk({ ...TINY, "parts/pump.yaml": text });
  expect((await writePart(folder)).code).toBe(0);
  expect(readFileSync(`${folder}/parts/pump.yaml`, "utf8")).toBe(`${text}  -   number: HT-9\n      name: pump, odd\n`);
});

test("of two at once, none loses the other's part", async () => {
  const folder = await onDisk(TINY);
  const asked = await Promise.all([
    writePart(folder),
    writeNew({ folder, kind: "part", flags: { ...PART, number: ["HT-8"] }, more: {}, today: "1960-03-01" }),
  ]);
  expect(asked.map(({ code }) => code).sort()).toEqual([0, 1]);
  expect(asked.find(({ code }) => code === 1)?.said).toBe(
    `${folder}/parts/pump.yaml was changed meanwhile: run the command again. Nothing was written.`,
  );
});

test("a file that would grow past what the reader takes is left", async () => {
  const text = TINY["parts/pump.yaml"] as string;
  const folder = await onDisk({ ...TINY, "parts/pump.yaml": `#${"x".repeat(999_990 - text.length)}\n${text}` });
  expect((await writePart(folder)).said).toContain("parts/pump.yaml would be larger than 1000000 bytes");
});
