/** npm run build: builds the site, without serving it; or looks whether a folder holds a whole one. */
import { isSystemError } from "../src/build/is-system-error.ts";
import { MISUSE, mustBeFolder, readOptions } from "./command-line.ts";

const USAGE = `npm run build [-- --data DIR] [--site DIR]   builds the site of a data folder (data) and publishes it as SITE (_site)
npm run build -- --verify FOLDER             looks whether FOLDER holds a published site, whole and unchanged`;

const { values } = readOptions(USAGE, {
  options: {
    data: { type: "string", default: "data" },
    site: { type: "string", default: "_site" },
    verify: { type: "string" },
  },
});
// What builds is loaded only now, so that the usage and a wrong option are answered at once.
process.exitCode = values.verify === undefined ? await build() : await verify(values.verify);

async function build(): Promise<number> {
  mustBeFolder(USAGE, "--data", values.data);
  const [{ buildSite }, { progressOn }, { isBuilt, showSummary }, { ForeignSite }] = await Promise.all([
    import("../src/build/build-site.ts"),
    import("../src/build/progress.ts"),
    import("../src/build/show-summary.ts"),
    import("../src/build/swap.ts"),
  ]);
  try {
    const summary = await buildSite({ ...values, report: progressOn(process.stdout) });
    if (isBuilt(summary)) console.log(showSummary(summary, values));
    else console.error(showSummary(summary, values));
    return isBuilt(summary) ? 0 : 1;
  } catch (error) {
    if (error instanceof ForeignSite) console.error(error.message);
    else if (isSystemError(error))
      console.error(`${error.message}: nothing was published, ${values.site} stays as it was.`);
    else throw error;
    return error instanceof ForeignSite ? MISUSE : 1;
  }
}

async function verify(folder: string): Promise<number> {
  mustBeFolder(USAGE, "--verify", folder);
  const [{ verifySite }, { showVerified }, { NoManifest }] = await Promise.all([
    import("../src/build/publish/verify-site.ts"),
    import("../src/build/publish/show-verified.ts"),
    import("../src/build/publish/read-manifest.ts"),
  ]);
  try {
    const verified = verifySite(folder);
    const isWhole = verified.missing.length + verified.changed.length === 0;
    (isWhole ? console.log : console.error)(showVerified(verified, folder));
    return isWhole ? 0 : 1;
  } catch (error) {
    if (!(error instanceof NoManifest)) throw error;
    console.error(error.message);
    return 1;
  }
}
