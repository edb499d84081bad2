import { expect, test } from "vitest";
import { reachedBy } from "../../../src/engine/audit/reached-by.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { catalogOf, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

const RECORD = "changes/1959/HY59-01.md";

/** The cars that a statement reaches, counted from that of the small record, and what a scope means there. */
function reach(type: "supersedes" | "stands-in", files: Spoil, of = 0) {
  const catalog = catalogOf(spoiled(files));
  const it = [...catalog.records.values()].flatMap(({ statements }) => statements).filter((one) => one.type === type)[
    of
  ];
  if (it?.type !== "supersedes" && it?.type !== "stands-in") throw new Error("no record states such a thing");
  const carsOf = (text: string) => {
    const read = readScope(catalog.space, text);
    if ("slips" in read) throw new Error(read.slips[0]?.message);
    return catalog.space.sets.and(catalog.buildable, read.scope.cars);
  };
  return { cars: reachedBy(openPartIndex(catalog), it), carsOf };
}

test("a delivery rule: those built with the old number, certainly or perhaps", () => {
  const { cars, carsOf } = reach("supersedes", {});
  expect(cars).toBe(carsOf("line=B; at=K59#0412- || line=H; my=1959"));
});

test("of these, the ones in its scope for which it was not ended", () => {
  // The big record ends the small one for the Badger.
  const { cars, carsOf } = reach("supersedes", {
    "changes/1958/FR58-01.md": [
      "scope: my>=1958\n",
      "scope: my>=1958\nsupersedes:\n  - { old: HT-101, new: HT-102, scope: my>=1959 }\n",
    ],
  });
  expect(cars).toBe(carsOf("line=H; my=1959"));
});

test("a number that no plant fitted may be on any of them", () => {
  const { cars, carsOf } = reach("supersedes", {
    [RECORD]: ["old: HT-101, new: HT-102, with: [HT-201] }", "old: HT-201, new: HT-290, scope: line=H }"],
  });
  expect(cars).toBe(carsOf("line=H"));
});

test("where nothing sits, those of which a record says so, or else all in the scope", () => {
  const said = reach("stands-in", {}, 2);
  expect(said.cars).toBe(said.carsOf("line=H"));
  const { cars, carsOf } = reach(
    "stands-in",
    { [RECORD]: ["built:\n", "built:\n  - { place: pump, part: none, scope: line=H; my=1960 }\n"] },
    2,
  );
  expect(cars).toBe(carsOf("line=H; my=1960"));
});
