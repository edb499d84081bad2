/** Where a part sits, and on which cars the plant put it there. */
import { statementsOf } from "../records/statement.ts";
import type { CarSet } from "../scope/diagram.ts";
import type { CarKnowledge } from "./car-knowledge.ts";

/** The places that a part fills: where it was built in, or, for a part that no car was built with, where those sit that it stands in for. */
export function placesOf(knowledge: CarKnowledge, part: string): ReadonlySet<string> {
  const own = builtPlaces(knowledge, part);
  if (own.size > 0) return own;
  const statements = statementsOf(knowledge.statementsByPart.get(part) ?? [], "stands-in");
  const others = statements.filter((it) => it.part === part && it.for !== undefined).map((it) => it.for as string);
  return new Set(others.flatMap((other) => [...builtPlaces(knowledge, other)]));
}

function builtPlaces(knowledge: CarKnowledge, part: string): Set<string> {
  const statements = knowledge.statementsByPart.get(part) ?? [];
  return new Set([...statementsOf(statements, "built"), ...statementsOf(statements, "mixed")].map((it) => it.place));
}

/** The cars that certainly left the plant with a part. */
export function builtWith(knowledge: CarKnowledge, part: string): CarSet {
  const statements = statementsOf(knowledge.statementsByPart.get(part) ?? [], "built");
  return knowledge.catalog.space.any(statements.map((it) => it.scope.cars));
}

/** The cars of a mixed stretch that may have left the plant with a part. */
export function perhapsBuiltWith(knowledge: CarKnowledge, part: string): CarSet {
  const statements = statementsOf(knowledge.statementsByPart.get(part) ?? [], "mixed");
  return knowledge.catalog.space.any(statements.map((it) => it.scope.cars));
}
