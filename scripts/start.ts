/** npm start: builds the site and serves it on this machine until Ctrl-C. */
import { buildSite } from "../src/build/build-site.ts";
import { progressOn } from "../src/build/progress.ts";
import { serve } from "../src/build/serve.ts";
import { isBuilt, showSummary } from "../src/build/show-summary.ts";
import { misuse, mustBeFolder, readOptions } from "./command-line.ts";
import { endWithParent } from "./end-with-parent.ts";

const USAGE = `npm start [-- --data DIR] [--site DIR] [--port N]   builds the site of a data folder (data), publishes it as SITE (_site)
                                                    and serves it on this machine (port 8080, or the next free one) until Ctrl-C`;

const { values } = readOptions(USAGE, {
  options: {
    data: { type: "string", default: "data" },
    site: { type: "string", default: "_site" },
    port: { type: "string", default: "8080" },
  },
});
const wished = Number(values.port);
if (!/^\d+$/.test(values.port) || wished > 65535)
  misuse(USAGE, `--port ${values.port}: a port is a whole number from 0 (any free one) to 65535`);
mustBeFolder(USAGE, "--data", values.data);
const summary = await buildSite({ data: values.data, site: values.site, report: progressOn(process.stdout) });
if (!isBuilt(summary)) {
  console.error(showSummary(summary, values));
  process.exit(1);
}
console.log(showSummary(summary, values));
const served = await serve({ folder: values.site, port: wished });
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => void served.close());
endWithParent(() => void served.close());
if (wished !== 0 && served.port !== wished) console.log(`Port ${wished} is in use, so it is ${served.port}.`);
console.log(`Ctrl-C ends it. The site is at\n${served.url}`);
