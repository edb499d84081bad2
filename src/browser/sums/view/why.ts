/** Where a figure comes from, with the records that say so; before the address of the site is known, without links. */
import { html, type TemplateResult } from "lit-html";
import type { Prefilled } from "../../../engine/answers/shapes/sum.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { recordLink } from "../../fit/view/reason.ts";

export function whyView({ why, because }: Prefilled, hand: AtHand | undefined): TemplateResult {
  // A record that is named in the sentence is not named again behind it.
  const records = [...new Set(because.map((it) => it.record))].filter((id) => hand && !why.startsWith(`${id} `));
  const [first = ""] = why.split(" ", 1);
  const isNamed = hand !== undefined && because.some((it) => it.record === first);
  return html`${isNamed ? html`${recordLink(hand, first)}${why.slice(first.length)}` : why}${records.map((id) => html` ${hand && recordLink(hand, id)}`)}`;
}
