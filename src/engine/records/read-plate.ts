/**
 * Reads the number on a plate by the rules in the data.
 *
 * Spaces, dashes, dots, stars and case do not count. Of several plates with numbers of this length the one counts by which it reads best.
 *
 *   A character that cannot stand at its place is a misreading: the answer says which characters can, the ones that look like
 *   it first; of these only those with which some car was built, given what the other, readable characters say, if there are such;
 *   and where the maker uses a check digit, only those with which it is right, if there are such.
 *   A check digit that is wrong is a misreading of some one character: the answer names every single character that would
 *   make it right, of those the ones that look like what was read, if there are such; or it is the digit itself.
 *   A number that can be read, but that no car was built with, is a misreading or a changed car: the answer names every
 *   single character that would make it a car that was built.
 */
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Fact } from "../scope/facts.ts";
import { carsWith } from "../scope/facts.ts";
import { type Ranges, ranges } from "../scope/ranges.ts";
import type { Space } from "../scope/space.ts";
import { numberOf, span, type Trait, writtenValue } from "../scope/trait.ts";
import type { Plate } from "./catalog.ts";
import { checkDigit } from "./check-digit.ts";

export interface PlateSlip {
  /** Which character, counted from 1 without spaces. */
  readonly place: number;
  readonly character: string;
  /** What the place holds: the label of a trait, or the check digit. */
  readonly holds: string;
  readonly couldBe: readonly string[];
}

export type ReadPlate =
  | { readonly as: "read"; readonly plate: Plate; readonly number: string; readonly facts: readonly Fact[] }
  | { readonly as: "misread"; readonly plate: Plate; readonly number: string; readonly slips: readonly PlateSlip[] }
  | {
      readonly as: "not built";
      readonly plate: Plate;
      readonly number: string;
      readonly facts: readonly Fact[];
      readonly slips: readonly PlateSlip[];
    }
  | { readonly as: "unknown"; readonly number: string };

/** Characters that look alike on a worn plate. Common practice, no source. */
const ALIKE = [
  "0ODQ",
  "1IL7T",
  "2Z7",
  "3BE8",
  "4A",
  "5S6",
  "6GB5",
  "8B3",
  "9GP",
  "CG",
  "FEP",
  "KXR",
  "MWN",
  "UV",
  "VY",
];

export function readPlate(space: Space, built: CarSet, plates: readonly Plate[], typed: string): ReadPlate {
  const number = typed.toUpperCase().replaceAll(/[\s.*/_\p{Dash}]/gu, "");
  const reads = plates
    .filter((plate) => lengthOf(plate) === number.length)
    .map((plate) => readBy(space, built, plate, number));
  return (
    ["read", "not built", "misread"].flatMap((as) => reads.find((read) => read.as === as) ?? [])[0] ?? {
      as: "unknown",
      number,
    }
  );
}

function readBy(space: Space, built: CarSet, plate: Plate, number: string): ReadPlate {
  const slips = slipsIn(space, plate, number).map((slip) => withBuilt(space, built, plate, number, slip));
  if (slips.length === 1 && checkDigitOf(plate, number) !== undefined)
    return { as: "misread", plate, number, slips: slips.map((slip) => withCheckDigit(plate, number, slip)) };
  if (slips.length > 0) return { as: "misread", plate, number, slips };
  if (!isChecked(plate, number))
    return { as: "misread", plate, number, slips: changesThatCheck(space, built, plate, number) };
  const facts = factsOf(space, plate, number);
  if (carsWith(space, built, facts) !== NONE) return { as: "read", plate, number, facts };
  return { as: "not built", plate, number, facts, slips: changesThatHelp(space, built, plate, number) };
}

/** How many characters the number on a plate has. */
export function lengthOf(plate: Plate): number {
  return plate.positions.reduce((sum, position) => sum + position.length, 0);
}

interface Cut {
  readonly trait: Trait;
  readonly index: number;
  readonly at: number;
  readonly text: string;
  readonly codes: Readonly<Record<string, string | number>> | undefined;
}

