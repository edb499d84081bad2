/**
 * What a record is about, in the few words that ranking needs. A page loads the cards of the systems that a question is about,
 * so they hold no text but the words by which the record is called.
 */
import { address } from "../graph/node.ts";
import type { Bulletin, Catalog, ChangeRecord } from "../records/catalog.ts";
import { beginsOnLine, yearsOf } from "../records/concerned.ts";
import { isTrap } from "../records/is-trap.ts";
import { partsNamed, statementsOf } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Clause, Scope } from "../scope/scope.ts";
import type { Space } from "../scope/space.ts";
import type { Card } from "./card-shape.ts";
import { fold, split } from "./split.ts";

export function cardsOf(catalog: Catalog): Card[] {
  const linked = linksOf(catalog);
  const records = [...catalog.records.values()];
  const ended = new Set(records.flatMap((record) => statementsOf(record.statements, "cancels").map((it) => it.target)));
  return [
    ...records.map((record) => ({
      ...cardOf(catalog, record, linked.get(record.id) ?? new Set()),
      ...(ended.has(record.id) ? { ended: true as const } : {}),
    })),
    ...[...catalog.bulletins.values()].map((bulletin) => bulletinCard(catalog, bulletin)),
  ];
}

function cardOf(catalog: Catalog, record: ChangeRecord, links: ReadonlySet<string>): Card {
  const { facts } = record;
  const parts = [...new Set(record.stated.flatMap(partsNamed))];
  const scopes = [record.scope, ...record.stated.flatMap((it) => ("scope" in it && it.scope ? [it.scope] : []))];
  const begins = catalog.lines.flatMap((line) => {
    const year = beginsOnLine(catalog, record, line);
    return year === undefined ? [] : [[line.id, year] as const];
  });
  return {
    kind: "record",
    id: record.id,
    title: facts.title,
    starts: facts.starts,
    issued: facts.issued,
    systems: [...record.systems],
    components: record.components.map(({ id }) => id),
    on: yearsByLine(catalog, record.scope.cars),
    told: joined(scopes.map(({ cars }) => yearsByLine(catalog, cars))),
    begins: Object.fromEntries(begins),
    only: onlyOf(catalog.space, scopes),
    kinds: facts.kinds,
    says: [
      ...new Set([
        ...record.stated.map(({ type }) => type),
        ...(facts["tell-apart"] === undefined ? [] : ["tell-apart"]),
      ]),
    ].sort(),
    trap: isTrap(record),
    ...(facts.withdrawn === undefined ? {} : { withdrawn: true as const }),
    parts,
    settings: [...new Set(facts.settings.map(({ name }) => name))],
    links: [...links].sort(),
    keys: wordsOf([
      facts.title,
      ...facts.words,
      ...facts.settings.map(({ name }) => name),
      ...facts.intervals.map(({ name }) => name),
      ...facts.tools.map(({ tool }) => tool),
    ]),
    near: wordsOf([
      ...parts.flatMap((number) => {
        const part = catalog.parts.get(number);
        return part ? [part.name, ...part.aliases] : [];
      }),
      ...facts.built.map(({ place }) => place),
    ]),
  };
}

/** A bulletin is about the systems of the records that it cites; for what exactly, its words have to speak. */
function bulletinCard({ records }: Catalog, { id, facts, citations }: Bulletin): Card {
  const cited = [...new Set(citations.map((it) => it.id))].filter((it) => records.has(it));
  return {
    ...{ kind: "bulletin", id, title: facts.title, starts: facts.about, issued: facts.issued },
    systems: [...new Set(cited.flatMap((it) => records.get(it)?.systems ?? []))],
    ...{
      components: [],
      on: {},
      told: {},
      begins: {},
      only: {},
      kinds: [],
      says: [],
      trap: false,
      parts: [],
      settings: [],
    },
    links: cited,
    keys: wordsOf([facts.title]),
    near: [],
  };
}

/** Where its page stands on the site; it tells one card from all others. */
export function cardAddress({ kind, id }: Pick<Card, "kind" | "id">): string {
  return address(kind, id);
}

type Years = Record<string, number[]>;

function yearsByLine({ lines, space }: Catalog, cars: CarSet): Years {
  return Object.fromEntries(
    lines.flatMap((line) => {
      const own = space.sets.and(line.cars, cars);
      return own === NONE ? [] : [[line.id, yearsOf(space, own)]];
    }),
  );
}

function joined(some: readonly Years[]): Years {
  const all: Record<string, Set<number>> = {};
  for (const years of some)
    for (const [line, own] of Object.entries(years)) {
      const known = all[line] ?? new Set();
      for (const year of own) known.add(year);
      all[line] = known;
    }
  return Object.fromEntries(Object.entries(all).map(([line, years]) => [line, [...years].sort((a, b) => a - b)]));
}

/** The values of traits, but line and year, that every scope names, as they are written: what a scope does not name may be anything. */
function onlyOf(space: Space, scopes: readonly Scope[]): Record<string, string[]> {
  const only: Record<string, string[]> = {};
  space.declared.forEach((trait, at) => {
    if (trait.role !== undefined || (trait.kind !== "list" && trait.kind !== "flag")) return;
    const written = (number: number): string =>
      trait.kind === "flag" ? (number === 1 ? "yes" : "no") : (trait.values[number]?.id ?? "");
    const count = trait.kind === "flag" ? 2 : trait.values.length;
    const held = Array.from({ length: count }, (_, i) => i).filter((value) =>
      scopes.some(({ alternatives }) => alternatives.some((clauses) => clauses.every((it) => mayBe(it, at, value)))),
    );
    if (held.length < count) only[trait.id] = held.map(written);
  });
  return only;
}

function mayBe(clause: Clause, trait: number, value: number): boolean {
  if (clause.type === "values")
    return clause.trait !== trait || clause.values.some(([from, to]) => from <= value && value <= to);
  if (clause.type === "flags" && clause.traits.includes(trait))
    return clause.side === "none" ? value === 0 : value === 1 || clause.traits.length > 1;
  return true;
}

/** Links both ways: a record is as near to the one it names as that one to it. */
function linksOf(catalog: Catalog): Map<string, Set<string>> {
  const links = new Map<string, Set<string>>();
  const add = (a: string, b: string): void => {
    links.set(a, (links.get(a) ?? new Set()).add(b));
  };
  for (const record of catalog.records.values())
    for (const other of [...record.facts.links, ...statementsOf(record.stated, "cancels").map((it) => it.target)])
      if (catalog.records.has(other)) {
        add(record.id, other);
        add(other, record.id);
      }
  return links;
}

export function wordsOf(texts: readonly string[]): string[] {
  return [...new Set(texts.flatMap((text) => split(text).flatMap(piecesOf)))].sort();
}

/** A word, and where it is put together from several, these too: "run-out" is also "run" and "out". */
export function piecesOf(word: string): string[] {
  const pieces = word.split(/[-/]/).filter((piece) => piece.length > 1);
  const whole = fold(word.replaceAll(/[-/.'’]/g, ""));
  return pieces.length > 1 ? [whole, ...pieces.map(fold)] : [whole];
}
