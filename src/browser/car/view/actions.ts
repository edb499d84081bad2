/** What a reader can do on the page; the views call these and know nothing of how they are done. */
import type { Fact } from "../../../engine/scope/facts.ts";
import type { Step } from "../state.ts";

export interface Actions {
  say(step: Step): void;
  takeBack(step: Step): void;
  /** The plate is put away; these of its facts stay, as said. */
  asFacts(facts: readonly Fact[]): void;
  undo(): void;
  startAgain(): void;
  /** Asks for this trait next, also one that was said to be not known. */
  askFor(trait: string): void;
  /** Opens the form for this trait of a car that was changed. */
  tellOf(trait: string): void;
  compareWith(year: number | undefined): void;
  /** Opens the group that a heading stands on, and takes the reader there. */
  jump(event: Event): void;
  /** Shows all of a list that is long. */
  showAll(list: string): void;
  /** Works out why a record is in, out or open. */
  explain(record: string): void;
  /** Takes a car out of the recent ones, or all of them. */
  forget(search: string | undefined): void;
  /** The address of a page of the site, from its root: "records/x/". */
  href(path: string): string;
}
