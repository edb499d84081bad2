/** The command line, started as people start it: one JSON document on stdout, errors as JSON on stderr and exit code 2. */
import { spawn } from "node:child_process";
import { resolve } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, test } from "vitest";
import { answerCommand } from "../../scripts/answer.ts";
import { QUESTIONS } from "../../src/engine/answers/questions.ts";
import { onDisk, spoiled, TINY } from "../helpers/tiny-folder.ts";

interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Inside this program: starting a hundred programs takes longer than all their answers. */
async function answer(args: readonly string[], input = ""): Promise<Ran> {
  const said = { out: "", err: "" };
  const code = await answerCommand(args, {
    input: Readable.from([input]),
    out: (text) => {
      said.out += `${text}\n`;
    },
    err: (text) => {
      said.err += `${text}\n`;
    },
  });
  return { code, ...said };
}

/** As people start it. */
function started(args: readonly string[], input = ""): Promise<Ran> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, [resolve("scripts/answer.ts"), ...args]);
    let [out, err] = ["", ""];
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      err += text;
    });
    child.on("error", fail).on("close", (code) => done({ code, out, err }));
    child.stdin.on("error", () => {}).end(input);
  });
}

/** The command fails with exit code 2 and says why as JSON, and nothing that a program could take for an answer. */
function expectRefused(ran: Ran, why: RegExp): void {
  expect([ran.code, ran.out]).toEqual([2, ""]);
  const { error, usage } = JSON.parse(ran.err) as { error: string; usage: string[] };
  expect(error).toMatch(why);
  expect(usage[0]).toBe("answer QUESTION … [--data DIR]");
}

test("started by itself it says the same as inside a program", async () => {
  const data = await onDisk(TINY);
  const good: [string[], string] = [["--batch", "-", "--data", data], '{"id":"a","question":"part","part":"HT-101"}\n'];
  for (const [args, input] of [good, [["part"], ""] as [string[], string]])
    expect(await started(args, input)).toEqual(await answer(args, input));
});

describe("one question", () => {
  // question, argument in words, a piece of the answer
  const ASKED: [string, string[], object][] = [
    ["record", ["hy59-01"], { verdict: "on record", record: { id: "HY59-01" } }],
    ["part", ["HT", "102"], { verdict: "on record", part: { number: "HT-102" } }],
    ["component", ["hydraulic", "pump"], { component: { id: "pump" } }],
    ["neighbours", ["HT-201"], { node: { kind: "part" } }],
    ["search", ["long", "pump"], { verdict: "found" }],
    ["applies", ["HY59-01", "--fact", "line=B; my=1959; plant=K", "--fact", "number=0500"], { verdict: "yes" }],
    ["applies", ["--scope", "line=H", "--plate", "B9K0412"], { verdict: "no" }],
    ["applies", ["HY59-01", "--fact", "line=B", "--fact", "my=1959,1960"], { verdict: "look first" }],
    ["applies", ["--scope", "line=B; my=1957", "--fact", "line=B", "--fact", "my=..1957"], { verdict: "yes" }],
    ["applies", ["--scope", "eq=PT; eq=WN", "--fact", "eq=PT", "--fact", "eq=WN"], { verdict: "yes" }],
    ["car", ["--plate", "B9 K 0412"], { verdict: "known", notNeeded: [] }],
    ["next-question", ["--fact", "line=B", "--record", "HY59-01"], { verdict: "look first" }],
    ["net-change", ["--from", "1958", "--plate", "B9K0412"], { verdict: "changed", to: 1959 }],
    ["plate", ["B9", "K", "0412"], { verdict: "read" }],
    ["built", ["pump", "--plate", "B9K0412"], { verdict: "known", parts: ["HT-102"] }],
    ["compare-scopes", ["line=B", "line=H"], { verdict: "disjoint" }],
  ];
  test("of any kind is answered as JSON, and nothing else is said", async () => {
    const data = await onDisk(TINY);
    const all = await Promise.all(ASKED.map(([question, words]) => answer([question, ...words, "--data", data])));
    for (const [i, [question, , piece]] of ASKED.entries()) {
      const { code, out, err } = all[i] as Ran;
      expect([question, code, err]).toEqual([question, 0, ""]);
      expect(JSON.parse(out)).toMatchObject({ question, ...piece });
      expect(out).toMatch(/^\{\n.*\n\}\n$/s);
    }
  });

  test("without --data the folder 'data' beside the command is asked", async () => {
    const ran = await answer(["search", "no such words whatever"]);
    expect([ran.code, ran.err]).toEqual([0, ""]);
    expect(JSON.parse(ran.out)).toMatchObject({ question: "search" });
  });
});

test("--help says what can be asked", async () => {
  const ran = await answer(["--help"]);
  expect([ran.code, ran.err]).toEqual([0, ""]);
  for (const name of Object.keys(QUESTIONS)) expect(ran.out).toContain(`  ${name}: `);
});

