/** The site of another data folder than that of the demonstration, built and served for the tests of one file. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";
import { type Served, serve } from "../../src/build/serve.ts";
import { buildByCommand } from "../helpers/build-by-command.ts";

/** To be called at the top of a test file. */
export async function serveBuilt(data: string): Promise<Served> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-served-"));
  buildByCommand({ data, site: join(home, "_site") });
  const served = await serve({ folder: join(home, "_site"), port: 0 });
  afterAll(async () => {
    await served.close();
    await rm(home, { recursive: true });
  });
  return served;
}
