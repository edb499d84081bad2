import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { addressesOf } from "../../../src/build/publish/addresses-of.ts";
import { type Comparison, complaintsAgainst, lostAddresses } from "../../../src/build/publish/against.ts";
import type { Manifest } from "../../../src/build/publish/manifest-shape.ts";
import { catalogOf, type Spoil, spoiled, TINY } from "../../helpers/tiny-folder.ts";

function published(spoil: Spoil = {}): Manifest {
  const pages = addressesOf(catalogOf(spoiled(spoil)));
  return { format: "yearmark-manifest/1", site: "https://hollin.example/changes/", pages, files: [] };
}

const compare = (now: Spoil, before: Spoil = {}): Comparison =>
  lostAddresses(catalogOf(spoiled(now)), published(before));

/** A second bulletin, so that one can go without anything else naming it. */
const LEAFLET = { "bulletins/LF-1.md": (TINY["bulletins/TB-1.md"] as string).replace("id: TB-1", "id: LF-1") };
/** The same under another name. */
const RENAMED = { "bulletins/LF-01.md": (TINY["bulletins/TB-1.md"] as string).replace("id: TB-1", "id: LF-01") };

test("the same data lose nothing, move nothing, bring nothing", () => {
  expect(compare({})).toEqual({ lost: [], lostAnchors: [], moved: [], fresh: [] });
});

describe("a page that would be gone is told with what it was and the line that mends it", () => {
  test("renamed without a move: the only new id of its kind is offered", () => {
    expect(compare(RENAMED, LEAFLET).lost).toEqual([
      {
        address: "/bulletins/LF-1/",
        was: "bulletin LF-1",
        mend: "write into moved.yaml, if it is LF-01 now: - { kind: bulletin, from: LF-1, to: LF-01, why: renamed }; if not, without 'to'",
      },
    ]);
  });

  test("taken away: an id of which moved.yaml says what it was is not offered", () => {
    const moved = `${TINY["moved.yaml"]}  - { kind: bulletin, from: TB-9, to: LF-01, why: renamed }\n`;
    const [lost] = compare({ ...RENAMED, "moved.yaml": moved }, LEAFLET).lost;
    expect(lost?.mend).toMatch(/^write into moved\.yaml: - \{ kind: bulletin, from: LF-1, why: say why here \}/);
  });

  test("taken away", () => {
    expect(compare({}, LEAFLET).lost).toEqual([
      {
        address: "/bulletins/LF-1/",
        was: "bulletin LF-1",
        mend: "write into moved.yaml: - { kind: bulletin, from: LF-1, why: say why here }, with 'to' and the new id if it was renamed",
      },
    ]);
  });

  test("a record had better stay, withdrawn", () => {
    const other = {
      "changes/1958/FR58-02.md": (TINY["changes/1958/FR58-01.md"] as string).replace("FR58-01", "FR58-02"),
    };
    expect(compare({}, other).lost).toMatchObject([
      {
        was: "record FR58-02",
        mend: expect.stringMatching(/^keep it and let it say 'withdrawn: why'; or write into moved\.yaml: - \{/),
      },
    ]);
  });

  test("a move that was taken out", () => {
    expect(compare({ "moved.yaml": undefined }).lost).toEqual([
      {
        address: "/parts/HT-099/",
        was: "the withdrawal of part HT-099",
        mend: "put it back into moved.yaml: - { kind: part, from: HT-099, why: say why here }",
      },
      {
        address: "/records/HY-1/",
        was: "the move of record HY-1 to HY59-01",
        mend: "put it back into moved.yaml: - { kind: record, from: HY-1, to: HY59-01, why: say why here }",
      },
    ]);
  });

  test("a year and a line in it have no moves", () => {
    const { lost } = compare({}, { "vehicles/badger.yaml": ["my=1957-1960", "my=1957-1961"] });
    expect(lost.map(({ address, was }) => [address, was])).toEqual([
      ["/lines/B/1961/", "model line in one year B/1961"],
    ]);
    expect(lost[0]?.mend).toContain("no moves");
  });
});

test("every line that is offered is what moved.yaml takes, and with it nothing is lost", () => {
  const { lost } = compare(RENAMED, LEAFLET);
  const line = /- \{.*?\}/.exec(lost[0]?.mend ?? "")?.[0] as string;
  const mended = { ...RENAMED, "moved.yaml": `${TINY["moved.yaml"]}  ${line}\n` };
  expect(parse(line)).toEqual([{ kind: "bulletin", from: "LF-1", to: "LF-01", why: "renamed" }]);
  expect(compare(mended, LEAFLET)).toEqual({
    lost: [],
    lostAnchors: [],
    moved: [{ address: "/bulletins/LF-1/", to: "LF-01" }],
    fresh: ["/bulletins/LF-01/"],
  });
});

test("an id that looks like a number stays an id in the line that is offered", () => {
  const manifest = published();
  manifest.pages.push({ address: "/parts/4711/", kind: "part", id: "4711" });
  const [lost] = lostAddresses(catalogOf(), manifest).lost;
  expect(parse(/- \{.*?\}/.exec(lost?.mend ?? "")?.[0] as string)).toEqual([
    { kind: "part", from: "4711", why: "say why here" },
  ]);
});

test("a statement that is no longer there is told, but does not fail a check", () => {
  const shorter = compare({
    "changes/1959/HY59-01.md": ['  - { part: HT-102, for: none, verdict: "yes", scope: line=H }\n', ""],
  });
  expect(shorter.lost).toEqual([]);
  expect(shorter.lostAnchors.map(({ address }) => address)).toEqual(["/records/HY59-01/#stands-in-3"]);
  expect(complaintsAgainst(shorter)).toMatchObject([{ severity: "warning", file: "moved.yaml" }]);
});

test("as findings: errors about moved.yaml that say the address, what it was and what to do", () => {
  expect(complaintsAgainst(compare({}, LEAFLET))).toEqual([
    {
      severity: "error",
      rule: "published-address",
      file: "moved.yaml",
      path: [],
      message: "the published address /bulletins/LF-1/ (bulletin LF-1) would lead nowhere",
      hint: expect.stringContaining("write into moved.yaml"),
    },
  ]);
});
