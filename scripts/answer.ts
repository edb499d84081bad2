/** npm run -s answer -- QUESTION …: one JSON document on stdout; errors as JSON on stderr, exit code 2. */
import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";
import type { Readable } from "node:stream";
import { parseArgs } from "node:util";
import { readFolder } from "../src/build/data/read-folder.ts";
import { showFinding } from "../src/build/data/show-findings.ts";
import { readFactText } from "../src/engine/answers/fact-text.ts";
import { type Knowledge, openKnowledge } from "../src/engine/answers/knowledge.ts";
import { QuestionError } from "../src/engine/answers/question-error.ts";
import { answerQuestion, batchQuestion, QUESTIONS, type Question, usage } from "../src/engine/answers/questions.ts";

const USAGE = [
  "answer QUESTION … [--data DIR]",
  "answer --batch FILE [--data DIR]      one JSON question a line; '-' reads standard input",
  "a car: --plate NUMBER, --fact TRAIT=VALUE, --found TRAIT=VALUE (on the car today), --fitted PART; each but --plate as often as needed, or several in one, as in --fact 'my=1973; eq=DF'",
  ...Object.entries(QUESTIONS).map(([name, question]) => `  ${name}: ${question.about}; takes ${usage(question)}`),
];

const OPTIONS = {
  data: { type: "string", default: "data" },
  batch: { type: "string" },
  help: { type: "boolean", short: "h", default: false },
  plate: { type: "string" },
  fact: { type: "string", multiple: true },
  found: { type: "string", multiple: true },
  fitted: { type: "string", multiple: true },
  scope: { type: "string" },
  record: { type: "string" },
  place: { type: "string" },
  component: { type: "string" },
  from: { type: "string" },
  to: { type: "string" },
  parts: { type: "string" },
  seen: { type: "string", multiple: true },
  error: { type: "string" },
  conditions: { type: "string" },
  inputs: { type: "string" },
  job: { type: "string" },
} as const;

/** Where the command reads and writes, so that it can be run inside another program too. */
export interface Streams {
  readonly input: Readable;
  out(text: string): void;
  err(text: string): void;
}

/** Runs the command and returns its exit code: 0, or 2 where something could not be answered. */
export async function answerCommand(args: readonly string[], streams: Streams): Promise<number> {
  try {
    return await run(args, streams);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    streams.err(JSON.stringify({ error: message, usage: USAGE }, null, 2));
    return 2;
  }
}

async function run(args: readonly string[], streams: Streams): Promise<number> {
  const { values, positionals } = parse(args);
  if (values.help) {
    streams.out(USAGE.join("\n"));
    return 0;
  }
  if (positionals.length === 0 && values.batch === undefined) throw new QuestionError("No question was asked.");
  if (values.batch !== undefined) return answerBatch(await open(values.data), values.batch, streams);
  const [name = "", ...words] = positionals;
  const question = Object.hasOwn(QUESTIONS, name) ? QUESTIONS[name] : undefined;
  if (!question) throw new QuestionError(`There is no question '${name}'.`);
  const asked = {
    ...fieldsOf(question, words),
    ...optionsOf(question, values),
    ...(question.car ? { car: carOf(values) } : {}),
  };
  streams.out(JSON.stringify(answerQuestion(await open(values.data), { question: name, ...asked }), null, 2));
  return 0;
}

type Values = ReturnType<typeof parse>["values"];

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options: OPTIONS });
  } catch (error) {
    throw new QuestionError(error instanceof Error ? error.message : String(error));
  }
}

/** Words go to the fields in their order; the last field takes all that are left, so that a question needs no quotes. */
function fieldsOf(question: Question, words: readonly string[]): Record<string, string> {
  const fields: Record<string, string> = {};
  question.words.forEach((field, i) => {
    const own = i === question.words.length - 1 ? words.slice(i).join(" ") : words[i];
    if (own) fields[field] = own;
  });
  if (question.words.length === 0 && words.length > 0)
    throw new QuestionError(`It takes no words, but was given '${words.join(" ")}'.`);
  return fields;
}

