/**
 * What somebody has said about a car, step by step, as the address of the page holds it:
 * ?plate=…&fact=my:1973&found=eng:R&fitted=…&skip=plant&known=1972
 *
 * The order of the steps is kept, so that the last one can be taken back. A step that says the same thing anew takes the
 * place of the earlier one.
 */
import { readFactValue } from "../../engine/answers/fact-text.ts";
import type { CarInput } from "../../engine/answers/shapes/car.ts";

export type Step =
  /** The number on a plate. */
  | { readonly kind: "plate"; readonly value: string }
  /** A trait as the car was built, or, found, as it stands today; the value as on the command line. */
  | { readonly kind: "fact" | "found"; readonly trait: string; readonly value: string }
  /** A part that is on the car today. */
  | { readonly kind: "fitted"; readonly value: string }
  /** "I don't know": the trait is not asked again. */
  | { readonly kind: "skip"; readonly trait: string };

export interface State {
  readonly steps: readonly Step[];
  /** The model year that the reader knows, to compare the car with. */
  readonly known: number | undefined;
}

export const NOTHING_SAID: State = { steps: [], known: undefined };

export function readAddress(search: string): State {
  const params = new URLSearchParams(search);
  const steps = [...params].flatMap(([name, text]): Step[] => {
    const value = text.trim();
    if (value === "") return [];
    if (name === "plate" || name === "fitted") return [{ kind: name, value }];
    if (name === "skip") return [{ kind: "skip", trait: value }];
    if (name !== "fact" && name !== "found") return [];
    const at = value.indexOf(":");
    return at < 1 ? [] : [{ kind: name, trait: value.slice(0, at), value: value.slice(at + 1) }];
  });
  const known = Number(params.get("known"));
  return { steps: steps.reduce<readonly Step[]>(withStep, []), known: known > 0 ? known : undefined };
}

/** The part of the address behind the page: "?fact=my:1973", or nothing. */
export function writeAddress({ steps, known }: State): string {
  const pairs = steps.map((step) => {
    if (step.kind === "plate" || step.kind === "fitted") return [step.kind, step.value];
    return [step.kind, step.kind === "skip" ? step.trait : `${step.trait}:${step.value}`];
  });
  if (known !== undefined) pairs.push(["known", String(known)]);
  // A colon may stand in a query, and an address that people send is easier to read with it.
  const text = pairs.map((pair) => pair.map((it) => encodeURIComponent(it).replaceAll("%3A", ":")).join("=")).join("&");
  return text === "" ? "" : `?${text}`;
}

/** The steps with one more; what it says anew is taken away first. */
export function withStep(steps: readonly Step[], step: Step): Step[] {
  const kept = steps.filter((other) => !saysAnew(step, other));
  return [...kept, step];
}

export function without(steps: readonly Step[], step: Step): Step[] {
  return steps.filter((other) => other !== step);
}

function saysAnew(step: Step, other: Step): boolean {
  if (step.kind === "plate") return other.kind === "plate";
  if (step.kind === "fitted") return other.kind === "fitted" && other.value === step.value;
  if (other.kind === "plate" || other.kind === "fitted") return false;
  if (other.trait !== step.trait) return false;
  // What is found on the car stands beside what it was built with; knowing takes the place of not knowing.
  return other.kind === step.kind || other.kind === "skip" || step.kind === "skip";
}

/** The steps as the car of a question. */
export function carOf(steps: readonly Step[]): CarInput {
  const plate = plateOf(steps);
  const traits = (kind: "fact" | "found") =>
    Object.fromEntries(
      steps.flatMap((step) => (step.kind === kind ? [[step.trait, readFactValue(step.value)] as const] : [])),
    );
  return {
    ...(plate === undefined ? {} : { plate }),
    facts: traits("fact"),
    found: traits("found"),
    fitted: steps.flatMap((step) => (step.kind === "fitted" ? [step.value] : [])),
  };
}

/** The number on the plate, if one was given. */
export function plateOf(steps: readonly Step[]): string | undefined {
  return steps.find((step) => step.kind === "plate")?.value;
}
