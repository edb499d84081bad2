/**
 * Loaded before a program (node --import, or NODE_OPTIONS for its children too), it sets that program's clock to another day: three years
 * and some hours ahead, so that year, month, day, hour and minute are all other ones.
 */
const SHIFT = ((3 * 365 + 40) * 24 + 7) * 3_600_000 + 25 * 60_000;

const now = (): number => TrueDate.now() + SHIFT;
const TrueDate = Date;

globalThis.Date = new Proxy(TrueDate, {
  construct: (date, given, asked) => Reflect.construct(date, given.length === 0 ? [now()] : given, asked) as Date,
  apply: () => new TrueDate(now()).toString(),
  get: (date, name) => (name === "now" ? now : Reflect.get(date, name)),
});
