/** Wiring only: which templates there are and what they are given. `npm run build` calls this; so does Eleventy by itself. */
import { join } from "node:path";
import rss from "@11ty/eleventy-plugin-rss";

export default async function (eleventy) {
  eleventy.addExtension("11ty.ts", { key: "11ty.js" });
  eleventy.addTemplateFormats("11ty.ts");
  eleventy.addPlugin(rss);
  eleventy.setUseGitIgnore(false);
  // The build hands over a site that it has checked; Eleventy alone reads the data folder itself.
  if (!("site" in eleventy.globalData)) {
    const { openSite } = await import("./src/build/open-site.ts");
    eleventy.addGlobalData("site", await openSite("data"));
  }
  return { dir: { input: join(import.meta.dirname, "src/site/pages") } };
}
