import { expect, test } from "vitest";
import { audited, newlyFound } from "../../../src/build/data/audited.ts";
import { readTexts, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

const WRONG = ["nominal: 130,", "nominal: 140,"] as const;
const found = (spoil: Spoil) => audited(readTexts(spoiled(spoil)));

test("beside what reading says stands what the audit says, once everything can be read", () => {
  const file = "changes/1959/HY59-01.md";
  expect(found({ [file]: WRONG }).map(({ rule }) => rule)).toEqual(["aim-outside-window"]);
  expect(found({ [file]: [...WRONG, "links: [FR58-01]", "links: [FR58-10]"] }).map(({ rule }) => rule)).toEqual([
    "unknown-name",
  ]);
});

test("only what was not there before is new, wherever in a list it stands now", () => {
  const file = "changes/1959/HY59-01.md";
  const before = found({ [file]: WRONG });
  const above = [
    "settings:\n",
    "settings:\n  - { name: play, window: ..1, unit: mm, component: lift, scope: line=H }\n",
  ];
  expect(newlyFound(found({ [file]: [...WRONG, ...above] }), before)).toEqual([]);
  expect(
    newlyFound(found({ [file]: [...WRONG, "scope: line=B; at=K59#0412-", "scope: line=B; at=K59#0420-"] }), before),
  ).toHaveLength(1);
});
