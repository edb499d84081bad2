/** Which car it is: the plate, the model line, and what is known so far, each step of which can be taken back. */
import { html, nothing, type TemplateResult } from "lit-html";
import { answerPlate } from "../../../engine/answers/answer-plate.ts";
import { valueWords } from "../../../engine/answers/look.ts";
import type { MayFitAnswer } from "../../../engine/answers/shapes/may-fit.ts";
import type { Lines } from "../../../engine/records/lines-index.ts";
import { looksLike } from "../../../engine/records/read-plate.ts";
import type { Fact } from "../../../engine/scope/facts.ts";
import type { Space } from "../../../engine/scope/space.ts";
import type { Reading } from "../reading.ts";
import { plateOf, type State, type Step } from "../state.ts";
import type { Actions } from "./actions.ts";
import { capital, factWords, labelOf, stepWords } from "./words.ts";

export interface WhoParts {
  /** Whether there is an earlier state to go back to, also with nothing said now. */
  readonly canUndo: boolean;
  readonly state: State;
  readonly reading: Reading;
  readonly facts: readonly Fact[];
  /** What the records say of the parts reported fitted, as far as it is worked out. */
  readonly fitted: ReadonlyMap<string, MayFitAnswer>;
}

export function whoView(lines: Lines, parts: WhoParts, act: Actions): TemplateResult {
  const { state, reading } = parts;
  const plateGiven = reading.plate !== undefined && plateOf(reading.steps) !== undefined;
  return html`
    <section aria-labelledby="who">
      <h2 id="who" tabindex="-1">Which car?</h2>
      ${plateGiven && reading.conflict.length === 0 ? nothing : plate(lines, state, reading, act)}
      ${reading.lines.length > 1 ? lineButtons(lines, reading, act) : nothing}
      ${knownList(lines, parts, act)}
      ${reading.conflict.length > 0 ? conflictBox(lines, state, reading, act) : nothing}
    </section>`;
}

/** Once the car's line is known the plate is one more way to go on, and makes room for the questions. */
function plate(lines: Lines, state: State, reading: Reading, act: Actions): TemplateResult | typeof nothing {
  const form = plateForm(lines, state, reading, act);
  const isFirst = state.steps.every((step) => step.kind === "plate");
  if (isFirst || form === nothing) return form;
  return html`<details class="other-way" ?open=${reading.plate !== undefined}><summary>Read the plate instead</summary>${form}</details>`;
}

function plateForm(lines: Lines, state: State, { plate }: Reading, act: Actions): TemplateResult | typeof nothing {
  const { plates } = lines;
  if (plates.length === 0) return nothing;
  const typed = plateOf(state.steps) ?? "";
  const wrong = plate && plate.verdict !== "read";
  return html`
    <form class="plate" @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const value = String(new FormData(event.target as HTMLFormElement).get("plate") ?? "").trim();
      if (value !== "") act.say({ kind: "plate", value });
    }}>
      <label for="plate">Number on the ${plates.map((one) => one.name).join(" or ")}</label>
      <div class="row">
        <input id="plate" name="plate" type="text" autocomplete="off" autocapitalize="characters" spellcheck="false"
          .value=${typed} aria-describedby="plate-hint" aria-invalid=${wrong ? "true" : "false"} />
        <button type="submit">Read</button>
      </div>
      <p id="plate-hint" class="note">${plates.map((one) => html`${one.where} Such as <span class="id">${one.example}</span>. `)}</p>
      ${wrong ? misread(lines, plate, act) : nothing}
    </form>`;
}

