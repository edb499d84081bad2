/** The server as an editor meets it: what it shows is what a build would publish, and what is saved is shown. */
import { mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { startDev } from "../../../src/build/dev/dev-server.ts";
import { dressPage } from "../../../src/build/dev/dress-page.ts";
import { buildByCommand } from "../../helpers/build-by-command.ts";
import { type Folder, onDisk, TINY } from "../../helpers/tiny-folder.ts";
import { listenTo } from "./listen-to.ts";

async function serverOf(files: Folder): Promise<{ url: string; folder: string; said: string[] }> {
  const folder = join(
    await onDisk(Object.fromEntries(Object.entries(files).map(([path, text]) => [`data/${path}`, text]))),
    "data",
  );
  const said: string[] = [];
  const { url, close } = await startDev({ data: folder, port: 0, say: (line) => said.push(line) });
  onTestFinished(close);
  return { url, folder, said };
}

/** What is written for the host of a published site, and about it. */
const FOR_THE_HOST = ["data/manifest.json", "data/moved.map", ".yearmark-site"];

test("every file is what the build publishes, but for the script that loads pages again", async () => {
  const { url, folder } = await serverOf(TINY);
  const site = join(folder, "../_site");
  buildByCommand({ data: folder, site });
  const { last } = await listenTo(url);
  const files = (await readdir(site, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => relative(site, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .filter((file) => !FOR_THE_HOST.includes(file));
  expect(files.length).toBeGreaterThan(80);
  for (const file of files) {
    const shown = Buffer.from(await (await fetch(new URL(file, url))).arrayBuffer());
    const published = await readFile(join(site, file));
    if (file.endsWith(".html")) expect(shown.toString(), file).toBe(dressPage(published.toString(), last.edition, ""));
    else expect(shown.equals(published), file).toBe(true);
  }
});

const RECORD = "changes/1959/HY59-01.md";
const RECORD_TEXT = TINY[RECORD] as string;
const FRAME_TEXT = TINY["changes/1958/FR58-01.md"] as string;

test("what is saved, renamed, deleted or added is shown; what is wrong is told until it is mended", async () => {
  const { url, folder, said } = await serverOf(TINY);
  const at = (path: string): string => join(folder, path);
  const page = async (address: string): Promise<string> => (await fetch(new URL(address, url))).text();
  const heard = await listenTo(url);
  /** A page is looked at again whenever its reader would be told that it changed. */
  const shows = (address: string, text: string): Promise<unknown> =>
    heard.until(async () => (await page(address)).includes(text));

  await writeFile(at(RECORD), RECORD_TEXT.replace("grew **longer**", "shrank"));
  await shows("records/HY59-01/", "The pump shrank.");

  // A mistake: the page stays, and says where.
  const [, edition] = /data-edition="([^"]+)"/.exec(await page("records/HY59-01/")) ?? [];
  await writeFile(at(RECORD), RECORD_TEXT.replace("place: pump, part: HT-101", "place: pump, part: HT-11"));
  const news = await heard.until(({ box }) => box.includes(`${folder}/${RECORD}:10:26`));
  expect(news.box).toContain("<mark>HT-11</mark>");
  expect(news.box).toContain("did you mean &#39;HT-101&#39;?");
  expect(news.edition).toBe(edition);
  const stale = await page("records/HY59-01/");
  expect(stale).toContain("The pump shrank.");
  expect(stale).toContain(news.box);
  expect(said.join("\n")).toContain(`${RECORD}:10:26: error: no part is called 'HT-11'`);

  // Mended, by a rename over it as many editors save.
  await writeFile(at("changes/1959/.HY59-01.md.swp"), RECORD_TEXT);
  await rename(at("changes/1959/.HY59-01.md.swp"), at(RECORD));
  await shows("records/HY59-01/", "grew <strong>longer</strong>");
  await heard.until(({ box }) => box === "");
  // Said when the whole is checked, which is done aside.
  await expect.poll(() => said, { timeout: 60_000 }).toContain("Nothing to complain about any more.");

  // A new folder, and files in it that come after the folder was seen.
  await mkdir(at("changes/1961"));
  await writeFile(at("maker.yaml"), (TINY["maker.yaml"] as string).replace("Hollin model", "Hollin tractor"));
  await shows("", "Hollin tractor changes");
  await writeFile(at("changes/1961/FR61-01.md"), FRAME_TEXT.replaceAll("58", "61"));
  await shows("records/FR61-01/", "Four holes.");
  await writeFile(at("changes/1961/FR61-01.md"), FRAME_TEXT.replaceAll("58", "61").replace("Four", "Five"));
  await shows("records/FR61-01/", "Five holes.");

  // Gone with its folder, which then is there again under the same name.
  await rm(at("changes/1961"), { recursive: true });
  await shows("records/FR61-01/", "There is no page at this address");
  await mkdir(at("changes/1961"));
  await writeFile(at("changes/1961/FR61-01.md"), FRAME_TEXT.replaceAll("58", "61"));
  await shows("records/FR61-01/", "Four holes.");

  // All of the data away, and back.
  await rename(folder, `${folder}-away`);
  await heard.until((news) => news.box.includes("cannot be read or watched just now"));
  expect(await page("records/FR61-01/")).toContain("Four holes.");
  await rename(`${folder}-away`, folder);
  await heard.until((news) => news.box === "");
  await writeFile(at(RECORD), RECORD_TEXT.replace("grew **longer**", "shrank"));
  await shows("records/HY59-01/", "The pump shrank.");
});

test("without a site yet the errors are shown alone, and the page comes when they are mended", async () => {
  const { url, folder } = await serverOf({ ...TINY, "maker.yaml": "name: [" });
  const heard = await listenTo(url);
  expect(heard.last.box).toContain("maker.yaml:1");
  const page = await fetch(url);
  expect(await page.text()).toContain(heard.last.box);
  await writeFile(join(folder, "maker.yaml"), TINY["maker.yaml"] as string);
  await heard.until((news) => news.box === "");
  expect(await (await fetch(url)).text()).toContain("Hollin model changes");
});
