import { fitsAt, mayBeFitted } from "../../interchange/fits.ts";
import { isPermission, type PartIndex } from "../../interchange/part-index.ts";
import { isOtherHand, placesToAsk } from "../../interchange/places.ts";
import { nothingReported } from "../../interchange/reported.ts";
import type { StandsIn } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { partsIn } from "../parts-in.ts";
import { placeOf } from "../place-of.ts";
import { reachedBy } from "../reached-by.ts";
import type { Rule } from "../rule.ts";

/**
 * What the instruction of a permission names beside the two parts and what goes along is not refused on the cars that it is about, in
 * every place that it has there. What is to be taken off, or not to be used, may be. The words are English: instructions of other
 * languages are left alone.
 */
export const toldToFitRefused: Rule = {
  id: "told-to-fit-refused",
  gravity: "warning",
  about: "An instruction names no part that must not be used on the same cars.",
  why: "Who does what it says fits the refused part; only what stands under 'with' is looked at.",
  mend: "Name the part under 'with', where it belongs to the set; else mend the number, or say it in other words.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-290, for: HT-201, verdict: on-conditions, do: Fit HT-101 too., scope: line=B; my=1960 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-290, for: HT-201, verdict: on-conditions, do: Never fit HT-101., scope: line=B; my=1960 }",
      ],
    },
  },
  *find({ catalog, index }) {
    if (!/^en\b/.test(catalog.maker.language)) return;
    for (const statements of index.standInsOf.values())
      for (const it of statements) {
        if (it.do === undefined || !isPermission(it)) continue;
        const named = partsIn(catalog, it.do).filter(
          ({ number, from }) => !isOfTheSet(index, it, number) && !isTakenOff(it.do as string, from, number),
        );
        for (const { number, from } of named) {
          const { cars, by } = refusedOn(index, number, reachedBy(index, it));
          if (cars === NONE) continue;
          yield {
            at: { ...placeOf(catalog, it, "do"), within: [from, from + number.length] },
            message: `${number} is named in what is to be done, and is refused on these cars: ${[...by].map((one) => `${one.record} (${one.why ?? one.verdict})`).join("; ")}`,
            hint: `name ${number} under 'with', where it belongs to the set; else mend the number`,
            records: [it.record, ...[...by].map(({ record }) => record)],
            names: [it.part, number],
            also: [...by].map((one) => ({
              ...placeOf(catalog, one),
              message: `refused here in place of ${one.for ?? "nothing"}`,
            })),
            cars,
          };
        }
      }
  },
};

function isOfTheSet({ contentsOf }: PartIndex, it: StandsIn, number: string): boolean {
  const set = [it.part, ...it.with];
  return (
    [...set, it.for].includes(number) || set.some((one) => contentsOf.get(one)?.some(({ part }) => part === number))
  );
}

const NOT_FITTED =
  /\b(?:not|never|no|nor|without|instead of|in place of|rather than|remove|discard|scrap|throw|drain|unbolt|unscrew|old|(?:take|taken|taking|cut|pull|press|leave) (?:out|off|away)|figures? (?:of|for))\b/i;

/** Whether its clause says that it comes off or is not to be used. */
function isTakenOff(text: string, from: number, number: string): boolean {
  const before =
    text
      .slice(0, from)
      .split(/[.;:,]\s/)
      .at(-1) ?? "";
  const after = text.slice(from + number.length);
  return NOT_FITTED.test(before) || /^ (?:out|off|away|figures?|must not|does not|is not)\b/i.test(after);
}

/** The cars on which a part may go on nowhere, and is refused in a place of its own side. */
function refusedOn(index: PartIndex, part: string, cars: CarSet): { cars: CarSet; by: ReadonlySet<StandsIn> } {
  const { sets } = index.space;
  const fits = placesToAsk(index, part)
    .filter((place) => place === undefined || !isOtherHand(index, part, place))
    .flatMap((place) => fitsAt(index, { part, place, cars, on: nothingReported() }));
  const may = index.space.any(fits.filter(({ verdict }) => mayBeFitted(verdict)).map((fit) => fit.cars));
  const refused = fits.filter(({ verdict, cars: its }) => isRefusal(verdict) && sets.minus(its, may) !== NONE);
  return {
    cars: sets.minus(index.space.any(refused.map((fit) => fit.cars)), may),
    by: new Set(refused.flatMap(({ refusals }) => refusals.filter((it) => !isPermission(it)))),
  };
}

function isRefusal(verdict: ReturnType<typeof fitsAt>[number]["verdict"]): boolean {
  return verdict === "does not go on" || verdict === "goes on but must not be used";
}
