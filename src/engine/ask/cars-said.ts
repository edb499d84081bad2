/**
 * What a question says of cars, and of which one. A permission rests on this, so what is not plainly said is not taken for said.
 *
 * 1. A fact is what a chip of line, year or trait names. It is denied where a denying word stands before it ("without the tow
 *    package", "not a 75"), with little words between, or joined by and/or to one that is denied.
 * 2. It is in doubt, and then nothing is taken from it:
 *      everything, where a denying word stands that denies no fact and no way to ask ("hitch removed");
 *      what is denied together with what follows it ("except 75 Herons" are neither all of the 75s nor all Herons);
 *      years, where a word for a range stands that no year was read with, or a month, "registered" or "bought": a date is no model year;
 *      yes/no facts, where it is asked whether they are needed;
 *      a common word of one kind ("four", "compact", "manual") that stands by itself, not beside another fact.
 * 3. Facts that stand together are one group; "and", "or" or nothing between two of one kind makes them alternatives.
 * 4. Two groups that contradict each other are two cars. If one of them, and only one, stands after "off" or "from" or before the
 *    part ("72 heads"), that is where the part comes from, and the other one is at hand. Otherwise it is unclear: it may be either.
 * 5. It is murky where some word was not read and is not known to be harmless, or where both of two sides are named. What then would be
 *    a permission has to hold without these facts as well.
 */
import { AND, CALENDAR, DENYING, DENYING_BEFORE, HARMLESS, LITTLE, RANGE, WITH } from "./little-words.ts";
import type { Chip, Reading } from "./read-question.ts";
import { fold } from "./split.ts";

export interface Said {
  readonly kind: "line" | "year" | "trait";
  readonly ids: readonly string[];
  readonly denied: boolean;
}

export interface CarsSaid {
  readonly car: readonly Said[];
  /** What is said of the car that a part comes from. */
  readonly donor: readonly Said[];
  /** Two cars are spoken of, and it is not clear which of them is the one at hand; `car` holds both as alternatives. */
  readonly unclear: boolean;
  /** The one group that was read stands before the part, or after "off": beside a car that was picked it is the donor. */
  readonly ofPart: boolean;
  /** Not every word was understood, so that the facts may not be what is meant. */
  readonly murky: boolean;
  /** The words that were not understood, folded. */
  readonly unread: readonly string[];
  /** Something was denied that is no fact of the car, or another car is spoken of: nothing that was known before need hold. */
  readonly lost: boolean;
}

interface Fact extends Said {
  readonly at: number;
  readonly end: number;
}

export function carsSaid(reading: Reading): CarsSaid {
  const chips = reading.chips.filter(isOfCar);
  const sentence = new Sentence(reading, chips);
  const facts = sentence.facts();
  const groups = sentence.groups(facts);
  const [first, second, ...more] = contradicting(groups);
  const plain = (some: readonly Fact[]): Said[] => some.map(({ kind, ids, denied }) => ({ kind, ids, denied }));
  const murky = sentence.isMurky() || facts.length < chips.length;
  const unread = sentence.unread();
  const lost = sentence.isLost() || sentence.isOnOther();
  if (!first || !second)
    return {
      car: plain(facts),
      donor: [],
      unclear: false,
      ofPart: groups.some((it) => sentence.isOfPart(it)),
      murky,
      lost,
      unread,
    };
  const ofPart = [first, second].filter((group) => sentence.isOfPart(group));
  const [donor] = ofPart;
  if (more.length > 0 || ofPart.length !== 1 || !donor)
    return { car: plain(facts), donor: [], unclear: true, ofPart: false, murky: true, lost, unread };
  const car = facts.filter((fact) => !donor.includes(fact));
  return { car: plain(car), donor: plain(donor), unclear: false, ofPart: false, murky, lost, unread };
}

/** The chip says something of a car, and not what the question is about. */
export function isOfCar({ kind }: Pick<Chip, "kind">): boolean {
  return kind === "line" || kind === "year" || kind === "trait";
}

