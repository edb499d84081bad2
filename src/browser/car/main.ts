/**
 * The page "this car". The address holds what was said of the car; everything shown follows from it. Verdicts are there at
 * once; what to look at next, and for each open record, is worked out in small pieces after.
 */
import { html, nothing, render } from "lit-html";
import { answerApplies } from "../../engine/answers/answer-applies.ts";
import { answerMayFit } from "../../engine/answers/answer-may-fit.ts";
import { cancelledFor } from "../../engine/answers/cancelled-for.ts";
import { cautionsFor } from "../../engine/answers/cautions-for.ts";
import { look, sayValues } from "../../engine/answers/look.ts";
import { findPart } from "../../engine/answers/part-number.ts";
import type { AppliesAnswer } from "../../engine/answers/shapes/applies.ts";
import type { Look } from "../../engine/answers/shapes/look.ts";
import type { MayFitAnswer } from "../../engine/answers/shapes/may-fit.ts";
import type { NetChangeAnswer } from "../../engine/answers/shapes/net-change.ts";
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import type { Lines } from "../../engine/records/lines-index.ts";
import { type CarSet, NONE } from "../../engine/scope/diagram.ts";
import type { Fact } from "../../engine/scope/facts.ts";
import { joined, OWN, readOwn } from "../at-hand/own.ts";
import { Data, type OpenLine } from "./data.ts";
import { figuresOf, partsOf } from "./on-this-car.ts";
import { type Judged, judge, netChangeOf, type Reading, readSteps, type Verdicts, yearOfCar } from "./reading.ts";
import { forgetCar, openStorage, recentCars, remember } from "./recent.ts";
import {
  carOf,
  NOTHING_SAID,
  plateOf,
  readAddress,
  type State,
  type Step,
  without,
  withStep,
  writeAddress,
} from "./state.ts";
import { statusWords } from "./status.ts";
import type { Actions } from "./view/actions.ts";
import { changedCarView } from "./view/changed-car.ts";
import { changesView } from "./view/changes.ts";
import { jumpView } from "./view/jump.ts";
import { listsView } from "./view/lists.ts";
import { type Asked, questionView } from "./view/question.ts";
import { recentView } from "./view/recent.ts";
import { sheetView } from "./view/sheet.ts";
import { whoView } from "./view/who.ts";
import { capital, carWords, factWords, labelOf } from "./view/words.ts";
import { inPieces } from "./work.ts";

const root = new URL("../", location.href);
const place = document.getElementById("car") as HTMLElement;
const status = document.getElementById("car-status") as HTMLElement;
const storage = openStorage();

/** What another page asked before it sent the reader here to say more of the car; the way back asks it again. */
const ownAsked = readOwn(location.search, OWN);

/** Everything that was worked out for one state; a new state begins anew. */
interface Shown {
  readonly state: State;
  readonly reading: Reading;
  readonly line: OpenLine | undefined;
  readonly verdicts: Verdicts | undefined;
  net: NetChangeAnswer | string | undefined;
  readonly looks: Map<string, Look>;
  /** What the records of the line say of the parts that were reported fitted. */
  readonly fitted: Map<string, MayFitAnswer>;
  readonly explained: Map<string, AppliesAnswer>;
  readonly questions: Asked[];
  searching: boolean;
  /** Lists of up to so many records are drawn whole; of a longer one a screenful, until somebody asks for all of it. */
  limit: number;
}

/** More than anybody reads at once, few enough for a slow phone. */
const MANY = 60;

/** What the reader chose to see, apart from the car. */
interface Wishes {
  first: string | undefined;
  tellOf: string | undefined;
  readonly whole: Set<string>;
  /** The bay sheet is made when somebody prints: it can be long. */
  sheet: boolean;
  /** What was wrong with the last answer typed. */
  wrongValue: string | undefined;
  wrongPart: string | undefined;
  /** The reader asked for the state before, and the browser is on its way there. */
  undoing: boolean;
}

const wishes: Wishes = {
  first: undefined,
  tellOf: undefined,
  whole: new Set(),
  sheet: false,
  wrongValue: undefined,
  wrongPart: undefined,
  undoing: false,
};
let shown: Shown;
let recent = recentCars(storage);

