/** Every page of a built site: its address inside the site, and its text. */
import { globSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";

export interface SitePage {
  /** Beginning with '/'; a page in a folder of its own ends with '/' too. */
  readonly address: string;
  readonly html: string;
}

export function sitePages(folder: string): SitePage[] {
  return globSync("**/*.html", { cwd: folder })
    .map((file) => file.split(sep).join("/"))
    .sort()
    .map((file) => ({
      address: `/${file.replace(/(^|\/)index\.html$/, "$1")}`,
      html: readFileSync(join(folder, file), "utf8"),
    }));
}
