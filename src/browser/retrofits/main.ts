/** The page "retrofit paths": what the car at hand may be improved with. */
import { html, nothing } from "lit-html";
import { answerRetrofits } from "../../engine/answers/answer-retrofits.ts";
import type { RetrofitsAnswer } from "../../engine/answers/shapes/retrofits.ts";
import { carBox } from "../at-hand/car-box.ts";
import { type AtHand, openPage, PICK_CAR } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";
import { filterView, matches, wanted } from "./filter.ts";
import { pathsView, together } from "./paths.ts";

const place = document.getElementById("retrofits") as HTMLElement;
const status = document.getElementById("retrofits-status") as HTMLElement;
/** The list of the page itself, which no filter narrows. */
const all = document.getElementById("by-record")?.closest("section");

/** The answer to one address; the filter looks at it again and again. */
let worked: { readonly for: string; readonly answer: RetrofitsAnswer } | undefined;

await openPage(place, status, ["component"], (hand) => {
  const answer = answerOf(hand);
  const shown = answer && {
    paths: answer.paths.filter((it) => matches(hand, it)),
    blocked: answer.blocked.filter((it) => matches(hand, it)),
  };
  const hasWays = answer !== undefined && answer.paths.length + answer.blocked.length > 0;
  if (all) all.hidden = hasWays && wanted(hand) !== "";
  return {
    spoken: spoken(hand, answer),
    shown: html`
      ${carBox(hand)}
      ${hand.reading.lines.length > 1 ? html`<p class="box">${PICK_CAR}</p>` : nothing}
      ${hand.reading.lines.length === 1 && !hand.line ? html`<p>Loading the records of this line …</p>` : nothing}
      ${hand.line && !answer ? html`<p>Looking through the records of this line …</p>` : nothing}
      ${hasWays ? filterView(hand) : nothing}
      ${shown ? pathsView(hand, shown) : nothing}`,
  };
});

/** Nothing while it is being worked out: the page shows that first. */
function answerOf(hand: AtHand): RetrofitsAnswer | undefined {
  const { line, reading } = hand;
  if (!line) return undefined;
  const car = carOf(reading.steps);
  const key = JSON.stringify(car);
  if (worked?.for === key) return worked.answer;
  setTimeout(() => {
    worked = { for: key, answer: answerRetrofits(line.knowledge, { car }) };
    hand.draw();
  }, 0);
  return undefined;
}

function spoken({ line, reading }: AtHand, answer: RetrofitsAnswer | undefined): string {
  if (reading.lines.length > 1) return PICK_CAR;
  if (!answer) return line ? "Looking through the records." : "";
  if (answer.verdict === "no such car") return "No such car was built.";
  return `${together(answer.paths).length} ways open, ${answer.blocked.length} closed.`;
}
