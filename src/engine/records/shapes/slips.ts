/** What to write in place of a text that does not keep its pattern: what was most likely meant, in the right writing. */
import { nameOfSign, withPlainSigns } from "../signs.ts";

export interface Slip {
  /** Said after the name of the field. */
  readonly message: string;
  readonly hint: string;
}

export const ID = /^[A-Za-z0-9](?:[A-Za-z0-9_-]|\.(?!\.))*$/;
export const DAY = /^\d{4}-\d{2}-\d{2}$/;
export const WINDOW = /^(-?\d+(\.\d+)?)?\s*\.\.\s*(-?\d+(\.\d+)?)?$/;
/** The end of a site's address. */
export const FOLDER_END = /\/$/;

export const ID_RULE = "letters, digits and - _ . only, beginning with a letter or digit, no two dots in a row";

const SLIPS = new Map<string, (typed: string) => Slip | undefined>([
  [String(ID), slipOfId],
  [String(DAY), slipOfDay],
  [String(WINDOW), slipOfWindow],
  [String(FOLDER_END), slipOfSite],
]);

/** `pattern` as a fault of a shape names it. */
export function slipOf(pattern: string | undefined, typed: unknown): Slip | undefined {
  return pattern === undefined || typeof typed !== "string" ? undefined : SLIPS.get(pattern)?.(typed);
}

function slipOfId(typed: string): Slip | undefined {
  const offender = /[^A-Za-z0-9_.-]/u.exec(typed)?.[0];
  const message =
    offender !== undefined
      ? `'${typed}' holds ${nameOfSign(offender)}; ${ID_RULE}`
      : typed.includes("..")
        ? `'${typed}' holds two dots in a row; ${ID_RULE}`
        : `'${typed}' begins with '${typed.charAt(0)}'; ${ID_RULE}`;
  const meant = idMeant(typed);
  return typed === "" ? undefined : { message, hint: meant === undefined ? "mend it" : `write ${meant}` };
}

/** Without accents, with a hyphen for each run of what may not stand there. */
function idMeant(typed: string): string | undefined {
  const meant = withPlainSigns(typed)
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .trim()
    .replaceAll(/[^A-Za-z0-9_.-]+/g, "-")
    .replaceAll(/\.{2,}/g, ".")
    .replace(/^[^A-Za-z0-9]+/, "")
    .replace(/-+$/, "");
  return ID.test(meant) ? meant : undefined;
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** A day whose parts can be told apart is written right; of 1.2.1959 nobody knows which is the month. */
function slipOfDay(typed: string): Slip {
  const message = `'${typed}' is no day as year-month-day`;
  const plain = withPlainSigns(typed).trim();
  const two = (part: string | number): string => String(part).padStart(2, "0");
  const [, year, month, day] = /^(\d{4})[-./ ](\d{1,2})[-./ ](\d{1,2})$/.exec(plain) ?? [];
  if (year !== undefined) return { message, hint: `write ${year}-${two(month as string)}-${two(day as string)}` };
  const named = /^(?:(\d{1,2})\.? )?([a-z]{3,9})\.? (?:(\d{1,2}), )?(\d{4})$/i.exec(plain);
  const at = MONTHS.indexOf(named?.[2]?.slice(0, 3).toLowerCase() ?? "") + 1;
  const inMonth = named?.[1] ?? named?.[3];
  if (named && at > 0 && inMonth !== undefined)
    return { message, hint: `write ${named[4]}-${two(at)}-${two(inMonth)}` };
  return { message, hint: "write the year, the month and the day with hyphens, such as 1974-08-15" };
}

const NUMBER = /[-+]?(?:\d+(?:\.\d*)?|\.\d+)/.source;
const RANGE = new RegExp(`^(${NUMBER})\\s*(?:-|to|\\.{2,}|…)\\s*(${NUMBER})$`, "i");
const AROUND = new RegExp(`^(${NUMBER})\\s*(?:±|\\+/-|\\+-)\\s*(${NUMBER})$`);
const ONE = new RegExp(`^(${NUMBER})$`);
const MOST = new RegExp(`^(?:<=?|≤|max\\.?|up to|at most|to)\\s*(${NUMBER})$|^(${NUMBER})\\s*max\\.?$`, "i");
const LEAST = new RegExp(`^(?:>=?|≥|min\\.?|from|at least)\\s*(${NUMBER})$|^(${NUMBER})\\s*(?:min\\.?|\\+)$`, "i");
/** It begins with a letter or its sign: "ft-lb", "deg F", '"'. */
const UNIT = /(?<=\d)\s*(?!(?:to|max|min)\b)[a-z°"'%][\w°·/"'%-]*(?: [a-z]\w*)*\.?$/i;

/** "26-30", "26 to 30", "28 ± 2", "max 30": with two dots, and exactly. */
function slipOfWindow(typed: string): Slip {
  const message = `'${typed}' is no window`;
  const plain = withPlainSigns(typed).trim();
  const figures = plain.replace(UNIT, "");
  const meant = windowMeant(figures);
  if (meant === undefined)
    return {
      message,
      hint: "write low..high; ..high has only an upper limit, low.. only a lower one, 8..8 is exactly 8",
    };
  return { message, hint: `write ${meant}${figures === plain ? "" : "; the unit has a field of its own"}` };
}

function windowMeant(figures: string): string | undefined {
  const [, one] = ONE.exec(figures) ?? [];
  if (one !== undefined) return windowOf(one, one);
  // Beside another sign a comma can only be that of a decimal.
  const plain = figures.replaceAll(/(?<=\d),(?=\d)/g, ".");
  const [, from, to] = RANGE.exec(plain) ?? [];
  if (from !== undefined && to !== undefined) return windowOf(from, to);
  const [, middle, off] = AROUND.exec(plain) ?? [];
  if (middle !== undefined && off !== undefined) return windowOf(...around(middle, off));
  const most = MOST.exec(plain);
  if (most) return windowOf("", most[1] ?? most[2] ?? "");
  const least = LEAST.exec(plain);
  return least ? windowOf(least[1] ?? least[2] ?? "", "") : undefined;
}

/** Numbers as the pattern has them: no sign for more than nothing, a digit on each side of the point. */
function windowOf(from: string, to: string): string {
  const number = (text: string): string =>
    text
      .replace(/^\+/, "")
      .replace(/^(-?)\./, "$10.")
      .replace(/\.$/, "");
  return `${number(from)}..${number(to)}`;
}

/** In whole steps of the last digit, so that 0.3 less 0.1 is 0.2. */
function around(middle: string, off: string): [string, string] {
  const digits = Math.max(...[middle, off].map((text) => text.split(".")[1]?.length ?? 0));
  return [Number(middle) - Number(off), Number(middle) + Number(off)].map((size) => size.toFixed(digits)) as [
    string,
    string,
  ];
}

function slipOfSite(typed: string): Slip | undefined {
  return {
    message: `'${typed}' does not end in '/', so the addresses made from it would be wrong`,
    hint: `write ${typed}/`,
  };
}
