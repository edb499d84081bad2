/** Statements in plain words, and where each stands on the site. */
import { address } from "../graph/node.ts";
import type { Catalog } from "../records/catalog.ts";
import type { StandInVerdict, Statement } from "../records/statement.ts";
import { describe, list } from "../scope/describe.ts";
import type { Scope } from "../scope/scope.ts";
import type { Reason, ScopeWords } from "./answer.ts";

export const VERDICT_WORDS: Readonly<Record<StandInVerdict, string>> = {
  yes: "may be fitted",
  "on-conditions": "may be fitted on conditions",
  "does-not-go-on": "does not go on",
  "must-not-be-used": "goes on, but must not be used",
};

export function sayScope(catalog: Catalog, scope: Scope): ScopeWords {
  return { text: scope.text, words: describe(catalog.space, scope) };
}

/** The anchor of a statement on its record's page. */
export function anchor(statement: Statement): string {
  return `${statement.type}-${statement.index + 1}`;
}

export function reasonFor(catalog: Catalog, statement: Statement): Reason {
  return {
    record: statement.record,
    statement: `${statement.type} ${statement.index + 1}`,
    text: say(catalog, statement),
    address: `${address("record", statement.record)}#${anchor(statement)}`,
  };
}

/** Each statement once, where it stands first. */
export function uniqueReasons(reasons: readonly Reason[]): Reason[] {
  return [...new Map(reasons.map((it) => [it.address, it])).values()];
}

/** The record as a whole, for an answer that rests on all of it. */
export function reasonForRecord(catalog: Catalog, id: string): Reason {
  return {
    record: id,
    statement: "record",
    text: catalog.records.get(id)?.facts.title ?? id,
    address: address("record", id),
  };
}

export function say(catalog: Catalog, statement: Statement): string {
  const onCars = (scope: Scope | undefined): string => (scope ? ` (${describe(catalog.space, scope)})` : "");
  const along = (numbers: readonly string[]): string =>
    numbers.length > 0 ? `, together with ${list(numbers, "and")}` : "";
  switch (statement.type) {
    case "built":
      return `${statement.place}: the plant fitted ${statement.part ?? "nothing"}${onCars(statement.scope)}`;
    case "mixed":
      return `${statement.place}: the plant fitted ${list(statement.parts, "or")}; only looking tells${onCars(statement.scope)}`;
    case "supersedes":
      return `Who orders ${statement.old} gets ${statement.new}${along(statement.with)}${onCars(statement.scope)}`;
    case "stands-in": {
      const only = statement.place === undefined ? "" : `, only in the place "${statement.place}"`;
      const where = `${statement.for === undefined ? "where nothing is fitted" : `in place of ${statement.for}`}${only}`;
      const work = statement.do ? `; ${statement.do}` : "";
      const why = statement.why ? `: ${statement.why}` : "";
      return `${statement.part} ${VERDICT_WORDS[statement.verdict]} ${where}${along(statement.with)}${onCars(statement.scope)}${work}${why}`;
    }
    case "kit":
      return `Kit ${statement.kit} contains ${list(
        statement.contents.map((content) => `${content.count} × ${content.part ?? content.name}`),
        "and",
      )}`;
    case "service-only":
      return `${statement.part} exists for repair only; no car left a plant with it`;
    case "setting": {
      const conditions = statement.conditions ? `, ${statement.conditions}` : "";
      return `${statement.name}: ${sayWindow(statement.low, statement.high)} ${statement.unit}${conditions}${onCars(statement.scope)}`;
    }
    case "interval":
      return `${statement.name}: ${sayInterval(statement)}${onCars(statement.scope)}`;
    case "procedure":
      return `${statement.when ? `${statement.when}: ` : ""}${statement.steps}`;
    case "tool":
      return `Tool ${statement.tool} ${statement.use}${onCars(statement.scope)}`;
    case "left-alone":
      return `Left alone on purpose: ${statement.what}`;
    case "cancels":
      return `Cancels ${statement.target}${onCars(statement.scope)}`;
  }
}

/** "7 to 9", "at most 0.005", "at least 54", "exactly 20". Limits count as inside. */
export function sayWindow(low: string | undefined, high: string | undefined): string {
  if (low === high) return `exactly ${low}`;
  if (low === undefined) return `at most ${high}`;
  if (high === undefined) return `at least ${low}`;
  return `${low} to ${high}`;
}

export function sayInterval(interval: {
  months?: number | undefined;
  miles?: number | undefined;
  once: boolean;
  none: boolean;
  note?: string | undefined;
}): string {
  const note = interval.note ? ` (${interval.note})` : "";
  if (interval.none) return `none${note}`;
  const parts = [
    interval.months === undefined ? "" : `${interval.months} month${interval.months === 1 ? "" : "s"}`,
    interval.miles === undefined ? "" : `${interval.miles.toLocaleString("en-US")} miles`,
  ].filter(Boolean);
  const either = parts.length === 2 ? ", whichever comes first" : "";
  return `${interval.once ? "once, at " : "every "}${parts.join(" or ")}${either}${note}`;
}
