import { openKnowledge } from "../engine/answers/knowledge.ts";
import { Site } from "../site/site.ts";
import { readFolder } from "./data/read-folder.ts";
import { countFindings, showFinding } from "./data/show-findings.ts";

/** The site of a data folder, ready for the templates. Throws with all findings when the data has errors. */
export async function openSite(folder: string): Promise<Site> {
  const { catalog, findings } = await readFolder(folder);
  if (!catalog)
    throw new Error([...findings.map((finding) => showFinding(finding, folder)), countFindings(findings)].join("\n\n"));
  return new Site(openKnowledge(catalog, { layout: true }));
}
