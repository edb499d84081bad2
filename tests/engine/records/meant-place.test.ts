import { describe, expect, test } from "vitest";
import { FILE_KINDS, type FileKind, kindOf } from "../../../src/engine/records/file-kinds.ts";
import { meantPlace, meantPlaceOfRead, nearestFolder, stemOf } from "../../../src/engine/records/meant-place.ts";
import { sourceOf, TINY } from "../../helpers/tiny-folder.ts";

const PARTS = { component: "pump", parts: [] };
const SYSTEM = { id: "brakes", name: "Brakes", order: 1 };
const RECORD = { id: "HY59-01", title: "x", issued: "1959-02-01", kinds: ["part"], starts: "x", scope: "all" };
const BULLETIN = { id: "TB-1", title: "x", issued: "1959-02-01", about: "x" };

// path, what stands in it, where it was meant to lie, whether that is near
const UNREAD: [string, unknown, string | undefined, boolean?][] = [
  ["part/pump.yaml", PARTS, "parts/pump.yaml", true],
  ["Parts/pump.yaml", PARTS, "parts/pump.yaml", true],
  ["parts/pump.yml", PARTS, "parts/pump.yaml", true],
  ["parts/pump", PARTS, "parts/pump.yaml", true],
  ["parts/pump.yaml.txt", PARTS, "parts/pump.yaml", true],
  ["parts/pump.ymal", PARTS, "parts/pump.yaml", true],
  ["parts/pump.bak", PARTS, "parts/pump.yaml", false],
  ["parts/pump.yaml~", PARTS, "parts/pump.yaml", false],
  ["parts/deep/pump.yaml", PARTS, "parts/pump.yaml", false],
  ["mine/x.yaml", PARTS, "parts/pump.yaml", false],
  ["pump.yaml", PARTS, "parts/pump.yaml", false],
  ["mine/x.yaml", { ...PARTS, component: "a/b" }, "parts/<component>.yaml", false],
  ["component/brakes.yaml", SYSTEM, "components/brakes.yaml", true],
  ["badger.yaml", { line: "B", built: ["all"] }, "vehicles/badger.yaml", false],
  ["word.yaml", { ignore: ["x"] }, "words.yaml", true],
  ["words.yml", "[", "words.yaml", true],
  ["words.md", "What our words mean.", undefined],
  // Its name says parts; what stands in it, another kind, or too little.
  ["parts/pump.yml", SYSTEM, "components/brakes.yaml", true],
  ["parts/pump.yml", { component: "pump", prats: [] }, "parts/pump.yaml", true],
  ["parts/pump.yml", { prats: [] }, undefined],
  ["parts/pump.json", { component: "pump", prats: [] }, undefined],
  ["parts/NOTES.md", "for ourselves", undefined],
  // Nothing was read of it.
  ["part/pump.yaml", undefined, "parts/pump.yaml", true],
  ["mine/pump.yaml", undefined, undefined],
  // Two kinds have a field of this name; what stands in it decides, if anything.
  ["mine/a.yaml", { rules: [{ if: "all", must: "all" }] }, "vehicles/a.yaml", false],
  ["mine/a.yaml", { rules: [{ check: "shape", as: "off", why: "x" }] }, "checks.yaml", false],
  ["mine/a.yaml", { rules: [] }, undefined],
  ["mine/a.yaml", {}, undefined],
  ["mine/a.yaml", [PARTS], undefined],
  ["mine/a.yaml", null, undefined],
  [".parts/pump.yaml", PARTS, undefined],
  ["parts/.old/pump.yaml", PARTS, undefined],
];
test.each(UNREAD)("%s, in which %j stands, was meant to be %s (near: %s)", (path, value, place, isNear) => {
  const meant = meantPlace({ path, value });
  expect([meant?.path, meant?.isNear]).toEqual([place, isNear]);
});

// the same with a text below the facts
const WITH_TEXT: [string, unknown, string | undefined, boolean?][] = [
  ["change/1959/HY59-01.md", RECORD, "changes/1959/HY59-01.md", true],
  ["changes/1959/HY59-01.txt", RECORD, "changes/1959/HY59-01.md", true],
  ["changes/HY59-01.MD", RECORD, "changes/HY59-01.md", true],
  ["parts/HY59-01.md", RECORD, "changes/<year>/HY59-01.md", true],
  ["drafts/HY59-01.md", RECORD, "changes/<year>/HY59-01.md", false],
  ["bulletin/TB-1.md", BULLETIN, "bulletins/TB-1.md", true],
  ["bulletins/1959/TB-1.md", BULLETIN, "bulletins/TB-1.md", false],
  ["parts/pump.yml", PARTS, "parts/pump.yaml", true],
  ["mine/pump.yaml", PARTS, undefined],
];
test.each(WITH_TEXT)(
  "%s, in which %j stands above a text, was meant to be %s (near: %s)",
  (path, value, place, isNear) => {
    const meant = meantPlace({ path, value, body: "A text." });
    expect([meant?.path, meant?.isNear]).toEqual([place, isNear]);
  },
);

describe("a file that is read", () => {
  const read = (path: string, value: unknown) => {
    const kind = kindOf(path);
    return kind && meantPlaceOfRead({ path, kind, value })?.path;
  };

  test.each(Object.entries(TINY))("%s is meant to be what it is", (path, text) => {
    expect(read(path, sourceOf(path, text).value)).toBeUndefined();
  });

  // path, what stands in it, where it was meant to lie
  const READ: [string, unknown, string | undefined][] = [
    ["parts/badger.yaml", { line: "B" }, "vehicles/badger.yaml"],
    ["vehicles/trait.yaml", { traits: [] }, "vehicles/traits.yaml"],
    ["bulletins/HY59-01.md", { ...RECORD, text: "A text." }, "changes/<year>/HY59-01.md"],
    ["changes/1959/TB-1.md", { ...BULLETIN, story: "A text." }, "bulletins/TB-1.md"],
    ["parts/pump.yaml", { component: "pump", prats: [] }, undefined],
    ["maker.yaml", { about: "All fields that it has are those of a line too." }, undefined],
    ["parts/pump.yaml", "text", undefined],
  ];
  test.each(READ)("%s, in which %j stands, was meant to be %s", (path, value, place) => {
    expect(read(path, value)).toBe(place);
  });
});

test("where files lie in words is where they are read", () => {
  for (const [kind, { home }] of Object.entries<FileKind>(FILE_KINDS))
    expect(kindOf(home.replaceAll(/[<>]/g, ""))).toBe(kind);
});

test("the name of a file ends at its first dot, and a folder is known by a slip of its name", () => {
  expect(stemOf("parts/pump.yaml.txt")).toBe("pump");
  expect(["parts", "part", "PARTS", "notes"].map(nearestFolder)).toEqual(["parts", "parts", "parts", undefined]);
});
