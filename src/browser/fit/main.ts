/** The page "may it go on?": a part on the car at hand. */
import { html, nothing } from "lit-html";
import { answerMayFit } from "../../engine/answers/answer-may-fit.ts";
import { QuestionError } from "../../engine/answers/question-error.ts";
import type { MayFitAnswer } from "../../engine/answers/shapes/may-fit.ts";
import { carBox } from "../at-hand/car-box.ts";
import { type AtHand, openPage } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";
import { marksOf } from "./marks.ts";
import { answerView } from "./view/answer.ts";
import { partBox } from "./view/part-box.ts";

const place = document.getElementById("fit") as HTMLElement;
const status = document.getElementById("fit-status") as HTMLElement;

await openPage(place, status, ["part", "place"], (hand) => {
  const answer = answerOf(hand);
  return {
    spoken: typeof answer === "string" ? answer : (answer?.words ?? ""),
    shown: html`
      ${carBox(hand)}
      ${partBox(hand)}
      ${hand.reading.lines.length === 1 && !hand.line ? html`<p>Loading the records of this line …</p>` : nothing}
      ${typeof answer === "string" ? html`<p class="wrong">${answer}</p>` : nothing}
      ${typeof answer === "object" ? answerView(hand, answer, marksOf(hand, answer)) : nothing}`,
  };
});

/** A text where the question cannot be asked. */
function answerOf({ line, own, reading }: AtHand): MayFitAnswer | string | undefined {
  const { part, place: at } = own;
  if (part === undefined || !line) return undefined;
  try {
    return answerMayFit(line.knowledge, { part, place: at, car: carOf(reading.steps) });
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    return `${error.message} Records of this line name no such part, so nothing is on record, and that is never a yes.`;
  }
}
