/** The two ends of a window as typed: "30..40 ft-lb", "30 to 40 ft-lb", "30-40 ft-lb", "0.925 in..". */

export interface Ends {
  /** Empty where the window has no lower limit. */
  readonly from: string;
  /** Empty where it has no upper one. */
  readonly to: string;
}

const DOTS = /^(.*?)\s*(?:\.\.+|…)\s*(.*)$/;
const WORDS = /^(.*\S)\s*(?:\bto\b|\s[-–—]\s|[–—])\s*(\S.*)$/i;
/** A hyphen right between two numbers, with no space and no unit before it. */
const HYPHEN = /^([-+−]?[\d.,/]+(?:-\d+\/\d+)?)-([\d.]\S*.*)$/;
/** "1-1/2 in" is one and a half. */
const MIXED = /^[-+−]?\d+\s*-\s*\d+\s*[/⁄]\s*\d+(?![\d/.]|\s*-)/;

/** 12' - 6" is one length. */
const FEET_AND_INCHES = /^-?\d+ ?(?:['′’]|ft\.?|feet|foot) ?[-–—] ?[\d./ -]+ ?(?:["″”]|in\b|ins\b|inch)/i;
const AT_MOST = /^(?:up to|at most|not (?:over|above)|no more than|max(?:imum)?\b\.?)\s*(.+)$/i;
const AT_LEAST = /^(?:at least|not (?:under|below)|no less than|min(?:imum)?\b\.?)\s*(.+)$/i;

/**
 * Nothing where the text is no window. Without a number behind the dots what stands there is the unit of the only limit:
 * "170.. ft-lb" is at least 170 ft-lb.
 */
export function windowEnds(typed: string): Ends | undefined {
  const text = typed.trim();
  const dots = DOTS.exec(text);
  if (dots) {
    const [, from = "", to = ""] = dots;
    return from === "" || hasSize(to) ? { from, to } : { from: `${from} ${to}`.trim(), to: "" };
  }
  const [, most] = AT_MOST.exec(text) ?? [];
  if (most !== undefined) return { from: "", to: most };
  const [, least] = AT_LEAST.exec(text) ?? [];
  if (least !== undefined) return { from: least, to: "" };
  if (FEET_AND_INCHES.test(text)) return undefined;
  if (MIXED.test(text) && !WORDS.test(text.replace(MIXED, "1"))) return undefined;
  const [, from, to] = WORDS.exec(text) ?? HYPHEN.exec(text) ?? [];
  return from === undefined || to === undefined ? undefined : { from, to };
}

/** A number, or a drill by its letter. */
function hasSize(text: string): boolean {
  return /[\d¼-¾⅐-⅞]/.test(text) || /^(?:letter )?[a-z]$|^[a-z] drill$/i.test(text) || /\bTDC$/i.test(text);
}
