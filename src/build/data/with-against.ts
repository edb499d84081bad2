import { complaintsAgainst, lostAddresses } from "../publish/against.ts";
import { readManifest } from "../publish/read-manifest.ts";
import type { CheckedFolder } from "./check-folder.ts";
import { byGravity, locate, type ReadFolder } from "./read-folder.ts";

/**
 * The same, with the addresses of a published site (its folder, or its manifest) that would die with this data. Throws `NoManifest`
 * where there is no such site. A folder that could not be read as a whole has no addresses to compare.
 */
export function withAgainst(
  checked: CheckedFolder,
  { catalog, sources }: ReadFolder,
  published: string,
): CheckedFolder {
  const manifest = readManifest(published);
  if (!catalog) return checked;
  const lost = complaintsAgainst(lostAddresses(catalog, manifest));
  const located = lost.map((complaint) => locate(complaint, sources.get(complaint.file)));
  return { ...checked, findings: [...checked.findings, ...located].sort(byGravity) };
}
