import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { benchAsk } from "../../../scripts/bench/ask.ts";
import { openFts5 } from "../../../scripts/bench/ask-fts5.ts";
import { openMiniSearch } from "../../../scripts/bench/ask-minisearch.ts";
import { openWordsAlone } from "../../../scripts/bench/ask-ours.ts";
import { questionsOf } from "../../../scripts/bench/ask-page.ts";
import { readQuestions } from "../../../scripts/bench/ask-questions.ts";
import { textsOf } from "../../../scripts/bench/ask-texts.ts";
import { showAsk } from "../../../scripts/bench/show-ask.ts";
import { showAskPage } from "../../../scripts/bench/show-ask-page.ts";
import { onDisk, TINY } from "../../helpers/tiny-folder.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

async function fileOf(...lines: string[]): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "questions-"));
  onTestFinished(() => rm(folder, { recursive: true }));
  const file = join(folder, "questions.tsv");
  await writeFile(file, `${["half\tquestion\trecords\tanswer\texpected", ...lines].join("\n")}\n`);
  return file;
}

describe("the file of questions", () => {
  test("is read line by line; comments are not", async () => {
    const file = await fileOf("# not this one", "build\tlift sags\tA|B C\tcurrent\tHT-101", "end\twinch hums\t-\t-\t-");
    expect(readQuestions(file)).toEqual([
      { half: "build", text: "lift sags", records: [["A", "B"], ["C"]], answer: "current", expected: "HT-101" },
      { half: "end", text: "winch hums", records: [] },
    ]);
  });

  test("is refused where a line is not whole, without showing the line", async () => {
    const file = await fileOf("end\tthe secret one\tA");
    expect(() => readQuestions(file)).toThrow(/a line has not the fields half, question/);
    expect(() => readQuestions(file)).not.toThrow(/secret/);
  });
});

describe("the searches", () => {
  const { catalog } = tinyKnowledge();
  const texts = textsOf(catalog);
  const mini = openMiniSearch(texts)({ stems: true, fuzzy: 0, prefix: false, combine: "OR", title: 1 });

  test.each([
    ["its words alone", openWordsAlone(catalog)],
    ["FTS5", openFts5(texts)],
    ["MiniSearch", mini],
  ])("%s: a record is found by a word of its title, whatever else is asked; signs alone find nothing", (_, search) => {
    for (const { id, title } of texts) expect(search(`${title} zeppelin or "and`).records[0]).toBe(id);
    expect(search('" - ?').records).toEqual([]);
  });
});

test("both halves are scored by themselves, and only wrong questions of the building half are shown", async () => {
  const [first = { id: "", title: "" }] = textsOf(tinyKnowledge().catalog);
  const file = await fileOf(
    `build\t${first.title}\t${first.id}\t-\t-`,
    `build\tzeppelin hangar\t${first.id}\t-\t-`,
    `end\t${first.title} once more\t${first.id}\t-\t-`,
  );
  const files = { data: await onDisk(TINY), questions: file };
  const whole = await benchAsk(["build", "end"], () => {}, files);
  expect(whole.halves.map(({ half, searches }) => [half, searches.Yearmark.asked])).toEqual([
    ["build", 2],
    ["end", 1],
  ]);
  expect(whole.halves[0]?.searches.Yearmark.firstRight).toBe(0.5);
  expect(whole.halves[0]?.searches.Pagefind.firstRight).toBe(0.5);
  expect(whole.wrong).toEqual([]);
  expect(showAsk(whole)).not.toMatch(/once more|zeppelin/);
  const { wrong, ...half } = await benchAsk(["build"], () => {}, files);
  expect(wrong.map(({ question, what }) => [question, what])).toEqual([["zeppelin hangar", "first record"]]);
  for (const words of ["first right", "MiniSearch", "NOT MET", "zeppelin"])
    expect(showAsk({ ...half, wrong })).toContain(words);
});

test("the questions for the page are the same every time, and its report has the figures", () => {
  const { catalog } = tinyKnowledge();
  expect(questionsOf(catalog, 12)).toEqual(questionsOf(catalog, 12));
  const sizes = { records: 7, firsts: 1, further: 2, slowdown: 4 };
  const text = showAskPage({
    sizes,
    firsts: [{ question: "lift sags", milliseconds: 900 }],
    further: [100, 200].map((milliseconds) => ({ question: "winch hums", milliseconds })),
    loaded: [
      { path: "/ask/", bytes: 9000, gzip: 3000, before: true },
      { path: "/late.js", bytes: 999_000, gzip: 500_000, before: false },
    ],
  });
  for (const words of [
    "7 records",
    "900  lift sags",
    "median of these: 150 ms (aim < 150: NOT MET)",
    "9.0 (3.0)  up to",
  ])
    expect(text).toContain(words);
});
