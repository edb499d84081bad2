import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keepPicked, NO_PICKS, type Picks } from "../../../src/engine/ask/keep-picked.ts";
import { type Reading, readQuestion } from "../../../src/engine/ask/read-question.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_NUMBERS, TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const read = (question: string): Reading => readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS);
const inShort = ({ chips, asked }: Reading): string[] => [
  ...asked.map((it) => it.asked),
  ...chips.map(({ kind, ids }) => `${kind} ${ids}`),
];

// question, words taken away, meanings chosen, what is left
const PICKED: [question: string, without: string[], meant: Record<string, string>, left: string[]][] = [
  ["oil seal of a 59 Badger", [], {}, ["component pump-seal,hub-seal", "year 1959", "line B"]],
  ["oil seal of a 59 Badger", ["59"], {}, ["component pump-seal,hub-seal", "line B"]],
  ["oil seal of a 59 Badger", ["59", "Badger", "oil seal"], {}, []],
  ["oil seal", [], { "oil seal": "hub-seal" }, ["component hub-seal"]],
  ["oil seal", ["oil seal"], { "oil seal": "hub-seal" }, []],
  ["oil seal", [], { "oil seal": "clutch" }, ["component pump-seal,hub-seal"]], // not one of the choices
  ["clutch", [], { clutch: "pump" }, ["component clutch"]], // no choice
  ["what changed on the pump", ["what changed"], {}, ["component pump"]],
  ["what changed on the pump", ["pump"], {}, ["changed"]],
  ["Badger", ["badger"], {}, ["line B"]], // as it was typed
  ["badgre", ["badgre"], {}, []], // also where it was typed wrong
  ["badgre", ["badger"], {}, ["line B"]],
  ["torque drive", ["torque drive"], {}, []], // which tractor, and what of it
  ["3110-552", [], { "3110-552": "3110 552 R" }, ["part 3110 552 R"]],
  ["K1234", ["K1234"], {}, []], // plant and number
  ["pump", ["plough", "constructor", "__proto__"], { constructor: "x" }, ["component pump"]],
  ["", ["pump"], { pump: "x" }, []],
];
describe("what is left of a reading", () => {
  test.each(PICKED)("%s, without %j, with %j", (question, without, meant, left) => {
    expect(inShort(keepPicked(read(question), { without, meant }))).toEqual(left);
  });

  test("a meaning that was chosen gives the chip its label, and the others stay to be chosen instead", () => {
    const [chip] = keepPicked(read("oil seal"), { without: [], meant: { "oil seal": "hub-seal" } }).chips;
    expect(chip).toMatchObject({ ids: ["hub-seal"], label: "hub seal", said: "oil seal" });
    expect(chip?.options?.map(({ id }) => id)).toEqual(["pump-seal", "hub-seal"]);
  });

  test("without picks it is the reading", () => {
    const reading = read("what changed on the oil seal of a 59 Badger");
    expect(keepPicked(reading, NO_PICKS)).toEqual(reading);
  });
});

test("exactly what is named is taken away, and nothing else of the reading changes", () => {
  const words = [
    ...PICKED.flatMap(([question]) => question.split(" ")),
    "spring",
    "noise",
    "HY59-01",
    "which",
    "psi",
    "with",
  ];
  const question = fc.array(fc.constantFrom(...words), { maxLength: 10 }).map((some) => some.join(" "));
  const asked = question.chain((said) => {
    const reading = read(said);
    const named = [...reading.chips, ...reading.asked].map((it) => it.said);
    const picks = fc.record({
      without: fc.subarray([...new Set(["plough", ...named])]),
      meant: fc.constant(
        Object.fromEntries(reading.chips.flatMap((it) => (it.options ? [[it.said, it.options.at(-1)?.id ?? ""]] : []))),
      ),
    });
    return fc.tuple(fc.constant(reading), picks as fc.Arbitrary<Picks>);
  });
  fc.assert(
    fc.property(asked, ([reading, picks]) => {
      const before = JSON.stringify(reading);
      const kept = keepPicked(reading, picks);
      const stays = ({ said }: { said: string }) => !picks.without.includes(said);
      expect(kept.asked).toEqual(reading.asked.filter(stays));
      const staying = reading.chips.filter(stays);
      expect(kept.chips.map(({ said, at }) => [said, at])).toEqual(staying.map(({ said, at }) => [said, at]));
      kept.chips.forEach((chip, i) => {
        expect(chip.ids).toEqual(chip.options ? [picks.meant[chip.said]] : staying[i]?.ids);
        expect({ ...chip, ids: [], label: "" }).toEqual({ ...staying[i], ids: [], label: "" });
      });
      const { chips: _, asked: __, ...others } = kept;
      expect({ ...reading, ...others }).toEqual(reading);
      expect(keepPicked(kept, picks)).toEqual(kept);
      expect(JSON.stringify(reading)).toBe(before);
    }),
    { seed: SEED, numRuns: 800 },
  );
});
