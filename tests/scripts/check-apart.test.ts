import { expect, test } from "vitest";
import { goApart } from "../../scripts/check-apart.ts";

const GIVEN = { json: true, sarif: true, accepted: true, words: true, rules: true, against: "site", data: "data" };
const NAMES = Object.keys(GIVEN) as (keyof typeof GIVEN)[];
const TOGETHER = [
  ["json", "words"],
  ["json", "against"],
  ["json", "data"],
  ["sarif", "against"],
  ["sarif", "data"],
  ["accepted", "data"],
  ["words", "data"],
  ["against", "data"],
];
const PAIRS = NAMES.flatMap((one, i) => NAMES.slice(i + 1).map((other) => [one, other] as const));

test.each(PAIRS)("%s with %s", (one, other) => {
  const goes = TOGETHER.some((pair) => pair.includes(one) && pair.includes(other));
  const none = { json: false, sarif: false, accepted: false, words: false, rules: false };
  const apart = goApart({ ...none, [one]: GIVEN[one], [other]: GIVEN[other] });
  expect(apart && [...apart].sort()).toEqual(goes ? undefined : [`--${one}`, `--${other}`].sort());
});
