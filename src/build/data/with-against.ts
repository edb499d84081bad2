import { complaintsAgainst, lostAddresses } from "../publish/against.ts";
import { readManifest } from "../publish/read-manifest.ts";
import type { CheckedFolder } from "./check-folder.ts";
import { byGravity, locate, type ReadFolder } from "./read-folder.ts";

/**
 * The same, with the addresses of a published site (its folder, or its manifest) that would die with this data. Throws `NoManifest`
 * where there is no such site. `compared` says how many there
 * are; a folder that could not be read as a whole has none to compare them with.
 */
export function withAgainst(
  checked: CheckedFolder,
  { catalog, sources }: ReadFolder,
  published: string,
): CheckedFolder & { readonly compared: number } {
  const manifest = readManifest(published);
  if (!catalog) return { ...checked, compared: 0 };
  const lost = complaintsAgainst(lostAddresses(catalog, manifest));
  const located = lost.map((complaint) => locate(complaint, sources.get(complaint.file)));
  return { ...checked, compared: manifest.pages.length, findings: [...checked.findings, ...located].sort(byGravity) };
}
