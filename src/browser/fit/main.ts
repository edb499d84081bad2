/** The page "may it go on?": a part on the car at hand. */
import { html, nothing } from "lit-html";
import { answerCurrent } from "../../engine/answers/answer-current.ts";
import { answerMayFit } from "../../engine/answers/answer-may-fit.ts";
import { QuestionError } from "../../engine/answers/question-error.ts";
import { carBox } from "../at-hand/car-box.ts";
import { type AtHand, openPage } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";
import { type Answered, answerView } from "./view/answer.ts";
import { partBox } from "./view/part-box.ts";

const place = document.getElementById("fit") as HTMLElement;
const status = document.getElementById("fit-status") as HTMLElement;

await openPage(place, status, ["part", "place"], (hand) => {
  const answer = answerOf(hand);
  return {
    spoken: typeof answer === "string" ? answer : (answer?.answer.words ?? ""),
    shown: html`
      ${carBox(hand)}
      ${partBox(hand)}
      ${hand.reading.lines.length === 1 && !hand.line ? html`<p>Loading the records of this line …</p>` : nothing}
      ${typeof answer === "string" ? html`<p class="wrong">${answer}</p>` : nothing}
      ${typeof answer === "object" ? answerView(hand, answer) : nothing}`,
  };
});

/** A text where the question cannot be asked. */
function answerOf(hand: AtHand): Answered | string | undefined {
  const { line, reading } = hand;
  const { part, place: at } = hand.own;
  if (part === undefined || !line) return undefined;
  const car = carOf(reading.steps);
  try {
    const answer = answerMayFit(line.knowledge, { part, place: at, car });
    return { answer, current: answerCurrent(line.knowledge, { part, car }) };
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    return `${error.message} Records of the line of this car say nothing of it, and silence is never a yes.`;
  }
}
