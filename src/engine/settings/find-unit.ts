/** Which units a typed word may mean. */
import { UNITS, type Unit } from "./unit-table.ts";

/** Read in small letters, these would pass for something a thousand times larger or smaller. */
const CASE_MATTERS: ReadonlySet<string> = new Set(["mPa", "MV", "MA", "Mm"]);

/** Words that mean a unit only where its dimension is expected, divided by "|". */
const IN_CONTEXT: Readonly<Record<string, string>> = {
  arcmin: "min|minute|'",
  "deg ATDC": "deg|degree",
  N·m: "N|newton",
  kgf: "kg|kilo",
  "kgf/cm²": "kg",
  inHg: 'in|inch|inches|"|hg',
  mmHg: "mm",
  cmHg: "cm",
  kohm: "k",
  "F° difference": "deg F|F|fahrenheit|deg|degree",
  "C° difference": "deg C|C|celsius|K|kelvin|deg|degree",
};

const ALWAYS = byWord((unit) => [unit.id, unit.name, ...unit.says]);
const HERE = byWord((unit) => [unit.id, unit.name, ...unit.says, ...(IN_CONTEXT[unit.id] ?? "").split("|")]);

/** A word that means this unit alone, whatever is expected. */
export function clearWord(unit: Unit): string {
  const isClear = (word: string): boolean => [undefined, unit].every((expected) => isOnly(unit, word, expected));
  return [unit.id, ...unit.says].find(isClear) ?? unit.id;
}

function isOnly(unit: Unit, word: string, expected: Unit | undefined): boolean {
  const [only, ...others] = findUnits(word, expected);
  return only === unit && others.length === 0;
}

/**
 * Several units: the word is ambiguous (a "qt" is US or imperial, an "oz" weighs or is poured). Where a unit is expected, those
 * of the same dimension count alone, if there are any, and words do that only make sense there ("min" for minutes of arc).
 */
export function findUnits(text: string, expected?: Unit): readonly Unit[] {
  if (CASE_MATTERS.has(text.trim())) return [];
  const word = wordKey(text);
  if (word === "") return [];
  if (expected) {
    const fitting = (HERE.get(word) ?? []).filter((unit) => unit.dimension === expected.dimension);
    if (fitting.length > 0) return withoutTwins(fitting, text);
    // A counted thing that the table does not have.
    if ([expected.id, ...expected.says].some((said) => wordKey(said) === word)) return [expected];
  }
  return withoutTwins(ALWAYS.get(word) ?? [], text);
}

/** "mile" and "miles" stand in the table, each as some record writes it: one of them is enough. */
function withoutTwins(units: readonly Unit[], text: string): readonly Unit[] {
  const isTwin = (a: Unit, b: Unit): boolean => a.dimension === b.dimension && a.size.equals(b.size);
  const written = units.find((unit) => unit.id === text.trim());
  const sorted = written ? [written, ...units.filter((unit) => unit !== written)] : units;
  return sorted.filter((unit, i) => !sorted.slice(0, i).some((earlier) => isTwin(earlier, unit)));
}

function byWord(saysOf: (unit: Unit) => readonly string[]): Map<string, Unit[]> {
  const units = new Map<string, Unit[]>();
  for (const unit of UNITS)
    for (const word of new Set(saysOf(unit).map(wordKey))) units.set(word, [...(units.get(word) ?? []), unit]);
  return units;
}

/** The same for all ways to write one word: "ft-lb", "FT LBS", "ft.lb". */
function wordKey(text: string): string {
  return text
    .replaceAll("º", "°")
    .replaceAll(/[″“”]|''/g, '"')
    .replaceAll(/[′’‘]/g, "'")
    .normalize("NFKC")
    .toLowerCase()
    .replaceAll("°", " deg ")
    .replaceAll('"', " inch ")
    .replaceAll("/", " per ")
    .replaceAll("^", "")
    .replaceAll(/(?<=\b\w)\.(?=\w\b)/g, "")
    .replaceAll(/[-_·*×⋅.\s]+/g, " ")
    .trim()
    .split(" ")
    .map((word) => (word.length > 2 ? word.replace(/(?<!s)s$/, "") : word).replace(/^(.*met|lit)re$/, "$1er"))
    .join(" ");
}
