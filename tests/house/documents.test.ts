/** The documents tell the truth: their examples run, their links lead somewhere, the commands they name exist. */
import { spawnSync } from "node:child_process";
import { cp, mkdir, mkdtemp, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, onTestFinished, test } from "vitest";
import { answerCommand } from "../../scripts/answer.ts";
import { checkFolder } from "../../src/build/data/check-folder.ts";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { showChecked } from "../../src/build/data/show-checked.ts";
import { headersOf, tableNamed } from "../../src/build/tables/all-tables.ts";
import { readMapping } from "../../src/build/tables/mapping.ts";
import type { Table } from "../../src/build/tables/table.ts";
import { onDisk } from "../helpers/tiny-folder.ts";

const DOCUMENTS = ["README.md", "DEVELOPERS.md", "CHANGELOG.md"];
const readme = await readFile("README.md", "utf8");

/** The fenced blocks of a document in one language. */
function blocks(text: string, language: string): string[] {
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, "gm"))].map(
    (match) => match[1] as string,
  );
}

describe("README.md", () => {
  test("begins with the job in one paragraph", () => {
    const [title, job, next] = readme.split(/\n\n+/);
    expect(title).toMatch(/^# \w+$/);
    expect(job?.length).toBeGreaterThan(200);
    expect(next).not.toBe("");
  });

  const examples = blocks(readme, "console").map((block) => {
    const [command = "", ...printed] = block.split("\n");
    return { command: command.replace(/^\$ /, ""), printed: printed.join("\n").trim() };
  });
  test("has examples of answers", () => expect(examples.length).toBeGreaterThan(0));
  test.each(examples)("$command prints what the document says", async ({ command, printed }) => {
    const words = command.replace("npm run -s answer -- ", "").split(" ");
    // Inside this program; the tests of the command hold that it says the same when it is started.
    const said: string[] = [];
    const add = (text: string): number => said.push(text);
    const code = await answerCommand(words, { input: Readable.from([]), out: add, err: add });
    expect([code, said.join("\n").trim()]).toEqual([0, printed]);
  });

  test("its first record passes the check, and the broken one gets just the complaint that is shown", async () => {
    const folder = await mkdtemp(join(tmpdir(), "documents-"));
    onTestFinished(() => rm(folder, { recursive: true }));
    await cp("data", join(folder, "data"), { recursive: true });
    const record = (blocks(readme, "markdown")[0] as string).replace(/^\n/, "");
    const [complaint = ""] = blocks(readme, "").filter((block) => block.includes(": error: "));
    const path = join(folder, complaint.slice(0, complaint.indexOf(":")));
    await mkdir(dirname(path), { recursive: true });
    // As the command does it when it is started in that folder.
    const check = async (): Promise<string> => {
      const read = await readFolder(join(folder, "data"));
      return showChecked(checkFolder(read), read.files, "data");
    };
    await writeFile(path, record);
    expect(await check()).toMatch(/: 0 errors, \d+ accepted/);
    const broken = /\| (scope: .*)$/m.exec(complaint)?.[1] as string;
    await writeFile(path, record.replace(/^scope: .*$/m, broken));
    expect(await check()).toContain(complaint.trim());
  });
});

test("what README.md shows of renaming, citing and writing is what the commands say", async () => {
  const folder = await mkdtemp(join(tmpdir(), "documents-"));
  onTestFinished(() => rm(folder, { recursive: true }));
  await cp("data", join(folder, "data"), { recursive: true });
  const shown = blocks(readme, "text");
  const run = (script: string, ...words: string[]): string =>
    spawnSync(process.execPath, [resolve("scripts", script), ...words], {
      cwd: folder,
      encoding: "utf8",
    }).stdout.trim();
  // Citing first: the example names an id that the renaming below does not touch.
  const cited = shown.find((text) => text.startsWith("letter.md:")) as string;
  await writeFile(join(folder, "letter.md"), `${/ 1 \| (.*)/.exec(cited)?.[1]}\n`);
  expect(run("cite.ts", "letter.md")).toContain(cited.trim());
  const renaming = /^npm run rename -- (\S+) (\S+) --why '(.*)'$/m.exec(readme) as RegExpExecArray;
  const [, from = "", to = "", why = ""] = renaming;
  const renamed = shown.find((text) => text.startsWith("Renamed ")) as string;
  expect(run("rename.ts", from, to, "--why", why)).toBe(renamed.trim());
  const command = /^npm run new -- (record [\s\S]*?)\n```/m.exec(readme)?.[1] as string;
  const words = [...command.matchAll(/'([^']*)'|([^\s\\]+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? "");
  expect(run("new.ts", ...words)).toMatch(/^Taken as of model year 1975; .*\nWrote data\/changes\/1975\//);
});

test("the mapping of README.md is one, and names columns that its table has", () => {
  const text = blocks(readme, "yaml").find((block) => block.startsWith("sheets:")) as string;
  const { sheets, findings } = readMapping("deliveries.map.yaml", text);
  expect(findings).toEqual([]);
  const [sheet] = sheets;
  const known = headersOf(tableNamed(sheet?.table ?? "") as Table);
  for (const column of [...Object.keys(sheet?.columns ?? {}), ...Object.keys(sheet?.constants ?? {})])
    expect(known).toContain(column);
});

test("the three files of README.md that are enough for a maker pass the check, with the system it shows and without", async () => {
  const files = [...readme.matchAll(/^```yaml (\S+)\n([\s\S]*?)^```$/gm)].map(([, path, text]) => [path, text]);
  const three = files.filter(([path]) => !path?.startsWith("components/"));
  expect([files.length, three.length]).toEqual([4, 3]);
  for (const some of [three, files]) {
    const read = await readFolder(await onDisk(Object.fromEntries(some) as Record<string, string>));
    expect(read.catalog?.records.size).toBe(1);
    expect(checkFolder(read).findings).toEqual([]);
  }
});

describe.each(DOCUMENTS)("%s", (document) => {
  test("links only to files that exist", async () => {
    const text = await readFile(document, "utf8");
    const links = [...text.matchAll(/\]\((?!https?:|#)([^)#]+)/g)].map((match) => match[1] as string);
    const missing = await Promise.all(
      links.map((link) =>
        stat(link).then(
          () => [],
          () => [link],
        ),
      ),
    );
    expect(missing.flat()).toEqual([]);
  });

  test("names only commands that package.json has", async () => {
    const text = await readFile(document, "utf8");
    const { scripts } = JSON.parse(await readFile("package.json", "utf8")) as { scripts: Record<string, string> };
    const named = [...text.matchAll(/npm run (?:-s )?([\w-]+)|npm (start|test)\b/g)].map(
      (match) => match[1] ?? match[2],
    );
    expect(named.filter((name) => !((name as string) in scripts))).toEqual([]);
  });

  test("names only paths of the source that exist", async () => {
    const text = await readFile(document, "utf8");
    const paths = [...text.matchAll(/`((?:src|tests|scripts|data|schemas)\/[\w./-]+)`/g)].map(
      (match) => match[1] as string,
    );
    const missing = await Promise.all(
      paths.map((path) =>
        stat(path).then(
          () => [],
          () => [path],
        ),
      ),
    );
    expect(missing.flat()).toEqual([]);
  });
});
