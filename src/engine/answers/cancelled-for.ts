/** Which records end the instructions of another for the car at hand. The cancelled record stays visible, marked. */
import type { ChangeRecord } from "../records/catalog.ts";
import type { StatementOf } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { CarKnowledge } from "./car-knowledge.ts";

interface Cancelled {
  readonly record: string;
  readonly verdict: "yes" | "look first";
}

/** For spreading into an answer: nothing where the record is in force. */
export function cancelledFor(knowledge: CarKnowledge, cars: CarSet, record: ChangeRecord): { cancelled?: Cancelled[] } {
  const cancelled = cancelsFor(knowledge, cars, record).map(({ cancel, verdict }) => ({
    record: cancel.record,
    verdict,
  }));
  return cancelled.length > 0 ? { cancelled } : {};
}

/** The statements that do it: *yes* for every car that this can be and that the record is about, or *look first*. */
export function cancelsFor(
  { catalog, cancelsByRecord }: CarKnowledge,
  cars: CarSet,
  record: ChangeRecord,
): { cancel: StatementOf<"cancels">; verdict: "yes" | "look first" }[] {
  const { sets } = catalog.space;
  const held = sets.and(cars, record.scope.cars);
  if (held === NONE) return [];
  return (cancelsByRecord.get(record.id) ?? []).flatMap((cancel) => {
    const ended = cancel.scope ? sets.and(held, cancel.scope.cars) : held;
    return ended === NONE ? [] : [{ cancel, verdict: ended === held ? ("yes" as const) : ("look first" as const) }];
  });
}