/** The number cut at the plate's positions; those without a trait are passed over. */
function cut(space: Space, plate: Plate, number: string): Cut[] {
  let at = 0;
  return plate.positions.flatMap((position) => {
    const index = position.trait === undefined ? undefined : space.find(position.trait);
    const text = number.slice(at, at + position.length);
    const piece = { at, text, codes: position.codes };
    at += position.length;
    return index === undefined ? [] : [{ ...piece, index, trait: space.trait(index) }];
  });
}

function valueIn({ trait, codes }: Cut, text: string): number | undefined {
  if (codes === undefined) {
    if (trait.kind === "list") {
      const exact = trait.values.findIndex((value) => value.id.toUpperCase() === text);
      return exact >= 0 ? exact : undefined;
    }
    return numberOf(trait, text);
  }
  const code = Object.entries(codes).find(([written]) => written.toUpperCase() === text)?.[1];
  return code === undefined ? undefined : numberOf(trait, String(code));
}

/** The characters that cannot stand where they stand. None means that every piece of the number has a value. */
function slipsIn(space: Space, plate: Plate, number: string): PlateSlip[] {
  return cut(space, plate, number).flatMap((piece): PlateSlip[] => {
    if (valueIn(piece, piece.text) !== undefined) return [];
    const characters = [...piece.text];
    const slip = (i: number, couldBe: readonly string[]): PlateSlip => {
      const character = characters[i] as string;
      return { place: piece.at + i + 1, character, holds: piece.trait.label, couldBe: likelyFirst(character, couldBe) };
    };
    const strange = characters.flatMap((character, i) => {
      const couldBe = charactersAt(piece, i);
      return couldBe.includes(character) ? [] : [slip(i, couldBe)];
    });
    if (strange.length > 0) return strange;
    // Each character could stand there, but not these together: a number out of range, half of each of two codes.
    const single = characters.flatMap((character, i) => {
      const couldBe = charactersAt(piece, i).filter(
        (other) => other !== character && valueIn(piece, changed(piece.text, i + 1, other)) !== undefined,
      );
      return couldBe.length > 0 ? [slip(i, couldBe)] : [];
    });
    return single.length > 0 ? single : characters.map((_, i) => slip(i, []));
  });
}

/** Only the characters with which some car was built, given the readable characters; all of them if there is none. */
function withBuilt(space: Space, built: CarSet, plate: Plate, number: string, slip: PlateSlip): PlateSlip {
  const pieces = cut(space, plate, number);
  const piece = pieces.find(({ at, text }) => at < slip.place && slip.place <= at + text.length) as Cut;
  const readable = factsOf(space, plate, number).filter((fact) => fact.trait !== piece.index);
  const cars = carsWith(space, built, readable);
  const right = slip.couldBe.filter((other) =>
    space.sets.meet(cars, space.where(piece.index, valuesWith(piece, slip.place - piece.at - 1, other))),
  );
  return right.length > 0 ? { ...slip, couldBe: right } : slip;
}

/**
 * What a piece may say with this character at one place, its other readable characters as they are. A number of which more than
 * one figure was misread may be any from the lowest to the highest.
 */
function valuesWith(piece: Cut, i: number, character: string): Ranges {
  const text = changed(piece.text, i + 1, character);
  const isUnread = [...text].map((one, at) => at !== i && !charactersAt(piece, at).includes(one));
  const written = codesOf(piece);
  if (written === undefined) {
    const filled = (figure: string): number =>
      Number([...text].map((one, at) => (isUnread[at] ? figure : one)).join(""));
    const [from, to] = span(piece.trait);
    const [low, high] = [Math.max(from, filled("0")), Math.min(to, filled("9"))];
    return low <= high ? [[low, high]] : [];
  }
  const codes = written.filter((code) => [...code].every((one, at) => isUnread[at] || one === text[at]));
  return ranges(
    codes.flatMap((code): [number, number][] => {
      const value = valueIn(piece, code);
      return value === undefined ? [] : [[value, value]];
    }),
  );
}

