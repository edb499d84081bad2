/** The form of a sum: figures on record to fill in, a field for each input, and what came of it. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { JobShown } from "../../../engine/answers/shapes/sum.ts";
import type { AtHand } from "../../at-hand/page.ts";
import { clear, type Desk, work } from "../desk.ts";
import { isOfOtherLines } from "../jobs.ts";
import { fieldView } from "./field.ts";
import { outView } from "./out.ts";

export interface AtDesk {
  readonly desk: Desk;
  /** The jobs on record for this sum. */
  readonly jobs: readonly JobShown[];
  readonly hand: AtHand | undefined;
  pick(sum: string, job: string): void;
  /** Something was typed. */
  drawn(): void;
  /** It was worked out. */
  worked(): void;
}

export function sumForm(at: AtDesk): TemplateResult {
  const { desk, drawn, worked } = at;
  const { sum } = desk;
  return html`
    <form class="sum-form" aria-labelledby="form-${sum.id}" @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      work(desk);
      worked();
    }}>
      <h3 id="form-${sum.id}">Work it out<span class="hidden">: ${sum.name}</span></h3>
      ${jobsView(at)}
      <div class="fields">${sum.inputs.map((input) => fieldView(at, input))}</div>
      <p class="choices"><button type="submit">Work it out</button>
        <button type="button" class="plain" @click=${() => {
          clear(desk);
          drawn();
        }}>Clear</button>
        ${desk.out?.as === "worked out" ? html`<button type="button" class="plain" @click=${() => print()}>Print</button>` : nothing}</p>
    </form>
    ${desk.out ? outView(at, desk.out) : nothing}`;
}

function jobsView({ desk, jobs, hand, pick }: AtDesk): TemplateResult | typeof nothing {
  if (jobs.length === 0) return nothing;
  const isOther = desk.job !== undefined && hand !== undefined && isOfOtherLines(hand, desk.job);
  return html`
    <p id="jobs-${desk.sum.id}">Figures on record:</p>
    <p class="choices" role="group" aria-labelledby="jobs-${desk.sum.id}">${jobs.map(
      ({ sum, title }) =>
        html`<button type="button" class="choice job" aria-pressed=${String(desk.wanted?.title === title)} @click=${() => pick(sum, title)}>${title}</button>`,
    )}</p>
    ${isOther ? html`<p class="note look">The record of this sum says nothing of cars of this line: these are figures of other cars.</p>` : nothing}`;
}
