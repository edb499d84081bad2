/** What a build made, or why it made nothing, as text for a terminal. */
import type { BuildSummary } from "./build-site.ts";
import { isFaultless } from "./data/read-folder.ts";
import { countFindings, showFinding } from "./data/show-findings.ts";

export function showSummary(summary: BuildSummary, options: { data: string; site: string }): string {
  const { findings, counts } = summary;
  if (!isBuilt(summary))
    return [
      ...findings.map((finding) => `${showFinding(finding, options.data)}\n`),
      `${countFindings(findings)}: nothing was built, ${options.site} stays as it was.`,
    ].join("\n");
  const built = `Built ${options.site}: ${counts.map(([n, what]) => `${n.toLocaleString("en")} ${n === 1 ? what.replace(/s$/, "") : what}`).join(", ")}.`;
  return [
    built,
    ...(summary.address === undefined
      ? [
          "No maker.yaml says where it will be published: its feeds, its sitemap and the links to copy lead to this machine.",
        ]
      : []),
    ...(findings.length > 0 ? [`${countFindings(findings)}: npm run check shows them.`] : []),
  ].join("\n");
}

export function isBuilt({ findings }: BuildSummary): boolean {
  return isFaultless(findings);
}
