/** Cars looked at before, in this browser only. Where the browser keeps nothing, there are none. */
const KEY = "recent-cars";
const KEPT = 10;

export interface RecentCar {
  /** The part of the address that holds the car. */
  readonly search: string;
  readonly label: string;
}

export function recentCars(storage: Storage | undefined): RecentCar[] {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(KEY) ?? "[]");
    return Array.isArray(kept) ? kept.filter(isRecentCar) : [];
  } catch {
    return [];
  }
}

function isRecentCar(value: unknown): value is RecentCar {
  return (
    typeof value === "object" &&
    value !== null &&
    "search" in value &&
    typeof value.search === "string" &&
    value.search.startsWith("?") &&
    "label" in value &&
    typeof value.label === "string"
  );
}

/** The car moves to the top. What it was before its last step (`before`) is the same car and is taken out. */
export function remember(storage: Storage | undefined, car: RecentCar, before: string | undefined): RecentCar[] {
  const others = recentCars(storage).filter(({ search }) => search !== car.search && search !== before);
  return keep(storage, [car, ...others].slice(0, KEPT));
}

/** Takes one car out, or all. */
export function forgetCar(storage: Storage | undefined, search: string | undefined): RecentCar[] {
  return keep(storage, search === undefined ? [] : recentCars(storage).filter((car) => car.search !== search));
}

function keep(storage: Storage | undefined, cars: RecentCar[]): RecentCar[] {
  try {
    storage?.setItem(KEY, JSON.stringify(cars));
  } catch {
    // Full or closed: the list is a convenience.
  }
  return cars;
}

/** The browser's store, where it lets a page use one. */
export function openStorage(): Storage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}
