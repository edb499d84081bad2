/** npm run check [-- --data DIR] [--json]: everything that is wrong with a data folder, all at once. */
import { parseArgs } from "node:util";
import { readFolder } from "../src/build/data/read-folder.ts";
import { countFindings, showFinding } from "../src/build/data/show-findings.ts";

const { values } = parseArgs({
  options: { data: { type: "string", default: "data" }, json: { type: "boolean", default: false } },
});
const { findings, files } = await readFolder(values.data);
if (values.json) console.log(JSON.stringify({ files, findings }, null, 2));
else {
  for (const finding of findings) console.log(`${showFinding(finding, values.data)}\n`);
  console.log(`${files} files: ${countFindings(findings)}`);
}
process.exitCode = findings.some((finding) => finding.severity === "error") ? 1 : 0;