async function start(): Promise<void> {
  const data = await Data.load(root);
  const onPaper = (printing: boolean): void => {
    wishes.sheet = printing;
    // Paper cannot wait for what is still being worked out.
    if (printing) finishLooks(data, shown);
    draw(data);
  };
  addEventListener("beforeprint", () => onPaper(true));
  matchMedia("print").addEventListener("change", ({ matches }) => onPaper(matches));
  addEventListener("popstate", () => {
    const undone = wishes.undoing;
    wishes.undoing = false;
    const before = writeAddress(shown.state);
    const state = readAddress(location.search);
    // A link to a heading of this page changes nothing of the car.
    if (writeAddress(state) === before) return;
    forgetWishes();
    update(data, state, () => {
      if (!undone) return;
      keepRecent(data, before);
      toQuestion();
    });
  });
  update(data, readAddress(location.search));
}

/**
 * Works out what follows at once from a state, draws it, and leaves the rest to be worked out in pieces. `arrived` is called
 * when the car is on the page, which is later where its line has to be loaded first.
 */
function update(data: Data, state: State, arrived: () => void = () => {}): void {
  const reading = readSteps(data.lines, state);
  const only = reading.lines.length === 1 ? reading.lines[0] : undefined;
  const line = only === undefined ? undefined : data.line(only);
  if (only !== undefined && !line)
    data.loadLine(only).then(
      () => state === shown.state && update(data, state, arrived),
      (error: unknown) => fail(error),
    );
  const verdicts = line && judge(line, reading.steps);
  shown = {
    state,
    reading,
    line,
    verdicts: typeof verdicts === "string" ? undefined : verdicts,
    net: undefined,
    looks: new Map(),
    fitted: new Map(),
    explained: new Map(),
    questions: [],
    searching: line !== undefined,
    limit: 0,
  };
  wishes.wrongPart = typeof verdicts === "string" ? verdicts : undefined;
  announce(data, shown);
  draw(data);
  if (line || only === undefined) arrived();
  void inPieces(rest(data, shown), sameAs(shown), () => draw(data));
}

function sameAs(mine: Shown): () => boolean {
  return () => shown === mine;
}

/** What is worked out after the verdicts are on the page: the net change, what to ask next, what to look at for each open record. */
function* rest(data: Data, mine: Shown): Generator<void> {
  const { line, verdicts, state, reading } = mine;
  if (!line || !verdicts) return;
  const { car, open } = verdicts;
  const skipped = new Set(state.steps.flatMap((step) => (step.kind === "skip" ? [step.trait] : [])));
  const { space } = data.lines;
  for (const step of state.steps) {
    if (step.kind !== "fitted") continue;
    const others = carOf(reading.steps.filter((one) => one !== step));
    mine.fitted.set(step.value, answerMayFit(line.knowledge, { part: step.value, car: others }));
    yield;
  }
  const records = open.map((item) => item.record);
  if (car.cars !== NONE)
    for (const { trait, scopes } of line.list.questions(car.cars, records)) {
      const { id } = space.trait(trait);
      if (!skipped.has(id)) mine.questions.push({ trait: id, count: scopes.length });
      yield;
    }
  mine.searching = false;
  mine.limit = MANY;
  announce(data, mine);
  draw(data);
  keepInView();
  if (state.known !== undefined) mine.net = netChangeOf(line, reading.steps, state.known);
  yield;
  for (const record of records) {
    const found = look(space, car.cars, record.scope.cars);
    if (found) mine.looks.set(record.id, found);
    yield;
  }
}

function finishLooks({ lines: { space } }: Data, { verdicts, looks }: Shown): void {
  for (const { record } of verdicts?.open ?? []) {
    const found = verdicts && !looks.has(record.id) ? look(space, verdicts.car.cars, record.scope.cars) : undefined;
    if (found) looks.set(record.id, found);
  }
}

/** How many states of this visit lie before this one; the browser keeps it with each address. */
function depth(): number {
  const kept: unknown = history.state;
  return typeof kept === "object" && kept !== null && "depth" in kept && typeof kept.depth === "number"
    ? kept.depth
    : 0;
}

