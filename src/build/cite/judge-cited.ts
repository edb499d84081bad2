/** What is to be said of a citation, as the records stand now. */
import type { Catalog, ChangeRecord, Move } from "../../engine/records/catalog.ts";
import { type StatementOf, statementsOf } from "../../engine/records/statement.ts";
import { describe } from "../../engine/scope/describe.ts";
import { NONE } from "../../engine/scope/diagram.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import type { Cited } from "./find-cited.ts";

export interface Judged {
  readonly rule: "unknown" | "strange" | "moved" | "withdrawn" | "cancelled" | "cancelled in part" | "superseded";
  readonly message: string;
  readonly hint: string;
  /** The id to cite instead, where there is one. */
  readonly instead?: string;
  /** Nobody has to think about it: the same thing has another id now. */
  readonly certain?: boolean;
}

/** What there is to know beside the citation itself. */
export interface Reading {
  readonly catalog: Catalog;
  /** Who ends instructions of a record, and which orders are answered with other parts. */
  readonly cancels: readonly StatementOf<"cancels">[];
  readonly supersedes: readonly StatementOf<"supersedes">[];
}

export function openReading(catalog: Catalog): Reading {
  const statements = [...catalog.records.values()].flatMap((record) => record.statements);
  return { catalog, cancels: statementsOf(statements, "cancels"), supersedes: statementsOf(statements, "supersedes") };
}

/**
 * If nothing has this id now:     it moved, and what it is now is judged in its place; it was withdrawn, or it never was
 * else if it is a record:         withdrawn; or cancelled by others, for all of its cars or for some
 * else if it is a part:           superseded, for whatever car or for some
 *
 * A document that itself cites who cancels or supersedes knows of it, so nothing is said there. With the day of the document it is said
 * whether that came later.
 */
export function judgeCited(reading: Reading, cited: Cited, inDocument: ReadonlySet<string>, date?: string): Judged[] {
  const { catalog } = reading;
  const kind = cited.kinds.find((one) => has(catalog, one, cited.id));
  if (kind === undefined) {
    const judged = judgeUnknown(catalog, cited);
    if (!judged.certain || judged.instead === undefined) return [judged];
    return [judged, ...judgeCited(reading, { ...cited, id: judged.instead }, inDocument, date)];
  }
  if (kind === "record") {
    const record = catalog.records.get(cited.id) as ChangeRecord;
    return record.facts.withdrawn === undefined
      ? judgeCancelled(reading, record, inDocument, date)
      : [judgeWithdrawn(reading, record)];
  }
  return kind === "part" ? judgeSuperseded(reading, cited.id, inDocument, date) : [];
}

function has(catalog: Catalog, kind: Move["kind"], id: string): boolean {
  if (kind === "system") return catalog.systems.some((system) => system.id === id);
  const all = {
    record: catalog.records,
    part: catalog.parts,
    component: catalog.components,
    bulletin: catalog.bulletins,
  };
  return all[kind].has(id);
}

function judgeUnknown(catalog: Catalog, { id, kinds, as, strange }: Cited): Judged {
  const move = catalog.moved.find((one) => kinds.includes(one.kind) && one.from === id);
  if (move) {
    const end = endOf(catalog, move);
    return end === undefined
      ? { rule: "withdrawn", message: `${move.kind} ${id} was withdrawn`, hint: move.why }
      : { rule: "moved", message: `${move.kind} ${id} is ${end} now`, hint: move.why, instead: end, certain: true };
  }
  if (strange)
    return {
      rule: "strange",
      message: `'${id}' looks like the id of a record and is none: no id here has its letters`,
      hint: "leave it where somebody else's code is meant",
    };
  const among = [
    ...catalog.records.keys(),
    ...catalog.parts.keys(),
    ...catalog.components.keys(),
    ...catalog.bulletins.keys(),
    ...catalog.systems.map((it) => it.id),
  ];
  const meant = nearest(
    id,
    among.filter((other) => kinds.some((kind) => has(catalog, kind, other))),
  );
  const otherwise = as === "text" ? "mend it; if it is no record, leave it" : "mend the id";
  return {
    rule: "unknown",
    message: `no ${kinds.join(", ").replace(/, (\w+)$/, " or $1")} is called '${id}'`,
    hint: meant === undefined ? otherwise : `did you mean '${meant}'?`,
    ...(meant === undefined ? {} : { instead: meant }),
  };
}

/** The end of a chain of moves; the check of the data refuses circles. */
function endOf(catalog: Catalog, move: Move): string | undefined {
  let at: Move | undefined = move;
  let end: string | undefined;
  while (at) {
    end = at.to;
    at = end === undefined ? undefined : catalog.moved.find((other) => other.kind === move.kind && other.from === end);
  }
  return end;
}

function judgeWithdrawn({ cancels }: Reading, { id, facts }: ChangeRecord): Judged {
  const follow = new Set([...facts.instead, ...cancels.flatMap((it) => (it.target === id ? [it.record] : []))]);
  const [only] = follow;
  return {
    rule: "withdrawn",
    message: `record ${id} was withdrawn: ${facts.withdrawn}`,
    hint: follow.size > 0 ? `read ${[...follow].join(", ")}` : "nothing follows it",
    ...(follow.size === 1 && only !== undefined ? { instead: only } : {}),
  };
}

function judgeCancelled(
  reading: Reading,
  record: ChangeRecord,
  inDocument: ReadonlySet<string>,
  date?: string,
): Judged[] {
  const { catalog, cancels } = reading;
  const { sets } = catalog.space;
  return cancels
    .filter((cancel) => cancel.target === record.id && !inDocument.has(cancel.record))
    .map((cancel) => {
      const left = cancel.scope ? sets.minus(record.scope.cars, cancel.scope.cars) : NONE;
      const all = left === NONE;
      const whom = all || !cancel.scope ? "" : ` for ${describe(catalog.space, cancel.scope)}`;
      return {
        rule: all ? ("cancelled" as const) : ("cancelled in part" as const),
        message: `record ${record.id} is cancelled${whom} by ${cancel.record}${when(catalog, cancel.record, date)}`,
        hint: all ? `cite ${cancel.record}, which says what to do` : `cite ${cancel.record} beside it for these cars`,
        ...(all ? { instead: cancel.record } : {}),
      };
    });
}

function judgeSuperseded(reading: Reading, number: string, inDocument: ReadonlySet<string>, date?: string): Judged[] {
  const { catalog, supersedes } = reading;
  return supersedes
    .filter((it) => it.old === number && !inDocument.has(it.new) && !inDocument.has(it.record))
    .map((it) => {
      const whom = it.scope ? ` for ${describe(catalog.space, it.scope)}` : "";
      return {
        rule: "superseded" as const,
        message: `part ${number} is superseded${whom} by ${it.new} (${it.record})${when(catalog, it.record, date)}`,
        hint: `a delivery rule, no promise that it fits: see whether ${it.new} or ${it.record} belongs beside it`,
        ...(it.scope ? {} : { instead: it.new }),
      };
    });
}

function when(catalog: Catalog, record: string, date: string | undefined): string {
  const issued = catalog.records.get(record)?.facts.issued ?? "";
  if (date === undefined) return `, issued ${issued}`;
  return issued > date ? ` since, on ${issued}` : `, already on ${issued}`;
}
