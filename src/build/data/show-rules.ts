/** The rules of the check in words, for a terminal and as a document. */
import type { RuleText } from "../../engine/audit/rule.ts";
import { EXAMPLE_FOLDER } from "./example-folder.ts";
import { canBeSet, RULE_TEXTS } from "./rule-texts.ts";

/** A line for each. */
export function listRules(): string {
  const width = Math.max(...RULE_TEXTS.map(({ id }) => id.length));
  return RULE_TEXTS.map(({ id, gravity, about }) => `${id.padEnd(width)}  ${gravity.padEnd(7)}  ${about}`).join("\n");
}

export function showRule(rule: RuleText): string {
  return [
    `${rule.id} (${rule.gravity}${canBeSet(rule) ? "" : ", always"})`,
    rule.about,
    `Otherwise: ${rule.why}`,
    `To mend it: ${rule.mend}`,
    ...showExamples(rule, (file, wrong, right) => [
      `\n  wrong, in ${file}:\n${indented(wrong)}`,
      `  right:\n${indented(right)}`,
    ]),
  ].join("\n");
}

/** All rules as Markdown. */
export function rulesDocument(): string {
  const chapter = (rule: RuleText): string =>
    [
      `## ${rule.id}`,
      `${rule.about} *(${rule.gravity}${canBeSet(rule) ? "" : ", always"})*`,
      `Otherwise: ${rule.why}`,
      `To mend it: ${rule.mend}`,
      ...showExamples(rule, (file, wrong, right) => [
        `Wrong, in \`${file}\`:`,
        `\`\`\`yaml\n${wrong}\n\`\`\``,
        "Right:",
        `\`\`\`yaml\n${right}\n\`\`\``,
      ]),
    ].join("\n\n");
  return `${[
    "# The checks",
    "Made by `npm run schemas` from the rules themselves; a test runs every example. They are pieces of a small folder of made-up tractors.",
    "`checks.yaml` weighs a rule otherwise, with a reason; a file accepts what one finds in it with `accept: [{ check: …, about: […], why: … }]`. Neither is possible for those marked *always*.",
    ...RULE_TEXTS.map(chapter),
  ].join("\n\n")}\n`;
}

/** File by file the lines that differ between the example that is found and its mended twin. */
function showExamples(
  { example: { wrong, right } }: RuleText,
  show: (file: string, wrong: string, right: string) => string[],
): string[] {
  return [...new Set([...Object.keys(wrong), ...Object.keys(right)])].flatMap((file) => {
    const base = EXAMPLE_FOLDER[file] ?? "";
    const [bad, good] = differing(changed(base, wrong[file] ?? []), changed(base, right[file] ?? []));
    return bad === good ? [] : show(file, bad || "(nothing)", good || "(nothing)");
  });
}

export function changed(text: string, pieces: readonly string[]): string {
  return pieces.reduce((so, piece, i) => (i % 2 === 0 ? so.replace(piece, () => pieces[i + 1] ?? "") : so), text);
}

/** What is left of two texts without the lines that are the same at their beginning and their end. */
function differing(one: string, other: string): [string, string] {
  const [a, b] = [one.split("\n"), other.split("\n")];
  let from = 0;
  while (from < Math.min(a.length, b.length) && a[from] === b[from]) from++;
  let left = 0;
  while (left < Math.min(a.length, b.length) - from && a.at(-1 - left) === b.at(-1 - left)) left++;
  return [a.slice(from, a.length - left).join("\n"), b.slice(from, b.length - left).join("\n")];
}

function indented(text: string): string {
  return text.replace(/^/gm, "    ");
}