/** That no car was built with the number is told below, by what does not go together; here only what it could have been. */
function misread(lines: Lines, plate: NonNullable<Reading["plate"]>, act: Actions): TemplateResult | typeof nothing {
  const isBuilt = plate.verdict !== "not built";
  if (!isBuilt && plate.slips.length === 0) return nothing;
  const likely = likeliest(lines, plate);
  const corrected = (place: number, character: string): string =>
    plate.number.slice(0, place - 1) + character + plate.number.slice(place);
  return html`
    <div class=${isBuilt ? "box trap" : "box"} role=${isBuilt ? "alert" : nothing}>
      ${isBuilt ? html`<p><b>${plate.ask?.what ?? "The number was misread."}</b></p>` : nothing}
      ${plate.verdict === "unknown" ? html`<p>${plate.ask?.options.join("; ")}</p>` : nothing}
      ${likely === undefined ? nothing : html`<p class="choices"><button type="button" class="choice" @click=${() => act.say({ kind: "plate", value: likely })}>It is <span class="id">${likely}</span></button></p>`}
      ${plate.slips.map(
        (slip) => html`
        <p>Character ${slip.place} (${slip.holds}) ${isBuilt ? "was read as" : "is"} <span class="id">${slip.character}</span>. It may be:</p>
        <p class="choices">${slip.couldBe.map(
          (
            other,
          ) => html`<button type="button" class="choice" @click=${() => act.say({ kind: "plate", value: corrected(slip.place, other) })}>
            <span class="id">${other}</span><span class="hidden"> in place ${slip.place}</span></button>`,
        )}</p>`,
      )}
    </div>`;
}

/**
 * Every misread character as what it looks like: often one letter O for each 0. Nothing where one looks like none that it can be,
 * or where no car was built with the number that comes of it.
 */
function likeliest(lines: Lines, { number, slips, verdict }: NonNullable<Reading["plate"]>): string | undefined {
  const isLikely = slips.every(
    ({ character, couldBe: [first, ...others] }) =>
      first !== undefined && (others.length === 0 || looksLike(character, first)),
  );
  if (verdict !== "misread" || slips.length === 0 || !isLikely) return undefined;
  const likely = new Map(slips.map(({ place, couldBe: [first] }) => [place, first]));
  const mended = [...number].map((character, i) => likely.get(i + 1) ?? character).join("");
  return answerPlate({ catalog: lines }, mended).verdict === "read" ? mended : undefined;
}

function lineButtons({ space, lines }: Lines, reading: Reading, act: Actions): TemplateResult {
  const index = space.role("line") as number;
  const trait = space.trait(index);
  return html`
    <fieldset class="question">
      <legend>${capital(trait.label)}</legend>
      <p class="note">${trait.find}</p>
      <p class="choices">${lines
        .filter((line) => reading.lines.includes(line.id))
        .map(
          (
            line,
          ) => html`<button type="button" class="choice" @click=${() => act.say({ kind: "fact", trait: trait.id, value: line.id })}>
            ${line.name}${line.class ? html` <small>${line.class}</small>` : nothing}</button>`,
        )}</p>
    </fieldset>`;
}

function knownList(
  { space }: Lines,
  { state, reading, facts, fitted, canUndo }: WhoParts,
  act: Actions,
): TemplateResult | typeof nothing {
  if (state.steps.length === 0) return canUndo ? html`<p class="choices">${undoButton(act)}</p>` : nothing;
  const fromPlate = facts.filter((fact) => fact.source === "plate");
  return html`
    <h3 id="known-head">What is known</h3>
    <ul class="known" aria-labelledby="known-head">${state.steps.map((step) => {
      const words = stepWords(space, step, facts);
      const why = reading.refused.find((one) => one.step === step)?.why;
      return html`<li class=${step.kind === "skip" ? "unknown" : nothing}>
        <span>${words}${why ? html`<br><span class="wrong">${why}</span>` : nothing}
        ${step.kind === "found" || step.kind === "fact" ? toldBy(space, reading, step.trait) : nothing}
        ${step.kind === "fitted" ? onTheCar(fitted.get(step.value), act) : nothing}
        ${step.kind === "plate" && fromPlate.length > 0 ? html`<br><small>${fromPlate.map((fact) => factWords(space, { ...fact, source: "said" })).join(" · ")}</small>` : nothing}</span>
        <button type="button" class="plain" @click=${() => act.takeBack(step)}>${step.kind === "skip" ? "Ask again" : "Take back"}<span class="hidden">: ${words}</span></button>
      </li>`;
    })}</ul>
    <p class="choices">
      ${undoButton(act)}
      <button type="button" class="plain" @click=${() => act.startAgain()}>Start again</button>
    </p>`;
}