/** What a chip of a trait says of which trait; lines and years are traits of their own. */
export function traitSaid({ kind, ids }: Pick<Chip, "kind" | "ids">): string {
  const [id = ""] = ids;
  return kind === "trait" ? id.slice(0, id.indexOf("=")) : kind;
}

function isFlag({ kind, ids }: Pick<Chip, "kind" | "ids">): boolean {
  return kind === "trait" && /=(yes|no)$/.test(ids[0] ?? "");
}

function valueSaid({ ids, denied }: Pick<Said, "ids" | "denied">): string {
  return `${denied ? "not " : ""}${ids.join()}`;
}

type Group = readonly Fact[];

/** Groups that say different things of one trait, in the order of the question. */
function contradicting(groups: readonly Group[]): Group[] {
  return groups.filter((group) =>
    groups.some(
      (other) =>
        other !== group &&
        group.some((a) => other.some((b) => traitSaid(a) === traitSaid(b) && valueSaid(a) !== valueSaid(b))),
    ),
  );
}

const HAND: ReadonlySet<string> = new Set(["on", "in", "into", "onto", "to", "for", "fit", "my", "our", "his", "her"]);
/** Between two facts these begin another car, or may. */
const ALL: ReadonlySet<string> = new Set(
  ["anything", "all", "any", "every", "everything", "nothing", "none"].map(fold),
);
const APART: ReadonlySet<string> = new Set(["on", "in", "into", "onto", "for", "off", "from"]);
const OPPOSITE_SIDES: readonly (readonly [string, string])[] = [
  ["left", "right"],
  ["front", "rear"],
  ["upper", "lower"],
];
const ASKING_NEED = new Set(["need", "needed", "required", "require", "requires", "necessary"]);
const USED = new Set([
  "used",
  "old",
  "new",
  "front",
  "rear",
  "left",
  "right",
  "upper",
  "lower",
  "inner",
  "outer",
  "later",
  "early",
]);

class Sentence {
  readonly #words: readonly string[];
  readonly #chips: readonly Chip[];
  readonly #reading: Reading;
  /** By word: what was read there. */
  readonly #cover = new Map<number, Chip | "asked">();
  readonly #denied = new Map<Chip, boolean>();
  readonly #usedDenials = new Set<number>();

  constructor(reading: Reading, chips: readonly Chip[]) {
    this.#reading = reading;
    this.#words = reading.words;
    this.#chips = chips;
    for (const { at, length } of reading.asked) for (let i = 0; i < length; i++) this.#cover.set(at + i, "asked");
    // The same words may name a system, too; what they say of the car counts here.
    for (const chip of [...reading.chips.filter((it) => !isOfCar(it)), ...chips])
      for (let i = 0; i < chip.length; i++) this.#cover.set(chip.at + i, chip);
    for (const chip of chips) this.#denied.set(chip, this.#isDenied(chip));
  }

