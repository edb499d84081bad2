import { doubleMetaphone } from "double-metaphone";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { corrections, isKnown } from "../../../src/engine/ask/corrections.ts";
import { namesOf } from "../../../src/engine/ask/names.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

type Words = Parameters<typeof corrections>[1];

/** `trade` and `texts` are what may be meant; `known` has these and more, which are left alone. */
function wordsOf(trade: readonly string[], texts: readonly string[] = [], known: readonly string[] = []): Words {
  return { ...namesOf(TRACTOR_WORDS), trade, texts, known: new Set([...trade, ...texts, ...known]) };
}

const TRADE = [
  "clutch",
  "caliper",
  "seal",
  "brake",
  "thermostat",
  "hydraulic",
  "regulator",
  "pump",
  "knuckle",
  "threepointarm",
];
const TEXTS = ["leak", "adjuster", "tighten", "scale", "breakage", "bracket"];
const PLAIN = ["radio", "clunk", "the"];

// typed, what was meant
const MEANT: [typed: string, meant: string[], why: string][] = [
  ["clutch", [], "a known word"],
  ["radio", [], "a plain word"],
  ["clunk", [], "a plain word, near as it is"],
  ["sealed", [], "a usual form"],
  ["sealing", [], "a usual form"],
  ["leaky", [], "a usual form"],
  ["leakless", [], "a usual form"],
  ["braking", [], "a usual form, an e left out"],
  ["clunkking", [], "a usual form, a letter doubled"],
  ["seals", [], "a plural"],
  ["cl", [], "two letters"],
  ["pmp", [], "three letters"],
  ["pum", [], "three letters"],
  ["seal5", [], "a digit"],
  ["1959", [], "a number"],
  ["", [], "nothing"],

  ["sael", ["seal"], "neighbours the wrong way round"],
  ["sela", ["seal"], "neighbours the wrong way round"],
  ["seql", ["seal"], "a letter mistaken"],
  ["seall", ["seal"], "a letter put in"],
  ["brke", ["brake"], "a letter left out"],
  ["brkle", [], "two letters of five, and another sound"],
  ["brayk", ["brake"], "two letters of five, and the same sound"],
  ["clitcj", [], "two letters of six, and another sound"],
  ["kletch", [], "two letters of six, and the same sound, but one is the first"],
  ["calipxz", ["caliper"], "two letters of seven"],
  ["kalliper", [], "two slips, one at the first letter"],
  ["kaliper", ["caliper"], "one slip at the first letter"],
  ["nuckle", ["knuckle"], "the first letter left out"],
  ["hidralic", ["hydraulic"], "two letters of nine"],
  ["xhdrwulzc", [], "nothing like it"],
  ["thremostadt", ["thermostat"], "three of a long word"],
  ["termostadd", ["thermostat"], "three of a long word"],
  ["ragulater", ["regulator"], "two letters of nine"],
  ["threepiontarm", ["threepointarm"], "a name of several words, run together"],
  ["ajuster", ["adjuster"], "a word of the texts"],
  ["skale", ["scale"], "a word of the texts, no word of the trade as near"],
  ["breakege", ["breakage"], "a word of the texts"],
  ["braket", ["bracket"], "the nearer of a word of the trade and one of the texts that sounds so"],
  ["constructor", [], "no word of the trade"],
  ["hasownproperty", [], "no word of the trade"],
  ["насос", [], "another alphabet"],
  ["ωσαλ", [], "another alphabet"],
];

describe("what a word was meant to be", () => {
  const words = wordsOf(TRADE, TEXTS, PLAIN);
  test.each(MEANT)("%s → %j: %s", (typed, meant) => {
    expect(corrections(typed, words)).toEqual(meant);
  });

  test("is the word of the trade, where one of the texts is no nearer", () => {
    expect(corrections("leax", wordsOf(["lead"], ["leak"]))).toEqual(["lead"]);
    expect(corrections("hingge", wordsOf(["hinges"], ["hinge"]))).toEqual(["hinge"]);
  });

  test("is of two as near the one that sounds the same", () => {
    expect(corrections("valfe", wordsOf(["valse", "valve"]))).toEqual(["valve"]);
    expect(corrections("valfe", wordsOf(["valve", "valse"]))).toEqual(["valve"]);
  });

  test("is a choice where several are equally near, of no more than three", () => {
    expect(corrections("dopper", wordsOf(["dipper", "dapper"]))).toEqual(["dipper", "dapper"]);
    expect(corrections("dopper", wordsOf(["dipper", "dapper", "depper", "dupper"]))).toEqual([
      "dipper",
      "dapper",
      "depper",
    ]);
  });

  test("is nothing without words", () => {
    expect(corrections("clutch", wordsOf([]))).toEqual([]);
  });

  test("is found for a word of a million letters: none", () => {
    expect(corrections("clutch".repeat(200_000), wordsOf(TRADE, TEXTS))).toEqual([]);
  });
});

