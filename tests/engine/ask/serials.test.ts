import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { serialAt, serialsOf } from "../../../src/engine/ask/serials.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import type { Trait } from "../../../src/engine/scope/trait.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_TRAITS } from "../../helpers/tractor-space.ts";

/** The tractors' traits, but numbered through all plants, and with a gearbox number without a letter. */
const TRAITS: readonly Trait[] = [
  ...TRACTOR_TRAITS.filter(({ id }) => id !== "number"),
  {
    kind: "whole",
    id: "number",
    label: "chassis number",
    aliases: ["frame numbers"],
    role: "sequence",
    find: "the frame",
    effort: 3,
    phrase: "numbered {}",
    otherwise: "not numbered {}",
    today: false,
    from: 1001,
    to: 8999,
  } as Trait,
  {
    kind: "whole",
    id: "box",
    label: "gearbox serial",
    aliases: [],
    find: "the box",
    effort: 3,
    phrase: "box {}",
    otherwise: "not box {}",
    today: false,
    from: 10_001,
    to: 59_950,
  } as Trait,
];
const serials = serialsOf(new Space(TRAITS));

test("numbers that tell which tractor it is are its sequence number, whole numbers and lettered ones, but no year", () => {
  expect(serials.map(({ trait }) => trait)).toEqual(["tilt", "axle", "number", "box"]);
  expect(serials.find(({ trait }) => trait === "number")).toEqual({
    trait: "number",
    label: "chassis number",
    prefixes: ["K", "D2"],
    letter: "plant",
    digits: 4,
    from: 1001,
    to: 8999,
    called: ["chassi", "number", "frame", "number"],
  });
  expect(serials.find(({ trait }) => trait === "axle")).toMatchObject({
    prefixes: ["A", "B", "C"],
    digits: 3,
    to: 999,
  });
  expect(serials.find(({ trait }) => trait === "box")).toMatchObject({ prefixes: [], digits: 5, from: 10_001 });
});

// words, the last of which is looked at, facts
const NUMBERS: [words: string, facts: string[] | undefined][] = [
  ["K1234", ["plant=K", "number=1234"]],
  ["k1234", ["plant=K", "number=1234"]],
  ["chassis number K1234", ["plant=K", "number=1234"]],
  ["K1000", undefined], // before the first
  ["K9000", undefined], // after the last
  ["K01234", undefined], // too many figures
  ["K123", undefined],
  ["X1234", undefined], // no plant
  ["1234", undefined], // no letter
  ["gearbox 47199", ["box=47199"]],
  ["Gearbox's 47199", ["box=47199"]],
  ["serial of my 47199", ["box=47199"]],
  ["serial of my old 47199", undefined], // named too far before
  ["gearbox K47199", undefined], // a letter where none is written
  ["gearbox 59951", undefined],
  ["gearbox 09999", undefined],
  ["47199", undefined],
  ["47199 gearbox", undefined],
  ["gearbox 47-199", undefined],
  ["pump", undefined],
  ["", undefined],
];
describe("the number", () => {
  test.each(NUMBERS)("%s", (words, facts) => {
    const said = split(words);
    expect(serialAt(said, said.length - 1, serials)?.map(({ id }) => id)).toEqual(facts);
  });

  test("has a label for each fact", () => {
    expect(serialAt(["K1234"], 0, serials)?.map(({ label }) => label)).toEqual(["plant K", "chassis number 1234"]);
    expect(serialAt(["gearbox", "47199"], 1, serials)?.map(({ label }) => label)).toEqual(["gearbox serial 47199"]);
  });

  test("behind the last word, or of no tractor, is none", () => {
    expect(serialAt(["K1234"], 1, serials)).toBeUndefined();
    expect(serialAt(["K1234"], 0, [])).toBeUndefined();
  });

  test("keeps its zeros where it has a letter of its own", () => {
    const [axle] = serialsOf(
      new Space(TRACTOR_TRAITS.map((it) => (it.kind === "serial" ? { ...it, digits: 5 } : it))),
    ).filter(({ trait }) => trait === "axle");
    expect(serialAt(["b00417"], 0, axle ? [axle] : [])).toEqual([{ id: "axle=B00417", label: "axle number B00417" }]);
  });

  // A number without a letter is one only where the trait was named just before.
  test.fails("of four figures is no chassis number that has no letter, but a year, where it is not named", () => {
    expect(serialAt(["1959"], 0, serialsOf(new Space(TRACTOR_TRAITS)))).toBeUndefined();
  });

  test.fails("of three figures is read too, where the trait has so many", () => {
    expect(serialAt(["A417"], 0, serials)?.map(({ id }) => id)).toEqual(["axle=A417"]);
  });

  test.fails("of a plant with two signs is read too", () => {
    expect(serialAt(["D21234"], 0, serials)?.map(({ id }) => id)).toEqual(["plant=D2", "number=1234"]);
  });
});

test("facts of any words are within what is made: prefixes, figures, limits", () => {
  const word = fc.oneof(
    fc.constantFrom("gearbox", "serial", "chassis", "number", "axle", "of"),
    fc.stringMatching(/^[AKkx]?\d{3,6}$/),
    fc.string({ maxLength: 5 }),
  );
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 5 }), fc.nat(5), (words, at) => {
      for (const { id } of serialAt(words, at, serials) ?? []) {
        const [trait, value = ""] = id.split("=");
        const serial = serials.find((it) => it.trait === trait);
        if (!serial) expect([trait, ["K", "D2"].includes(value)]).toEqual(["plant", true]);
        else {
          const number = Number(value.replace(/^[A-Z]+/, ""));
          expect(number).toBeGreaterThanOrEqual(serial.from);
          expect(number).toBeLessThanOrEqual(serial.to);
          if (serial.prefixes.length === 0)
            expect(words.slice(Math.max(0, at - 3), at).some((one) => serial.called.includes(fold(one)))).toBe(true);
        }
      }
    }),
    { seed: SEED, numRuns: 2000 },
  );
});

test("every number that a car of the data folder may have is read off its plate", async () => {
  const { catalog } = await demoKnowledge();
  const all = serialsOf(catalog.space);
  for (const serial of all) {
    const number = String(serial.to).padStart(serial.digits, "0");
    for (const prefix of serial.prefixes.length > 0 ? serial.prefixes : [""]) {
      const words = split(`${serial.label} ${prefix}${number}`);
      const facts = serialAt(words, words.length - 1, all)?.map(({ id }) => id.split("=")[0]);
      expect([serial.trait, facts?.at(-1)]).toEqual([serial.trait, serial.trait]);
    }
  }
});