function announce({ lines }: Data, { state, reading, verdicts, searching }: Shown): void {
  const next = verdicts && chooseQuestion(lines, verdicts);
  const counts = verdicts && { yes: verdicts.yes.length, open: verdicts.open.length, no: verdicts.no.length };
  const words = statusWords({
    nothingSaid: state.steps.length === 0,
    plate: reading.plate?.verdict,
    conflicts: reading.conflict.length > 0 || verdicts?.car.cars === NONE,
    lineKnown: reading.lines.length === 1,
    counts,
    wrongPart: wishes.wrongPart !== undefined,
    searching,
    next: next && labelOf(lines.space, next.trait),
  });
  status.classList.remove("wrong");
  if (status.textContent !== words) status.textContent = words;
}

function draw(data: Data): void {
  const { lines } = data;
  const { state, reading, line, verdicts } = shown;
  const facts = verdicts?.car.facts ?? reading.facts;
  const act = actions(data);
  render(
    html`
    ${whoView(lines, { state, reading, facts, fitted: shown.fitted, canUndo: depth() > 0 }, act)}
    ${line === undefined && reading.lines.length === 1 ? html`<p>Loading the records of this line …</p>` : nothing}
    ${line && wishes.wrongPart ? html`<p class="wrong" role="alert">${wishes.wrongPart}</p>` : nothing}
    ${line && verdicts && verdicts.car.cars !== NONE ? carView(data, line, verdicts, act) : nothing}
    ${recentView(
      recent.filter(({ search }) => search !== writeAddress(state)),
      act,
    )}`,
    place,
  );
}

function carView({ lines }: Data, line: OpenLine, verdicts: Verdicts, act: Actions) {
  const { state, questions, searching } = shown;
  const { space } = lines;
  const { catalog } = line.knowledge;
  const { car, open, yes } = verdicts;
  const year = yearOfCar(lines, car.cars);
  const asked = chooseQuestion(lines, verdicts);
  const skipped = state.steps.flatMap((step) => (step.kind === "skip" ? [step.trait] : []));
  const { component, ...own } = ownAsked;
  return html`
    ${questionView(
      {
        space,
        cars: car.cars,
        asked,
        others: questions.filter((one) => one.trait !== asked?.trait),
        skipped,
        open: open.length,
        searching,
        wrong: wishes.wrongValue,
      },
      act,
    )}
    ${changedCarView({ space, chosen: wishes.tellOf, wrong: wishes.wrongPart }, act)}
    <p class="tally"><span class="counts">${tallyLink("yes-head", yes.length, "apply", act)} · ${tallyLink("open-head", open.length, "to look at first", act)} · ${tallyLink("no-head", verdicts.no.length, "do not apply", act)}</span>
      <button type="button" class="plain print" @click=${() => print()}>Print the bay sheet</button></p>
    <p class="onward"><a href=${act.href(`fit/${joined(writeAddress(state), own)}`)}>${own.part === undefined ? "May a part go on this car?" : html`May <span class="id">${own.part}</span> go on this car?`}</a> · <a href=${act.href(`retrofits/${joined(writeAddress(state), component === undefined ? {} : { component })}`)}>Retrofit paths for this car</a> · <a href=${act.href(`settings/${joined(writeAddress(state), own)}`)}>${own.setting === undefined ? "Settings and service intervals" : html`The setting “${own.setting}”`}</a> · <a href=${act.href(`apart/${joined(writeAddress(state), own)}`)}>Tell parts apart</a></p>
    ${jumpView(
      [
        { name: "open", words: "to look at first", items: open },
        { name: "yes", words: "apply", items: yes },
      ],
      catalog.systems,
      act,
    )}
    ${changesView({ catalog, years: lines.years, year, known: state.known, net: shown.net, whole: wishes.whole.has("changes") }, act)}
    ${listsView(
      {
        catalog,
        verdicts,
        looks: shown.looks,
        explained: shown.explained,
        cancelled: (item) => cancelledOn(line, car.cars, item),
        has: ({ record }) => partsOf(line.knowledge, car, record),
        figures: ({ record }) => figuresOf(line.knowledge, car, record),
        whole: wishes.whole,
        limit: shown.limit,
      },
      act,
    )}
    ${wishes.sheet ? sheet(line, verdicts, skipped) : nothing}`;
}

