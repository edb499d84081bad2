import { expect, test } from "vitest";
import { onOtherWays } from "../../../src/engine/audit/on-other-ways.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { catalogOf, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

const waysOf = (spoil: Spoil): string[] => [...onOtherWays(openPartIndex(catalogOf(spoiled(spoil))))].sort();

/** A folder in which no part comes to a car but from the plant, and one line of a record more. */
const only = (field: string, line: string): Spoil => ({
  "changes/1959/HY59-01.md": [
    ...[
      "  - { part: HT-102, for: HT-101, verdict: on-conditions, with: [HT-201], do: Bleed the lift., scope: fitted=HT-201 }\n",
      "",
    ],
    ...['  - { part: HT-102, for: none, verdict: "yes", scope: line=H }\n', ""],
    ...["supersedes:\n  - { old: HT-101, new: HT-102, with: [HT-201] }\n", ""],
    ...["kits:\n  - { kit: HT-290, contents: [{ part: HT-201, count: 2 }, { name: tube of grease }] }\n", ""],
    ...["service-only: [HT-201]\n", field === "stands-in" || field === "" ? "" : `${field}: ${line}\n`],
    ...["stands-in:\n", field === "stands-in" ? `stands-in:\n  - ${line}\n` : "stands-in:\n"],
  ],
});

test.each([
  ["", "", []],
  ["supersedes", "[{ old: HT-101, new: HT-102, with: [HT-201] }]", ["HT-102", "HT-201"]],
  ["stands-in", '{ part: HT-290, for: HT-201, verdict: "yes", with: [HT-102] }', ["HT-102", "HT-290"]],
  ["stands-in", "{ part: HT-290, for: HT-201, verdict: does-not-go-on, why: It is flat. }", []],
  ["kits", "[{ kit: HT-290, contents: [{ part: HT-201, count: 2 }] }]", ["HT-201"]],
  ["service-only", "[HT-201]", ["HT-201"]],
] as const)("%s %s", (field, line, parts) => {
  expect(waysOf(only(field, line))).toEqual(parts);
});
