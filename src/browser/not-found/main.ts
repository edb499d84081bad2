/** On the page for addresses that lead nowhere: offers the page that was most likely meant. */
import { nearest } from "../../engine/scope/nearest.ts";

const guess = document.querySelector<HTMLElement>("#guess");
const link = guess?.querySelector("a");
if (guess && link) {
  const root = new URL(link.href);
  const wanted = decoded(location.pathname.slice(root.pathname.length));
  const sitemap = await fetch(new URL("sitemap.xml", root));
  const known = [...(await sitemap.text()).matchAll(/<loc>(.*?)<\/loc>/g)].map(
    (match) => new URL(match[1] as string).pathname,
  );
  // The published address may have another root than this server; only what follows it counts.
  const home = known[0] ?? "/";
  const found = nearest(
    wanted.replace(/index\.html$|\/$/g, ""),
    known.map((path) => path.slice(home.length).replace(/\/$/, "")).filter(Boolean),
  );
  if (found) {
    link.href = new URL(`${found}/`, root).href;
    link.textContent = found;
    guess.hidden = false;
  }
}

/** An address may be cut off in the middle of a letter; then it is compared as it is. */
function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
