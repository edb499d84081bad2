export interface SplitFacts {
  readonly yaml: string;
  /** Where the facts begin in the text. */
  readonly at: number;
  readonly rest: string;
  readonly restAt: number;
}

/** Why a text does not begin with facts, and where the fault stands. */
export interface NoFacts {
  readonly at: number;
  readonly length: number;
  readonly message: string;
  readonly hint: string;
}

/** The facts between two lines of '---' with which a Markdown file begins, and the text below them; nothing where it does not begin so. */
export function splitFacts(text: string): SplitFacts | undefined {
  const match = /^(---[ \t]*\r?\n)([\s\S]*?)(^---[ \t]*(?:\r?\n|$))/m.exec(text);
  if (match?.index !== 0) return undefined;
  const restAt = match[0].length;
  return { yaml: match[2] as string, at: (match[1] as string).length, rest: text.slice(restAt), restAt };
}

/** Lines that a hand, or a word processor, makes of '---'. */
const NEARLY = /^[ \t]*(?:-{2,}|[\u2010-\u2015]+-?|_{3,}|\*{3,}|={3,}|\.{3})[ \t]*\r?$/;
/** A line of facts: a field, an entry, a comment, a bracket, or what is indented. */
const OF_FACTS = /^(?:\s|$|#|-\s|[\]}]|["']?[\w-]+["']?[ \t]*:(?:\s|$))/;

export function whyNoFacts(text: string): NoFacts {
  const lines = text.split("\n");
  const startOf = (line: number): number => lines.slice(0, line).reduce((at, { length }) => at + length + 1, 0);
  const fault = (line: number, message: string, hint: string): NoFacts => {
    return { at: startOf(line), length: Math.max(1, (lines[line] ?? "").trimEnd().length), message, hint };
  };
  const first = lines.findIndex((line) => line.trim() !== "");
  const begin = (lines[first] ?? "").trim();
  if (begin === "---" && (first > 0 || /^\s/.test(lines[first] ?? "")))
    return fault(
      0,
      "the file does not begin with facts",
      "take away what stands before the first '---', also spaces and blank lines",
    );
  if (begin !== "---") {
    const hint = "write the facts between two lines of '---', the story below them";
    return first >= 0 && NEARLY.test(begin)
      ? fault(
          first,
          `'${begin}' is no line of '---', so the file does not begin with facts`,
          "write just three hyphens",
        )
      : fault(0, "the file does not begin with facts", hint);
  }
  const nearly = lines.findIndex((line, i) => i > 0 && NEARLY.test(line));
  if (nearly > 0)
    return fault(
      nearly,
      `'${(lines[nearly] ?? "").trim()}' is no line of '---', so the facts do not end`,
      "write just three hyphens",
    );
  const story = lines.findIndex((line, i) => i > 0 && !OF_FACTS.test(line));
  const hint = "write a line of just '---' between the facts and the story";
  if (story < 0) return fault(lines.length - 1, "the facts do not end: no second line of '---' follows", hint);
  return fault(story, "the facts do not end: no second line of '---' stands before this", hint);
}
