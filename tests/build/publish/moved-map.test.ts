import { expect, test } from "vitest";
import { movedMap } from "../../../src/build/publish/moved-map.ts";
import { Site } from "../../../src/site/site.ts";
import { type Spoil, TINY } from "../../helpers/tiny-folder.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const mapOf = (spoil: Spoil): string[] =>
  movedMap(new Site(tinyKnowledge(spoil)))
    .split("\n")
    .slice(0, -1);

test("a move leads from the old address, slash or not, to the new one in the folder of the site; a withdrawal has none", () => {
  expect(mapOf({})).toEqual(['"~^/changes/records/HY-1/?$" "/changes/records/HY59-01/";']);
});

test("a chain of moves is one step, and a point in an id is a point", () => {
  const more = `${TINY["moved.yaml"]}  - { kind: record, from: HY.0, to: HY-1, why: renamed }\n`;
  expect(mapOf({ "moved.yaml": more, "maker.yaml": ["hollin.example/changes/", "hollin.example/"] })).toEqual([
    '"~^/records/HY-1/?$" "/records/HY59-01/";',
    '"~^/records/HY\\.0/?$" "/records/HY59-01/";',
  ]);
});

test("a folder with letters of its own is compared decoded and sent encoded", () => {
  expect(mapOf({ "maker.yaml": ["changes/", "(ä)/"] })).toEqual([
    '"~^/\\(ä\\)/records/HY-1/?$" "/(%C3%A4)/records/HY59-01/";',
  ]);
});

test("nothing moved, nothing said", () => {
  expect(mapOf({ "moved.yaml": undefined })).toEqual([]);
});
