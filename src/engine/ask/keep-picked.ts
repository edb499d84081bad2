/** What is left of a reading once the reader has taken chips away, or chosen one of several meanings. */
import type { Chip, Reading } from "./read-question.ts";

export interface Picks {
  /** Chips that were taken away, by the words they were read from. */
  readonly without: readonly string[];
  /** By the words of a chip, the one id that is meant. */
  readonly meant: Readonly<Record<string, string>>;
}

export const NO_PICKS: Picks = { without: [], meant: {} };

export function keepPicked(reading: Reading, { without, meant }: Picks): Reading {
  return {
    ...reading,
    chips: reading.chips.filter(({ said }) => !without.includes(said)).map((chip) => narrowed(chip, meant[chip.said])),
    asked: reading.asked.filter(({ said }) => !without.includes(said)),
  };
}

function narrowed(chip: Chip, id: string | undefined): Chip {
  const only = chip.options?.find((option) => option.id === id);
  return only ? { ...chip, ids: [only.id], label: only.label } : chip;
}
