/**
 * The parts of one component and their marks, each mark with its small drawing: a row a mark, easiest to see first, a column a
 * part. It serves on the bench, on paper and without a script.
 */
import { markDrawing } from "../../drawings/mark-drawing.ts";
import { EFFORT_WORDS } from "../../engine/answers/effort-words.ts";
import { address } from "../../engine/graph/node.ts";
import { markOf } from "../../engine/lookalikes/mark-table.ts";
import type { Feature, Part } from "../../engine/records/catalog.ts";
import { type Html, html } from "./html.ts";
import { partLink, partLinks } from "./links.ts";
import type { Page } from "./page.ts";
import { picture } from "./picture.ts";
import { upperFirst } from "./words.ts";

/** Nothing where none of the parts has a mark on record. The first part stands first. */
export function marksTable(page: Page, name: string, parts: readonly Part[]): Html | "" {
  const marked = parts.filter((part) => Object.keys(part.marks).length > 0);
  const bare = parts.filter((part) => !marked.includes(part));
  const features = (parts[0]?.features ?? []).filter(({ id }) => marked.some((part) => part.marks[id] !== undefined));
  if (features.length === 0) return "";
  return html`<section class="scroll" aria-label="Marks: ${name}" tabindex="0"><table class="marks drawn">
<thead><tr><th scope="col">What to look at</th>${marked.map((part) => html`<th scope="col">${partLink(page, part.number)}<small>${part.name}</small></th>`)}</tr></thead>
<tbody>${features.map(
    (feature) =>
      html`<tr><th scope="row">${upperFirst(feature.name)}${lookLines(feature)}<small><a class="id" href="${page.href(address("record", feature.record))}">${feature.record}</a></small></th>${marked.map(
        (part) => html`<td>${shown(feature, part.marks[feature.id])}</td>`,
      )}</tr>`,
  )}</tbody></table></section>
${
  bare.length > 0 &&
  html`<p class="note">No mark on record: ${partLinks(
    page,
    bare.map((part) => part.number),
  )}.</p>`
}`;
}

/** How to look, in lines of their own. */
function lookLines(feature: Feature): Html {
  const { where, effort, note } = feature;
  const worn = markOf(feature).wearsOff ? "It wears off, so a missing mark proves nothing." : undefined;
  const lines = [`${upperFirst(where)}; ${EFFORT_WORDS[effort]}.`, note, worn];
  return html`${lines.map((line) => line && html`<small>${line}</small>`)}`;
}

function shown(feature: Feature, value: string | number | undefined): Html {
  if (value === undefined) return html`<span class="none">not stated</span>`;
  const drawing = markDrawing(feature, value);
  const unit = feature.unit !== undefined && typeof value === "number" ? ` ${feature.unit}` : "";
  return html`${drawing && picture(drawing)}${value}${unit}`;
}