describe("what cannot be answered", () => {
  // arguments, what is said
  const WRONG: [string[], RegExp][] = [
    [[], /^No question was asked\.$/],
    [["recrod", "x"], /^There is no question 'recrod'\.$/],
    [["constructor", "x"], /^There is no question 'constructor'\.$/],
    [["part", "x", "--colour"], /Unknown option '--colour'/],
    [["part", "x", "--from", "1971"], /^It takes no --from\.$/],
    [["car", "words"], /^It takes no words, but was given 'words'\.$/],
    [["car", "--fact", "my"], /^'my' is no fact\. Write trait=value\.$/],
    [["car", "--fact", "my=1972", "--fact", "my=1973"], /^The fact 'my' is given twice\. /],
    [["part", "x", "--data"], /argument missing/],
    [["part", "x", "--data", "no-such-folder"], /^The data folder 'no-such-folder' cannot be read: /],
    [["part", "x", "--data", "package.json"], /^The data folder 'package\.json' cannot be read: /],
    [["--batch", "no-such-file.jsonl"], /^The batch file 'no-such-file\.jsonl' cannot be read: /],
    [["--batch", "src"], /^The batch file 'src' cannot be read: /], // a folder
  ];
  test("is refused with what was expected", async () => {
    // Of the small folder, which is read sooner, where no other is named.
    const small = ["--data", await onDisk(TINY)];
    const all = await Promise.all(WRONG.map(([args]) => answer(args.includes("--data") ? args : [...args, ...small])));
    for (const [i, [, why]] of WRONG.entries()) expectRefused(all[i] as Ran, why);
  });

  test("a question without its argument", async () => {
    expectRefused(
      await answer(["part", "--data", await onDisk(TINY)]),
      /^Question 'part' takes "part"\. "part": a text/,
    );
  });

  test("a data folder with errors: all of them are said, each with its file and line", async () => {
    const folder = await onDisk(
      spoiled({
        "maker.yaml": ["title:", "titel:"],
        "changes/1959/HY59-01.md": ["components: [pump", "components: [pmup"],
      }),
    );
    const ran = await answer(["part", "HT-101", "--data", folder]);
    expectRefused(ran, /^The data has errors:\n/);
    expect(ran.err).toMatch(/changes\/1959\/HY59-01\.md:6:/);
    expect(ran.err).toMatch(/maker\.yaml:2:1/);
    expect(ran.err).toContain("did you mean 'pump'?");
  });

  test("an empty data folder", async () => {
    expectRefused(await answer(["part", "HT-101", "--data", await onDisk({})]), /vehicles\/traits\.yaml/);
  });
});

describe("a batch", () => {
  const GOOD = [
    '{"id":"a","question":"part","part":"HT-101"}',
    '{"id":"b","question":"record","record":"HY59-01"}',
    '{"id":"c","question":"search","text":"pump"}',
  ];
  const BAD: [line: string, id: unknown, error: string][] = [
    ["{not json", null, "Line 2 is not JSON."],
    ["null", null, 'Line 2 needs "id" and "question", both texts.'],
    ['{"id":7,"question":"part"}', 7, 'Line 2 needs "id" and "question", both texts.'],
    ['{"question":"part","part":"HT-101"}', null, 'Line 2 needs "id" and "question", both texts.'],
    [
      '{"id":"x","question":"prat"}',
      "x",
      `There is no question 'prat'. Questions are ${Object.keys(QUESTIONS).join(", ")}.`,
    ],
    ['{"id":"x","question":"part"}', "x", 'Question \'part\' takes "part". "part": a text. It was given undefined.'],
  ];

  test("every line is answered in turn, with the id of its question; empty lines are passed over", async () => {
    const folder = await onDisk({ ...TINY, "ask.jsonl": `${GOOD.join("\r\n\n")}\n` });
    const ran = await answer(["--batch", `${folder}/ask.jsonl`, "--data", folder]);
    expect([ran.code, ran.err]).toEqual([0, ""]);
    const lines = ran.out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(lines.map(({ id, question, verdict }) => [id, question, verdict])).toEqual([
      ["a", "part", "on record"],
      ["b", "record", "on record"],
      ["c", "search", "found"],
    ]);
  });

  test("bad lines get an error as their answer, in their place, and the exit code is 2", async () => {
    const folder = await onDisk(TINY);
    const input = BAD.map(([line]) => line).join("\n");
    const ran = await answer(["--batch", "-", "--data", folder], `${GOOD[0]}\n${input}\n${GOOD[1]}`);
    expect([ran.code, ran.err]).toEqual([2, ""]);
    const lines = ran.out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(lines.at(0)).toMatchObject({ id: "a" });
    expect(lines.at(-1)).toMatchObject({ id: "b" });
    expect(lines.slice(1, -1)).toEqual(
      BAD.map(([, id, error], i) => ({ id, error: error.replace("Line 2", `Line ${i + 2}`) })),
    );
  });

  test("an empty batch has no answers", async () => {
    expect(await answer(["--batch", "-", "--data", await onDisk(TINY)])).toEqual({ code: 0, out: "", err: "" });
  });
});
