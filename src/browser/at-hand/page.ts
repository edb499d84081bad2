/**
 * A page that asks one question about the car at hand. The car is in the address, as "this car" keeps it, and so is what the
 * page asks; a new address is a new question, and the browser's back button takes it back.
 */
import { html, render, type TemplateResult } from "lit-html";
import type { Lines } from "../../engine/records/lines-index.ts";
import { Data, type OpenLine } from "../car/data.ts";
import { type Reading, readSteps } from "../car/reading.ts";
import { openStorage, type RecentCar, recentCars } from "../car/recent.ts";
import { readAddress, type State, type Step, without, withStep, writeAddress } from "../car/state.ts";
import { joined, type Own, readOwn } from "./own.ts";
import { printedLine } from "./printed.ts";

/** What a page says to a question that needs the records of a line. */
export const PICK_CAR = "Pick the car first: its model line at least.";

export interface AtHand {
  readonly lines: Lines;
  readonly state: State;
  readonly reading: Reading;
  /** The records of the car's line, once it is known and they are there. */
  readonly line: OpenLine | undefined;
  readonly own: Own;
  readonly recent: readonly RecentCar[];
  say(step: Step): void;
  takeBack(step: Step): void;
  /** Asks something else of the same car. */
  ask(own: Own): void;
  draw(): void;
  /** The address of a page of the site, from its root: "records/x/". */
  href(path: string): string;
  /** The same car on another page. */
  hrefWithCar(path: string, own?: Own): string;
  /** The same question about another car. */
  hrefWithQuestion(car: string): string;
}

/** `names` are the page's own parts of the address; `say` is spoken when an answer is there. */
export async function openPage(
  place: HTMLElement,
  status: HTMLElement,
  names: readonly (keyof Own)[],
  view: (hand: AtHand) => { shown: TemplateResult; spoken: string },
): Promise<void> {
  const root = new URL("../", location.href);
  const data = await Data.load(root).catch((error: unknown) => fail(status, error));
  if (!data) return;
  const recent = recentCars(openStorage());

  const address = (state: State, own: Own): string => joined(writeAddress(state), own);
  let current: AtHand;
  const go = (state: State, own: Own): void => {
    history.pushState(null, "", `${location.pathname}${address(state, own)}`);
    update();
  };
  const update = (): void => {
    const state = readAddress(location.search);
    const own = readOwn(location.search, names);
    const reading = readSteps(data.lines, state);
    const only = reading.lines.length === 1 ? reading.lines[0] : undefined;
    const line = only === undefined ? undefined : data.line(only);
    const mine: AtHand = {
      ...{ lines: data.lines, state, reading, line, own, recent },
      say: (step) => go({ ...state, steps: withStep(state.steps, step) }, own),
      takeBack: (step) => go({ ...state, steps: without(state.steps, step) }, own),
      ask: (other) => go(state, other),
      draw: () => draw(mine),
      href: (path) => new URL(path, root).href,
      hrefWithCar: (path, other = {}) => new URL(path, root).href + address(state, other),
      hrefWithQuestion: (car) => `${location.pathname}${joined(car, own)}`,
    };
    current = mine;
    draw(mine);
    if (only !== undefined && !line)
      data.loadLine(only).then(
        () => current === mine && update(),
        (error: unknown) => fail(status, error),
      );
  };
  const draw = (hand: AtHand): void => {
    if (hand !== current) return;
    const { shown, spoken } = view(hand);
    const hadFocus = place.contains(document.activeElement);
    render(html`${shown}${printedLine()}`, place);
    // A button that was pressed may be gone; the keyboard goes on at what came of it.
    if (hadFocus && !place.contains(document.activeElement))
      place.querySelector<HTMLElement>("h2[tabindex]")?.focus({ preventScroll: true });
    if (status.textContent !== spoken) status.textContent = spoken;
  };
  addEventListener("popstate", update);
  // A page may lie open for days before somebody prints it.
  addEventListener("beforeprint", () => draw(current));
  update();
}

function fail(status: HTMLElement, error: unknown): undefined {
  status.textContent = `Something went wrong: ${error instanceof Error ? error.message : String(error)}. Load the page again; the pages below need no script.`;
  status.classList.add("wrong");
}