/** The ninth place of 17 is the check digit's, where the maker uses it. */
const CHECK_PLACE = 9;

function checkDigitOf(plate: Plate, number: string): string | undefined {
  return plate["check-digit"] === "none" ? undefined : checkDigit(number);
}

function isChecked(plate: Plate, number: string): boolean {
  const wanted = checkDigitOf(plate, number);
  return wanted === undefined || wanted === number[CHECK_PLACE - 1];
}

function withCheckDigit(plate: Plate, number: string, slip: PlateSlip): PlateSlip {
  const right = slip.couldBe.filter((other) => isChecked(plate, changed(number, slip.place, other)));
  return right.length > 0 ? { ...slip, couldBe: right } : slip;
}

function changed(number: string, place: number, character: string): string {
  return number.slice(0, place - 1) + character + number.slice(place);
}

/** Every single character that would make the check digit right, with a car that was built; last the digit itself. */
function changesThatCheck(space: Space, built: CarSet, plate: Plate, number: string): PlateSlip[] {
  const slips = changesThatHelp(space, built, plate, number);
  const alike = slips
    .map((slip) => ({ ...slip, couldBe: slip.couldBe.filter((other) => looksLike(slip.character, other)) }))
    .filter((slip) => slip.couldBe.length > 0);
  const wanted = checkDigitOf(plate, number) as string;
  const digit = {
    place: CHECK_PLACE,
    character: number[CHECK_PLACE - 1] as string,
    holds: "check digit",
    couldBe: [wanted],
  };
  return [...(alike.length > 0 ? alike : slips), digit];
}

/** Which characters may stand at one place of a piece. */
function charactersAt(piece: Cut, i: number): string[] {
  const written = codesOf(piece);
  if (written === undefined) return [..."0123456789"];
  return [...new Set(written.map((code) => code[i] as string))].sort();
}

/** The codes that a piece can be; none where it is a number. */
function codesOf({ trait, codes, text }: Cut): string[] | undefined {
  const written =
    codes !== undefined
      ? Object.keys(codes)
      : trait.kind === "list"
        ? trait.values.map((value) => value.id)
        : undefined;
  return written?.filter((code) => code.length === text.length).map((code) => code.toUpperCase());
}

export function looksLike(character: string, other: string): boolean {
  return ALIKE.some((group) => group.includes(character) && group.includes(other));
}

function likelyFirst(character: string, others: readonly string[]): string[] {
  return [
    ...others.filter((other) => looksLike(character, other)),
    ...others.filter((other) => !looksLike(character, other)),
  ];
}

/** What the pieces say that can be read. */
function factsOf(space: Space, plate: Plate, number: string): Fact[] {
  return cut(space, plate, number).flatMap((piece): Fact[] => {
    const value = valueIn(piece, piece.text);
    if (value === undefined) return [];
    const text = `${piece.trait.id}=${writtenValue(piece.trait, value)}`;
    return [{ trait: piece.index, values: [[value, value]], source: "plate", text }];
  });
}

/** Every other character at one place with which the number is right, and that of a car that was built. */
function changesThatHelp(space: Space, built: CarSet, plate: Plate, number: string): PlateSlip[] {
  return cut(space, plate, number).flatMap((piece) =>
    [...piece.text].flatMap((character, i): PlateSlip[] => {
      const place = piece.at + i + 1;
      const helps = charactersAt(piece, i).filter((other) => {
        if (other === character) return false;
        const better = changed(number, place, other);
        return (
          isChecked(plate, better) &&
          slipsIn(space, plate, better).length === 0 &&
          carsWith(space, built, factsOf(space, plate, better)) !== NONE
        );
      });
      return helps.length > 0
        ? [{ place, character, holds: piece.trait.label, couldBe: likelyFirst(character, helps) }]
        : [];
    }),
  );
}
