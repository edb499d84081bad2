/** What became of a published site, as text for a terminal. */
import type { Verified } from "./verify-site.ts";

/** Of each kind so many are listed: an upload that broke off lacks thousands. */
const MOST = 20;

export function showVerified({ files, missing, changed, foreign }: Verified, folder: string): string {
  const bad = missing.length + changed.length;
  const verdict =
    bad === 0
      ? `${folder} holds the site whole: ${counted(files)} as they were built.`
      : `${folder} is not the site that was built: of ${counted(files)} ${missing.length.toLocaleString("en")} missing, ${changed.length.toLocaleString("en")} changed. Upload it again.`;
  return [
    ...listed("missing", missing),
    ...listed("changed", changed),
    ...listed("not of the site", foreign),
    verdict,
  ].join("\n");
}

function listed(what: string, paths: readonly string[]): string[] {
  const more = paths.length - MOST;
  return [
    ...paths.slice(0, MOST).map((path) => `${what}: ${path}`),
    ...(more > 0 ? [`${what}: ${more.toLocaleString("en")} more`] : []),
  ];
}

function counted(n: number): string {
  return `${n.toLocaleString("en")} file${n === 1 ? "" : "s"}`;
}
