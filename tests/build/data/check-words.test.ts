import { describe, expect, test } from "vitest";
import { checkWords, wordsLackingIn } from "../../../src/build/data/check-words.ts";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { showFinding } from "../../../src/build/data/show-findings.ts";
import { DATA } from "../../helpers/demo-data.ts";
import { type Folder, onDisk, spoiled } from "../../helpers/tiny-folder.ts";

/** The tiny folder with some more components, and texts in every kind of file. */
const MENDED: Folder = {
  ...spoiled({
    "words.yaml": ["ignore:", "plain: [carburettar]\nignore:"],
    "vehicles/traits.yaml": ["find: the name on the hood", "find: the name below the radiator"],
    "vehicles/plates.yaml": ["where: left of the seat", "where: left of the distributor"],
    "vehicles/all.yaml": ["because: Dunmoor opened", "because: the carburettor shop at Dunmoor opened"],
    "components/frame.yaml": [
      "order: 2\n",
      `order: 2
components:
  - { id: radiator, name: radiator, places: ["radiator, left"] }
  - { id: distributor, name: distributor, aliases: [distribitur] }
  - { id: carburettor, name: carburettor }
`,
    ],
    "cautions.yaml": ["title: Oil under pressure", "title: The radiator is hot"],
    "bulletins/TB-1.md": ["Which pump goes where.", "Which carburettor goes where."],
    "parts/gasket.yaml": ["name: round gasket", "name: round gasket of the carburettor"],
    "parts/pump.yaml": ["ribs: two", "ribs: like a radiator"],
  }),
  "changes/1960/FR60-01.md": `---
id: FR60-01
title: Radiator and distributor moved
issued: 1960-03-01
kinds: [part, setting]
components: [radiator]
words: [hot radiator]
starts: start of 1960, with the new carburettor
scope: my>=1960
settings:
  - { name: lateral play of the distributor, window: 1..2, unit: mm, conditions: carburettor off, scope: line=B }
procedures:
  - { when: with the old distributor, steps: Turn the carburettor round. }
tell-apart: >-
  The carburettor is the same, and the carburettor looks the same
  from behind; the carburettor of 1960
  has the carburettor number cast into it.
otherwise: "The \\"old\\" radiator boils."
caution: |
  Drain first.

  Never open a hot radiator.
left-alone: [The distributor was looked at.]
---

The radiator sits lower. See [the radiator](/radaitor/) and [[radiator]].

- Behind it, the distributor has a lid.
`,
};

// file, the words as they are mended, the words with a slip; where the slip is found, what is meant
const SLIPS: [file: string, mended: string, slipped: string, place: string, meant: string][] = [
  ["vehicles/traits.yaml", "below the radiator", "below the radaitor", "6:30 radaitor", "radiator"],
  ["vehicles/plates.yaml", "left of the distributor", "left of the distribtor", "3:24 distribtor", "distributor"],
  ["vehicles/all.yaml", "carburettor shop", "carburettro shop", "2:49 carburettro", "carburettor"],
  ["components/frame.yaml", '"radiator, left"', '"radaitor, left"', "5:47 radaitor", "radiator"],
  ["cautions.yaml", "The radiator is", "The Radaitor is", "3:16 Radaitor", "radiator"],
  ["bulletins/TB-1.md", "carburettor goes", "carburetttor goes", "5:14 carburetttor", "carburettor"],
  ["parts/gasket.yaml", "of the carburettor", "of the carburetor", "3:49 carburetor", "carburettor"],
  ["parts/pump.yaml", "like a radiator", "like a radator", "12:27 radator", "radiator"],
  ["changes/1960/FR60-01.md", "title: Radiator", "title: Radaitor", "3:8 Radaitor", "radiator"],
  ["changes/1960/FR60-01.md", "hot radiator]", "hot radaitor]", "7:13 radaitor", "radiator"],
  ["changes/1960/FR60-01.md", "new carburettor", "new carburetor", "8:37 carburetor", "carburettor"],
  ["changes/1960/FR60-01.md", "play of the distributor", "play of the distribtuor", "11:33 distribtuor", "distributor"],
  ["changes/1960/FR60-01.md", "conditions: carburettor", "conditions: crburettor", "11:82 crburettor", "carburettor"],
  ["changes/1960/FR60-01.md", "old distributor", "old distributr", "13:26 distributr", "distributor"],
  ["changes/1960/FR60-01.md", "Turn the carburettor", "Turn the carbuerttor", "13:55 carbuerttor", "carburettor"],
  ["changes/1960/FR60-01.md", "has the carburettor", "has the caburettor", "17:11 caburettor", "carburettor"],
  ["changes/1960/FR60-01.md", "radiator boils", "radiatr boils", "18:25 radiatr", "radiator"],
  ["changes/1960/FR60-01.md", "hot radiator.", "hot radiaotr.", "22:20 radiaotr", "radiator"],
  ["changes/1960/FR60-01.md", "[The distributor", "[The distributtor", "23:18 distributtor", "distributor"],
  ["changes/1960/FR60-01.md", "the distributor has", "the distrbutor has", "28:18 distrbutor", "distributor"],
];

