/**
 * npm run bench [-- --records N] [--runs N] [--json]: how long a build of many records takes and how much memory, beside
 * the least that could be done: the same pages, finished beforehand, poured into a layout by Eleventy and indexed by Pagefind.
 * npm run bench -- scopes [--json]: how long it takes to say of very many scopes whether they hold for one car.
 * npm run bench -- interchange [--json]: one part on one car, and all retrofits of a car, for growing numbers of parts.
 * npm run bench -- page [--json]: one step on the page "this car" with 10,000 records, and what it loads for one car.
 * npm run bench -- ask [--half build|end] [--json]: how well "ask" finds what a set of questions is about, beside other searches.
 * npm run bench -- ask-page [--json]: from a question to its first result with 10,000 records, and what is loaded for it.
 * npm run bench -- dev [--json]: from a saved file to its page in the browser under npm run dev with 5,000 records, beside a build.
 * npm run bench -- check [--json]: the check of 1,000 and 10,000 records, beside their files only parsed.
 */
import { parseArgs } from "node:util";
import { benchAsk } from "./bench/ask.ts";
import { ASK_PAGE_SIZES, benchAskPage } from "./bench/ask-page.ts";
import { HALVES, type Half, isHalf } from "./bench/ask-questions.ts";
import { bench } from "./bench/bench.ts";
import { benchCheck, CHECK_SIZES } from "./bench/check.ts";
import { benchDev, DEV_SIZES } from "./bench/dev.ts";
import { benchInterchange, INTERCHANGE_SIZES } from "./bench/interchange.ts";
import { benchPage, PAGE_SIZES } from "./bench/page.ts";
import { benchScopes, SIZES } from "./bench/scopes.ts";
import { showAsk } from "./bench/show-ask.ts";
import { showAskPage } from "./bench/show-ask-page.ts";
import { showBench } from "./bench/show-bench.ts";
import { showCheck } from "./bench/show-check.ts";
import { showDev } from "./bench/show-dev.ts";
import { showInterchange } from "./bench/show-interchange.ts";
import { showPage } from "./bench/show-page.ts";
import { showScopes } from "./bench/show-scopes.ts";
import { ensureBrowser } from "./browser.ts";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    records: { type: "string" },
    runs: { type: "string" },
    half: { type: "string" },
    json: { type: "boolean", default: false },
  },
});
const [name] = positionals;
if (name !== undefined) {
  const isOther = ["scopes", "page", "interchange", "ask", "ask-page", "dev", "check"].includes(name);
  if (positionals.length > 1 || !isOther || values.records || values.runs) {
    console.error(
      "scopes, interchange, page, ask, ask-page, dev and check are the other benches, and take no --records or --runs",
    );
    process.exit(2);
  }
  if (values.half !== undefined && (name !== "ask" || !isHalf(values.half))) {
    console.error("--half is build or end, and only for ask");
    process.exit(2);
  }
  const say = (line: string): void => console.error(line);
  if (name === "ask") {
    const result = await benchAsk(values.half === undefined ? HALVES : [values.half as Half], say);
    console.log(values.json ? JSON.stringify(result, null, 2) : showAsk(result));
    process.exit(0);
  }
  if (name === "ask-page") {
    const browserPath = ensureBrowser();
    if (!browserPath) process.exit(1);
    const result = await benchAskPage(ASK_PAGE_SIZES, browserPath, say);
    console.log(values.json ? JSON.stringify(result, null, 2) : showAskPage(result));
    process.exit(0);
  }
  if (name === "check") {
    const result = await benchCheck(CHECK_SIZES, say);
    console.log(values.json ? JSON.stringify(result, null, 2) : showCheck(result));
    process.exit(0);
  }
  if (name === "dev") {
    const browserPath = ensureBrowser();
    if (!browserPath) process.exit(1);
    const result = await benchDev(DEV_SIZES, browserPath, say);
    console.log(values.json ? JSON.stringify(result, null, 2) : showDev(result));
    process.exit(0);
  }
  if (name === "page") {
    const browserPath = ensureBrowser();
    if (!browserPath) process.exit(1);
    const result = await benchPage(PAGE_SIZES, browserPath, say);
    console.log(values.json ? JSON.stringify(result, null, 2) : showPage(result));
    process.exit(0);
  }
  if (name === "interchange") {
    const browserPath = ensureBrowser();
    if (!browserPath) process.exit(1);
    const result = await benchInterchange(INTERCHANGE_SIZES, browserPath, say);
    console.log(values.json ? JSON.stringify(result, null, 2) : showInterchange(result));
    process.exit(0);
  }
  const result = await benchScopes(SIZES, say);
  console.log(values.json ? JSON.stringify(result, null, 2) : showScopes(result));
  process.exit(result.differed === 0 ? 0 : 1);
}
if (values.half !== undefined) {
  console.error("--half is only for ask");
  process.exit(2);
}
const given = [values.records, values.runs].filter((text) => text !== undefined);
if (given.some((text) => !/^[1-9]\d*$/.test(text))) {
  console.error("--records and --runs take a whole number from 1");
  process.exit(2);
}
/** How many records, and how often each side is built. */
const sizes: [records: number, runs: number][] = values.records
  ? [[Number(values.records), Number(values.runs ?? 3)]]
  : [
      [1000, Number(values.runs ?? 3)],
      [5000, Number(values.runs ?? 2)],
    ];
const results = [];
for (const [records, runs] of sizes) {
  const result = await bench(records, runs, (line) => console.error(line));
  results.push(result);
  if (!values.json) console.log(showBench(result));
}
if (values.json) console.log(JSON.stringify(results, null, 2));
