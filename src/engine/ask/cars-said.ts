/**
 * What a question says of cars, and of which one. A permission rests on this, so what is not plainly said is not taken for said.
 *
 * 1. A fact is what a chip of line, year or trait names. It is denied where a denying word stands before it ("without the tow
 *    package", "not a 75"), with little words between, or joined by and/or to one that is denied.
 * 2. It is in doubt, and then nothing is taken from it:
 *      everything, where a denying word stands that denies no fact and no way to ask ("hitch removed");
 *      what is denied together with what follows it ("except 75 Herons" are neither all of the 75s nor all Herons);
 *      years, where a word for a range stands that no year was read with, or a month or "registered": then it may be the year after, too;
 *      yes/no facts, where it is asked whether they are needed;
 *      a common word of one kind ("four", "compact", "manual") that stands by itself, not beside another fact.
 * 3. Facts that stand together are one group; "and", "or" or nothing between two of one kind makes them alternatives.
 * 4. Two groups that contradict each other are two cars. One is where a part comes from: what stands after "off" or "from", or before
 *    the part ("72 heads"). The other is the car at hand: what stands after "on", "in", "for", "my", or before "take", "use", "need".
 *    Where that does not decide, it is unclear, and the car at hand may be either.
 */
import { AND, CALENDAR, DENYING, LITTLE, RANGE, WITH } from "./little-words.ts";
import type { Chip, Reading } from "./read-question.ts";

export interface Said {
  readonly kind: "line" | "year" | "trait";
  readonly ids: readonly string[];
  readonly denied: boolean;
  /** A year of the calendar: the model year may be the one after. */
  readonly calendar: boolean;
}

export interface CarsSaid {
  readonly car: readonly Said[];
  /** What is said of the car that a part comes from. */
  readonly donor: readonly Said[];
  /** Two cars are spoken of, and it is not clear which of them is the one at hand; `car` holds both as alternatives. */
  readonly unclear: boolean;
  /** The one group that was read stands before the part, or after "off": beside a car that was picked it is the donor. */
  readonly ofPart: boolean;
  /** Something was said of the car that could not be taken for certain. */
  readonly doubt: boolean;
}

interface Fact extends Said {
  readonly at: number;
  readonly end: number;
}

export function carsSaid(reading: Reading): CarsSaid {
  const chips = reading.chips.filter(isOfCar);
  const sentence = new Sentence(reading, chips);
  const { facts, doubt } = sentence.facts();
  const groups = sentence.groups(facts);
  const [first, second, ...more] = contradicting(groups);
  const plain = (some: readonly Fact[]): Said[] => some.map(({ at: _, end: __, ...said }) => said);
  const ofPart = groups.some((group) => sentence.isOfPart(group));
  if (!first || !second) return { car: plain(facts), donor: [], unclear: false, ofPart, doubt };
  const roles = more.length === 0 ? rolesOf(sentence, first, second) : undefined;
  if (!roles) return { car: plain(facts), donor: [], unclear: true, ofPart: false, doubt };
  const car = facts.filter((fact) => !roles.donor.includes(fact));
  return { car: plain(car), donor: plain(roles.donor), unclear: false, ofPart: false, doubt };
}

