/** The page "may it go on?": a part on the car at hand. */
import { html, nothing } from "lit-html";
import { answerCurrent } from "../../engine/answers/answer-current.ts";
import { answerMayFit } from "../../engine/answers/answer-may-fit.ts";
import { QuestionError } from "../../engine/answers/question-error.ts";
import { carBox } from "../at-hand/car-box.ts";
import { type AtHand, openPage, PICK_CAR } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";
import { type Answered, answerView } from "./view/answer.ts";
import { partBox } from "./view/part-box.ts";
import { isNoNumber, partsMeant } from "./view/parts-meant.ts";

const place = document.getElementById("fit") as HTMLElement;
const status = document.getElementById("fit-status") as HTMLElement;

/** What comes of the question: an answer, or what keeps it from being asked, as a choice to make or as something wrong. */
type Outcome = Answered | { readonly choose: string } | { readonly wrong: string };

await openPage(place, status, ["part", "place"], (hand) => {
  const outcome = outcomeOf(hand);
  return {
    spoken: outcome === undefined ? "" : spoken(outcome),
    shown: html`
      ${carBox(hand)}
      ${partBox(hand)}
      ${hand.reading.lines.length === 1 && !hand.line ? html`<p>Loading the records of this line …</p>` : nothing}
      ${outcome && "choose" in outcome && !hand.line ? html`<p class="box">${outcome.choose}</p>` : nothing}
      ${outcome && "wrong" in outcome ? html`<p class="wrong">${outcome.wrong}</p>` : nothing}
      ${outcome && "answer" in outcome ? answerView(hand, outcome) : nothing}`,
  };
});

function spoken(outcome: Outcome): string {
  if ("answer" in outcome) return outcome.answer.words;
  return "choose" in outcome ? outcome.choose : outcome.wrong;
}

function outcomeOf({ line, reading, own: { part, place: at } }: AtHand): Outcome | undefined {
  if (part === undefined) return undefined;
  if (!line) return reading.lines.length > 1 ? { choose: PICK_CAR } : undefined;
  const { knowledge } = line;
  const car = carOf(reading.steps);
  try {
    const answer = answerMayFit(knowledge, { part, place: at, car });
    return { answer, current: answerCurrent(knowledge, { part, car }) };
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    // What may be meant stands under the field; that is no error.
    if (isNoNumber(knowledge.catalog, part) && partsMeant(knowledge.catalog, part).parts.length > 0)
      return { choose: "Pick the part that is meant." };
    return {
      wrong: `${error.message} Records of the line of this car say nothing of it, and silence is never a yes.`,
    };
  }
}
