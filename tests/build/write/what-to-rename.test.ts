import { expect, test } from "vitest";
import {
  KINDS_TO_RENAME,
  kindsCalled,
  type RenamedKind,
  whatToRename,
} from "../../../src/build/write/what-to-rename.ts";
import { moved } from "../../../src/engine/records/shapes/words.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf(
  spoiled({
    "moved.yaml": [
      "from: HY-1, to: HY59-01",
      "from: HY-1, to: HY-2, why: x }\n  - { kind: record, from: HY-2, to: HY59-01",
    ],
  }),
);
const both = catalogOf(
  spoiled({ "components/frame.yaml": ["order: 2\n", "order: 2\ncomponents: [{ id: HT-101, name: beam }]\n"] }),
);

// catalog, old, new, kind, the kind meant or what is said
const CASES: [typeof catalog, string, string, RenamedKind | undefined, RenamedKind | RegExp][] = [
  [catalog, "HY59-01", "HY59-02", undefined, "record"],
  [catalog, "hydraulics", "oil", undefined, "system"],
  [both, "HT-101", "HT-1", "component", "component"],
  // Back to an id that it had, however long ago.
  [catalog, "HY59-01", "HY-1", undefined, "record"],
  // Systems and bulletins have pages of their own, and nobody cites them by [[ ]].
  [catalog, "TB-1", "HT-101", undefined, "bulletin"],
  [catalog, "HY59-01", "FR58-01", undefined, /^a record is called 'FR58-01' already$/],
  [catalog, "HY59-01", "HT-101", undefined, /^a part is called 'HT-101' already$/],
  [catalog, "HY59-01", "HY59-01", undefined, /^it is called 'HY59-01' already$/],
  [catalog, "HY59-01", "hy59-01", undefined, /^'hy59-01' differs from 'HY59-01' in capitals only, and not every/],
  [catalog, "HY59-01", "fr58-01", undefined, /^a record is called 'FR58-01' already, and 'fr58-01' differs from it/],
  [catalog, "HY59-01", "a/b", undefined, /^'a\/b' cannot be an id: letters/],
  [catalog, "HY59-01", "x".repeat(65), undefined, /cannot be an id/],
  [catalog, "HT-101", "HT-099", undefined, /^'HT-099' was the id of another part \(never delivered\)/],
  [catalog, "FR58-01", "HY-1", undefined, /^'HY-1' was the id of another record/],
  [catalog, "HY-2", "HY-3", undefined, /^'HY-2' is no longer used: it is now 'HY59-01'$/],
  [catalog, "HT-099", "HY-3", undefined, /^'HT-099' is no longer used: never delivered$/],
  [catalog, "HY59-1", "HY-3", undefined, /^no record, part, .* is called 'HY59-1': did you mean 'HY59-01'\?$/],
  [catalog, "HT-101", "HT-1", "record", /^no record is called 'HT-101'$/],
  [
    both,
    "HT-101",
    "HT-1",
    undefined,
    /^'HT-101' is the id of a part and of a component: say which with --kind part or/,
  ],
];

test.each(CASES)("%#: %s", (catalog, old, next, kind, meant) => {
  const found = whatToRename(catalog, { old, next, kind, why: "" });
  if (typeof meant === "string") expect(found).toEqual({ kind: meant });
  else expect("refused" in found && found.refused).toMatch(meant);
});

test("all kinds can be renamed that moved.yaml knows", () => {
  const { kind } = moved.shape.moved.unwrap().element.shape;
  expect([...KINDS_TO_RENAME].sort()).toEqual([...kind.options].sort());
  expect(kindsCalled(both, "HT-101")).toEqual(["part", "component"]);
  expect(kindsCalled(both, "nothing")).toEqual([]);
});
