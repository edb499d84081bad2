/**
 * How a part stands to a place, for cars known in part. The cars are cut into pieces with one verdict each.
 *
 *   Where the plant fitted the part: *as built*, unless it was taken back there (`taken-back.ts`).
 *   Elsewhere what the records say of it in place of what belongs there decides (`stands-for.ts`).
 *   A part that was seen in that place overrules: what is asked must be right in place of that part too, and the worse verdict
 *   counts. A part that may be there, or may have come with another one, makes a piece of its own: only a look tells.
 *   A part on the car that nothing permits there makes doubtful what goes with the one that ought to be there.
 *   A way is open where all that must go along can go on too (`companions.ts`). Where every shortest chain is closed, longer
 *   ones are followed; where none is open, what closes them is the answer.
 *   No statement permits a part for one hand on the other side, nor one for an empty place where it is not on record what
 *   belongs.
 */
import { type Built, idOf, type Mixed, type StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { type Belonging, type Belongs, belongsAt, isPart, partIn, settledBy } from "./belongs.ts";
import { oneOfEach } from "./companion-standing.ts";
import { type Found, nothingFound, type Way, withCompanions } from "./companions.ts";
import { broughtAlong } from "./inside.ts";
import { isPermission, type PartIndex, whereHolds } from "./part-index.ts";
import { isOtherHand } from "./places.ts";
import type { Reported } from "./reported.ts";
import { type Chain, isPermitted, isPlain, STANDS, sayRefusal, standsFor } from "./stands-for.ts";
import { cutByTakenBack } from "./taken-back.ts";

/** Worst first. */
export const FITS = [...STANDS, "as built"] as const;
export type FitVerdict = (typeof FITS)[number];

export interface Fit {
  readonly verdict: FitVerdict;
  readonly cars: CarSet;
  readonly belonging: Belonging;
  /** Who says what belongs there. */
  readonly because: readonly (Built | Mixed)[];
  /** The open ways, best first. One is enough. */
  readonly ways: readonly Way[];
  /** Where it may not be fitted: who refuses it, or what must go along; nobody where nothing is on record. */
  readonly refusals: readonly StandsIn[];
}

export interface FitQuestion {
  readonly part: string;
  /** Left out for a part of which no record names a place. */
  readonly place: string | undefined;
  readonly cars: CarSet;
  readonly on: Reported;
}

/** Cars are in several pieces where only a look at the part in the place tells which one counts. */
export function fitsAt(index: PartIndex, question: FitQuestion): Fit[] {
  const { part, place, cars, on } = question;
  const seen = place === undefined ? [] : (on.at.get(place) ?? []);
  const belongs: readonly Belongs[] =
    place === undefined
      ? [{ belonging: { what: "nothing" }, cars, because: [] }]
      : settledBy(index.space, belongsAt(index, place, cars), seen);
  const certain = belongs
    .flatMap((it) => fitsWhere(index, question, it, seen))
    .flatMap((fit) => [fit, ...whereMisfit(part, fit, on), ...whereForeign(index, question, fit)]);
  if (place === undefined) {
    const refusals = refusalsByName(index, question);
    return certain.map((fit) => (fit.verdict === "not on record" ? { ...fit, refusals } : fit));
  }
  const perhaps = (on.perhapsAt.get(place) ?? []).filter((it) => it !== part && !seen.includes(it));
  const possible = perhaps.flatMap((other) =>
    belongs.flatMap((it) => (isPart(it.belonging, other) ? [] : fitsWhere(index, question, it, [...seen, other]))),
  );
  const inside = broughtAlong(index, place, on).flatMap(({ belonging, because, isMisfit }) =>
    belongs
      .filter((it) => !isPart(it.belonging, partIn(belonging)))
      .flatMap((it) => fitsWhere(index, question, { ...it, belonging, because }, []))
      // From a unit that ought not to be there follows doubt, never a permission.
      .filter((fit) => !(isMisfit && mayBeFitted(fit.verdict))),
  );
  return distinct(index, [...certain, ...[...possible, ...inside].filter((fit) => isAnother(index, fit, certain))]);
}

/** Pieces that say the same of the same are one. */
function distinct({ space }: PartIndex, fits: readonly Fit[]): Fit[] {
  const found = new Map<string, Fit>();
  for (const fit of fits) {
    const key = JSON.stringify([
      fit.verdict,
      fit.belonging,
      toBuy(fit),
      fit.ways.map((way) => way.steps.map(idOf)),
      fit.because.map(idOf),
      fit.refusals.map(idOf),
    ]);
    const before = found.get(key);
    found.set(key, before ? { ...before, cars: space.sets.or(before.cars, fit.cars) } : fit);
  }
  return [...found.values()];
}

export function mayBeFitted(verdict: FitVerdict): boolean {
  return verdict === "as built" || isPermitted(verdict);
}

/** Where a part on the car is a misfit, what goes with the part that ought to be there is not on record. */
function whereMisfit(part: string, fit: Fit, { doubtful }: Reported): Fit[] {
  if (!mayBeFitted(fit.verdict)) return [];
  const parts = [part, ...(fit.ways[0]?.companions ?? []).map((it) => it.part)];
  const [misfit] = parts.flatMap((it) => doubtful.get(it) ?? []);
  return misfit ? [{ ...fit, verdict: "not on record", ways: [], refusals: misfit.by }] : [];
}

/**
 * A component from another kind of car brought its insides along. What is said of them by the year or number of the car is not
 * on record for it; what is said by the component's own number alone still holds.
 */
function whereForeign(index: PartIndex, { part, place, on }: FitQuestion, fit: Fit): Fit[] {
  if (on.foreign.size === 0 || !mayBeFitted(fit.verdict)) return [];
  const { space } = index;
  const said = [...(index.builtAt.get(place ?? "") ?? []), ...(index.standInsOf.get(part) ?? [])];
  const isDoubtful = said.some(({ scope }) => {
    const traits = scope ? [...space.sets.traitsOf(scope.cars)] : [];
    return traits.some((it) => on.foreign.has(it)) && traits.some((it) => OF_THE_CAR.has(space.trait(it).role));
  });
  return isDoubtful ? [{ ...fit, verdict: "not on record", ways: [], refusals: [] }] : [];
}

const OF_THE_CAR: ReadonlySet<string | undefined> = new Set(["year", "plant", "sequence", "date"]);

/** What has to be bought for a fit besides the part, in the order in which it is asked for. */
export function toBuy({ ways: [best] }: Fit): string[] {
  return (best?.companions ?? []).filter((it) => !it.onTheCar).map((it) => it.part);
}

/** Whether a fit that is only possible would be another answer for some of its cars than the certain ones. */
function isAnother({ space }: PartIndex, possible: Fit, certain: readonly Fit[]): boolean {
  return certain.some((fit) => {
    if (!space.sets.meet(fit.cars, possible.cars)) return false;
    if (mayBeFitted(fit.verdict) !== mayBeFitted(possible.verdict)) return true;
    // That the part asked for may be there already takes nothing from what is permitted.
    if (possible.verdict === "as built") return false;
    return mayBeFitted(fit.verdict) && `${toBuy(fit)}` !== `${toBuy(possible)}`;
  });
}

/** What is said before companions are looked at. */
interface Said {
  readonly verdict: FitVerdict;
  readonly cars: CarSet;
  readonly ways: readonly Chain[];
  readonly refusals: readonly StandsIn[];
}

/** The fits where one thing belongs and, perhaps, other parts were seen. */
function fitsWhere(index: PartIndex, question: FitQuestion, where: Belongs, seen: readonly string[]): Fit[] {
  const { part } = question;
  const others = seen.filter((it) => it !== part && !isPart(where.belonging, it));
  const [other] = others;
  const belonging: Belonging = other === undefined ? where.belonging : { what: "part", part: other };
  const asBelongs = saidOf(index, question, where.belonging, where.cars);
  const asSeen = others.reduce((all, it) => all.flatMap((said) => inPlaceOf(index, question, it, said)), asBelongs);
  // What is said of two parts by name decides: only a chain may be gone around.
  const around = others.length > 0 ? undefined : where.belonging;
  return asSeen
    .flatMap((said): Answer[] =>
      isPermitted(said.verdict)
        ? completed(index, question, said.ways, nothingFound(said.cars), around)
        : [{ verdict: said.verdict, cars: said.cars, ways: [], refusals: said.refusals }],
    )
    .map((answer) => ({ ...answer, belonging, because: where.because }));
}

type Answer = Pick<Fit, "verdict" | "cars" | "ways" | "refusals">;

/** Permitted ways with all that must go along; where all are closed, longer ones around what `around` says belongs there. */
function completed(
  index: PartIndex,
  question: FitQuestion,
  ways: readonly Chain[],
  before: Found,
  around: Belonging | undefined,
): Answer[] {
  return withCompanions(index, question.part, ways, before, question.on).flatMap((piece): Answer[] => {
    const { cars, found } = piece;
    if (piece.ways.length > 0) {
      const verdict = piece.ways.some((way) => isPlain(way.steps)) ? "yes" : "yes, on conditions";
      return [{ verdict, cars, ways: piece.ways, refusals: [] }];
    }
    const closed = { ...closedVerdict(piece.closedBy), cars, ways: [] };
    const length = Math.min(...ways.map((way) => way.length));
    if (length < 2 || around === undefined) return [closed];
    return saidOf(index, question, around, cars, length).flatMap((longer) =>
      isPermitted(longer.verdict)
        ? completed(index, question, longer.ways, { ...found, cars: longer.cars }, around)
        : [{ ...closed, cars: longer.cars }],
    );
  });
}

function closedVerdict(by: readonly StandsIn[]): { verdict: FitVerdict; refusals: readonly StandsIn[] } {
  const refusals = by.filter((it) => !isPermission(it));
  return { verdict: refusals.length > 0 ? sayRefusal(refusals) : "not on record", refusals: by };
}

/** Of a part that no record gives a place: what is said of it by name, so that a refusal is not passed over in silence. */
function refusalsByName(index: PartIndex, { part, cars }: FitQuestion): StandsIn[] {
  return (index.standInsOf.get(part) ?? []).filter(
    (it) => !isPermission(it) && it.for !== undefined && whereHolds(index, it, cars) !== NONE,
  );
}

function saidOf(
  index: PartIndex,
  { part, place }: FitQuestion,
  belonging: Belonging,
  cars: CarSet,
  longerThan = 0,
): Said[] {
  if (cars === NONE) return [];
  if (isPart(belonging, part)) return asBuiltOf(index, part, cars);
  const said = standsFor(index, part, partIn(belonging), cars, place, longerThan);
  const isSure = place === undefined || (belonging.what !== "not on record" && !isOtherHand(index, part, place));
  if (isSure) return said;
  return said.map((it) => (isPermitted(it.verdict) ? { ...it, verdict: "not on record", ways: [] } : it));
}

/** The plant's own part; refused where it was taken back. */
function asBuiltOf(index: PartIndex, part: string, cars: CarSet): Said[] {
  return cutByTakenBack(index, part, cars).map(({ cars: here, items }) => ({
    verdict: items.length > 0 ? sayRefusal(items) : "as built",
    cars: here,
    ways: [],
    refusals: items,
  }));
}

/** The same where another part was seen in the place: of both verdicts the worse one, of permissions all that both ask for. */
function inPlaceOf(index: PartIndex, { part, place }: FitQuestion, seen: string, said: Said): Said[] {
  return standsFor(index, part, seen, said.cars, place).map((it): Said => {
    const [worse, better] = FITS.indexOf(it.verdict) <= FITS.indexOf(said.verdict) ? [it, said] : [said, it];
    if (!mayBeFitted(worse.verdict)) {
      const refusals = worse.verdict === better.verdict ? [...said.refusals, ...it.refusals] : worse.refusals;
      return { ...worse, cars: it.cars, refusals };
    }
    const asked = [said.ways, it.ways].filter((ways) => ways.length > 0);
    return { ...worse, cars: it.cars, ways: oneOfEach(asked) };
  });
}
