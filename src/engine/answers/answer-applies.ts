/** "Does this record, or this scope, apply to the car at hand?" */

import { applies } from "../scope/applies.ts";
import type { CarSet } from "../scope/diagram.ts";
import { neededFacts } from "../scope/facts.ts";
import { readScope } from "../scope/read-scope.ts";
import type { Scope } from "../scope/scope.ts";
import type { Reason } from "./answer.ts";
import { cancelledFor, cancelsFor } from "./cancelled-for.ts";
import { type KnownCar, readCar, withFacts } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { findRecord } from "./find-record.ts";
import { look, sayFact } from "./look.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, reasonForRecord, sayScope } from "./say.ts";
import { sayConflict } from "./say-conflict.ts";
import type { AppliesAnswer } from "./shapes/applies.ts";
import type { CarInput } from "./shapes/car.ts";

export interface AppliesQuestion {
  readonly record?: string | undefined;
  readonly scope?: string | undefined;
  readonly car: CarInput;
}

export function answerApplies(
  knowledge: CarKnowledge,
  { record, scope: text, car: input }: AppliesQuestion,
): AppliesAnswer {
  const { catalog } = knowledge;
  const found = record === undefined ? undefined : findRecord(catalog, record);
  if (record !== undefined && !found) throw new QuestionError(`No change record is called '${record}'.`);
  if (!found && text === undefined) throw new QuestionError("It takes a record or a scope.");
  const scope = found ? found.scope : parseScope(knowledge, text ?? "");
  const car = readCar(knowledge, input);
  const cancels = found ? cancelsFor(knowledge, car.cars, found) : [];
  const because = [
    ...(found ? [reasonForRecord(catalog, found.id)] : []),
    ...cancels.map(({ cancel }) => reasonFor(catalog, cancel)),
  ];
  const decision = decide(knowledge, car, scope, because);
  return {
    question: "applies",
    ...decision,
    words: [...cancels.map(sayCancelled), decision.words].join(" "),
    scope: sayScope(catalog, scope),
    ...(found ? cancelledFor(knowledge, car.cars, found) : {}),
  };
}

function sayCancelled({ cancel, verdict }: ReturnType<typeof cancelsFor>[number]): string {
  return verdict === "yes"
    ? `${cancel.record} has cancelled it.`
    : `${cancel.record} has cancelled it for some of the cars that this can be.`;
}

/** A scope given in a question. Throws a QuestionError that shows what is not understood. */
export function parseScope(knowledge: CarKnowledge, text: string): Scope {
  const read = readScope(knowledge.catalog.space, text);
  if ("scope" in read) return read.scope;
  throw new QuestionError(read.slips.map((slip) => `In '${text}': ${slip.message}; ${slip.hint}.`).join(" "));
}

type Decision = Pick<AppliesAnswer, "verdict" | "because" | "ask" | "facts" | "notNeeded" | "conflict" | "words">;

/** The verdict on one scope, with the facts that carry it and what to look at where it is open. */
export function decide(knowledge: CarKnowledge, car: KnownCar, scope: Scope, because: Reason[]): Decision {
  const { space } = knowledge.catalog;
  const verdict = applies(space.sets, car.cars, scope.cars);
  if (verdict === "no such car") {
    const said = sayConflict(knowledge.catalog, car);
    return {
      verdict,
      because,
      ...said,
      words: `No such car was built, or it is no longer as built: ${said.conflict.map((fact) => fact.text).join(" and ")} ${said.conflict.length === 1 ? "was not built" : "do not go together"}. Read the plate again, or say what was found on the car.`,
    };
  }
  const holds = (cars: CarSet): boolean => applies(space.sets, cars, scope.cars) === verdict;
  const needed =
    verdict === "look first" ? car.facts : neededFacts(car.facts, (facts) => holds(withFacts(knowledge, facts).cars));
  const ask = look(space, car.cars, scope.cars);
  return {
    verdict,
    because,
    ...(ask ? { ask } : {}),
    facts: needed.map((fact) => sayFact(space, fact)),
    notNeeded: car.facts.filter((fact) => !needed.includes(fact)).map((fact) => sayFact(space, fact)),
    words: sayVerdict(verdict, ask?.what),
  };
}

function sayVerdict(verdict: "yes" | "no" | "look first", look: string | undefined): string {
  if (verdict === "yes") return "It applies to every car that this can be.";
  if (verdict === "no") return "It applies to no car that this can be.";
  return `It depends on what is not known yet. ${look ?? ""}`.trim();
}