function tallyLink(id: string, count: number, words: string, act: Actions) {
  return html`<a href="#${id}" @click=${act.jump}><b>${count}</b> ${words}</a>`;
}

function sheet(line: OpenLine, verdicts: Verdicts, skipped: readonly string[]) {
  const { knowledge } = line;
  const { catalog } = knowledge;
  const { space } = catalog;
  const printed = recordsOnPaper(verdicts);
  return sheetView({
    catalog,
    facts: verdicts.car.facts.map((fact) => factWords(space, { ...fact, source: "said" })),
    plate: plateOf(shown.state.steps),
    day: new Date().toLocaleDateString(document.documentElement.lang, { dateStyle: "long" }),
    notKnown: skipped.map((id) => labelOf(space, id)),
    open: verdicts.open,
    yes: verdicts.yes,
    beside: verdicts.beside,
    looks: shown.looks,
    has: (record) => partsOf(knowledge, verdicts.car, record),
    figures: (record) => figuresOf(knowledge, verdicts.car, record),
    cancelled: (item) => cancelledOn(line, verdicts.car.cars, item),
    net: typeof shown.net === "string" ? undefined : shown.net,
    cautions: cautionsFor(
      catalog,
      printed.flatMap((record) => record.systems),
      printed.flatMap((record) => record.facts.components),
    ),
    certain: printed.filter((record) => verdicts.open.every((item) => item.record !== record)),
    address: location.href,
  });
}

/** The reader's wish comes first, then the model year, without which little can be said, then what the engine asks for. */
function chooseQuestion(lines: Lines, { car }: Verdicts): Asked | undefined {
  const { questions, state } = shown;
  const { space } = lines;
  const yearTrait = space.declared[space.role("year") ?? -1]?.id;
  const year = yearOfCar(lines, car.cars);
  const wish = questions.find((one) => one.trait === wishes.first);
  if (wish) return wish;
  const isSaid = state.steps.some((step) => step.kind === "skip" && step.trait === yearTrait);
  const asksYear = questions.find((one) => one.trait === yearTrait);
  if (yearTrait !== undefined && year === undefined && !isSaid && (asksYear || shown.searching))
    return asksYear ?? { trait: yearTrait, count: shown.verdicts?.open.length ?? 0 };
  return questions[0];
}

/** With a year to compare with, the sheet shows the net change; without it all records that apply. */
function recordsOnPaper({ yes, open }: Verdicts): ChangeRecord[] {
  const records = open.map((item) => item.record);
  const { net, state, line } = shown;
  if (state.known === undefined || net === undefined || typeof net === "string")
    return [...records, ...yes.map((item) => item.record)];
  const changed = net.changes.flatMap((change) => change.records);
  return [...new Set([...records, ...changed.flatMap((id) => line?.knowledge.catalog.records.get(id) ?? [])])];
}

function cancelledOn({ knowledge }: OpenLine, cars: CarSet, { record }: Judged): "yes" | "look first" | undefined {
  const { cancelled = [] } = cancelledFor(knowledge, cars, record);
  return (cancelled.find((it) => it.verdict === "yes") ?? cancelled[0])?.verdict;
}

