/** A code to scan, as a small picture: one path of the runs of dark squares, row by row. */
import { encode } from "uqr";
import { type Html, html } from "./html.ts";

/**
 * The standard (ISO/IEC 18004) has eight patterns to lay over a code and lets a writer try all of them for the one that
 * is easiest to scan. A reader takes any. For addresses of our length it is mostly this one, and to try takes ten times
 * as long as all the rest.
 */
const PATTERN = 2;

export function codeImage(text: string, label: string): Html {
  const { data, size } = encode(text, { border: 2, maskPattern: PATTERN });
  const runs = data.flatMap((row, y) => {
    const signs = row.map((dark) => (dark ? "#" : ".")).join("");
    return [...signs.matchAll(/#+/g)].map((run) => `M${run.index} ${y}h${run[0].length}v1h-${run[0].length}z`);
  });
  return html`<svg role="img" aria-label="${label}" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h${size}v${size}H0z"/><path fill="#000" d="${runs.join("")}"/></svg>`;
}
