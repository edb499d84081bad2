/** What a page asks besides the car, as parts of the address; the page "this car" passes it along untouched. */
export interface Own {
  readonly part?: string;
  readonly place?: string;
  readonly component?: string;
  readonly parts?: string;
  readonly seen?: string;
  readonly setting?: string;
  readonly value?: string;
  readonly error?: string;
  readonly conditions?: string;
  readonly sum?: string;
  readonly job?: string;
}

export const OWN: readonly (keyof Own)[] = [
  "part",
  "place",
  "component",
  "parts",
  "seen",
  "setting",
  "value",
  "error",
  "conditions",
  "sum",
  "job",
];

export function readOwn(search: string, names: readonly (keyof Own)[]): Own {
  const params = new URLSearchParams(search);
  return Object.fromEntries(names.flatMap((name) => (params.get(name) ? [[name, params.get(name) as string]] : [])));
}

/** The address of a car, as "this car" writes it, with what is asked. */
export function joined(car: string, own: Own): string {
  const pairs = Object.entries(own).map(([name, value]) => `${name}=${encodeURIComponent(value)}`);
  const all = [...(car === "" ? [] : [car.slice(1)]), ...pairs].join("&");
  return all === "" ? "" : `?${all}`;
}
