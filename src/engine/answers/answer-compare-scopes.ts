/** "How do these two scopes lie to each other?" Among the cars that were built, with a car that shows each difference. */

import { compare } from "../scope/compare.ts";
import { type Car, sayCar } from "../scope/pick.ts";
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
  return {
    question: "compare-scopes",
    verdict,
    because: [],
    a: sayScope(catalog, a),
    b: sayScope(catalog, b),
    ...(both ? { both: say(both) } : {}),
    ...(onlyA ? { onlyA: say(onlyA) } : {}),
    ...(onlyB ? { onlyB: say(onlyB) } : {}),
  };
}
