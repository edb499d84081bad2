/**
 * The ask page. As one types, the question is read, shown as chips, and its records listed; where it has the shape of one, the
 * engine's answer comes to stand above them. The address holds the question, so that it can be sent and the way back works.
 */
import { html, nothing, render, type TemplateResult } from "lit-html";
import type { AskAnswer } from "../../engine/answers/shapes/ask.ts";
import { viewAsked } from "../../engine/answers/view-asked.ts";
import { openStorage, recentCars } from "../car/recent.ts";
import { readAddress as readCar, type Step, withStep } from "../car/state.ts";
import { type Asked, anew, readAddress } from "./address.ts";
import type { Answered } from "./answers.ts";
import { keepScroll, restoreScroll, step, typed } from "./steps.ts";
import { answersView } from "./view/answer.ts";
import { chipsView } from "./view/chips.ts";
import { facetsView } from "./view/facets.ts";
import { recordsView } from "./view/records.ts";
import { type Heard, World } from "./world.ts";

const PAGE = 20;
/** After so many milliseconds without a key the address holds what is typed so far. */
const PAUSE = 300;
/** So long a question may find nothing before that is said, while somebody types. */
const UNFINISHED = 600;

const form = byId<HTMLFormElement>("ask-form");
const input = byId<HTMLInputElement>("ask");
const status = byId("status");
const place = byId("asked");
const lists = byId("lists");

