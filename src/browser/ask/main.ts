/**
 * The ask page: reads the question, shows what was understood as chips that can be removed, and searches.
 * The address holds the question, so that it can be sent and the way back works. More understanding of freer questions
 * goes into the engine's reading; this file only draws what it returns.
 */
import type { Chip } from "../../engine/ask/read-question.ts";
import { readQuestion } from "../../engine/ask/read-question.ts";
import type { Vocabulary } from "../../engine/ask/vocabulary.ts";
import { type Asked, readAddress, writeAddress } from "./address.ts";
import { drawChips } from "./draw-chips.ts";
import { drawFacets } from "./draw-facets.ts";
import { drawResults } from "./draw-results.ts";
import { element } from "./element.ts";
import { type Found, openSearch, type Search } from "./open-search.ts";

const PAGE = 20;
const form = element<HTMLFormElement>("ask-form");
const input = element<HTMLInputElement>("ask");
const status = element("status");
const more = element<HTMLButtonElement>("more");

const root = new URL("../", location.href);
let opened: Promise<{ vocabulary: Vocabulary; search: Search }> | undefined;
let turn = 0;

function open(): NonNullable<typeof opened> {
  opened ??= fetch(new URL("data/vocabulary.json", root))
    .then((answer) => answer.json() as Promise<Vocabulary>)
    .then(async (vocabulary) => ({ vocabulary, search: await openSearch(root, vocabulary) }))
    .catch((error: unknown) => {
      opened = undefined; // On a bad network the next question tries again.
      throw error;
    });
  return opened;
}

async function answer(asked: Asked, shown = PAGE): Promise<void> {
  const mine = ++turn;
  input.value = asked.question;
  element("lists").hidden = asked.question !== "";
  if (asked.question === "") {
    show({ nothing: true });
    return;
  }
  status.textContent = "Searching …";
  const { vocabulary, search } = await open();
  const reading = readQuestion(vocabulary, asked.question);
  const chips = reading.chips.filter((chip) => !asked.without.includes(chip.said));
  const ignored = reading.chips.filter((chip) => asked.without.includes(chip.said));
  const found = await search({ chips, words: reading.rest, facets: asked.facets, shown });
  if (mine !== turn) return; // A newer question has overtaken this one.
  show({ nothing: false });
  const held = (document.activeElement as HTMLElement | null)?.dataset.key;
  drawChips(element("reading"), chips, ignored, reading.rest, (chip) =>
    go({ ...asked, without: toggled(asked.without, chip) }),
  );
  drawFacets(element("facets"), found.facets, asked.facets, (facets) => go({ ...asked, facets }));
  drawResults(element("results"), found.results, root);
  // The button or box that was just used was drawn anew: the keyboard stays on it.
  if (held !== undefined) document.querySelector<HTMLElement>(`[data-key="${CSS.escape(held)}"]`)?.focus();
  status.textContent = sayCount(found.total, found.gaveUp, chips);
  more.hidden = found.total <= shown;
  more.onclick = () => ask(asked, shown + PAGE);
}

/** Answers, or says why not. */
function ask(asked: Asked, shown?: number): void {
  answer(asked, shown).catch((error: unknown) => {
    status.textContent = `The search could not be opened: ${error instanceof Error ? error.message : String(error)}. The lists below lead everywhere.`;
    element("lists").hidden = false;
  });
}

function show({ nothing }: { nothing: boolean }): void {
  element("asked").hidden = nothing;
  element("reading").hidden = nothing;
  if (nothing) {
    status.textContent = "";
    more.hidden = true;
  }
}

function sayCount(total: number, gaveUp: Found["gaveUp"], chips: readonly Chip[]): string {
  const about = chips.length > 0 ? ` for ${chips.map((chip) => chip.label).join(", ")}` : "";
  if (total === 0) return `Nothing was found${about}. Take a chip away or try other words.`;
  const count = total === 1 ? "One page" : `${total} pages`;
  if (gaveUp === "some words") return `No page has all the words${about}. ${count} with some of them:`;
  return gaveUp === "all words" ? `No page has the words. ${count}${about} without them:` : `${count}${about}.`;
}

function toggled(without: readonly string[], chip: Chip): string[] {
  return without.includes(chip.said) ? without.filter((said) => said !== chip.said) : [...without, chip.said];
}

function go(asked: Asked): void {
  history.pushState(null, "", writeAddress(location.href, asked));
  ask(asked);
}

form.addEventListener("submit", (event) => {
  event.preventDefault();
  go({ question: input.value.trim(), without: [], facets: {} });
});
input.addEventListener("focus", () => void open().catch(() => {}), { once: true });
addEventListener("popstate", () => ask(readAddress(location.href)));
ask(readAddress(location.href));
