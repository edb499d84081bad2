/**
 * Which records hold a word, on the command line. The site asks its search index the same; both take a word by its stem, as
 * Snowball's English stemmer cuts it, and words put together by signs as a whole and by their pieces.
 */
import snowball from "snowball-stemmers";

export type TextIndex = ReadonlyMap<string, ReadonlySet<string>>;

const stemmer = snowball.newStemmer("english");

export function textIndexOf(texts: Iterable<readonly [id: string, text: string]>): TextIndex {
  const index = new Map<string, Set<string>>();
  const add = (key: string, id: string): void => {
    const holders = index.get(key);
    if (holders) holders.add(id);
    else index.set(key, new Set([id]));
  };
  for (const [id, text] of texts) {
    const runs = text.split(/\s+/).filter(Boolean);
    runs.forEach((run, i) => {
      for (const stem of stemsOf(run)) add(stem, id);
      const next = runs[i + 1];
      if (next !== undefined) add(`${stemOf(run)} ${stemOf(next)}`, id);
    });
  }
  return index;
}

/** The records that hold a word, or two words one after the other. */
export function holdersOf(index: TextIndex, words: string): ReadonlySet<string> {
  return index.get(words.split(" ").map(stemOf).join(" ")) ?? new Set();
}

/** A run of signs as a whole, and its pieces. */
function stemsOf(run: string): string[] {
  const pieces = run.split(/[^\p{Letter}\p{Number}]+/u).filter(Boolean);
  return [...new Set([run, ...(pieces.length > 1 ? pieces : [])].map(stemOf).filter(Boolean))];
}

/** The same words come again and again. */
const known = new Map<string, string>();

function stemOf(word: string): string {
  const found = known.get(word);
  if (found !== undefined) return found;
  const stem = cut(word);
  known.set(word, stem);
  return stem;
}

function cut(word: string): string {
  const plain = word
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[^\p{Letter}\p{Number}]/gu, "");
  return plain === "" ? "" : stemmer.stem(plain);
}
