/**
 * How a part stands on a car when it goes along with another one.
 *
 *   It is on the car where somebody saw it, or where the plant fitted it in all places of its own that have a part. Where it was
 *   taken back (`taken-back.ts`) it may not stay, and the way is closed.
 *   A statement that refuses it on certain cars closes the way. A refusal without a scope does not: it speaks of the part by
 *   itself, and the set is another matter.
 *   Where its own statements permit it, one of their ways must be gone, with what they ask for.
 *   In place of another part than the plant's it needs a permission: whoever asked for it did not know of that part.
 */
import type { StandsIn } from "../records/statement.ts";
import type { CarSet } from "../scope/diagram.ts";
import { type Belonging, belongsAt, isPart, partIn, settledBy } from "./belongs.ts";
import { isPermission, type PartIndex } from "./part-index.ts";
import { builtPlaces, placesOf, sitsAt } from "./places.ts";
import type { Reported } from "./reported.ts";
import { type Chain, piecesAbout, standsFor } from "./stands-for.ts";
import { cutByTakenBack } from "./taken-back.ts";

export type Standing =
  | { readonly how: "on the car"; readonly cars: CarSet }
  /** One of the ways is enough; none where nothing is asked. */
  | { readonly how: "goes along"; readonly cars: CarSet; readonly ways: readonly Chain[] }
  /** Nobody, where no record permits it in place of a part that was seen. */
  | { readonly how: "closed"; readonly cars: CarSet; readonly by: readonly StandsIn[] };

interface InPlace {
  readonly isOwn: boolean;
  readonly hasPart: boolean;
  readonly standing: Standing;
}

/** One question asks for the same parts again and again. What was found is kept for as long as what was reported. */
const KNOWN = new WeakMap<Reported, Map<string, Map<CarSet, Standing[]>>>();

/** Cars are in several pieces where it is not known what is in a place of the part. */
export function companionStanding(index: PartIndex, part: string, cars: CarSet, on: Reported): readonly Standing[] {
  const byPart = getOr(KNOWN, on, () => new Map<string, Map<CarSet, Standing[]>>());
  const byCars = getOr(byPart, part, () => new Map<CarSet, Standing[]>());
  return getOr(byCars, cars, () => standingOf(index, part, cars, on));
}

function getOr<K, V>(map: { get(key: K): V | undefined; set(key: K, value: V): unknown }, key: K, make: () => V): V {
  const before = map.get(key);
  if (before !== undefined) return before;
  const made = make();
  map.set(key, made);
  return made;
}

function standingOf(index: PartIndex, part: string, cars: CarSet, on: Reported): Standing[] {
  if (on.parts.has(part)) return onTheCar(index, part, cars);
  const own = new Set(builtPlaces(index, part));
  const sits = sitsAt(index, part);
  // A part that may go nowhere by itself is still refused where a record says so.
  const places = sits.length > 0 ? sits : [undefined, ...placesOf(index, part)];
  let pieces: { cars: CarSet; places: readonly InPlace[] }[] = [{ cars, places: [] }];
  for (const place of places)
    pieces = pieces.flatMap((piece) =>
      inPlace(index, part, place, piece.cars, on).map(({ hasPart, standing }) => ({
        cars: standing.cars,
        places: [...piece.places, { isOwn: place !== undefined && own.has(place), hasPart, standing }],
      })),
    );
  return pieces.map((piece) => together(piece.cars, piece.places));
}

/** What follows from how it stands in each of its places. */
function together(cars: CarSet, places: readonly InPlace[]): Standing {
  const own = places.filter((it) => it.isOwn && it.hasPart);
  if (own.length > 0 && own.every(({ standing }) => standing.how === "on the car")) return { how: "on the car", cars };
  const closed = places.flatMap(({ standing }) => (standing.how === "closed" ? [standing] : []));
  if (closed.length > 0) return { how: "closed", cars, by: closed.flatMap((it) => it.by) };
  const asked = places.flatMap(({ standing }) =>
    standing.how === "goes along" && standing.ways.length > 0 ? [standing.ways] : [],
  );
  return { how: "goes along", cars, ways: asked.length === 0 ? [] : oneOfEach(asked) };
}

/** Every choice of one way for each of several places, as one way. */
export function oneOfEach(asked: readonly (readonly Chain[])[]): Chain[] {
  return asked.reduce<Chain[]>(
    (chosen, ways) => chosen.flatMap((before) => ways.map((way) => [...new Set([...before, ...way])])),
    [[]],
  );
}

function inPlace(
  index: PartIndex,
  part: string,
  place: string | undefined,
  cars: CarSet,
  on: Reported,
): { hasPart: boolean; standing: Standing }[] {
  if (place === undefined)
    return inPlaceOf(index, part, { what: "nothing" }, cars, undefined).map((standing) => ({
      hasPart: false,
      standing,
    }));
  const seen = on.at.get(place) ?? [];
  const perhaps = (on.perhapsAt.get(place) ?? []).filter((it) => it !== part);
  return settledBy(index.space, belongsAt(index, place, cars), seen).flatMap(({ belonging, cars: here }) => {
    const another = seen.filter((it) => it !== part && !isPart(belonging, it));
    const asSeen = another.flatMap((it) => inPlaceOfSeen(index, part, it, here, place));
    const certain = another.length > 0 ? asSeen : inPlaceOf(index, part, belonging, here, place);
    const possible = perhaps.flatMap((it) =>
      isPart(belonging, it) ? [] : inPlaceOfSeen(index, part, it, here, place),
    );
    const hasPart = belonging.what === "part" || another.length > 0;
    return [...certain, ...possible].map((standing) => ({ hasPart, standing }));
  });
}

function onTheCar(index: PartIndex, part: string, cars: CarSet): Standing[] {
  return cutByTakenBack(index, part, cars).map(({ cars: here, items }) =>
    items.length > 0 ? { how: "closed", cars: here, by: items } : { how: "on the car", cars: here },
  );
}

function inPlaceOf(
  index: PartIndex,
  part: string,
  belonging: Belonging,
  cars: CarSet,
  place: string | undefined,
): Standing[] {
  if (isPart(belonging, part)) return onTheCar(index, part, cars);
  const other = partIn(belonging);
  return piecesAbout(index, part, other, cars, place).flatMap(({ cars: here, statements }): Standing[] => {
    const refusals = statements.filter((it) => !isPermission(it));
    const by = refusals.filter((it) => it.scope !== undefined);
    if (by.length > 0) return [{ how: "closed", cars: here, by }];
    const permissions = statements.filter(isPermission);
    if (statements.length > 0) return [{ how: "goes along", cars: here, ways: permissions.map((it) => [it]) }];
    return standsFor(index, part, other, here, place).map((it) => ({
      how: "goes along",
      cars: it.cars,
      ways: it.ways,
    }));
  });
}

function inPlaceOfSeen(index: PartIndex, part: string, seen: string, cars: CarSet, place: string): Standing[] {
  return standsFor(index, part, seen, cars, place).map((it) =>
    it.ways.length > 0
      ? { how: "goes along", cars: it.cars, ways: it.ways }
      : { how: "closed", cars: it.cars, by: it.refusals },
  );
}
