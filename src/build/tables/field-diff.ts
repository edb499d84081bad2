/** What differs between two values of a file, a line a field: 'settings 2, window: 120..135 -> 120..140'. */
import { isDeepStrictEqual } from "node:util";
import { isFields } from "../write/without-defaults.ts";

export function fieldDiff(before: unknown, after: unknown, name = ""): string[] {
  if (isDeepStrictEqual(before, after)) return [];
  if (isFields(before) && isFields(after)) {
    const names = [...new Set([...Object.keys(before), ...Object.keys(after)])];
    return names.flatMap((field) => fieldDiff(before[field], after[field], name ? `${name}, ${field}` : field));
  }
  const lists = Array.isArray(after) && (Array.isArray(before) || before === undefined);
  if (lists && after.some(isFields))
    return after.flatMap((entry, i) =>
      fieldDiff((before as unknown[] | undefined)?.[i], entry, entryName(name, entry, i)),
    );
  if (before === undefined) return [`+ ${name}: ${short(after)}`];
  return [`${name}: ${short(before)} -> ${short(after)}`];
}

/** An entry is called as people call it, where it has a name. */
function entryName(list: string, entry: unknown, i: number): string {
  const name = isFields(entry) ? (entry.id ?? entry.number ?? entry.name) : undefined;
  return `${list} ${name ?? i + 1}`;
}

function short(value: unknown): string {
  const text = isFields(value)
    ? Object.entries(value)
        .map(([name, inner]) => `${name} ${short(inner)}`)
        .join(", ")
    : Array.isArray(value)
      ? value.map(short).join(" | ")
      : String(value);
  const line = text.replaceAll(/\s+/g, " ");
  return line.length > 90 ? `${line.slice(0, 90)}…` : line;
}
