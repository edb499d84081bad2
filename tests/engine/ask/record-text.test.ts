import { describe, expect, test } from "vitest";
import { recordText } from "../../../src/engine/ask/record-text.ts";
import { demoKnowledge, plainFiles } from "../../helpers/demo-data.ts";
import { catalogOf, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

const textOf = (id: string, spoil: Spoil = {}): string[] => {
  const catalog = catalogOf(spoiled(spoil));
  const record = catalog.records.get(id);
  if (!record) throw new RangeError(`no record ${id}`);
  return recordText(catalog, record).split("\n");
};

describe("the text of a record", () => {
  test("is everything that it says, line by line", () => {
    expect(textOf("HY59-01")).toEqual([
      "Longer hydraulic pump.",
      "The pump grew **longer**.",
      "The reservoir was looked at and stayed.",
      "after a pump was fitted",
      "Bleed the lift twice.",
      "T-7: to draw the shaft",
      "oil pressure: 120..135 bar hot",
      "oil pressure: ..90 bar",
      "oil change",
      "Bleed the lift.",
      "It runs dry.",
      "tube of grease",
      "pump",
      "lift arms",
      "HT-101 pump, short",
      "HT-102 pump, long",
      "HT-201 round gasket",
      "HT-290 gasket kit",
      "hydraulic pump",
      "pump gasket",
      "HY59-01",
    ]);
  });

  test("of a record that says little is its title, its story and its id", () => {
    expect(textOf("FR58-01")).toEqual(["Frame drilled for a winch.", "Four holes.", "FR58-01"]);
  });

  // what is written in a record, a line of its text
  const SAID: [written: string, line: string][] = [
    ["tell-apart: Look for two ribs.", "Look for two ribs."],
    ["otherwise: The long one knocks.", "The long one knocks."],
    ["caution: Mind the spring.", "Mind the spring."],
    ["customer: The owner was told.", "The owner was told."],
    ["words: [stretcher]", "stretcher"],
  ];
  test.each(SAID)("holds '%s'", (written, line) => {
    expect(
      textOf("FR58-01", { "changes/1958/FR58-01.md": ["kinds: [equipment]", `kinds: [equipment]\n${written}`] }),
    ).toContain(line);
  });

  test("names each part and each place once, however often it is stated", () => {
    const lines = textOf("HY59-01");
    expect(new Set(lines).size).toBe(lines.length);
  });
});

describe("the records of the data folder", async () => {
  const { catalog } = await demoKnowledge();

  /** Everything in a record's file that is said in words or names a part. */
  function saidIn(value: unknown, key = ""): string[] {
    if (typeof value === "string") return WORDS.has(key) ? [value] : [];
    if (Array.isArray(value)) return value.flatMap((one) => saidIn(one, key));
    if (typeof value === "object" && value !== null)
      // What is accepted is told to editors only.
      return Object.entries(value).flatMap(([name, one]) => (name === "accept" ? [] : saidIn(one, name)));
    return [];
  }
  const WORDS = new Set(
    "id title story tell-apart otherwise caution customer left-alone steps tool use name do why place part old new kit for".split(
      " ",
    ),
  );

  test("lose no word and no part that their files say", () => {
    const lost = plainFiles("changes/").flatMap(({ facts, text }) => {
      const record = catalog.records.get(facts.id);
      const said = record ? recordText(catalog, record) : "";
      const plain = (one: string) => one.replaceAll(/\s+/g, " ").trim();
      // "none" stands for no part at all, and the words of cautions, links and sources stand on the page round about.
      return [...saidIn(facts), text]
        .map(plain)
        .filter((one) => one !== "none" && !plain(said).includes(one))
        .map((one) => `${facts.id}: ${one.slice(0, 60)}`);
    });
    expect(lost).toEqual([]);
  });
});