function isOfCar({ kind }: Chip): boolean {
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

type Group = readonly Fact[];

/** Groups that say different things of one trait, in the order of the question. */
function contradicting(groups: readonly Group[]): Group[] {
  return groups.filter((group) =>
    groups.some(
      (other) =>
        other !== group &&
        group.some((a) => other.some((b) => traitSaid(a) === traitSaid(b) && a.ids.join() !== b.ids.join())),
    ),
  );
}

function rolesOf(sentence: Sentence, first: Group, second: Group): { donor: Group } | undefined {
  const [a, b] = [sentence.signOf(first), sentence.signOf(second)];
  if (a === "part" && b !== "part") return { donor: first };
  if (b === "part" && a !== "part") return { donor: second };
  if (a === "hand" && b === undefined) return { donor: second };
  if (b === "hand" && a === undefined) return { donor: first };
  return undefined;
}

const TAKING = new Set([
  "take",
  "takes",
  "accept",
  "accepts",
  "use",
  "uses",
  "using",
  "have",
  "has",
  "need",
  "get",
  "want",
  "run",
]);
const HAND = new Set(["on", "in", "into", "onto", "to", "for", "fit", "my", "our", "his", "her"]);
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
  /** By word: what was read there. */
  readonly #cover = new Map<number, Chip | "asked">();
  readonly #denied = new Map<Chip, boolean>();
  readonly #usedDenials = new Set<number>();

  constructor(reading: Reading, chips: readonly Chip[]) {
    this.#words = reading.words;
    this.#chips = chips;
    for (const { at, length } of reading.asked) for (let i = 0; i < length; i++) this.#cover.set(at + i, "asked");
    // The same words may name a system, too; what they say of the car counts here.
    for (const chip of [...reading.chips.filter((it) => !isOfCar(it)), ...chips])
      for (let i = 0; i < chip.length; i++) this.#cover.set(chip.at + i, chip);
    for (const chip of chips) this.#denied.set(chip, this.#isDenied(chip));
  }

  facts(): { facts: Fact[]; doubt: boolean } {
    const isLost = this.#hasLostDenial();
    const rangeIsLost = this.#words.some(
      (word, i) => RANGE.has(word) && !this.#cover.has(i) && !this.#isOfThing(i + 1),
    );
    const needIsAsked = this.#words.some((word) => ASKING_NEED.has(word)) && !this.#hasPossessive();
    const calendar = this.#words.some((word, i) => CALENDAR.has(word) && !this.#cover.has(i));
    const kept = this.#chips.filter(
      (chip) =>
        !isLost &&
        !this.#isDeniedTogether(chip) &&
        !(chip.kind === "year" && rangeIsLost) &&
        !(isFlag(chip) && needIsAsked) &&
        !this.#isOpenNumber(chip) &&
        !this.#isWeak(chip),
    );
    const facts = kept.map(({ kind, ids, at, length }, i): Fact => {
      const denied = this.#denied.get(kept[i] as Chip) ?? false;
      return { kind: kind as Said["kind"], ids, denied, calendar: kind === "year" && calendar, at, end: at + length };
    });
    return { facts, doubt: kept.length < this.#chips.length || isLost };
  }

  /** Facts with nothing but little words between; of two that say different things of one trait only alternatives stay together. */
  groups(facts: readonly Fact[]): Group[] {
    const groups: Fact[][] = [];
    for (const fact of facts) {
      const group = groups.at(-1);
      const last = group?.at(-1);
      const between = last ? this.#words.slice(last.end, fact.at) : [];
      const isJoined = between.every((word) => AND.has(word));
      const isNear = between.every((word) => AND.has(word) || LITTLE.has(word) || WITH.has(word) || DENYING.has(word));
      const isOther = group?.some((it) => traitSaid(it) === traitSaid(fact) && it.ids.join() !== fact.ids.join());
      if (group && isNear && (isJoined || !isOther)) group.push(fact);
      else groups.push([fact]);
    }
    return groups;
  }

  signOf(group: Group): "part" | "hand" | undefined {
    if (this.isOfPart(group)) return this.#isStrictlyAtHand(group) ? undefined : "part";
    const next = this.#words[(group.at(-1) as Fact).end] ?? "";
    return HAND.has(this.#wordBefore(group)) || TAKING.has(next) ? "hand" : undefined;
  }

  isOfPart(group: Group): boolean {
    const before = this.#wordBefore(group);
    if (before === "off" || before === "from" || before === "out") return true;
    return this.#isOfThing((group.at(-1) as Fact).end);
  }

  /** "On my 72 heads" is both, and so neither. */
  #isStrictlyAtHand(group: Group): boolean {
    return ["on", "in", "into", "onto", "my", "our"].includes(this.#wordBefore(group));
  }

  /** The word before a group, articles and "of" passed over: "off of a 75". */
  #wordBefore([first]: Group): string {
    let at = (first?.at ?? 0) - 1;
    while (at >= 0 && ["a", "an", "the", "of", "this", "that"].includes(this.#words[at] as string)) at--;
    return this.#words[at] ?? "";
  }

  /** A component, part or system stands there, perhaps after a word like "front" or "used". */
  #isOfThing(at: number): boolean {
    let i = at;
    while (USED.has(this.#words[i] ?? "") && !this.#cover.has(i)) i++;
    const there = this.#cover.get(i);
    return (
      there !== undefined &&
      there !== "asked" &&
      (there.kind === "component" || there.kind === "part" || there.kind === "system")
    );
  }

  #isDenied(chip: Chip): boolean {
    let joined = false;
    for (let i = chip.at - 1; i >= 0; i--) {
      const word = this.#words[i] as string;
      const there = this.#cover.get(i);
      if (there !== undefined && there !== "asked" && isOfCar(there)) {
        if (joined && this.#denied.get(there)) return true;
        return false;
      }
      if (there !== undefined) return false;
      if (DENYING.has(word)) {
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
  #hasLostDenial(): boolean {
    return this.#words.some((word, i) => {
      if (!DENYING.has(word) || this.#usedDenials.has(i) || this.#cover.has(i)) return false;
      return ![i + 1, i + 2].some((next) => this.#cover.get(next) === "asked");
    });
  }

  /** "Before F24501": a number that ends a range tells no single car. */
  #isOpenNumber({ kind, ids, at }: Chip): boolean {
    const before = this.#words[at - 1] ?? "";
    return (
      kind === "trait" &&
      /=[A-Z]?\d{4,}$/.test(ids[0] ?? "") &&
      (RANGE.has(before) || ["to", "from", "than"].includes(before))
    );
  }

  #hasPossessive(): boolean {
    return this.#words.some((word) => word === "my" || word === "i");
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