  facts(): Fact[] {
    const isLost = this.isLost();
    const isRange = this.#words.some((word, i) => RANGE.has(word) && !this.#cover.has(i) && !this.#isOfThing(i + 1));
    const isDate = this.#words.some((word, i) => CALENDAR.has(word) && !this.#cover.has(i));
    const needIsAsked = this.#words.some((word) => ASKING_NEED.has(word));
    if (isLost) return [];
    return this.#chips
      .filter(
        (chip) =>
          !this.#isDeniedTogether(chip) &&
          !(chip.kind === "year" && (isRange || isDate || this.#isOpenEnd(chip))) &&
          !(isFlag(chip) && (needIsAsked || this.#isAfterDenial(chip))) &&
          !this.#isOpenNumber(chip) &&
          !this.#isWeak(chip),
      )
      .map((chip): Fact => {
        const { ids, at, length } = chip;
        return { kind: chip.kind as Said["kind"], ids, denied: this.#denied.get(chip) ?? false, at, end: at + length };
      });
  }

  /** Some word was not read and is not known to be harmless; or both of two sides are named; or a sign that is no word stands beside a number. */
  isMurky(): boolean {
    const has = (word: string): boolean => this.#words.includes(word);
    const isBothSides = OPPOSITE_SIDES.some(([a, b]) => has(a) && has(b));
    return this.#reading.signs || isBothSides || this.#words.some((_, i) => this.#isUnread(i));
  }

  unread(): string[] {
    return this.#words.filter((_, i) => this.#isUnread(i));
  }

  /** Nothing was read there, and it is not known to be harmless. What stands right before a thing describes it: "unleaded heads". */
  #isUnread(i: number): boolean {
    const word = this.#words[i] as string;
    if (this.#cover.has(i) || this.#usedDenials.has(i) || this.#isOfThing(i + 1)) return false;
    if (this.#reading.figures.some((figure) => figure.split(" ").includes(word))) return false;
    return !HARMLESS.has(word) && !LITTLE.has(word) && !WITH.has(word) && !AND.has(word);
  }

  /** "On a coach": a car that the records do not know. */
  isOnOther(): boolean {
    const words = this.#words;
    return words.some(
      (_, i) =>
        this.#isUnread(i) &&
        ["a", "an", "another"].includes(words[i - 1] ?? "") &&
        ["on", "in", "into", "for", "to", "fit"].includes(words[i - 2] ?? ""),
    );
  }

  /** Facts with nothing but little words between; of two that say different things of one trait only alternatives stay together. */
  groups(facts: readonly Fact[]): Group[] {
    const groups: Fact[][] = [];
    for (const fact of facts) {
      const group = groups.at(-1);
      const last = group?.at(-1);
      const between = last ? this.#words.slice(last.end, fact.at) : [];
      const isJoined = between.every((word) => AND.has(word));
      const isNear =
        !between.some((word) => APART.has(word)) &&
        between.every((word) => AND.has(word) || LITTLE.has(word) || WITH.has(word) || DENYING.has(word));
      const isOther = group?.some((it) => traitSaid(it) === traitSaid(fact) && valueSaid(it) !== valueSaid(fact));
      if (group && isNear && (isJoined || !isOther)) group.push(fact);
      else groups.push([fact]);
    }
    return groups;
  }

  isOfPart(group: Group): boolean {
    const before = this.#wordBefore(group);
    if (before === "off" || before === "from" || before === "out") return true;
    // "The heads of a 75"; but "72 for 75 heads" may be the one in place of the other.
    if (this.#isThingOf(group)) return true;
    return before !== "for" && this.#isOfThing((group.at(-1) as Fact).end);
  }

  #isThingOf([first]: Group): boolean {
    let at = (first?.at ?? 0) - 1;
    while (at >= 0 && ["a", "an", "the"].includes(this.#words[at] as string)) at--;
    const there = this.#words[at] === "of" ? this.#cover.get(at - 1) : undefined;
    return there !== undefined && there !== "asked" && (there.kind === "component" || there.kind === "part");
  }

  /** The word before a group, articles and "of" passed over: "off of a 75". */
  #wordBefore([first]: Group): string {
    let at = (first?.at ?? 0) - 1;
    while (at >= 0 && ["a", "an", "the", "of", "this", "that"].includes(this.#words[at] as string)) at--;
    return this.#words[at] ?? "";
  }

  /** A component or part stands there, perhaps after a word like "front" or "used". */
  #isOfThing(at: number): boolean {
    let i = at;
    if (this.#reading.heads.includes(i)) return false;
    while (USED.has(this.#words[i] ?? "") && !this.#cover.has(i)) i++;
    const there = this.#cover.get(i);
    return there !== undefined && there !== "asked" && (there.kind === "component" || there.kind === "part");
  }

  #isDenied(chip: Chip): boolean {
    let joined = false;
    for (let i = chip.at - 1; i >= 0; i--) {
      const word = this.#words[i] as string;
      const there = this.#cover.get(i);
      if (there !== undefined && there !== "asked" && isOfCar(there)) {
        // A list of what is not there goes on without an "and": "no A/C, no tow package", "without A/C, tow package or …".
        const isList = isFlag(there) && isFlag(chip) && i === chip.at - 1;
        return (joined || isList) && this.#denied.get(there) === true;
      }
      if (there !== undefined) return false;
      // "Anything but a 75" denies; "no A/C but a tow package" begins anew.
      const isBut = word === "but" && ALL.has(this.#words[i - 1] ?? "");
      if (DENYING.has(word) || isBut) {
        this.#usedDenials.add(i);
        return true;
      }
      if (AND.has(word)) joined = true;
      else if (WITH.has(word) && !LITTLE.has(word)) {
        if (!DENYING.has(this.#words[i - 1] ?? "")) return false;
      } else if (!LITTLE.has(word)) return false;
    }
    return false;
  }

  /** A denying word that denies no fact, and no way to ask ("does not fit"). */
  isLost(): boolean {
    return this.#words.some((word, i) => {
      if (DENYING_BEFORE.has(word)) return !this.#cover.has(i);
      if (!DENYING.has(word) || this.#usedDenials.has(i) || this.#cover.has(i)) return false;
      return ![i + 1, i + 2].some((next) => this.#cover.get(next) === "asked");
    });
  }

  /** Something before it is denied, and it is not clear that this is not: no "with" stands between. */
  #isAfterDenial(chip: Chip): boolean {
    if (this.#denied.get(chip)) return false;
    return [...this.#usedDenials].some(
      (at) => at < chip.at && !this.#words.slice(at + 1, chip.at).some((word) => WITH.has(word) && !LITTLE.has(word)),
    );
  }

  /** "Any year to 75": the end of a range without its beginning. */
  #isOpenEnd({ at }: Chip): boolean {
    return ["to", "thru", "through", "than", "by", "till", "until"].includes(this.#words[at - 1] ?? "");
  }

  /** "Before F24501": a number that ends a range tells no single car. */
  #isOpenNumber({ kind, said, at }: Chip): boolean {
    const digits = /\d{3,}$/.exec(said)?.[0];
    if (kind !== "trait" || digits === undefined) return false;
    const before = this.#words[at - 1] ?? "";
    // A plant and its number are two facts of one word.
    const ids = this.#chips.flatMap((chip) => (chip.at === at ? chip.ids : []));
    const isNumber = ids.some((id) => id.endsWith(`=${Number(digits)}`) || /=[A-Z]+\d+$/.test(id));
    // "No L312345" is a number, and no denial.
    return isNumber && (DENYING.has(before) || RANGE.has(before) || ["to", "from", "than"].includes(before));
  }

  /** "Except 75 Herons": the year and the line are denied together, and neither by itself. */
  #isDeniedTogether(chip: Chip): boolean {
    const beside = (one: Chip): Chip | undefined => this.#chips.find(({ at }) => at === one.at + one.length);
    const isHead = (one: Chip): boolean => this.#denied.get(one) === true && !isFlag(one);
    if (isHead(chip)) return beside(chip) !== undefined;
    return this.#chips.some((head) => isHead(head) && beside(head) === chip);
  }

  /** One common word by itself; the proper name of a line and a word with a figure ("294", "V8") are none. */
  #isWeak({ kind, ids, label, said, at, length, readAs }: Chip): boolean {
    if (kind === "year" || /\d/.test(said) || isFlag({ kind, ids })) return false;
    if (kind === "trait" && length > 1) return false;
    if (readAs === undefined && kind === "line" && said.toLowerCase() === label.toLowerCase()) return false;
    const isBeside = (i: number): boolean => {
      const there = this.#cover.get(i);
      return there !== undefined && there !== "asked" && isOfCar(there);
    };
    if (isBeside(at - 1) || isBeside(at + length)) return false;
    // "… on the van", at the end.
    const before = this.#words[at - 1] ?? "";
    const next = this.#words[at + length];
    const isNoun = ["a", "an", "the", "my", "this", "on", "in", "for"].includes(before);
    return !(isNoun && (next === undefined || HAND.has(next) || this.#cover.get(at + length) === "asked"));
  }
}
