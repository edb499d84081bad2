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
  expect((await write(folder, BULLETIN)).said).toBe(
    `${folder}/bulletins/TB-2.md is there already. Nothing was written.`,
  );
  expect(readFileSync(`${folder}/maker.yaml`, "utf8")).toBe(TINY["maker.yaml"]);
});

test("a folder with errors has nothing to learn from", async () => {
  const folder = await onDisk(spoiled({ "maker.yaml": ["name:", "nome:"] }));
  expect(await write(folder, BULLETIN)).toMatchObject({
    code: 1,
    said: expect.stringMatching(/has errors.*Nothing was written\.$/),
  });
});
