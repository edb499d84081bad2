/** "How do these two scopes lie to each other?" Among the cars that were built, with a car that shows each difference. */

import { compare } from "../scope/compare.ts";
import type { CarSet } from "../scope/diagram.ts";
import { type Car, sayCar } from "../scope/pick.ts";
import { writeScope } from "../scope/write-scope.ts";
import { parseScope } from "./answer-applies.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { sayScope } from "./say.ts";
import type { CompareScopesAnswer } from "./shapes/compare-scopes.ts";

export function answerCompareScopes(
  knowledge: CarKnowledge,
  { a: textA, b: textB }: { a: string; b: string },
): CompareScopesAnswer {
  const { catalog } = knowledge;
  const a = parseScope(knowledge, textA);
  const b = parseScope(knowledge, textB);
  const { verdict, both, onlyA, onlyB } = compare(catalog.space, catalog.buildable, a.cars, b.cars);
  const say = (car: Car | undefined): Record<string, string> | undefined =>
    car ? sayCar(catalog.space, car) : undefined;
  /** Longer texts help nobody. */
  const written = (name: "both" | "onlyA" | "onlyB", cars: CarSet): { [key in typeof name]?: string } => {
    const text = writeScope(catalog.space, cars, 12);
    return text === undefined ? {} : { [name]: text };
  };
  return {
    question: "compare-scopes",
    verdict,
    because: [],
    a: sayScope(catalog, a),
    b: sayScope(catalog, b),
    scopes: {
      ...written("both", catalog.space.sets.and(a.cars, b.cars)),
      ...written("onlyA", catalog.space.sets.minus(a.cars, b.cars)),
      ...written("onlyB", catalog.space.sets.minus(b.cars, a.cars)),
    },
    ...(both ? { both: say(both) } : {}),
    ...(onlyA ? { onlyA: say(onlyA) } : {}),
    ...(onlyB ? { onlyB: say(onlyB) } : {}),
  };
}
