import { expect, test } from "vitest";
import { filePlaces } from "../../../src/build/tables/file-places.ts";
import { kindOf } from "../../../src/engine/records/file-kinds.ts";
import { filesOf } from "./tiny-import.ts";

const AUTUMN = { path: "changes/1960/HY60-01.md", kind: "change", value: { issued: "1959-09-01" } } as const;
const place = filePlaces([...filesOf().values(), AUTUMN]);

test.each([
  // kind, id, issued, path
  ["change", "N1", "1961-03-01", "changes/1961/N1.md"],
  ["change", "N1", "1961-09-10", "changes/1962/N1.md"],
  ["change", "N1", "in spring", "changes/undated/N1.md"],
  ["parts", "lift", undefined, "parts/lift.yaml"],
  ["system", "frame", undefined, "components/frame.yaml"],
  ["bulletin", "TB-2", "1961-03-01", "bulletins/TB-2.md"],
  ["moved", "", undefined, "moved.yaml"],
  ["cautions", "", undefined, "cautions.yaml"],
] as const)("%s %s issued %s lies in %s", (kind, id, issued, path) => {
  expect(place(kind, id, issued)).toBe(path);
  expect(kindOf(path)).toBe(kind);
});

test("the first record of a folder lies under the year of its issue", () => {
  expect(filePlaces([])("change", "N1", "1961-09-10")).toBe("changes/1961/N1.md");
});
