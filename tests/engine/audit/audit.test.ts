import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { audit } from "../../../src/engine/audit/audit.ts";
import { drawnRecords, filesOf, KINDS, type Kind, slowAudit } from "../../helpers/random-records.ts";
import { SEED } from "../../helpers/seed.ts";
import { inShort, readTexts, spoiled, TINY } from "../../helpers/tiny-folder.ts";

function audited(folder: Readonly<Record<string, string>>) {
  const { catalog, checks, complaints } = readTexts(folder);
  if (!catalog) throw new Error(complaints.map(inShort).join("\n"));
  return audit(catalog, checks);
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
