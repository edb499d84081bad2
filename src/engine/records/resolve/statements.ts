import type { Scope } from "../../scope/scope.ts";
import type { Path } from "../complaint.ts";
import type { ChangeFile } from "../shapes/change.ts";
import type { Statement } from "../statement.ts";
import { NOTHING } from "../terms.ts";

/** What a record's file states, one statement each, in the order of the file's shape. */
export function readStatements(file: ChangeFile, scopeAt: (text: string, path: Path) => Scope): Statement[] {
  const record = file.id;
  const some = (text: string | undefined, path: Path): Scope | undefined =>
    text === undefined ? undefined : scopeAt(text, path);
  const part = (number: string): string | undefined => (number === NOTHING ? undefined : number);
  const limits = (window: string): [string | undefined, string | undefined] => {
    const [low, high] = window.split("..").map((limit) => limit.trim() || undefined);
    return [low, high];
  };
  return [
    ...file.built.map(
      (it, index): Statement => ({
        type: "built",
        record,
        index,
        place: it.place,
        part: part(it.part),
        scope: scopeAt(it.scope, ["built", index, "scope"]),
      }),
    ),
    ...file.mixed.map(
      (it, index): Statement => ({
        ...it,
        type: "mixed",
        record,
        index,
        scope: scopeAt(it.scope, ["mixed", index, "scope"]),
      }),
    ),
    ...file.supersedes.map(
      (it, index): Statement => ({
        ...it,
        type: "supersedes",
        record,
        index,
        scope: some(it.scope, ["supersedes", index, "scope"]),
      }),
    ),
    ...file["stands-in"].map(
      (it, index): Statement => ({
        ...it,
        type: "stands-in",
        record,
        index,
        for: part(it.for),
        do: it.do,
        why: it.why,
        scope: some(it.scope, ["stands-in", index, "scope"]),
      }),
    ),
    ...file.kits.map((it, index): Statement => ({ ...it, type: "kit", record, index })),
    ...file["service-only"].map((number, index): Statement => ({ type: "service-only", record, index, part: number })),
    ...file.settings.map(({ window, ...it }, index): Statement => {
      const [low, high] = limits(window);
      return {
        type: "setting",
        record,
        index,
        name: it.name,
        component: it.component ?? file.components[0],
        low,
        high,
        nominal: it.nominal,
        stated: it.stated,
        unit: it.unit,
        conditions: it.conditions,
        scope: scopeAt(it.scope, ["settings", index, "scope"]),
      };
    }),
    ...file.intervals.map(
      (it, index): Statement => ({
        ...it,
        type: "interval",
        record,
        index,
        months: it.months,
        miles: it.miles,
        note: it.note,
        scope: scopeAt(it.scope, ["intervals", index, "scope"]),
      }),
    ),
    ...file.procedures.map(
      (it, index): Statement => ({ type: "procedure", record, index, when: it.when, steps: it.steps }),
    ),
    ...file.tools.map(
      (it, index): Statement => ({
        ...it,
        type: "tool",
        record,
        index,
        scope: some(it.scope, ["tools", index, "scope"]),
      }),
    ),
    ...file["left-alone"].map((what, index): Statement => ({ type: "left-alone", record, index, what })),
    ...file.cancels.map(
      (it, index): Statement => ({
        type: "cancels",
        record,
        index,
        target: it.record,
        scope: some(it.scope, ["cancels", index, "scope"]),
      }),
    ),
  ];
}
