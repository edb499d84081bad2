/**
 * The page "shop sums": a form in each of its sections. They work as soon as the script is there; the records of a car, where one
 * is at hand, only fill fields in.
 */
import { html, nothing, render } from "lit-html";
import type { JobShown } from "../../engine/answers/shapes/sum.ts";
import type { SumId } from "../../engine/records/shapes/sums.ts";
import { SUMS } from "../../engine/settings/sums/all.ts";
import { carBox } from "../at-hand/car-box.ts";
import type { Own } from "../at-hand/own.ts";
import { type AtHand, openPage } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";
import { type Desk, emptyDesk, fillIn, withdraw, wordsOf } from "./desk.ts";
import { figuresFor, jobsOnPage } from "./jobs.ts";
import { convertForm } from "./view/convert.ts";
import { sumForm } from "./view/form.ts";

const status = document.getElementById("sums-status") as HTMLElement;
const jobs = jobsOnPage();
const desks = new Map(Object.values(SUMS).map((sum) => [sum.id, emptyDesk(sum)]));

let hand: AtHand | undefined;
let said = "";
/** What the address asked for last; the same again with another car is no new wish. */
let asked = "";

function say(words: string): void {
  said = words;
  status.textContent = words;
}

function drawSum(desk: Desk): void {
  const place = document.getElementById(`do-${desk.sum.id}`) as HTMLElement;
  const own = jobs.filter((job) => job.sum === desk.sum.id);
  render(sumForm({ desk, jobs: own, hand, pick, drawn: () => drawSum(desk), worked: () => showWorked(desk) }), place);
}

function showWorked(desk: Desk): void {
  drawSum(desk);
  say(wordsOf(desk));
  const place = document.getElementById(`do-${desk.sum.id}`);
  place?.querySelector(".out")?.scrollIntoView({ block: "nearest" });
  // A field that is wrong is where to go on.
  place?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus();
}

function drawConvert(): void {
  render(convertForm(drawConvert, say), document.getElementById("do-convert") as HTMLElement);
}

/** A job is asked through the address, so that it can be sent; before the address can be read, it is filled in directly. */
function pick(sum: string, job: string): void {
  asked = "";
  if (hand) hand.ask({ sum, job });
  else adopt({ sum, job });
}

function adopt(own: Own): void {
  const wish = JSON.stringify([own.sum, own.job]);
  const desk = wish === asked ? undefined : desks.get(own.sum as SumId);
  const job = jobs.find(({ title, sum }) => title === own.job && sum === own.sum);
  asked = wish;
  if (desk && job) Object.assign(desk, emptyDesk(desk.sum), { wanted: job });
  for (const each of desks.values()) if (each.wanted && fillFor(each, each.wanted) && each === desk) showWorked(each);
}

/** Fills in what the job gives for the car at hand, once for each car. While its records are on their way: nothing. */
function fillFor(desk: Desk, job: JobShown): boolean {
  const isComing = hand !== undefined && isOnTheWay(hand);
  const key = isComing
    ? "on its way"
    : JSON.stringify(hand ? [carOf(hand.reading.steps), hand.line !== undefined] : "none");
  if (desk.filledFor === key) return false;
  desk.filledFor = key;
  if (isComing) withdraw(desk);
  else fillIn(desk, hand ? figuresFor(hand, job) : job);
  drawSum(desk);
  say(wordsOf(desk));
  return true;
}

function isOnTheWay({ reading, line }: AtHand): boolean {
  return reading.lines.length === 1 && !line;
}

for (const desk of desks.values()) drawSum(desk);
drawConvert();

await openPage(document.getElementById("sums") as HTMLElement, status, ["sum", "job"], (opened) => {
  const isFirst = hand === undefined;
  hand = opened;
  adopt(hand.own);
  for (const desk of desks.values()) drawSum(desk);
  const { sum } = hand.own;
  // Once the car stands on the page too: it moves what is below it.
  if (isFirst && sum !== undefined) queueMicrotask(() => document.getElementById(sum)?.scrollIntoView());
  return {
    spoken: said,
    shown: html`${carBox(hand)}
      ${isOnTheWay(hand) ? html`<p>Loading the records of this line …</p>` : nothing}
      <p class="note on-screen">Figures on record are filled in for this car, where they differ by car. The sums work without one too.</p>`,
  };
});
