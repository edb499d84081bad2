/** The page "tell apart": which of several parts a piece is, mark by mark; with the car at hand, or on the bench without one. */
import { html, nothing, type TemplateResult } from "lit-html";
import type { CarKnowledge } from "../../engine/answers/car-knowledge.ts";
import { carBox } from "../at-hand/car-box.ts";
import { type AtHand, openPage } from "../at-hand/page.ts";
import { ask, type Outcome } from "./ask.ts";
import { loadBench } from "./load-bench.ts";
import { type Pair, readSeenText, withoutSeen, withSeen, writeSeen } from "./seen.ts";
import { answerView, type Doing } from "./view/answer.ts";
import { componentBox } from "./view/component-box.ts";
import { seenChips } from "./view/seen-chips.ts";

const place = document.getElementById("apart") as HTMLElement;
const status = document.getElementById("apart-status") as HTMLElement;
/** What the page says without a question, which an answer takes the place of. */
const tables = document.getElementById("apart-tables");

/** The marks of all parts, once they are there; or why they are not. */
let bench: CarKnowledge | undefined;
let failed: string | undefined;
let isLoading = false;
let latest: AtHand;
/** The answer to one address; what is typed into the first field draws again and again. */
let worked: { readonly hand: AtHand; readonly bench: CarKnowledge | undefined; readonly outcome: Outcome | undefined };
/** What was typed of a mark at this address and could not be read. */
let refused: (NonNullable<Doing["refused"]> & { readonly hand: AtHand }) | undefined;

await openPage(place, status, ["component", "parts", "place", "seen"], (hand) => {
  latest = hand;
  load(hand);
  if (worked?.hand !== hand || worked.bench !== bench) worked = { hand, bench, outcome: ask(hand, bench) };
  const { outcome } = worked;
  if (tables) tables.hidden = outcome !== undefined && "answer" in outcome;
  const isCarKnown = hand.state.steps.length > 0;
  return {
    spoken: spoken(outcome),
    shown: html`
      ${isCarKnown ? carBox(hand) : nothing}
      ${componentBox(hand, bench)}
      ${outcome === undefined ? nothing : outcomeView(hand, outcome)}
      ${isCarKnown ? nothing : html`<div class="on-screen"><p class="note">With the car known, the page says which of the parts the plant built into it, and asks first for what tells those apart.</p>${carBox(hand)}</div>`}`,
  };
});

function load(hand: AtHand): void {
  if (bench || isLoading || failed !== undefined) return;
  isLoading = true;
  loadBench(hand.href("apart/bench.json"), hand.lines)
    .then(
      (knowledge) => {
        bench = knowledge;
      },
      (error: unknown) => {
        failed = `${error instanceof Error ? error.message : String(error)}. Load the page again; the tables below need no script.`;
      },
    )
    .finally(() => {
      latest.draw();
      leaveTable();
    });
}

/** A link from elsewhere leads to a component's table, for browsers without a script; here the answer stands in its place. */
function leaveTable(): void {
  if (location.hash === "" || !tables?.hidden) return;
  history.replaceState(null, "", location.pathname + location.search);
  document.getElementById("apart-answer")?.scrollIntoView();
}

function outcomeView(hand: AtHand, outcome: Outcome): TemplateResult {
  if ("wait" in outcome)
    return failed === undefined ? html`<p>Loading the marks …</p>` : html`<p class="wrong">${failed}</p>`;
  if ("choose" in outcome) return html`<p class="box">${outcome.choose}</p>`;
  const pairs = readSeenText(hand.own.seen);
  const change = (to: readonly Pair[]): void => {
    refused = undefined;
    const { seen: _, ...own } = hand.own;
    hand.ask({ ...own, ...writeSeen(to) });
    document.getElementById("apart-answer")?.focus();
  };
  const takeBack = (mark: string): void => change(withoutSeen(pairs, mark));
  if ("wrong" in outcome)
    return html`<p class="wrong">${outcome.wrong}</p>
      ${seenChips(
        pairs.map(([mark, value]) => ({ feature: mark, name: mark, seen: value })),
        takeBack,
      )}`;
  const see = (mark: string, value: string): void => {
    const to = withSeen(pairs, [mark, value]);
    // What cannot be read never gets into the address: it is said beside the field.
    const next = ask({ ...hand, own: { ...hand.own, ...writeSeen(to) } }, bench);
    if (!next || !("wrong" in next)) {
      change(to);
      return;
    }
    refused = { mark, text: value, why: next.wrong, hand };
    hand.draw();
    status.textContent = next.wrong;
    document.getElementById(`measure-${mark}`)?.focus();
  };
  return answerView(hand, outcome, { refused: refused?.hand === hand ? refused : undefined, see, takeBack });
}

function spoken(outcome: Outcome | undefined): string {
  if (outcome === undefined || "wait" in outcome) return failed ?? "";
  if ("answer" in outcome) return outcome.answer.words;
  return "choose" in outcome ? outcome.choose : outcome.wrong;
}
