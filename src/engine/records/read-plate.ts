/**
 * Reads the number on a plate by the rules in the data.
 *
 * Spaces, dashes and case do not count. A character that cannot stand at its place is a misreading: the answer says which
 * characters can, the ones that look like it first. A number that can be read, but that no car was built with, is also a
 * misreading or a changed car: the answer names every single character that would make it a car that was built.
 */
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Fact } from "../scope/facts.ts";
import { carsWith } from "../scope/facts.ts";
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
  const number = typed.toUpperCase().replaceAll(/[^A-Z0-9]/g, "");
  const plate = plates.find((one) => lengthOf(one) === number.length);
  if (!plate) return { as: "unknown", number };
  const slips = slipsIn(space, plate, number);
  if (slips.length > 0) return { as: "misread", plate, number, slips };
  const facts = factsOf(space, plate, number);
  if (carsWith(space, built, facts) !== NONE) return { as: "read", plate, number, facts };
  return { as: "not built", plate, number, facts, slips: changesThatHelp(space, built, plate, number) };
}

function lengthOf(plate: Plate): number {
  return plate.positions.reduce((sum, position) => sum + position.length, 0);
}

interface Cut {
  readonly trait: Trait;
  readonly index: number;
  readonly at: number;
  readonly text: string;
  readonly codes: Readonly<Record<string, string | number>> | undefined;
}

/** The number cut at the plate's positions. A position whose trait the data does not declare was refused when it was read. */
function cut(space: Space, plate: Plate, number: string): Cut[] {
  let at = 0;
  return plate.positions.flatMap((position) => {
    const index = space.find(position.trait);
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

function slipsIn(space: Space, plate: Plate, number: string): PlateSlip[] {
  const slips = cut(space, plate, number).flatMap((piece): PlateSlip[] => {
    if (valueIn(piece, piece.text) !== undefined) return [];
    return [...piece.text].flatMap((character, i) => {
      const couldBe = charactersAt(piece, i).filter((other) => other !== character);
      const fits = charactersAt(piece, i).includes(character);
      return fits && piece.text.length > 1
        ? []
        : [{ place: piece.at + i + 1, character, holds: piece.trait.label, couldBe: likelyFirst(character, couldBe) }];
    });
  });
  const wanted = plate["check-digit"] === "none" ? undefined : checkDigit(number);
  if (wanted !== undefined && wanted !== number[8])
    slips.push({ place: 9, character: number[8] ?? "", holds: "check digit", couldBe: [wanted] });
  return slips;
}

/** Which characters may stand at one place of a piece. */
function charactersAt({ trait, codes, text }: Cut, i: number): string[] {
  const written =
    codes !== undefined
      ? Object.keys(codes)
      : trait.kind === "list"
        ? trait.values.map((value) => value.id)
        : undefined;
  if (written === undefined) return [..."0123456789"];
  return [
    ...new Set(written.filter((code) => code.length === text.length).map((code) => code.toUpperCase()[i] as string)),
  ].sort();
}

function likelyFirst(character: string, others: readonly string[]): string[] {
  const looks = (other: string): boolean => ALIKE.some((group) => group.includes(character) && group.includes(other));
  return [...others.filter(looks), ...others.filter((other) => !looks(other))];
}

function factsOf(space: Space, plate: Plate, number: string): Fact[] {
  return cut(space, plate, number).map((piece) => {
    const value = valueIn(piece, piece.text) ?? span(piece.trait)[0];
    return {
      trait: piece.index,
      values: [[value, value]],
      source: "plate",
      text: `${piece.trait.id}=${writtenValue(piece.trait, value)}`,
    };
  });
}

/** Every other character at one place with which the number is that of a car that was built. */
function changesThatHelp(space: Space, built: CarSet, plate: Plate, number: string): PlateSlip[] {
  return cut(space, plate, number).flatMap((piece) =>
    [...piece.text].flatMap((character, i): PlateSlip[] => {
      const helps = charactersAt(piece, i).filter((other) => {
        if (other === character) return false;
        const changed = number.slice(0, piece.at + i) + other + number.slice(piece.at + i + 1);
        return (
          slipsIn(space, plate, changed).length === 0 && carsWith(space, built, factsOf(space, plate, changed)) !== NONE
        );
      });
      return helps.length > 0
        ? [{ place: piece.at + i + 1, character, holds: piece.trait.label, couldBe: likelyFirst(character, helps) }]
        : [];
    }),
  );
}
