import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { audit } from "../../../src/engine/audit/audit.ts";
import { RULES } from "../../../src/engine/audit/rules.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { drawnRecords, filesOf, KINDS, type Kind, slowAudit } from "../../helpers/random-records.ts";
import { SEED } from "../../helpers/seed.ts";
import { inShort, readTexts, spoiled, TINY } from "../../helpers/tiny-folder.ts";
import { drawnCompanions, filesOfCompanions, slowCompanions } from "./drawn-companions.ts";
import { drawnYears, filesOfYears, slowYears, TRACTORS } from "./drawn-years.ts";

function audited(folder: Readonly<Record<string, string>>) {
  const { catalog, checks, complaints } = readTexts(folder);
  if (!catalog) throw new Error(complaints.map(inShort).join("\n"));
  return audit(catalog, checks);
}

/** Says of scopes whether a rule finds a fault on some car in them. */
function faultyBy(id: string, folder: Readonly<Record<string, string>>): (scope: string) => boolean {
  const { catalog, checks, complaints } = readTexts(folder);
  const rule = RULES.find((it) => it.id === id);
  if (!catalog || !rule) throw new Error(complaints.map(inShort).join("\n"));
  const faults = [...rule.find({ catalog, checks, index: openPartIndex(catalog) })];
  return (text) => {
    const read = readScope(catalog.space, text);
    if ("slips" in read) throw new Error(read.slips[0]?.message);
    const cars = catalog.space.sets.and(read.scope.cars, catalog.buildable);
    return faults.some((fault) => fault.cars && catalog.space.sets.meet(fault.cars, cars));
  };
}

describe("contradictions are found exactly", () => {
  test("of random records the audit finds what plain loops over every kind of tractor find, and names such a tractor", () => {
    const told = new Map<string, number>();
    fc.assert(
      fc.property(drawnRecords, (drawn) => {
        const found = audited(filesOf(drawn, TINY));
        for (const [rule, kinds] of slowAudit(drawn)) {
          const own = found.filter((it) => it.rule === rule);
          expect([rule, own.length > 0]).toEqual([rule, kinds.length > 0]);
          if (own.length > 0) told.set(rule, (told.get(rule) ?? 0) + 1);
          for (const { car } of own) {
            // Every kind of which the facts are true shows the fault, and there is one.
            const alike = KINDS.filter((kind) => isSuch(kind, car?.facts ?? {}));
            expect(alike).not.toEqual([]);
            for (const kind of alike) expect(kinds).toContain(kind);
          }
        }
      }),
      { seed: SEED, numRuns: 200 },
    );
    // Each of them was really met.
    for (const rule of slowAudit({ built: [], orders: [], uses: [], settings: [], ended: undefined }).keys())
      expect([rule, (told.get(rule) ?? 0) > 0]).toEqual([rule, true]);
  });

  test("of random companions the audit finds what plain loops find, on the very kinds of tractors", () => {
    const told = new Map<string, number>();
    fc.assert(
      fc.property(drawnCompanions, (drawn) => {
        const folder = filesOfCompanions(drawn, TINY);
        for (const [rule, kinds] of slowCompanions(drawn)) {
          const isFaulty = faultyBy(rule, folder);
          const found = KINDS.filter(({ line, my, plant }) => isFaulty(`line=${line}; my=${my}; plant=${plant}`));
          expect([rule, found]).toEqual([rule, kinds]);
          if (found.length > 0) told.set(rule, (told.get(rule) ?? 0) + 1);
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(
      [...told]
        .filter(([, times]) => times > 20)
        .map(([rule]) => rule)
        .sort(),
    ).toEqual(["companion-not-current", "two-order-lists"]);
  });

  test("of random years the audit finds left out what plain loops over every tractor find", () => {
    let told = 0;
    fc.assert(
      fc.property(drawnYears, (drawn) => {
        const isFaulty = faultyBy("year-left-out", filesOfYears(drawn, TINY));
        const found = TRACTORS.filter(({ line, my, plant, pto }) =>
          isFaulty(`line=${line}; my=${my}; plant=${plant}; ${pto ? "eq" : "no"}=PT`),
        );
        const left = slowYears(drawn);
        expect(found).toEqual(TRACTORS.filter((tractor) => left.includes(tractor)));
        if (found.length > 0) told++;
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(told).toBeGreaterThan(20);
  });
});

function isSuch(kind: Kind, facts: Readonly<Record<string, string>>): boolean {
  return Object.entries(kind).every(([trait, value]) => facts[trait] === undefined || facts[trait] === String(value));
}

test("a finding names its rule, its place, its records, what else has to do with it, and a car that shows it", () => {
  const [finding] = audited(
    spoiled({
      "changes/1959/HY59-01.md": ["part: HT-101, scope: line=B; at=K59#0412- }", "part: HT-101, scope: line=B }"],
    }),
  );
  expect(finding).toEqual({
    severity: "error",
    rule: "two-parts-in-one-place",
    file: "changes/1959/HY59-01.md",
    path: ["built", 1, "scope"],
    message: "'pump' holds HT-102 here, and HT-101 by another line of this record on the same cars",
    hint: "end the one scope where the other begins",
    records: ["HY59-01"],
    names: ["pump", "HT-102", "HT-101"],
    also: [{ file: "changes/1959/HY59-01.md", path: ["built", 0, "scope"], message: "HT-101 in the same place" }],
    car: {
      facts: { line: "B", my: "1959", plant: "K", number: "0412" },
      words: "Badger of 1959, built at Kelby, numbered 0412",
    },
  });
});

test("a rule that is off is not run", () => {
  const found = (as: string) =>
    audited({
      ...spoiled({ "changes/1959/HY59-01.md": ["nominal: 130,", "nominal: 13,"] }),
      "checks.yaml": `rules: [{ check: aim-outside-window, as: ${as}, why: a test }]\n`,
    }).map((it) => it.rule);
  expect(found("error")).toEqual(["aim-outside-window"]);
  expect(found("off")).toEqual([]);
});
