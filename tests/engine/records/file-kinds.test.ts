import { expect, test } from "vitest";
import { kindOf } from "../../../src/engine/records/file-kinds.ts";

// path inside the folder, what lies there
const PATHS: [string, string | undefined][] = [
  ["maker.yaml", "maker"],
  ["vehicles/traits.yaml", "traits"],
  ["vehicles/plates.yaml", "plates"],
  ["vehicles/badger.yaml", "vehicles"],
  ["components/frame.yaml", "system"],
  ["parts/pump.yaml", "parts"],
  ["changes/HY59-01.md", "change"],
  ["changes/1959/HY59-01.md", "change"],
  ["changes/a/b/c/HY59-01.md", "change"],
  ["bulletins/TB-1.md", "bulletin"],
  ["words.yaml", "words"],
  ["moved.yaml", "moved"],
  ["cautions.yaml", "cautions"],
  ["makers.yaml", undefined],
  ["x/maker.yaml", undefined],
  ["maker.yml", undefined],
  ["parts/deep/pump.yaml", undefined],
  ["bulletins/1959/TB-1.md", undefined],
  ["changes/1959/HY59-01.yaml", undefined],
  ["README.md", undefined],
  ["", undefined],
];

test.each(PATHS)("%s is read as %s", (path, kind) => {
  expect(kindOf(path)).toBe(kind);
});
