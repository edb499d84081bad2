/**
 * The questions as steps of the browser's history. A question that was asked is a step to come back to, however long somebody takes
 * to type the next one; what is half typed is none: the address follows it, in place.
 */
import { type Asked, readAddress, writeAddress } from "./address.ts";

/** What the history keeps beside an address: how far down the list was, and that the question was only being typed. */
interface Kept {
  readonly y?: number;
  readonly typing?: true;
}

function kept(): Kept {
  return (history.state as Kept | null) ?? {};
}

/** A further step, unless it is the same question once more. */
export function step(asked: Asked, state: Kept | null = null): void {
  const address = addressOf(asked);
  if (address !== `${location.pathname}${location.search}`) history.pushState(state, "", address);
}

/** The address takes up what is typed; `sent` when somebody asked it with Enter. */
export function typed(asked: Asked, { sent = false } = {}): void {
  const state: Kept | null = sent ? null : { typing: true };
  const isStep = !kept().typing && readAddress(location.search).question !== "";
  if (isStep) step(asked, state);
  else history.replaceState(state, "", addressOf(asked));
}

/** Whoever comes back from a record finds the list where it was. */
export function keepScroll(): void {
  history.replaceState({ ...kept(), y: scrollY }, "");
}

/** Goes to where the list was left, once. */
export function restoreScroll(): void {
  const { y, ...rest } = kept();
  if (y === undefined) return;
  scrollTo(0, y);
  history.replaceState(rest, "");
}

function addressOf(asked: Asked): string {
  return `${location.pathname}${writeAddress(asked)}`;
}
