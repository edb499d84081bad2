/** npm run build [-- --data DIR] [--site DIR]: builds the site, without serving it. */
import { parseArgs } from "node:util";
import { buildSite } from "../src/build/build-site.ts";
import { progressOn } from "../src/build/progress.ts";
import { isBuilt, showSummary } from "../src/build/show-summary.ts";

const { values } = parseArgs({
  options: { data: { type: "string", default: "data" }, site: { type: "string", default: "_site" } },
});
const summary = await buildSite({ ...values, report: progressOn(process.stdout) });
if (isBuilt(summary)) console.log(showSummary(summary, values));
else {
  console.error(showSummary(summary, values));
  process.exitCode = 1;
}
