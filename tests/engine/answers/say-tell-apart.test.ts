import { expect, test } from "vitest";
import { sayAlike, sayContradiction, sayNothing, sayTellApart } from "../../../src/engine/answers/say-tell-apart.ts";
import type { TellApartAnswer } from "../../../src/engine/answers/shapes/tell-apart.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const { parts, components } = catalogOf();
const pump = components.get("pump") as Parameters<typeof sayNothing>[0];
const view = (number: string, builtHere: "yes" | "no" | "unknown" = "unknown", mayStandIn = false) => ({
  number,
  name: parts.get(number)?.name ?? number,
  builtHere,
  mayStandIn,
  refused: [] as TellApartAnswer["parts"][number]["refused"],
  elsewhere: [] as string[],
});
const PLAIN = { next: undefined, same: [], secondTest: undefined, alike: [] };
const HOW: Parameters<typeof sayTellApart>[1] = { among: 2, onPaint: false, byElimination: false, hidden: [] };
const BOTH = [view("HT-101"), view("HT-102")];
const ONE = [view("HT-102")];

// verdict, parts, what else is known, in words
test.each<[TellApartAnswer["verdict"], typeof BOTH, Partial<typeof HOW>, string]>([
  ["one part", ONE, {}, "Of the parts on record it can only be HT-102, pump, long."],
  ["one part", ONE, { among: 1 }, "HT-102, pump, long, is the only part asked about; nothing was compared."],
  [
    "one part",
    ONE,
    { onPaint: true },
    "Of the parts on record it can only be HT-102, pump, long. That rests on paint or print alone, and no durable mark on record confirms it.",
  ],
  [
    "one part",
    [view("HT-102", "no", true)],
    {},
    "Of the parts on record it can only be HT-102, pump, long. HT-102 was not built into this car, but may have been fitted since.",
  ],
  [
    "one part",
    [view("HT-102", "no")],
    {},
    "Of the parts on record it can only be HT-102, pump, long. HT-102 was not built into this car, and no single record permits it there.",
  ],
  [
    "still open",
    BOTH,
    {},
    "It may be HT-101 or HT-102. What was seen fits them all, and no other mark on record tells more.",
  ],
  ["cannot be told apart", BOTH, {}, "The records cannot tell HT-101 and HT-102 apart."],
])("%s, %j, %j", (verdict, left, how, words) => {
  expect(sayTellApart({ ...PLAIN, verdict, parts: left }, { ...HOW, ...how })).toBe(words);
});

test("the marks that would tell more, and could not be seen; those that are the same on both", () => {
  const same = [{ feature: "ports", name: "ports", value: "2" }];
  expect(
    sayTellApart({ ...PLAIN, same, verdict: "still open", parts: BOTH }, { ...HOW, hidden: ["ribs", "bore"] }),
  ).toBe("It may be HT-101 or HT-102. Only this would tell more: ribs or bore. The same on both: ports (2).");
});

test("parts that are alike, on which nothing is on record, and that nothing fits", () => {
  expect(sayAlike(parts, ["HT-101", "HT-102"])).toBe("No mark on record tells HT-101 and HT-102 apart.");
  expect(sayNothing(pump, [])).toBe("No part of this kind is on record: hydraulic pump.");
  expect(sayNothing(pump, [...parts.values()].slice(0, 2))).toMatch(
    /^No mark is on record by which to tell \S+ and \S+ apart\.$/,
  );
  expect(sayContradiction([{ feature: "ribs", name: "ribs", seen: "7" }], [])).toBe(
    "No part on record fits what was seen (ribs: 7).",
  );
});

test("a refusal on the car is said with its record, and a part of another place as that", () => {
  const refused = [{ for: "HT-101", says: "goes on, but must not be used", why: "it runs dry", record: "HY59-01" }];
  const said = (part: object): string =>
    sayTellApart({ ...PLAIN, verdict: "one part", parts: [{ ...view("HT-102", "no"), ...part }] }, HOW);
  expect(said({ refused })).toContain(
    "HT-102 goes on, but must not be used in place of HT-101 on this car: it runs dry (HY59-01).",
  );
  expect(said({ elsewhere: ["lift arms"] })).toContain("HT-102 belongs in another place of this car: lift arms.");
});