/** Options that say something of the car, or of where to read, belong to no question. */
const OF_NO_QUESTION = ["data", "batch", "help", "plate", "fact", "found", "fitted"];

function optionsOf(question: Question, values: Values): Record<string, string | string[]> {
  const known: Record<string, string | string[]> = {};
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined || OF_NO_QUESTION.includes(name)) continue;
    // A component may also be asked for in words.
    if (!question.options.includes(name) && !question.words.includes(name))
      throw new QuestionError(`It takes no --${name}.`);
    known[name] = value as string | string[];
  }
  return known;
}

function carOf({ plate, fact, found, fitted }: Values): object {
  return {
    ...(plate === undefined ? {} : { plate }),
    ...(fact ? { facts: facts(fact) } : {}),
    ...(found ? { found: facts(found) } : {}),
    ...(fitted ? { fitted } : {}),
  };
}

/** trait=value, trait=a,b for several that are still possible, trait=from..to for a range; ";" separates facts. */
function facts(texts: readonly string[]): Record<string, unknown> {
  const known: Record<string, unknown> = {};
  for (const text of texts.flatMap((one) => one.split(";")).map((one) => one.trim())) {
    if (text === "") continue;
    const [name, value] = readFactText(text);
    const before = known[name];
    // Equipment is given piece by piece; any other trait has its values in one fact.
    if (before !== undefined && name !== "eq" && name !== "no")
      throw new QuestionError(`The fact '${name}' is given twice. Several possible values are written ${name}=a,b.`);
    known[name] = before === undefined ? value : [before, value].flat();
  }
  return known;
}

async function open(folder: string): Promise<Knowledge> {
  const { catalog, findings } = await readFolder(folder).catch((error: unknown) => {
    throw new QuestionError(
      `The data folder '${folder}' cannot be read: ${error instanceof Error ? error.message : String(error)}`,
    );
  });
  if (!catalog)
    throw new QuestionError(
      `The data has errors:\n${findings
        .filter((finding) => finding.severity === "error")
        .map((finding) => showFinding(finding, folder))
        .join("\n")}`,
    );
  return openKnowledge(catalog, { layout: false });
}

/** One answer a line, in the order of the questions, each with the id of its question. A bad line gets an error as its answer. */
async function answerBatch(knowledge: Knowledge, file: string, { input, out }: Streams): Promise<number> {
  let number = 0;
  let code = 0;
  for await (const line of linesOf(file, input)) {
    number++;
    if (line.trim() === "") continue;
    const answer = answerLine(knowledge, line, number);
    if ("error" in answer) code = 2;
    out(JSON.stringify(answer));
  }
  return code;
}

async function* linesOf(file: string, input: Readable): AsyncGenerator<string> {
  try {
    yield* createInterface({
      input: file === "-" ? input : createReadStream(file),
      crlfDelay: Number.POSITIVE_INFINITY,
    });
  } catch (error) {
    throw new QuestionError(
      `The batch file '${file}' cannot be read: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

function answerLine(knowledge: Knowledge, line: string, number: number): object {
  let asked: unknown;
  try {
    asked = JSON.parse(line);
  } catch {
    return { id: null, error: `Line ${number} is not JSON.` };
  }
  const question = batchQuestion.safeParse(asked);
  const id = typeof asked === "object" && asked !== null && "id" in asked ? asked.id : null;
  try {
    if (!question.success) throw new QuestionError(`Line ${number} needs "id" and "question", both texts.`);
    return { id, ...(answerQuestion(knowledge, question.data) as object) };
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    return { id, error: error.message };
  }
}

if (import.meta.main)
  process.exitCode = await answerCommand(process.argv.slice(2), {
    input: process.stdin,
    out: console.log,
    err: console.error,
  });
