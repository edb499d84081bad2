/**
 * Numbers that tell which car it is: a sequence number with the letter of its plant (F24817), a component's own number with its letter
 * (R214900), and a number without a letter where the trait was named just before ("transmission serial 47199").
 */
import type { Space } from "../scope/space.ts";
import type { Serial } from "./serial-shape.ts";
import { fold, split } from "./split.ts";

export function serialsOf(space: Space): Serial[] {
  const [plantAt, sequenceAt] = [space.role("plant"), space.role("sequence")];
  const plant = plantAt === undefined ? undefined : space.trait(plantAt);
  return space.declared.flatMap((trait, at): Serial[] => {
    const called = [trait.label, ...trait.aliases].flatMap((name) => split(name).map(fold));
    const base = { trait: trait.id, label: trait.label, called };
    if (trait.kind === "serial")
      return [{ ...base, prefixes: [...trait.prefixes], digits: trait.digits, from: 0, to: 10 ** trait.digits - 1 }];
    if (trait.kind !== "whole" || trait.role === "year") return [];
    const digits = String(trait.to).length;
    const { from, to } = trait;
    if (at === sequenceAt && plant?.kind === "list")
      return [{ ...base, prefixes: plant.values.map(({ id }) => id), letter: plant.id, digits, from, to }];
    return [{ ...base, prefixes: [], digits, from, to }];
  });
}

/** The facts that a word is, one for each trait; nothing where it is no such number. */
export function serialAt(words: readonly string[], at: number, serials: readonly Serial[]) {
  const [, letter = "", digits = ""] = /^([a-z]*)(\d{4,})$/i.exec(words[at] ?? "") ?? [];
  if (digits === "") return undefined;
  const before = words.slice(Math.max(0, at - 3), at).map(fold);
  for (const serial of serials) {
    const number = Number(digits);
    if (digits.length !== serial.digits || number < serial.from || number > serial.to) continue;
    if (serial.prefixes.length === 0) {
      if (letter !== "" || !before.some((word) => serial.called.includes(word))) continue;
      return [{ id: `${serial.trait}=${number}`, label: `${serial.label} ${number}` }];
    }
    const prefix = serial.prefixes.find((it) => it === letter.toUpperCase());
    if (prefix === undefined) continue;
    if (serial.letter === undefined)
      return [{ id: `${serial.trait}=${prefix}${digits}`, label: `${serial.label} ${prefix}${digits}` }];
    return [
      { id: `${serial.letter}=${prefix}`, label: `${serial.letter} ${prefix}` },
      { id: `${serial.trait}=${number}`, label: `${serial.label} ${number}` },
    ];
  }
  return undefined;
}
