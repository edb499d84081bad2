/** From a data folder to a published site, stage by stage. Nothing that is published changes before everything is built. */
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { openKnowledge } from "../engine/answers/knowledge.ts";
import { NO_SITE } from "../engine/records/read-catalog.ts";
import { Site } from "../site/site.ts";
import { articlesOf } from "./articles-of.ts";
import { bundle } from "./bundle.ts";
import { checkFolder } from "./data/check-folder.ts";
import { type Finding, isFaultless, readFolder } from "./data/read-folder.ts";
import { indexSearch } from "./index-search.ts";
import type { Progress } from "./progress.ts";
import { addressesOf } from "./publish/addresses-of.ts";
import { MOVED_MAP, movedMap } from "./publish/moved-map.ts";
import { writeManifest } from "./publish/write-manifest.ts";
import { publishAtomically } from "./swap.ts";
import { writeAnswers } from "./write-answers.ts";
import { writeAsk } from "./write-ask.ts";
import { writeData } from "./write-data.ts";
import { writePages } from "./write-pages.ts";

export interface BuildSummary {
  /** What the check of the data found; with an error among it nothing was built. */
  readonly findings: readonly Finding[];
  /** How many of what the site has. */
  readonly counts: readonly (readonly [count: number, what: string])[];
  /** The address that feeds, sitemap and links to copy carry; nothing where no maker.yaml says one. */
  readonly address?: string;
}

export interface BuildOptions {
  /** The data folder. */
  readonly data: string;
  /** Where the site is published: a link to the build that is live. */
  readonly site: string;
  readonly report: Progress;
}

export async function buildSite({ data, site: place, report }: BuildOptions): Promise<BuildSummary> {
  const read = await report.stage("files", "read", async (stage) => {
    const folder = await readFolder(data);
    stage.advance(folder.files);
    return folder;
  });
  const { findings } = await report.stage("records", "checked", (stage) => {
    stage.advance(read.catalog?.records.size ?? 0);
    return checkFolder(read);
  });
  const { catalog } = read;
  if (!catalog || !isFaultless(findings)) return { findings, counts: [] };
  const site = await report.stage("graph", "built", (stage) => {
    const knowledge = openKnowledge(catalog, { layout: true });
    stage.advance(knowledge.graph.order);
    return new Site(knowledge);
  });
  await publishAtomically(place, async (folder) => {
    await report.stage("pages", "written", async (stage) => stage.advance(await writePages(site, folder)));
    // Pagefind is a process of its own and takes longest: the rest is done while it works.
    const search = indexSearch(folder, articlesOf(catalog), catalog.maker.language);
    search.catch(() => {}); // Its own stage, the last one, reports it.
    await report
      .stage("data", "written", async (stage) => {
        stage.advance(await writeData(site, folder));
        stage.advance(await writeAnswers(site.knowledge, folder));
      })
      .then(() => report.stage("scripts", "bundled", async (stage) => stage.advance(await bundle(folder))))
      .finally(() =>
        report.stage("search", "indexed", async (stage) => {
          const names = await search;
          stage.advance(names.size);
          await writeAsk(catalog, folder, names);
        }),
      );
    await report.stage("manifest", "hashed", async (stage) => {
      await writeFile(join(folder, MOVED_MAP), movedMap(site));
      stage.advance(writeManifest(folder, catalog.maker.site, addressesOf(catalog)));
    });
  });
  return {
    findings,
    counts: [
      [catalog.records.size, "records"],
      [catalog.parts.size, "parts"],
      [catalog.components.size, "components"],
      [catalog.bulletins.size, "bulletins"],
      [site.knowledge.graph.size, "relations"],
    ],
    ...(catalog.maker.site === NO_SITE ? {} : { address: catalog.maker.site }),
  };
}
