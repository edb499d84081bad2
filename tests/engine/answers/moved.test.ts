import { expect, test } from "vitest";
import { askOfMoved } from "../../../src/engine/answers/moved.ts";
import type { Move } from "../../../src/engine/records/catalog.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf(
  spoiled({
    "moved.yaml": `moved:
  - { kind: record, from: HY-1, to: HY-2, why: renamed }
  - { kind: record, from: HY-2, to: HY59-01, why: renamed again }
  - { kind: record, from: HY-3, to: HY-4, why: taken over }
  - { kind: record, from: HY-4, why: withdrawn }
  - { kind: part, from: HY-5, to: HT-101, why: a part now }
`,
  }),
);

// kind, id, why and where it leads now
const MOVES: [Move["kind"], string, string?, ...string[]][] = [
  ["record", "HY-1", "renamed", "HY59-01"], // to the end of the chain
  ["record", "HY-2", "renamed again", "HY59-01"],
  ["record", "HY-3", "taken over"], // the chain ends in nothing
  ["record", "HY-4", "withdrawn"],
  ["part", "HY-5", "a part now", "HT-101"],
  ["record", "HY-5"],
  ["part", "HY-1"],
  ["record", "HY59-01"],
  ["record", ""],
];
test.each(MOVES)("%s '%s': %s", (kind, id, why, ...options) => {
  const ask = why === undefined ? undefined : { what: `'${id}' is no longer used: ${why}`, options };
  expect(askOfMoved(catalog, kind, id)).toEqual(ask);
});
