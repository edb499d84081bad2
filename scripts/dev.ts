/** npm run dev: serves the site of a data folder while an editor works on it, and shows every change at once. */

import { misuse, mustBeFolder, readOptions } from "./command-line.ts";
import { endWithParent } from "./end-with-parent.ts";

const USAGE = `npm run dev [-- --data DIR] [--port N]   shows the site of a data folder (data) on this machine, port 8080 or the next
                                         free one, and every change to it as soon as it is saved`;

const { values } = readOptions(USAGE, {
  options: { data: { type: "string", default: "data" }, port: { type: "string", default: "8080" } },
});
mustBeFolder(USAGE, "--data", values.data);
const wished = Number(values.port);
if (!/^\d+$/.test(values.port) || wished > 65535)
  misuse(USAGE, `--port ${values.port}: a port is a whole number from 0 (any free one) to 65535`);
// What serves is loaded only now, so that the usage and a wrong option are answered at once.
const { startDev } = await import("../src/build/dev/dev-server.ts");
console.log(`Reading ${values.data} …`);
const served = await startDev({ data: values.data, port: wished, say: (line) => console.log(line) });
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => void served.close());
endWithParent(() => void served.close());
if (wished !== 0 && served.port !== wished) console.log(`Port ${wished} is in use, so it is ${served.port}.`);
console.log(
  `Save a file and the page shows it. Nothing is published: npm run build does that. Ctrl-C ends it.\n${served.url}`,
);