/** What a number with a letter tells of the thing that it sits on: of an engine number, the engine. */
function toldBy(space: Space, { cars, conflict }: Reading, id: string): TemplateResult | typeof nothing {
  const index = space.find(id);
  const trait = index === undefined ? undefined : space.trait(index);
  const head = trait?.kind === "serial" && trait.of !== undefined ? space.find(trait.of) : undefined;
  if (head === undefined || conflict.length > 0) return nothing;
  const values = space.sets.valuesOf(cars, head);
  const isOne = values.length === 1 && values[0]?.[0] === values[0]?.[1];
  return isOne
    ? html`<br><small>${capital(space.trait(head).label)}: ${valueWords(space.trait(head), values)}</small>`
    : nothing;
}

function undoButton(act: Actions): TemplateResult {
  return html`<button type="button" class="plain" @click=${() => act.undo()}>Undo the last step</button>`;
}

/**
 * A part that was refused for this car, and what goes along with one that needs company. Nothing here says that it may be
 * fitted: the page has the records of one line only.
 */
function onTheCar(answer: MayFitAnswer | undefined, act: Actions): TemplateResult | typeof nothing {
  if (!answer) return nothing;
  const refused = answer.verdict === "does not go on" || answer.verdict === "goes on but must not be used";
  const fits = answer.places.flatMap((place) => place.fits);
  const reasons = refused ? fits.flatMap((fit) => fit.refusals) : fits.flatMap((fit) => fit.ways[0]?.steps ?? []);
  if (reasons.length === 0 || (!refused && answer.verdict !== "yes, on conditions")) return nothing;
  return html`<br><span class=${refused ? "wrong" : "note"}>${refused ? "The records refuse it on this car" : "Look whether all of it was done"}:
    ${reasons.map((reason) => html`${reason.text} <a href=${act.href(reason.address.slice(1))}>${reason.record}</a>. `)}</span>`;
}

function conflictBox({ space }: Lines, state: State, { facts, conflict }: Reading, act: Actions): TemplateResult {
  const stepOf = (fact: Fact): Step | undefined =>
    state.steps.find((step) => {
      if (fact.source === "plate") return false;
      return (
        (step.kind === "fact" || step.kind === "found") &&
        space.find(step.trait) === fact.trait &&
        (step.kind === "found") === (fact.source === "as found")
      );
    });
  const onPlate = facts.filter((fact) => fact.source === "plate" && !conflict.includes(fact));
  return html`
    <div class="box trap" role="alert">
      <h3>No such car was built, or it is no longer as built</h3>
      <p>These do not go together:</p>
      <ul>${conflict.map((fact) => {
        const step = stepOf(fact);
        return html`<li>${factWords(space, fact)}
          ${step ? html`<button type="button" class="plain" @click=${() => act.takeBack(step)}>Take back<span class="hidden">: ${labelOf(space, space.trait(fact.trait).id)}</span></button>` : nothing}</li>`;
      })}</ul>
      ${onPlate.length > 0 ? html`<p class="choices"><button type="button" class="plain" @click=${() => act.asFacts(onPlate)}>Go on without the plate, with the rest of what it says</button></p>` : nothing}
      <p>${facts.some((fact) => fact.source === "plate") ? "Read the number again and correct it above. " : nothing}If the car was changed since it was built, take back what no longer holds and say what was found on the car.</p>
    </div>`;
}