function actions(data: Data): Actions {
  const { state, line, reading } = shown;
  const steps = (next: readonly Step[]): void => go(data, { ...state, steps: next });
  return {
    say: (typed) => {
      const step = asWritten(typed, line);
      const refused = step.kind === "fact" && readSteps(data.lines, { steps: [step], known: undefined }).refused[0];
      const judged = step.kind === "fitted" && line ? judge(line, withStep(reading.steps, step)) : undefined;
      if (refused) wishes.wrongValue = refused.why;
      else if (typeof judged === "string") wishes.wrongPart = judged;
      else return steps(withStep(state.steps, step));
      draw(data);
    },
    takeBack: (step) => steps(without(state.steps, step)),
    asFacts: (facts) =>
      steps([
        ...facts.flatMap((fact) => factSteps(data, fact)),
        ...state.steps.filter((step) => step.kind !== "plate"),
      ]),
    undo: () => {
      if (depth() > 0) {
        wishes.undoing = true;
        history.back();
      } else go(data, { ...state, steps: state.steps.slice(0, -1) }, { inPlace: true });
    },
    startAgain: () => go(data, NOTHING_SAID),
    askFor: (trait) => {
      const skipped = state.steps.find((step) => step.kind === "skip" && step.trait === trait);
      if (skipped) steps(without(state.steps, skipped));
      wishes.first = trait;
      announce(data, shown);
      draw(data);
      toQuestion();
    },
    jump: (event) => {
      const link = event.currentTarget as HTMLAnchorElement;
      const heading = document.getElementById(link.hash.slice(1));
      if (!heading) return;
      event.preventDefault(); // The address holds the car, and a place on the page is no step.
      for (let at = heading.closest("details"); at; at = at.parentElement?.closest("details") ?? null) at.open = true;
      heading.tabIndex = -1;
      heading.scrollIntoView({ block: "start", behavior: "instant" });
      heading.focus({ preventScroll: true });
    },
    tellOf: (trait) => {
      wishes.tellOf = trait;
      draw(data);
    },
    compareWith: (known) => go(data, { ...state, known }, { stay: true }),
    showAll: (list) => {
      wishes.whole.add(list);
      draw(data);
    },
    explain: (record) => {
      if (!line || shown.explained.has(record)) return;
      shown.explained.set(record, answerApplies(line.knowledge, { record, car: carOf(reading.steps) }));
      draw(data);
    },
    forget: (search) => {
      recent = forgetCar(storage, search);
      draw(data);
    },
    href: (path) => new URL(path, root).href,
  };
}

/** A plate in capitals without spaces, a part as its number is written: so the same step is the same address. */
function asWritten(step: Step, line: OpenLine | undefined): Step {
  if (step.kind === "plate") return { ...step, value: step.value.toUpperCase().replaceAll(/\s/g, "") };
  const found = step.kind === "fitted" && line ? findPart(line.knowledge.catalog, step.value) : undefined;
  return found?.as === "part number" ? { kind: "fitted", value: found.part.number } : step;
}

/** A fact of the plate as a step of its own. */
function factSteps({ lines: { space } }: Data, { trait, values }: Fact): Step[] {
  const { id } = space.trait(trait);
  const [value, ...others] = sayValues(space.trait(trait), values);
  return value === undefined || others.length > 0 ? [] : [{ kind: "fact", trait: id, value }];
}

/** `stay`: the keyboard stays where it is. `inPlace`: there is nothing before this state to go back to. */
function go(data: Data, state: State, { stay = false, inPlace = false } = {}): void {
  const before = writeAddress(shown.state);
  const address = `${location.pathname}${joined(writeAddress(state), ownAsked)}`;
  if (inPlace) history.replaceState({ depth: 0 }, "", address);
  else if (writeAddress(state) !== before) history.pushState({ depth: depth() + 1 }, "", address);
  forgetWishes();
  update(data, state, () => {
    keepRecent(data, before);
    if (!stay) toQuestion();
  });
}

/** What was wished of the car as it was known before. */
function forgetWishes(): void {
  wishes.first = wishes.wrongValue = wishes.wrongPart = undefined;
}

/** A car is worth keeping once its line is known and something besides. */
function keepRecent({ lines: { space } }: Data, before: string): void {
  const { state, verdicts } = shown;
  if (!verdicts || verdicts.car.facts.length < 2) return;
  const plate = plateOf(state.steps);
  const facts = verdicts.car.facts.filter((fact) => plate === undefined || fact.source !== "plate");
  const words = carWords(space, facts);
  const label = plate === undefined ? capital(words) : [`Plate ${plate}`, ...(words ? [words] : [])].join(" · ");
  recent = remember(storage, { search: writeAddress(state), label }, before);
}

/** The keyboard goes on at the question, or, before there is one, at the first heading. */
function toQuestion(): void {
  (document.getElementById("question") ?? document.getElementById("who"))?.focus();
}

/** What the keyboard stands at may have been pushed off the screen by what was found since. */
function keepInView(): void {
  const at = document.activeElement;
  if (at?.id === "question") at.scrollIntoView({ block: "nearest" });
}

function fail(error: unknown): void {
  status.textContent = `The records could not be opened: ${error instanceof Error ? error.message : String(error)}. The list below leads to the pages of each line and year.`;
  status.classList.add("wrong");
}

start().catch(fail);
