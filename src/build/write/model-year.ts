/** Which model year's folder a record of a day belongs in. A model year begins when its maker wants, so it is learnt from the others. */

interface Issued {
  readonly issued: string;
  readonly year: number;
}

/** As many years on as with the record whose day of the year is nearest; of two as near the earlier day. Without any: the year itself. */
export function modelYear(records: readonly Issued[], day: string): number {
  let best: Issued | undefined;
  for (const record of records) {
    if (best === undefined || apart(record.issued, day) < apart(best.issued, day)) best = record;
    else if (apart(record.issued, day) === apart(best.issued, day) && inYear(record.issued) < inYear(best.issued))
      best = record;
  }
  return yearOf(day) + (best ? best.year - yearOf(best.issued) : 0);
}

function yearOf(day: string): number {
  return Number(day.slice(0, 4));
}

/** Which day of a year it is; a leap day more or less does not matter here. */
function inYear(day: string): number {
  return Number(day.slice(5, 7)) * 31 + Number(day.slice(8, 10));
}

function apart(a: string, b: string): number {
  const days = Math.abs(inYear(a) - inYear(b));
  return Math.min(days, 12 * 31 - days);
}
