/** The answer to "which of these parts is this?" in sentences. */
import type { Component, Part } from "../records/catalog.ts";
import { list } from "../scope/describe.ts";
import { sayRefusal } from "./on-this-car.ts";
import type { TellApartAnswer } from "./shapes/tell-apart.ts";

type Observed = TellApartAnswer["observed"][number];

export function sayAlike(parts: ReadonlyMap<string, Part>, group: readonly string[]): string {
  const hands = new Set(group.flatMap((number) => parts.get(number)?.hand ?? []));
  const sides = hands.size > 1 ? " They are for different sides of the car." : "";
  return `No mark on record tells ${list(group, "and")} apart.${sides}`;
}

export function sayNothing({ name }: Component, parts: readonly Part[]): string {
  if (parts.length === 0) return `No part of this kind is on record: ${name}.`;
  return `No mark is on record by which to tell ${list(numbersOf(parts), "and")} apart.`;
}

function numbersOf(parts: readonly { readonly number: string }[]): string[] {
  return parts.map((part) => part.number);
}

export function sayContradiction(
  smallest: readonly Observed[],
  without: readonly (Observed & { leaves: readonly string[] })[],
): string {
  const what = smallest.map((it) => `${it.name}: ${it.seen}`);
  const said =
    what.length === 1
      ? `No part on record fits what was seen (${what.join("")}).`
      : `No part on record fits what was seen: these contradict each other: ${list(what, "and")}. Look at them again.`;
  const ways = without
    .filter((it) => it.leaves.length > 0)
    .map((it) => `without '${it.name}' it would be ${list(it.leaves, "or")}`);
  return ways.length > 0 && what.length > 1 ? `${said} ${capital(ways.join("; "))}.` : said;
}

/** What the words need to know beside the answer. */
interface How {
  /** How many parts were compared. */
  readonly among: number;
  /** Paint or print alone tells the part. */
  readonly onPaint: boolean;
  /** What was seen is on record for none of the parts that are left: it only rules out the others. */
  readonly byElimination: boolean;
  /** Marks that would tell more, and could not be seen. */
  readonly hidden: readonly string[];
}

export function sayTellApart(
  answer: Pick<TellApartAnswer, "verdict" | "parts" | "next" | "same" | "secondTest" | "alike">,
  { among, onPaint, byElimination, hidden }: How,
): string {
  const { verdict, parts, next, same, secondTest, alike } = answer;
  const numbers = numbersOf(parts);
  const [first] = parts;
  const said: string[] = [];
  if (verdict === "one part" && first) {
    said.push(
      among === 1
        ? `${first.number}, ${first.name}, is the only part asked about; nothing was compared.`
        : `Of the parts on record it can only be ${first.number}, ${first.name}.`,
    );
    if (onPaint && among > 1)
      said.push(
        secondTest
          ? `That rests on paint or print alone; to make sure, look at: ${secondTest.name}.`
          : "That rests on paint or print alone, and no durable mark on record confirms it.",
      );
  } else if (verdict === "still open" && byElimination && first && parts.length === 1) {
    said.push(
      `What was seen rules out every part of which it is on record. It may be ${first.number}, of which the records do not say it; that does not prove it.`,
    );
  } else if (verdict === "still open") {
    said.push(`It may be ${list(numbers, "or")}.`);
    if (next) said.push(`Look next at: ${next.name}.`);
    else if (hidden.length > 0) said.push(`Only this would tell more: ${list(hidden, "or")}.`);
    else said.push("What was seen fits them all, and no other mark on record tells more.");
  } else said.push(`The records cannot tell ${list(numbers, "and")} apart.`);
  for (const it of same) said.push(`The same on ${parts.length === 2 ? "both" : "all"}: ${it.name} (${it.value}).`);
  if (verdict === "still open") said.push(...alike.map((it) => it.words));
  if (verdict === "cannot be told apart")
    said.push(...alike.flatMap((it) => / They are .*$/.exec(it.words)?.[0].trim() ?? []));
  for (const it of parts) {
    said.push(...it.refused.map((no) => sayRefusal(it.number, no)));
    if (it.builtHere === "no" && it.refused.length === 0) said.push(`${it.number} ${notBuilt(it)}.`);
  }
  return said.join(" ");
}

/** What is to be said of a part that the plant did not build into the place, or the car, at hand. */
export function notBuilt({ elsewhere, mayStandIn }: TellApartAnswer["parts"][number]): string {
  if (elsewhere.length > 0) return `belongs in another place of this car: ${list(elsewhere, "and")}`;
  return mayStandIn
    ? "was not built into this car, but may have been fitted since"
    : "was not built into this car, and no single record permits it there";
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
