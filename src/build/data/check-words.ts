/** The words of a data folder beside its vocabulary: which look like slips of the pen, and which the ask box does not know. */
import { lackingWords, type PlacedText, type PlacedWord, slips } from "../../engine/ask/slips.ts";
import { vocabularyOf } from "../../engine/ask/vocabulary.ts";
import type { Vocabulary } from "../../engine/ask/vocabulary-shape.ts";
import type { Catalog } from "../../engine/records/catalog.ts";
import type { Complaint, Path } from "../../engine/records/complaint.ts";
import { kindOf } from "../../engine/records/file-kinds.ts";
import { byGravity, type Finding, locate, type ReadFolder } from "./read-folder.ts";
import type { Source } from "./source.ts";

/** The fields that hold words for people. All others hold ids, numbers, scopes and figures, or what people call a thing. */
const WORD_FIELDS = new Set([
  ...[
    "name",
    "title",
    "about",
    "notice",
    "text",
    "story",
    "words",
    "starts",
    "withdrawn",
    "places",
    "conditions",
    "note",
  ],
  ...["notes", "why", "do", "when", "steps", "use", "left-alone", "tell-apart", "otherwise", "caution", "customer"],
  ...["find", "where", "label", "phrase", "class", "because", "marks"],
]);

interface Place extends Pick<Complaint, "file" | "path"> {
  readonly text: string;
}

/**
 * The slips, by file and place. They are looked for where the data holds otherwise: what names and aliases there are
 * is not known before. The rule for slips is one for English, so other languages are left alone.
 */
export function checkWords({ catalog, sources }: ReadFolder): Finding[] {
  if (!catalog || !/^en\b/.test(catalog.maker.language)) return [];
  const found = slips(textsOf(sources), namesIn(catalog)).map((slip) =>
    locateWord(slip, sources, {
      names: [slip.word, slip.meant],
      message: `'${slip.word}' looks like a slip: it is rare, and nothing is called so`,
      hint: `did you mean '${slip.meant}'? A word of its own goes into words.yaml, under 'plain'`,
    }),
  );
  return found.sort(byGravity);
}

/** The words that the vocabulary lacks, most frequent first, each with the place where it first stands. */
export interface Lacking {
  readonly words: readonly {
    readonly word: string;
    readonly count: number;
    readonly file: string;
    readonly line: number;
    readonly column: number;
  }[];
  /** How many more there are. */
  readonly more: number;
}

/** The first place is one in a change record, where there is one. */
export function wordsLackingIn({ catalog, sources }: ReadFolder, most: number): Lacking {
  if (!catalog) return { words: [], more: 0 };
  const isRecord = ([file]: readonly [string, unknown]): boolean => kindOf(file) === "change";
  const recordsFirst = [...sources].sort((a, b) => Number(isRecord(b)) - Number(isRecord(a)));
  const lacking = lackingWords(textsOf(recordsFirst), namesIn(catalog));
  const words = lacking.slice(0, most).map(({ word, count, ...first }) => {
    const { file, position } = locateWord({ word, ...first }, sources, { message: "", hint: "" });
    return { word, count, file, line: position.line, column: position.column };
  });
  return { words, more: lacking.length - words.length };
}

/** Its names and sayings only: a word does not become known by standing in the texts that are looked through here. */
function namesIn(catalog: Catalog): Vocabulary {
  return vocabularyOf(catalog, { words: {}, units: [] }, []);
}

function* textsOf(sources: Iterable<readonly [file: string, source: Source]>): Generator<PlacedText<Place>> {
  for (const [file, { value }] of sources) {
    // That file is all vocabulary.
    if (kindOf(file) !== "words") yield* textsIn(file, value, [], false);
  }
}

function* textsIn(file: string, value: unknown, path: Path, isWords: boolean): Generator<PlacedText<Place>> {
  if (typeof value === "string") {
    if (isWords) yield { text: value.trim(), place: { file, path, text: value.trim() } };
  } else if (Array.isArray(value)) {
    for (const [i, one] of value.entries()) yield* textsIn(file, one, [...path, i], isWords);
  } else if (typeof value === "object" && value !== null) {
    for (const [name, one] of Object.entries(value))
      yield* textsIn(file, one, [...path, name], WORD_FIELDS.has(name) || path.at(-1) === "marks");
  }
}

/**
 * Where a word stands. Of a text that is folded over several lines only the place as a whole is known: the word is sought from
 * there on, and as many of the same are passed over as the text has before it.
 */
function locateWord(
  { word, place: { text, ...place }, within }: PlacedWord<Place>,
  sources: ReadFolder["sources"],
  said: Pick<Complaint, "message" | "hint" | "names">,
): Finding {
  const source = sources.get(place.file);
  const finding = locate({ severity: "warning", rule: "slip-of-the-pen", ...place, within, ...said }, source);
  const { line, column } = finding.position;
  const written = text.slice(...within);
  if (finding.shown.startsWith(written, column - 1)) return finding;
  let left = text.slice(0, within[0]).split(written).length - 1;
  const lines = source?.text.split("\n").slice(line - 1) ?? [];
  for (const [i, shown] of lines.entries())
    for (let at = shown.indexOf(written, i === 0 ? column - 1 : 0); at >= 0; at = shown.indexOf(written, at + 1))
      if (left-- === 0)
        return {
          ...finding,
          position: { line: line + i, column: at + 1, length: word.length },
          shown: shown.replace(/\r$/, ""),
        };
  return finding;
}
