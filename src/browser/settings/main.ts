/** The page "settings": which figures are in force on the car at hand, whether a reading passes, and what is due when. */
import { html, nothing, type TemplateResult } from "lit-html";
import { answerReading } from "../../engine/answers/answer-reading.ts";
import { answerSchedule } from "../../engine/answers/answer-schedule.ts";
import { answerSetting } from "../../engine/answers/answer-setting.ts";
import { QuestionError } from "../../engine/answers/question-error.ts";
import type { ReadingAnswer, ScheduleAnswer, SettingAnswer } from "../../engine/answers/shapes/setting.ts";
import { carBox } from "../at-hand/car-box.ts";
import { type AtHand, openPage, PICK_CAR } from "../at-hand/page.ts";
import { carOf } from "../car/state.ts";
import { listView } from "./view/list.ts";
import { readingBox, readingView } from "./view/reading.ts";
import { scheduleView } from "./view/schedule.ts";
import { chooseView, settingView } from "./view/setting.ts";

const place = document.getElementById("settings") as HTMLElement;
const status = document.getElementById("settings-status") as HTMLElement;
/** What the page says without a car, which an answer takes the place of. */
const all = document.getElementById("by-setting")?.closest("section");

interface Answers {
  readonly setting: SettingAnswer;
  readonly reading?: ReadingAnswer;
  readonly schedule?: ScheduleAnswer;
}

type Outcome = Answers | { readonly wrong: string };

/** The answers to one address; the filter draws again and again. */
let worked: { readonly for: string; readonly outcome: Outcome } | undefined;

await openPage(place, status, ["setting", "value", "error", "conditions"], (hand) => {
  const outcome = outcomeOf(hand);
  const { setting: named } = hand.own;
  const figures = outcome === undefined && named !== undefined ? figuresOnPage(named) : [];
  if (all) all.hidden = outcome !== undefined || hand.reading.conflict.length > 0 || figures.length > 0;
  return {
    spoken: outcome === undefined ? (hand.reading.lines.length > 1 ? PICK_CAR : "") : spoken(outcome),
    shown: html`
      ${figures.length > 0 ? html`<section aria-labelledby="asked" class="answer"><h2 id="asked" tabindex="-1">${named}: which figure holds depends on the car</h2><dl class="all-settings">${figures}</dl></section>` : nothing}
      ${carBox(hand)}
      ${hand.reading.lines.length > 1 ? html`<p class="box">${PICK_CAR}</p>` : nothing}
      ${hand.reading.lines.length === 1 && !hand.line ? html`<p>Loading the records of this line …</p>` : nothing}
      ${outcome === undefined ? nothing : outcomeView(hand, outcome)}`,
  };
});

/** What the page itself says of a setting, before a car is known. */
function figuresOnPage(name: string): Node[] {
  const term = [...(all?.querySelectorAll("dt") ?? [])].find((it) => it.textContent === name);
  const found: Node[] = [];
  for (let next = term?.nextElementSibling; next?.tagName === "DD"; next = next.nextElementSibling)
    found.push(next.cloneNode(true));
  return found;
}

function outcomeView(hand: AtHand, outcome: Outcome): TemplateResult {
  if ("wrong" in outcome)
    return html`<p class="wrong">${outcome.wrong}</p><p><a href=${hand.hrefWithCar("settings/")}>All settings of this car</a></p>`;
  const { setting, reading, schedule } = outcome;
  if (setting.verdict === "no such car") return html`<p class="wrong">${setting.words}</p>`;
  if (hand.own.setting === undefined)
    return html`${listView(hand, setting)}${schedule ? scheduleView(hand, schedule) : nothing}`;
  if (setting.verdict === "choose") return chooseView(hand, setting);
  return html`${settingView(hand, setting, html`${reading ? readingView(hand, reading) : nothing}${setting.verdict === "no such setting" ? nothing : readingBox(hand, setting)}`)}`;
}

function spoken(outcome: Outcome): string {
  if ("wrong" in outcome) return outcome.wrong;
  return outcome.reading?.words ?? outcome.setting.words;
}

function outcomeOf(hand: AtHand): Outcome | undefined {
  const { line, reading, own } = hand;
  if (!line) return undefined;
  const key = JSON.stringify([carOf(reading.steps), own]);
  if (worked?.for !== key) worked = { for: key, outcome: work(hand) };
  return worked.outcome;
}

function work({ line, reading, own: { setting, value, error, conditions } }: AtHand): Outcome | never {
  const knowledge = (line as NonNullable<typeof line>).knowledge;
  const car = carOf(reading.steps);
  try {
    return {
      setting: answerSetting(knowledge, { setting, car }),
      ...(setting !== undefined && value !== undefined
        ? { reading: answerReading(knowledge, { setting, value, error, conditions, car }) }
        : {}),
      ...(setting === undefined ? { schedule: answerSchedule(knowledge, { car }) } : {}),
    };
  } catch (problem) {
    if (!(problem instanceof QuestionError)) throw problem;
    return { wrong: `${problem.message} The records of the line of this car were asked.` };
  }
}
