/** npm run -s answer -- QUESTION …: one JSON document on stdout; errors as JSON on stderr, exit code 2. */
import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";
import { parseArgs } from "node:util";
import { readFolder } from "../src/build/data/read-folder.ts";
import { showFinding } from "../src/build/data/show-findings.ts";
import { type Knowledge, openKnowledge } from "../src/engine/answers/knowledge.ts";
import { answerQuestion, batchQuestion, QUESTIONS, QuestionError } from "../src/engine/answers/questions.ts";

const USAGE = [
  "answer QUESTION ARGUMENT [--data DIR]",
  "answer --batch FILE [--data DIR]      one JSON question a line; '-' reads standard input",
  ...Object.entries(QUESTIONS).map(
    ([name, question]) => `  ${name} ${question.field.toUpperCase()}: ${question.about}`,
  ),
];

async function main(): Promise<void> {
  const { values, positionals } = parse();
  if (values.help || (positionals.length === 0 && values.batch === undefined))
    throw new QuestionError("No question was asked.");
  if (values.batch !== undefined) return answerBatch(await open(values.data), values.batch);
  const [name = "", ...words] = positionals;
  const question = Object.hasOwn(QUESTIONS, name) ? QUESTIONS[name] : undefined;
  if (!question) throw new QuestionError(`There is no question '${name}'.`);
  const answer = answerQuestion(await open(values.data), { question: name, [question.field]: words.join(" ") });
  console.log(JSON.stringify(answer, null, 2));
}

function parse(): { values: { data: string; batch?: string | undefined; help: boolean }; positionals: string[] } {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        data: { type: "string", default: "data" },
        batch: { type: "string" },
        help: { type: "boolean", short: "h", default: false },
      },
    });
  } catch (error) {
    throw new QuestionError(error instanceof Error ? error.message : String(error));
  }
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
async function answerBatch(knowledge: Knowledge, file: string): Promise<void> {
  let number = 0;
  for await (const line of linesOf(file)) {
    number++;
    if (line.trim() !== "") console.log(JSON.stringify(answerLine(knowledge, line, number)));
  }
}

async function* linesOf(file: string): AsyncGenerator<string> {
  try {
    yield* createInterface({
      input: file === "-" ? process.stdin : createReadStream(file),
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
    process.exitCode = 2;
    return { id: null, error: `Line ${number} is not JSON.` };
  }
  const question = batchQuestion.safeParse(asked);
  const id = typeof asked === "object" && asked !== null && "id" in asked ? asked.id : null;
  try {
    if (!question.success) throw new QuestionError(`Line ${number} needs "id" and "question", both texts.`);
    return { id, ...(answerQuestion(knowledge, question.data) as object) };
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    process.exitCode = 2;
    return { id, error: error.message };
  }
}

main().catch((error: unknown) => {
  console.error(
    JSON.stringify({ error: error instanceof Error ? error.message : String(error), usage: USAGE }, null, 2),
  );
  process.exitCode = 2;
});