// word, known as a form of "grease", "bolt", "rub" or "dry"
const FORMS: [word: string, known: boolean][] = [
  ["bolt", true],
  ["bolts", true],
  ["bolted", true],
  ["bolting", true],
  ["bolter", true],
  ["boltless", true],
  ["greased", true],
  ["greasing", true],
  ["greasy", true],
  ["greaseness", true],
  ["rubbed", true],
  ["rubbing", true],
  ["rubbers", true],
  ["boltx", false],
  ["xbolt", false],
  ["s", false],
  ["ing", false],
  ["ding", false], // too little is left of it
  ["", false],
];
test.each(FORMS)("%s is a form of a known word: %s", (word, known) => {
  expect(isKnown(word, new Set(["grease", "bolt", "rub", "dry"]))).toBe(known);
});

describe("compared with the rule, word by word", () => {
  // Few letters and short words, so that many lie near each other; typed is one of them with up to four slips.
  const word = fc.oneof(
    fc.stringMatching(/^ka[tsr]{1,2}[aei][lrn]$/),
    fc.stringMatching(/^(cat|kas|ter|ak){2,4}[est]?$/),
  );
  const slip = fc.tuple(fc.nat(11), fc.constantFrom("", ..."acekst"), fc.nat(2));
  const asked = fc
    .tuple(
      fc.uniqueArray(word, { minLength: 8, maxLength: 16 }),
      fc.array(slip, { minLength: 1, maxLength: 4 }),
      fc.nat(16),
      fc.nat(),
    )
    .map(([words, slips, part, at]) => {
      const typed = slips.reduce(
        (text, [place, letter, cut]) => text.slice(0, place) + letter + text.slice(place + cut),
        words[at % words.length] as string,
      );
      return { typed, trade: words.slice(0, part), texts: words.slice(part) };
    });

  test("the nearest words are meant, of the trade first, and no known one is touched", () => {
    const found = { none: 0, one: 0, several: 0 };
    fc.assert(
      fc.property(asked, ({ typed, trade, texts }) => {
        const words = wordsOf(trade, texts);
        const meant = corrections(typed, words);
        expect(meant).toEqual(slowly(typed, words));
        if (words.known.has(typed)) expect(meant).toEqual([]);
        for (const one of meant) expect(words.known.has(one)).toBe(true);
        found[meant.length === 0 ? "none" : meant.length === 1 ? "one" : "several"]++;
      }),
      { seed: SEED, numRuns: 2500 },
    );
    expect(Math.min(...Object.values(found))).toBeGreaterThan(10);
  });

  test("a slip in any word of the trade leads back to it, or to one as near", () => {
    const names = namesOf(TRACTOR_WORDS);
    const slipped = fc
      .tuple(
        fc.constantFrom(...names.trade.filter((it) => it.length > 4)),
        fc.nat(),
        fc.constantFrom(..."aeklx"),
        fc.nat(3),
      )
      .map(([right, at, letter, how]) => {
        const i = 1 + (at % (right.length - 2));
        const [before, after] = [right.slice(0, i), right.slice(i)];
        const wrong = [
          before + letter + after,
          before + after.slice(1),
          before + letter + after.slice(1),
          before + (after[1] ?? "") + after[0] + after.slice(2),
        ][how] as string;
        return [right, wrong] as const;
      });
    fc.assert(
      fc.property(slipped, ([right, wrong]) => {
        fc.pre(!isKnown(wrong, names.known) && wrong.length > 3);
        const meant = corrections(wrong, names);
        expect(meant.length).toBeGreaterThan(0);
        if (!meant.includes(right)) for (const one of meant) expect(slips(wrong, one)).toBeLessThanOrEqual(1);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });
});

/** The rule of the head comment, plainly. */
function slowly(typed: string, { known, trade, texts }: Words): string[] {
  if (typed.length < 4 || isKnown(typed, known)) return [];
  const lettersFor = (length: number) => (length <= 6 ? 1 : length <= 9 ? 2 : 3);
  const sound = (word: string) => doubleMetaphone(word)[0];
  const nearness = (one: string): number => {
    const wrong = slips(typed, one);
    const same = sound(typed) === sound(one);
    const may = Math.min(lettersFor(typed.length), lettersFor(one.length)) + (same ? 1 : 0);
    if (wrong > may || (typed[0] !== one[0] && wrong > 1)) return Number.POSITIVE_INFINITY;
    return wrong - (same ? 0.5 : 0);
  };
  const [ofTrade, ofTexts] = [trade, texts].map((words) => Math.min(Number.POSITIVE_INFINITY, ...words.map(nearness)));
  const [words, best] = (ofTexts as number) < (ofTrade as number) ? [texts, ofTexts] : [trade, ofTrade];
  return best === Number.POSITIVE_INFINITY ? [] : words.filter((one) => nearness(one) === best).slice(0, 3);
}

/** Letters left out, put in or mistaken; where two neighbours are the wrong way round and nothing else is wrong, that is one. */
function slips(typed: string, right: string): number {
  for (let i = 0; i + 1 < typed.length; i++)
    if (typed !== right && typed.slice(0, i) + typed[i + 1] + typed[i] + typed.slice(i + 2) === right) return 1;
  const rows = Array.from({ length: typed.length + 1 }, (_, i) =>
    Array.from({ length: right.length + 1 }, (_, j) => i + j),
  );
  const of = (i: number, j: number): number => rows[i]?.[j] as number;
  for (let i = 1; i <= typed.length; i++)
    for (let j = 1; j <= right.length; j++)
      (rows[i] as number[])[j] = Math.min(
        of(i - 1, j) + 1,
        of(i, j - 1) + 1,
        of(i - 1, j - 1) + (typed[i - 1] === right[j - 1] ? 0 : 1),
      );
  return of(typed.length, right.length);
}

describe("outside judges, from memory", () => {
  // Words that are often misspelt, as lists of such words give them, and the word meant.
  const OFTEN: [typed: string, meant: string][] = (
    "accomodate accommodate, acheive achieve, accross across, agressive aggressive, apparant apparent, begining beginning, " +
    "beleive believe, calender calendar, catagory category, cemetary cemetery, collegue colleague, concious conscious, " +
    "definately definitely, dilema dilemma, dissapoint disappoint, embarass embarrass, enviroment environment, " +
    "existance existence, foriegn foreign, fourty forty, goverment government, gaurd guard, harrass harass, " +
    "independant independent, interupt interrupt, knowlege knowledge, liason liaison, libary library, lisence license, " +
    "maintainance maintenance, millenium millennium, neccessary necessary, noticable noticeable, occured occurred, " +
    "occurence occurrence, persistant persistent, posession possession, prefered preferred, publically publicly, " +
    "recieve receive, reccomend recommend, refered referred, relevent relevant, rythm rhythm, seperate separate, seige siege, " +
    "succesful successful, supercede supersede, suprise surprise, tommorow tomorrow, truely truly, " +
    "unforseen unforeseen, untill until, wierd weird, guage gauge, pnuematic pneumatic, cylindar cylinder, vaccum vacuum"
  )
    .split(", ")
    .map((pair) => pair.split(" ") as [string, string]);
  const words = wordsOf(OFTEN.map(([, meant]) => meant));

  test.each(OFTEN)("%s is meant to be %s", (typed, meant) => {
    expect(corrections(typed, words)).toEqual([meant]);
  });

  // Name, and its first and second sound, as the author of Double Metaphone gives them or his code tells.
  const SOUNDS: [name: string, first: string, second: string][] = [
    ["Smith", "SM0", "XMT"],
    ["Schmidt", "XMT", "SMT"],
    ["Thomas", "TMS", "TMS"],
    ["Thumb", "0M", "TM"],
    ["Knight", "NT", "NT"],
    ["Caesar", "SSR", "SSR"],
    ["Hugh", "H", "H"],
    ["Physics", "FSKS", "FSKS"],
    ["brake", "PRK", "PRK"],
    ["break", "PRK", "PRK"],
    ["gnome", "NM", "NM"],
  ];
  test.each(SOUNDS)("%s sounds %s or %s", (name, first, second) => {
    expect(doubleMetaphone(name)).toEqual([first, second]);
  });
});
