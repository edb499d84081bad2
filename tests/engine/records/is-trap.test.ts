import { expect, test } from "vitest";
import { isTrap } from "../../../src/engine/records/is-trap.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

// what the pump's record says of the short pump where the long one belongs, whether that is a trap
const VERDICTS: [verdict: string, trap: boolean][] = [
  ["must-not-be-used, why: It runs dry.", true],
  ["does-not-go-on, why: It is too short.", false],
  ["on-conditions", false],
  ["'yes'", false],
];

test.each(VERDICTS)("a part that is %s: %s", (verdict, trap) => {
  const catalog = catalogOf(spoiled({ "changes/1959/HY59-01.md": ["must-not-be-used, why: It runs dry.", verdict] }));
  expect([...catalog.records.values()].filter(isTrap).map((record) => record.id)).toEqual(trap ? ["HY59-01"] : []);
});
