/**
 * What people call the traits of a car in a question.
 *
 *   Each value of a list is called by its label, its aliases, and its id beside the name of the trait ("R engine", "engine R").
 *   A word that stands in the labels of several values, but not of all, names all of these: "six" is any six.
 *   A yes/no trait is called by its label and aliases; whether it is there or not is said by the word before it.
 *
 * Model line and year are left out: they have chips of their own. So are numbers and dates, which are read off a plate.
 */
import type { Space } from "../scope/space.ts";
import type { ListTrait } from "../scope/trait.ts";
import { fold, split } from "./split.ts";
import type { Name } from "./vocabulary-shape.ts";

export function traitNames(space: Space): Name[] {
  const declared = space.declared.filter((trait) => trait.role !== "line" && trait.role !== "year");
  const called = new Set(space.declared.flatMap((trait) => [trait.label, ...trait.aliases].flatMap(wordsOf)));
  return declared.flatMap((trait): Name[] => {
    if (trait.kind === "flag") {
      const { id, label, aliases } = trait;
      return [{ kind: "trait", id: `${id}=yes`, label, say: [label, ...aliases] }];
    }
    return trait.kind === "list" ? [...valuesOf(trait), ...groupsOf(trait, called)] : [];
  });
}

function valuesOf(trait: ListTrait): Name[] {
  return trait.values.map(({ id, label, aliases }) => ({
    kind: "trait",
    id: `${trait.id}=${id}`,
    label: labelOf(trait, label),
    say: [
      // A bare number of two figures may be a year, one letter anything.
      ...[plainLabel(label), ...aliases].filter((it) => !/^(\d{1,2}|.)$/.test(it)),
      ...[trait.label, ...trait.aliases].flatMap((it) => [`${id} ${it}`, `${it} ${id}`, `${plainLabel(label)} ${it}`]),
    ],
  }));
}

/** Words shared by the labels of some of the values: each value's name once more, with that word. */
function groupsOf(trait: ListTrait, called: ReadonlySet<string>): Name[] {
  const holders = new Map<string, Set<string>>();
  for (const { id, label } of trait.values)
    for (const word of wordsOf(label)) holders.set(word, (holders.get(word) ?? new Set()).add(id));
  return [...holders].flatMap(([word, ids]): Name[] => {
    const saysNothing = called.has(word) || /^(\d{1,2}|.)$/.test(word);
    if (ids.size < 2 || ids.size === trait.values.length || saysNothing) return [];
    return trait.values
      .filter(({ id }) => ids.has(id))
      .map(({ id, label }) => ({
        kind: "trait",
        id: `${trait.id}=${id}`,
        label: labelOf(trait, label),
        say: [word, ...[trait.label, ...trait.aliases].map((it) => `${word} ${it}`)],
      }));
  });
}

function labelOf(trait: ListTrait, label: string): string {
  return /^\d+$/.test(label) ? `${label} ${trait.label}` : plainLabel(label);
}

function plainLabel(label: string): string {
  return label.replace(/^the /, "");
}

function wordsOf(label: string): string[] {
  return split(plainLabel(label)).map(fold);
}
