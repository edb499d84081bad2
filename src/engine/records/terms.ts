/** The words that a record may use where it has a choice. Apart from the shapes, so that pages load no schema library for them. */

/** What sort of change it is. */
export const KINDS = [
  "part",
  "setting",
  "procedure",
  "interval",
  "tool",
  "caution",
  "identification",
  "running",
  "retrofit",
  "market",
  "equipment",
  "service-only",
  "cancellation",
  "left-alone",
] as const;

/** May one part be fitted where another belongs? */
export const VERDICTS = ["yes", "on-conditions", "does-not-go-on", "must-not-be-used"] as const;

/** How a file says that a place holds no part. */
export const NOTHING = "none";
