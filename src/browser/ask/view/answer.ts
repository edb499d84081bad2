/** The engine's answers, each in a sentence with the records that say so, what to look at next, and the way to the whole of it. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { Given } from "../../../engine/answers/say-planned.ts";
import type { Look } from "../../../engine/answers/shapes/look.ts";
import { lookBox } from "../../at-hand/look-box.ts";
import { joined, type Own } from "../../at-hand/own.ts";
import { type Step, writeAddress } from "../../car/state.ts";
import { stepsOf } from "../../car/steps-of.ts";

export interface Speaker {
  readonly href: (address: string) => string;
  readonly say: (step: Step) => void;
}

/** A shape before a colour. */
function signOf(verdict: string, says: string): string {
  if (verdict === "on record") return says.startsWith("Nothing") ? "✕" : says.includes("look first") ? "?" : "✓";
  if (/not be used|does not go on|^no$|too (low|high)|contradiction/.test(verdict)) return "✕";
  if (/^(yes|yes, on conditions|as built|within|in force|current|one part)$/.test(verdict)) return "✓";
  return /look first|by place|still open|choose|cannot/.test(verdict) ? "?" : "–";
}

const MOST_REASONS = 6;

export function answersView(speaker: Speaker, answers: readonly Given[]): TemplateResult {
  return html`
    <section class="answer" aria-labelledby="answer"><h2 id="answer" tabindex="-1">Answer</h2>
      ${answers.map((given) => answerView(speaker, given))}
    </section>`;
}

function answerView(speaker: Speaker, given: Given): TemplateResult {
  const { verdict, says, because } = given;
  const look = (given.answer as { ask?: Look }).ask;
  const isSaid = look !== undefined && says.includes(look.what);
  const [path, label] = wholeOf(given);
  return html`
    <article class="said">
      <p class="big"><span class="sign" aria-hidden="true">${signOf(verdict, says)}</span> ${says}</p>
      ${look?.outcomes ? lookBox(speaker, look, isSaid) : nothing}
      ${
        because.length > 0
          ? html`<ul class="because">${because
              .slice(0, MOST_REASONS)
              .map(
                (it) => html`<li>${it.text} <a href=${speaker.href(it.address)}>${it.record}</a></li>`,
              )}${because.length > MOST_REASONS ? html`<li>and ${because.length - MOST_REASONS} more</li>` : nothing}</ul>`
          : html`<p class="note">No record says anything of it.</p>`
      }
      <p><a class="button" href=${speaker.href(path)}>${label}</a></p>
    </article>`;
}

/** The page that answers the same question in full, with the same car. */
function wholeOf({ asked }: Given): [path: string, label: string] {
  const to = (page: string, own: Own): string =>
    `/${page}/${joined(writeAddress({ steps: stepsOf(asked.car), known: undefined }), own)}`;
  switch (asked.question) {
    case "may-fit":
      return [
        to("fit", { part: asked.part, ...(asked.place === undefined ? {} : { place: asked.place }) }),
        `All about ${asked.part} on this car`,
      ];
    case "current":
      return asked.part === undefined
        ? [to("car", {}), "This car"]
        : [to("fit", { part: asked.part }), `All about ${asked.part} on this car`];
    case "retrofits":
      return [
        to("retrofits", asked.component === undefined ? {} : { component: asked.component }),
        "All ways, open and closed",
      ];
    case "setting":
      return [to("settings", { setting: asked.setting }), "The setting, with its history and procedure"];
    case "reading":
      return [to("settings", { setting: asked.setting, value: asked.value }), "The reading judged in full"];
    case "schedule":
      return [to("settings", {}), "All that is due on this car"];
    case "tell-apart":
      return [
        to(
          "apart",
          asked.component === undefined ? { parts: asked.parts?.join(",") ?? "" } : { component: asked.component },
        ),
        "Tell them apart, mark by mark",
      ];
    case "applies":
      return [`/records/${asked.record}/`, `The record ${asked.record}`];
    case "net-change":
      return [
        `/car/${writeAddress({ steps: stepsOf(asked.car), known: asked.from })}`,
        "Everything that changed on this car",
      ];
  }
}
