/**
 * "What is there about this?" The question is read into chips and words; records must carry every chip, and what is left
 * is searched as text: all words first, any word where that finds nothing, no word where that finds nothing either.
 * Without words traps come before the rest, newer before older.
 *
 * On the command line the text search is MiniSearch over the same articles that the site gives to its own search;
 * the reading of the question is the same code in both.
 */
import MiniSearch from "minisearch";
import { z } from "zod";
import { readQuestion, wanted } from "../ask/read-question.ts";
import { CHIP_KINDS, type Vocabulary, vocabularyOf } from "../ask/vocabulary.ts";
import { address, NODE_KINDS } from "../graph/node.ts";
import { concerned } from "../records/concerned.ts";
import { isTrap } from "../records/is-trap.ts";
import { answerBase } from "./answer.ts";
import type { Knowledge } from "./knowledge.ts";
import { reasonForRecord } from "./say.ts";

export const searchAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("search"),
    verdict: z.enum(["found", "nothing found"]),
    reading: z.strictObject({
      chips: z.array(
        z.strictObject({ kind: z.enum(CHIP_KINDS), ids: z.array(z.string()), label: z.string(), said: z.string() }),
      ),
      rest: z.string(),
    }),
    results: z.array(
      z.strictObject({
        kind: z.enum(NODE_KINDS),
        id: z.string(),
        title: z.string(),
        address: z.string(),
        trap: z.boolean(),
      }),
    ),
  })
  .describe("answer search TEXT");
export type SearchAnswer = z.infer<typeof searchAnswer>;

interface Article {
  readonly key: string;
  readonly kind: "record" | "part" | "component" | "bulletin";
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly tags: Readonly<Record<(typeof CHIP_KINDS)[number], readonly string[]>>;
  readonly trap: boolean;
  readonly issued: string;
}

interface Index {
  readonly vocabulary: Vocabulary;
  readonly articles: ReadonlyMap<string, Article>;
  readonly text: MiniSearch;
}

const indexes = new WeakMap<Knowledge, Index>();

export function answerSearch(knowledge: Knowledge, question: string): SearchAnswer {
  const index = indexOf(knowledge);
  const reading = readQuestion(index.vocabulary, question);
  const asked = [...wanted(reading.chips)];
  const fits = (article: Article): boolean =>
    asked.every(([kind, ids]) => ids.some((id) => article.tags[kind].includes(id)));
  const byText = reading.rest === "" ? [] : textSearch(index, reading.rest, fits);
  // Where the text finds nothing, what was understood still leads somewhere.
  const found = byText.length === 0 && asked.length > 0 ? browse(index, fits) : byText;
  return {
    question: "search",
    verdict: found.length > 0 ? "found" : "nothing found",
    because: found
      .filter((article) => article.kind === "record")
      .map((article) => reasonForRecord(knowledge.catalog, article.id)),
    ...(found.length > 0
      ? {}
      : {
          ask: {
            what: "Nothing was found. Try fewer or other words.",
            options: reading.chips.map((chip) => chip.label),
          },
        }),
    reading: { chips: reading.chips.map((chip) => ({ ...chip, ids: [...chip.ids] })), rest: reading.rest },
    results: found.map(({ kind, id, title, trap }) => ({ kind, id, title, address: address(kind, id), trap })),
  };
}

/** No words left: every record that fits, traps first, then the newest. */
function browse(index: Index, fits: (article: Article) => boolean): Article[] {
  return [...index.articles.values()]
    .filter((article) => article.kind === "record" && fits(article))
    .sort(
      (a, b) =>
        Number(b.trap) - Number(a.trap) ||
        (a.issued < b.issued ? 1 : a.issued > b.issued ? -1 : 0) ||
        (a.id < b.id ? -1 : 1),
    );
}

function textSearch(index: Index, words: string, fits: (article: Article) => boolean): Article[] {
  const options = {
    prefix: true,
    boost: { id: 8, title: 4 },
    filter: (result: { id: string }) => fits(index.articles.get(result.id) as Article),
  };
  const all = index.text.search(words, { ...options, combineWith: "AND" });
  const any = all.length > 0 ? all : index.text.search(words, { ...options, combineWith: "OR", fuzzy: 0.2 });
  return any.map((result) => index.articles.get(result.id as string) as Article);
}

function indexOf(knowledge: Knowledge): Index {
  const known = indexes.get(knowledge);
  if (known) return known;
  const articles = new Map(articlesOf(knowledge).map((article) => [article.key, article]));
  const text = new MiniSearch<Article>({ idField: "key", fields: ["id", "title", "text"] });
  text.addAll([...articles.values()]);
  const index = { vocabulary: vocabularyOf(knowledge.catalog), articles, text };
  indexes.set(knowledge, index);
  return index;
}

/** What a search looks through: records, parts, components and bulletins. */
function articlesOf({ catalog, recordsByComponent, statementsByPart }: Knowledge): Article[] {
  const none = { system: [], component: [], line: [], year: [], kind: [] };
  const records = [...catalog.records.values()].map((record): Article => {
    const { facts } = record;
    const { lines, years } = concerned(catalog, record.scope);
    const names = record.components.flatMap((component) => [component.name, ...component.aliases]);
    return {
      key: `record:${record.id}`,
      kind: "record",
      id: record.id,
      title: facts.title,
      text: [
        facts.story,
        facts["tell-apart"],
        facts.otherwise,
        facts.caution,
        facts.customer,
        ...facts.words,
        ...names,
        ...facts.settings.map((it) => it.name),
        ...facts.built.map((it) => `${it.place} ${it.part}`),
      ].join(" "),
      tags: {
        system: record.systems,
        component: record.components.map((component) => component.id),
        line: lines,
        year: years.map(String),
        kind: facts.kinds,
      },
      trap: isTrap(record),
      issued: facts.issued,
    };
  });
  const parts = [...catalog.parts.values()].map((part): Article => {
    const component = catalog.components.get(part.component);
    return {
      key: `part:${part.number}`,
      kind: "part",
      id: part.number,
      title: part.name,
      text: [
        part.number,
        ...part.castings,
        ...part.aliases,
        component?.name,
        ...(statementsByPart.get(part.number) ?? []).map((it) => it.record),
      ].join(" "),
      tags: { ...none, system: component ? [component.system] : [], component: [part.component] },
      trap: false,
      issued: "",
    };
  });
  const components = [...catalog.components.values()].map(
    (component): Article => ({
      key: `component:${component.id}`,
      kind: "component",
      id: component.id,
      title: component.name,
      text: [
        ...component.aliases,
        ...(recordsByComponent.get(component.id) ?? []).map((record) => record.facts.title),
      ].join(" "),
      tags: { ...none, system: [component.system], component: [component.id] },
      trap: false,
      issued: "",
    }),
  );
  const bulletins = [...catalog.bulletins.values()].map(
    (bulletin): Article => ({
      key: `bulletin:${bulletin.id}`,
      kind: "bulletin",
      id: bulletin.id,
      title: bulletin.facts.title,
      text: `${bulletin.facts.about} ${bulletin.facts.text}`,
      tags: none,
      trap: false,
      issued: bulletin.facts.issued,
    }),
  );
  return [...records, ...parts, ...components, ...bulletins];
}
