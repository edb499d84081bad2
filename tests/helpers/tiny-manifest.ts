/** The manifest of the tiny folder's site, as far as its addresses go, without a build. */
import { addressesOf } from "../../src/build/publish/addresses-of.ts";
import { catalogOf } from "./tiny-folder.ts";

export function tinyManifest(): string {
  const catalog = catalogOf();
  return JSON.stringify({
    format: "yearmark-manifest/1",
    site: catalog.maker.site,
    pages: addressesOf(catalog),
    files: [],
  });
}
