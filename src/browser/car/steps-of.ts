import type { CarInput } from "../../engine/answers/shapes/car.ts";
import type { Step } from "./state.ts";

/** The facts of a car as steps of an address. */
export function stepsOf({ plate, facts = {}, found = {}, fitted = [] }: CarInput): Step[] {
  const of = (kind: "fact" | "found", given: NonNullable<CarInput["facts"]>): Step[] =>
    Object.entries(given).map(([trait, value]) => ({ kind, trait, value: written(value) }));
  return [
    ...(plate === undefined ? [] : [{ kind: "plate", value: plate } as const]),
    ...of("fact", facts),
    ...of("found", found),
    ...fitted.map((value): Step => ({ kind: "fitted", value })),
  ];
}

function written(value: NonNullable<CarInput["facts"]>[string]): string {
  if (Array.isArray(value)) return value.join(",");
  return typeof value === "object" ? `${value.from ?? ""}..${value.to ?? ""}` : String(value);
}