const title = document.title;
const root = new URL("../", location.href);
const href = (address: string): string => new URL(address.replace(/^\//, ""), root).href;
let opened: Promise<World> | undefined;
let turn = 0;

function open(): Promise<World> {
  opened ??= World.load(root).catch((error: unknown) => {
    opened = undefined; // On a bad network the next question tries again.
    throw error;
  });
  return opened;
}

interface Now {
  readonly asked: Asked;
  readonly world: World;
  readonly heard: Heard;
  /** Nothing while it is still on its way. */
  readonly answered: Answered | undefined;
  readonly excerpts: ReadonlyMap<string, string>;
  readonly most: number;
}

async function ask(asked: Asked, typing = false): Promise<void> {
  const mine = ++turn;
  const isNewest = (): boolean => mine === turn;
  lists.hidden = asked.question !== "";
  if (asked.question === "") {
    render(nothing, place);
    place.setAttribute("aria-busy", "false");
    status.textContent = "";
    return;
  }
  place.setAttribute("aria-busy", "true");
  if (place.childElementCount === 0) {
    status.classList.remove("hidden");
    status.textContent = "Searching …";
  }
  const world = await open();
  let heard = await world.hear(asked);
  if (!isNewest()) return; // A newer question has overtaken this one.
  let now: Now = { asked, world, heard, answered: undefined, excerpts: new Map(), most: PAGE };
  const draw = (change: Partial<Now>): void => {
    if (!isNewest()) return;
    now = { ...now, ...change };
    show(now, () => draw({ most: now.most + PAGE }));
  };
  // While a word is half typed, that nothing is found says nothing: what stands there stays for a moment.
  if (typing && !heard.find().onRecord) await new Promise((resolve) => setTimeout(resolve, UNFINISHED));
  if (!isNewest()) return;
  draw({});
  heard = await world.hearText(heard, asked);
  draw({ heard });
  if (!isNewest()) return;
  const { answerHeard } = await import("./answers.ts");
  const answered = await answerHeard(root, world, heard, asked);
  draw({ answered });
  if (isNewest()) restoreScroll();
  if (isNewest()) draw({ excerpts: await excerptsOf(now) });
  if (isNewest()) place.setAttribute("aria-busy", "false");
}

function show(now: Now, more: () => void): void {
  const { asked, world, heard, answered, excerpts, most } = now;
  const { vocabulary } = world;
  const answer = viewAsked(vocabulary, {
    reading: heard.reading,
    answers: answered?.answers ?? [],
    unclear: answered?.unclear ?? false,
    found: heard.find,
  });
  const systems = new Map(vocabulary.names.filter(({ kind }) => kind === "system").map(({ id, label }) => [id, label]));
  const held = (document.activeElement as HTMLElement | null)?.dataset.key;
  render(
    html`
      <div id="reading">${chipsView(
        heard.whole,
        heard.reading,
        asked.picks,
        (picks) => go({ ...asked, picks }),
        (said, word) => go(anew(asked, asked.question.replace(said, word))),
      )}</div>
      ${carView(asked, answered)}
      ${answer.answers.length > 0 && answered ? answersView({ href, say: (step) => say(asked, step) }, answered.answers) : nothing}
      ${answered && answered.lines.length > 1 ? linesView(asked, answered.lines) : nothing}
      ${answered?.unread ? unreadView(asked, answered.unread) : nothing}
      ${answered?.unclear ? html`<p class="box look"><b>${answer.ask?.what}</b> Ask of one car, or say “off a …” and “on my …”.</p>` : nothing}
      ${answer.verdict === "nothing on record" ? html`<p class="box nothing"><b>${answer.words}</b></p>` : nothing}
      ${heard.withoutText ? html`<p class="note">The text search could not be loaded: only what the records are called was looked at.</p>` : nothing}
      ${thingsView(answer)}
      <h2 class="hidden">Records</h2>
      <div class="asked">
        <section id="facets" class="facets" aria-label="Narrow down">${facetsView(answer.facets, asked.chosen, (chosen) => go({ ...asked, chosen }))}</section>
        <div class="found">${recordsView({ answer, systemName: (id) => systems.get(id) ?? id, excerpts, href, most, more })}</div>
      </div>`,
    place,
  );
  if (toAnswer && answered) {
    toAnswer = false;
    document.getElementById("answer")?.focus({ preventScroll: true });
  }
  // The button or box that was just used was drawn anew: the keyboard stays on it.
  if (held !== undefined && document.activeElement === document.body)
    place.querySelector<HTMLElement>(`[data-key="${CSS.escape(held)}"]`)?.focus();
  // What an answer or a box says in large letters is not said twice to those who see it.
  status.classList.toggle("hidden", answer.verdict !== "records" || answer.answers.length > 0);
  if (status.textContent !== answer.words) status.textContent = answer.words;
  document.title = `${asked.question} · ${title}`;
}

/** Pages of what the question names: often that is all one wants. */
function thingsView({ things }: AskAnswer): TemplateResult | typeof nothing {
  if (things.length === 0) return nothing;
  return html`<ul class="things" aria-label="Pages of what the question names">${things.map(
    (it) =>
      html`<li><a href=${href(it.address)}>${it.kind === "part" || it.kind === "record" ? html`<span class="id">${it.id}</span>` : it.label}</a></li>`,
  )}</ul>`;
}

/** The car beside the question: what is known of it, or one looked at before. */
function carView(asked: Asked, answered: Answered | undefined): TemplateResult | typeof nothing {
  const takeBack = (step: Step) => go({ ...asked, car: asked.car.filter((one) => one !== step) });
  if (asked.car.length > 0)
    return html`<ul class="read" aria-label="The car at hand">${(answered?.car ?? []).map(
      ({ step, label }) =>
        html`<li><button type="button" class="chip" aria-label="Take away: ${label}" @click=${() => takeBack(step)}>${label}<span aria-hidden="true"> ×</span></button></li>`,
    )}</ul>`;
  const recent = recentCars(openStorage());
  if (recent.length === 0) return nothing;
  return html`<details class="recent"><summary>For a car looked at before</summary><ul>${recent.map(
    ({ label, search }) =>
      html`<li><button type="button" class="choice" @click=${() => go({ ...asked, car: readCar(search).steps })}>${label}</button></li>`,
  )}</ul></details>`;
}

/** Nothing is permitted on the strength of a sentence that was only half understood; the reader can leave the rest out. */
function unreadView(asked: Asked, words: readonly string[]): TemplateResult {
  const plain = asked.question
    .split(/\s+/)
    .filter((word) => !words.includes(word.toLowerCase().replaceAll(/[^\p{L}\p{N}'-]/gu, "")))
    .join(" ");
  if (words.length === 0 || plain === asked.question)
    return html`<p class="box look"><b>Not all that was said of the car is certain</b>, so no permission rests on it. Say it plainly: line, model year, equipment.</p>`;
  return html`<div class="box look"><p><b>Not understood: ${words.join(", ")}.</b> So no permission rests on what was said of the car.</p>
    <p class="choices"><button type="button" class="choice" @click=${() => go({ ...asked, question: plain })}>Ask without ${words.length === 1 ? "it" : "them"} <small>${plain}</small></button></p></div>`;
}

/** An answer is for a car, and its line is the least that has to be known. */
function linesView(asked: Asked, lines: Answered["lines"]): TemplateResult {
  return html`<div class="box look"><p><b>Which model line is it?</b> The answer depends on it.</p>
    <p class="choices">${lines.map(({ name, means }) => html`<button type="button" class="choice" @click=${() => go({ ...asked, question: `${asked.question} ${name}` })}>${name} <small>${means}</small></button>`)}</p></div>`;
}

/** Words round those of the question, for the records that are found by their text. */
async function excerptsOf({ heard, world }: Now): Promise<Map<string, string>> {
  const { rest } = heard.reading;
  if (rest === "") return new Map();
  const top = heard.find().records.slice(0, 5);
  const found = await Promise.all(
    top.map(async ({ card, why }) => {
      const words = rest.split(" ").filter((word) => why.includes(word));
      if (card.page === undefined || words.length === 0) return [];
      const excerpt = await world.text
        .excerpt(words.map((word) => `"${word}"`).join(" "), card.page)
        .catch(() => undefined);
      return excerpt === undefined ? [] : [[`/${card.kind}s/${card.id}/`, excerpt] as const];
    }),
  );
  return new Map(found.flat());
}

let toAnswer = false;

/** The button that was pressed goes; the keyboard goes on at the answer. */
function say(asked: Asked, step: Step): void {
  toAnswer = true;
  go({ ...asked, car: withStep(asked.car, step) });
}

/** Asks, or says why not. */
function answer(asked: Asked, typing = false): void {
  ask(asked, typing).catch((error: unknown) => {
    status.classList.remove("hidden");
    status.textContent = `The search could not be opened: ${error instanceof Error ? error.message : String(error)}. The lists below lead everywhere.`;
    render(nothing, place);
    place.setAttribute("aria-busy", "false");
    lists.hidden = false;
  });
}

function go(asked: Asked): void {
  clearTimeout(pause);
  step(asked);
  input.value = asked.question;
  answer(asked);
}

/** While somebody types, each letter would be an address. */
let pause: ReturnType<typeof setTimeout> | undefined;
input.addEventListener("input", () => {
  clearTimeout(pause);
  const asked = inField();
  answer(asked, true);
  pause = setTimeout(() => typed(asked), PAUSE);
});
// Whoever leaves the field sooner, for a record that was found, comes back to what was typed.
input.addEventListener("change", () => {
  clearTimeout(pause);
  typed(inField());
});
form.addEventListener("submit", (event) => {
  event.preventDefault();
  clearTimeout(pause);
  const asked = inField();
  typed(asked, { sent: true });
  answer(asked);
});
input.addEventListener("focus", () => void open().catch(() => {}), { once: true });
addEventListener("popstate", start);
addEventListener("pagehide", keepScroll);

function inField(): Asked {
  return anew(readAddress(location.search), input.value.trim());
}

function start(): void {
  clearTimeout(pause);
  const asked = readAddress(location.search);
  input.value = asked.question;
  answer(asked);
}

/** An element that the page is known to have. */
function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no element '${id}'`);
  return found as T;
}

start();
