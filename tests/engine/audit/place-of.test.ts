import { expect, test } from "vitest";
import { inPart, inRecord, placeOf } from "../../../src/engine/audit/place-of.ts";
import type { ChangeRecord, Part } from "../../../src/engine/records/catalog.ts";
import { catalogOf, sourceOf, TINY } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf();
const record = catalog.records.get("HY59-01") as ChangeRecord;

/** The line of the file where a place stands. */
function lineOf({ file, path }: { file: string; path: readonly (string | number)[] }): string {
  const source = sourceOf(file, TINY[file] as string);
  return source.line(source.locate({ path }).line).trim();
}

test("every statement of a record is found where it is written, whatever its type", () => {
  expect(record.statements.map((it) => `${it.type}: ${lineOf(placeOf(catalog, it))}`)).toEqual([
    "built: - { place: pump, part: HT-101, scope: line=B; at=K59#0412- }",
    "built: - { place: pump, part: HT-102, scope: line=B; at=K59#0412+ }",
    "built: - { place: lift arms, part: none, scope: line=H }",
    "mixed: - { place: pump, parts: [HT-101, HT-102], scope: line=H; my=1959 }",
    "supersedes: - { old: HT-101, new: HT-102, with: [HT-201] }",
    "stands-in: - { part: HT-102, for: HT-101, verdict: on-conditions, with: [HT-201], do: Bleed the lift., scope: fitted=HT-201 }",
    "stands-in: - { part: HT-101, for: HT-102, verdict: must-not-be-used, why: It runs dry. }",
    'stands-in: - { part: HT-102, for: none, verdict: "yes", scope: line=H }',
    "kit: - { kit: HT-290, contents: [{ part: HT-201, count: 2 }, { name: tube of grease }] }",
    "service-only: service-only: [HT-201]",
    "setting: - { name: oil pressure, window: 120..135, nominal: 130, unit: bar, conditions: hot, scope: line=B }",
    "setting: - { name: oil pressure, window: ..90, unit: bar, component: lift, scope: line=H }",
    "interval: - { name: oil change, months: 12, scope: all }",
    "procedure: - { when: after a pump was fitted, steps: Bleed the lift twice. }",
    "tool: - { tool: T-7, use: to draw the shaft, scope: line=B }",
    "left-alone: left-alone: [The reservoir was looked at and stayed.]",
    "cancels: - { record: FR58-01, scope: line=B }",
  ]);
});

test("a field of a record, and of a part", () => {
  expect(inRecord(record, "scope")).toEqual({ file: "changes/1959/HY59-01.md", path: ["scope"] });
  const part = (number: string): Part => catalog.parts.get(number) as Part;
  expect(lineOf(inPart(catalog, part("HT-102"), "name"))).toBe("name: pump, long");
  expect(inPart(catalog, part("HT-290"))).toEqual({ file: "parts/gasket.yaml", path: ["parts", 1] });
});
