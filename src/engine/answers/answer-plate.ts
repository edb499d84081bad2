/** "What does the number on this plate say?" */

import type { Catalog } from "../records/catalog.ts";
import { lengthOf, readPlate } from "../records/read-plate.ts";
import { list } from "../scope/describe.ts";
import { conflict } from "../scope/facts.ts";
import { sayFact } from "./look.ts";
import type { PlateAnswer } from "./shapes/plate.ts";

export function answerPlate(
  { catalog: { space, buildable, plates } }: { catalog: Pick<Catalog, "space" | "buildable" | "plates"> },
  typed: string,
): PlateAnswer {
  const read = readPlate(space, buildable, plates, typed);
  const base = { question: "plate" as const, because: [], number: read.number, verdict: read.as };
  if (read.as === "unknown")
    return {
      ...base,
      facts: [],
      slips: [],
      ask: {
        what: `${sayLengths(plates)}; this has ${read.number.length}. Read it again.`,
        options: plates.map((plate) => `${plate.name}, such as ${plate.example}`),
      },
    };
  const facts = read.as === "misread" ? [] : read.facts.map((fact) => sayFact(space, fact));
  if (read.as === "read") return { ...base, plate: read.plate.name, facts, slips: [] };
  const slips = read.slips.map((slip) => ({ ...slip, couldBe: [...slip.couldBe] }));
  const ask = {
    what:
      read.as === "misread"
        ? "Read the marked characters again."
        : "No car was built with this number: read it again, or the car is no longer as built.",
    options: slips.map(
      (slip) => `character ${slip.place} (${slip.holds}): ${slip.couldBe.join(", ")} in place of ${slip.character}`,
    ),
  };
  const clash =
    read.as === "not built" ? conflict(space, buildable, read.facts).map((fact) => sayFact(space, fact)) : [];
  return { ...base, plate: read.plate.name, facts, slips, ask, ...(clash.length > 0 ? { conflict: clash } : {}) };
}

function sayLengths(plates: Catalog["plates"]): string {
  return `The number on a plate has ${list([...new Set(plates.map(lengthOf))].sort((a, b) => a - b).map(String), "or")} characters`;
}