const plant = (folder: Folder, [file, mended, slipped]: readonly string[]): Folder => {
  const text = folder[file as string] as string;
  expect(text).toContain(mended);
  return { ...folder, [file as string]: text.replace(mended as string, slipped as string) };
};
const slipsIn = async (folder: Folder): Promise<string[]> => {
  const read = await readFolder(await onDisk(folder));
  expect(read.findings).toEqual([]);
  return checkWords(read).map(({ severity, file, position, shown, hint }) => {
    expect(severity).toBe("warning");
    const { line, column, length } = position;
    return `${file} ${line}:${column} ${shown.slice(column - 1, column - 1 + length)} ${hint.split("?")[0]}`;
  });
};

describe("slips in a folder", () => {
  test("there are none in the mended one", async () => {
    expect(await slipsIn(MENDED)).toEqual([]);
  });

  test.each(SLIPS)("in %s, %s written as %s is found", async (...slip) => {
    const [file, , , place, meant] = slip;
    expect(await slipsIn(plant(MENDED, slip))).toEqual([`${file} ${place} did you mean '${meant}'`]);
  });

  test("all of them at once, in the order of the folder", async () => {
    // Three of a kind are no slip, so those that are written alike stay out.
    const different = SLIPS.filter(([, , slipped], i) => i === 0 || !/rada?itor/i.test(slipped));
    const found = await slipsIn(different.reduce(plant, MENDED));
    expect(found.map((line) => line.split(" ")[2])).toEqual(
      [...different].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, , , place]) => place.split(" ")[1]),
    );
  });

  test("with the line ends of Windows they stand at the same places", async () => {
    for (const slip of SLIPS.filter(([, mended]) => /has the|hot radiator\.|the distributor has/.test(mended))) {
      const windows = Object.entries(plant(MENDED, slip)).map(([path, text]) => [path, text.replaceAll("\n", "\r\n")]);
      expect(await slipsIn(Object.fromEntries(windows))).toEqual([`${slip[0]} ${slip[3]} did you mean '${slip[4]}'`]);
    }
  });

  test("an editor sees the place, the line and what to do", async () => {
    const folder = plant(MENDED, SLIPS[15] as (typeof SLIPS)[0]);
    const [finding] = checkWords(await readFolder(await onDisk(folder)));
    expect(showFinding(finding as never, "data")).toBe(
      `data/changes/1960/FR60-01.md:17:11: warning: 'caburettor' looks like a slip: it is rare, and nothing is called so
    17 |   has the caburettor number cast into it.
       |           ^^^^^^^^^^
    → did you mean 'carburettor'? A word of its own goes into words.yaml, under 'plain'
    check: slip-of-the-pen`,
    );
  });

  test("a word under 'plain' is none", async () => {
    expect(await slipsIn(plant(MENDED, ["bulletins/TB-1.md", "carburettor", "carburettar"]))).toEqual([]);
  });

  test("a folder in another language is left alone, and one that does not hold", async () => {
    const slipped = plant(MENDED, SLIPS[0] as (typeof SLIPS)[0]);
    const german = plant(slipped, ["maker.yaml", "name:", "language: de\nname:"]);
    expect(await slipsIn(german)).toEqual([]);
    const broken = plant(slipped, ["cautions.yaml", "systems: [hydraulics]", "systems: [x]"]);
    expect(checkWords(await readFolder(await onDisk(broken)))).toEqual([]);
  });

  test("the demonstration has none", async () => {
    const read = await readFolder(DATA);
    expect(read.catalog).toBeDefined();
    expect(checkWords(read)).toEqual([]);
  });
});

describe("words that the vocabulary lacks", () => {
  test("the most frequent first, with the first place in a record, and how many more", async () => {
    const read = await readFolder(await onDisk(MENDED));
    const { words, more } = wordsLackingIn(read, 2);
    expect(words).toEqual([
      { word: "hot", count: 4, file: "changes/1959/HY59-01.md", line: 25, column: 82 },
      { word: "oil", count: 3, file: "changes/1959/HY59-01.md", line: 25, column: 13 },
    ]);
    const all = wordsLackingIn(read, 1000);
    expect(all.words.length).toBe(more + 2);
    expect(all.more).toBe(0);
    expect(all.words.map(({ word }) => word)).not.toContain("radiator");
    expect(all.words).toContainEqual({ word: "narrow", count: 1, file: "vehicles/badger.yaml", line: 3, column: 8 });
  });

  test("a folder that does not hold has no vocabulary to compare with", async () => {
    const broken = await readFolder(await onDisk(spoiled({ "vehicles/traits.yaml": undefined })));
    expect(wordsLackingIn(broken, 10)).toEqual({ words: [], more: 0 });
  });
});
