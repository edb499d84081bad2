/** Links to the headings of every system in the lists below. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { System } from "../../../engine/records/catalog.ts";
import { underHeadings } from "../order.ts";
import type { Judged } from "../reading.ts";
import type { Actions } from "./actions.ts";
import { headingId } from "./fold.ts";

export interface JumpList {
  /** The name that the headings of the list begin with. */
  readonly name: string;
  readonly words: string;
  readonly items: readonly Judged[];
}

export function jumpView(
  lists: readonly JumpList[],
  systems: readonly System[],
  act: Actions,
): TemplateResult | typeof nothing {
  const places = lists.flatMap(({ name, words, items }) =>
    underHeadings(items, ({ record, trap }) => ({ trap, systems: record.systems }), systems).map(
      ({ heading, items: its }) => ({ heading, id: headingId(name, heading), words, count: its.length }),
    ),
  );
  const byHeading = Map.groupBy(places, (place) => place.heading);
  if (byHeading.size < 3) return nothing;
  const ranks = ["Traps", ...systems.map((system) => system.name)];
  const others = [...byHeading.keys()].filter((heading) => !ranks.includes(heading));
  const sorted = [...ranks, ...others].flatMap((heading) => {
    const its = byHeading.get(heading);
    return its ? [[heading, its] as const] : [];
  });
  return html`
    <nav class="jump" aria-label="Systems">
      <details><summary>Go to a system</summary>
      <ul>${sorted.map(
        ([heading, its]) =>
          html`<li><b>${heading}</b> ${its.map(
            ({ id, words, count }) =>
              html`<a href="#${id}" @click=${act.jump}><span class="hidden">${heading}: </span>${count} ${words}</a> `,
          )}</li>`,
      )}</ul></details>
    </nav>`;
}
