/** The answers for a new file: from flags, and from whoever sits at the terminal, where somebody does. */
import type { Answers, Desk, Field } from "./field.ts";
import { readAnswer } from "./read-answer.ts";

/** Somebody who can be asked. */
export interface Terminal {
  /** What was typed; nothing when nobody will type any more. */
  ask(question: string): Promise<string | undefined>;
  say(text: string): void;
}

export type Flags = Readonly<Record<string, readonly string[] | undefined>>;
export type Gathered =
  | { readonly answers: Answers }
  | { readonly missing: readonly string[]; readonly faults: readonly string[] }
  /** With what was answered until then. */
  | { readonly stopped: true; readonly answers: Answers };

/** Without a terminal, what can be suggested is taken, and everything that is missing or wrong is said at once. */
export function answersOfFlags(fields: readonly Field[], flags: Flags, desk: Desk): Gathered {
  const answers: Record<string, string | readonly string[]> = {};
  const missing: string[] = [];
  const faults: string[] = [];
  for (const field of fields) {
    const suggested = flags[field.name] ? undefined : field.needed && field.suggest?.(desk, answers);
    const typed = flags[field.name] ?? (suggested ? [suggested] : []);
    if (typed.length === 0) {
      if (field.needed) missing.push(field.name);
      continue;
    }
    const read = readAnswer(field, typed, desk, answers);
    if ("fault" in read) faults.push(`--${field.name}: ${read.fault}`);
    else if (read.value !== undefined) answers[field.name] = read.value;
  }
  return missing.length + faults.length > 0 ? { missing, faults } : { answers };
}

/** What a flag said rightly is not asked again. '?' lists what may be answered, Enter takes what stands in brackets. */
export async function answersAsked(
  fields: readonly Field[],
  flags: Flags,
  desk: Desk,
  terminal: Terminal,
): Promise<Gathered> {
  const answers: Record<string, string | readonly string[]> = {};
  terminal.say("Enter takes what stands in [ ], or leaves out what is not needed. ? lists what may be answered.");
  for (const field of fields) {
    let typed = flags[field.name];
    for (;;) {
      typed ??= await ask(field, desk, answers, terminal);
      if (typed === undefined) return { stopped: true, answers };
      const read = readAnswer(field, typed, desk, answers);
      typed = undefined;
      if ("fault" in read) terminal.say(`  ${read.fault}`);
      else {
        if (read.value !== undefined) answers[field.name] = read.value;
        break;
      }
    }
  }
  return { answers };
}

async function ask(
  field: Field,
  desk: Desk,
  answers: Answers,
  terminal: Terminal,
): Promise<readonly string[] | undefined> {
  const suggested = field.suggest?.(desk, answers);
  const how = [
    field.many ? "commas between" : "",
    field.long ? "an empty line ends it" : "",
    field.needed ? "" : "may be left out",
  ];
  const notes = how.filter(Boolean).join(", ");
  const question = `${field.ask}${notes ? ` (${notes})` : ""}${suggested === undefined ? "" : ` [${suggested}]`}: `;
  for (;;) {
    const line = await terminal.ask(question);
    if (line === undefined) return undefined;
    if (line.trim() === "?") terminal.say(listed(field, desk, answers));
    else if (field.long && line.trim() !== "") return longAnswer(line, terminal);
    else if (line.trim() === "" && suggested !== undefined) return [suggested];
    else return [line];
  }
}

function listed(field: Field, desk: Desk, answers: Answers): string {
  const options = field.options?.(desk, answers) ?? [];
  if (options.length === 0) return "  There is no list: write it in your own words.";
  return options.map(({ value, words }) => `  ${value.padEnd(24)} ${words}`.trimEnd()).join("\n");
}

async function longAnswer(first: string, terminal: Terminal): Promise<readonly string[] | undefined> {
  const lines = [first];
  for (;;) {
    const line = await terminal.ask("  ");
    if (line === undefined) return undefined;
    if (line.trim() === "") return [lines.join("\n")];
    lines.push(line);
  }
}
