/**
 * Which settings somebody means by some words.
 *
 *   The name of a setting, whole: that one; where figures with other conditions have the same name, all of these.
 *   Otherwise every setting whose name holds all of the words; if there is none, every one whose name, component (with what people
 *   also call it) and record together hold them.
 */
import type { Catalog, Component } from "../records/catalog.ts";
import type { Setting } from "../records/statement.ts";
import { nearest } from "../scope/nearest.ts";
import { type Matter, mattersOf } from "./net-change.ts";
import { QuestionError } from "./question-error.ts";

/** The figures that are one setting: of one name, and where a car has several under that name, of the same conditions. */
export interface SettingMatter extends Matter {
  readonly kind: "setting";
  readonly statements: readonly Setting[];
}

const matters = new WeakMap<Catalog, readonly SettingMatter[]>();

/** Every setting on record, in the order of the records. */
export function settingsOf(catalog: Catalog): readonly SettingMatter[] {
  const known = matters.get(catalog);
  if (known) return known;
  const found = mattersOf(catalog).filter((matter): matter is SettingMatter => matter.kind === "setting");
  matters.set(catalog, found);
  return found;
}

/** The component a figure is about: its own, or the main one of its record. */
export function componentOf(catalog: Catalog, setting: Setting): Component | undefined {
  return setting.component === undefined
    ? catalog.records.get(setting.record)?.components[0]
    : catalog.components.get(setting.component);
}

/** Throws a QuestionError with the nearest names where nothing on record fits the words. */
export function findSettings(catalog: Catalog, typed: string): SettingMatter[] {
  const all = settingsOf(catalog);
  const exact = all.filter((it) => same(it.name, typed) || it.statements.some((one) => same(one.name, typed)));
  if (exact.length > 0) return exact;
  const words = wordsOf(typed);
  if (words.length > 0) {
    const named = all.filter((it) => holdsAll(it.name, words));
    if (named.length > 0) return named;
    const about = all.filter((it) => holdsAll(`${it.name} ${aboutOf(catalog, it)}`, words));
    if (about.length > 0) return about;
  }
  const near = nearest(
    typed.toLowerCase(),
    all.flatMap((it) => [it.name, ...it.statements.map((one) => one.name)]),
  );
  throw new QuestionError(`No setting is called '${typed}'.${near ? ` Did you mean '${near}'?` : ""}`);
}

function aboutOf(catalog: Catalog, { statements }: SettingMatter): string {
  return statements
    .flatMap((it) => {
      const component = componentOf(catalog, it);
      const facts = catalog.records.get(it.record)?.facts;
      return [component?.name, ...(component?.aliases ?? []), facts?.id, facts?.title, ...(facts?.words ?? [])];
    })
    .join(" ");
}

function same(a: string, b: string): boolean {
  return wordsOf(a).join(" ") === wordsOf(b).join(" ");
}

/** "run-out", "runout" and "run out" are the same, and so are one and many. */
function holdsAll(text: string, words: readonly string[]): boolean {
  const own = wordsOf(text);
  const joined = own.join("");
  return words.every(
    (word) => own.includes(word) || own.some((it) => it.startsWith(word)) || (word.length > 4 && joined.includes(word)),
  );
}

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "" && !["the", "of", "for", "a", "an", "at", "on", "in"].includes(word))
    .map((word) => (word.length > 3 ? word.replace(/s$/, "") : word));
}
