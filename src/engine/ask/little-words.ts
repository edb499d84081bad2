/** Words by which a question says how its names stand to each other. They are known whatever a data folder calls them, and folded. */

/** What follows is said of the car. */
export const WITH: ReadonlySet<string> = new Set(["with", "w", "having", "has", "have", "had", "got", "w/"]);

/** What follows, or something of it, is denied. */
export const DENYING: ReadonlySet<string> = new Set([
  ...[
    "without",
    "w/o",
    "no",
    "non",
    "not",
    "never",
    "less",
    "minus",
    "sans",
    "neither",
    "nor",
    "none",
    "except",
    "excluding",
  ],
  ...[
    "but",
    "other",
    "lack",
    "lacks",
    "lacking",
    "isn't",
    "isnt",
    "aren't",
    "arent",
    "wasn't",
    "wasnt",
    "doesn't",
    "doesnt",
  ],
  ...[
    "don't",
    "dont",
    "didn't",
    "didnt",
    "hasn't",
    "hasnt",
    "haven't",
    "havent",
    "hadn't",
    "hadnt",
    "can't",
    "cant",
    "cannot",
  ],
  ...["won't", "wont", "removed", "deleted", "delete", "missing", "unless", "rather"],
]);

/** Words between a denying word and what it denies. */
export const LITTLE: ReadonlySet<string> = new Set([
  ...[
    "a",
    "an",
    "the",
    "any",
    "its",
    "it's",
    "their",
    "factory",
    "of",
    "is",
    "be",
    "have",
    "has",
    "had",
    "got",
    "get",
    "that",
    "than",
  ],
  ...["for", "in", "on", "it", "one", "my", "this", "your", "his", "her", "our"],
]);

export const AND: ReadonlySet<string> = new Set([
  "and",
  "or",
  "nor",
  "&",
  "either",
  "both",
  "plus",
  "to",
  "thru",
  "through",
]);

/** Words that make a range of years; one that no year was read with leaves the years in doubt. */
export const RANGE: ReadonlySet<string> = new Set([
  ...[
    "since",
    "before",
    "after",
    "until",
    "till",
    "onward",
    "onwards",
    "newer",
    "later",
    "older",
    "earlier",
    "prior",
    "pre",
    "post",
    "plus",
  ],
]);

/** A year beside these is a year of the calendar. */
export const CALENDAR: ReadonlySet<string> = new Set([
  ...[
    "registered",
    "registration",
    "sold",
    "bought",
    "purchased",
    "delivered",
    "date",
    "dated",
    "january",
    "jan",
    "february",
    "feb",
  ],
  ...[
    "march",
    "april",
    "apr",
    "june",
    "july",
    "august",
    "aug",
    "september",
    "sept",
    "sep",
    "october",
    "oct",
    "november",
    "nov",
  ],
  ...["december", "dec"],
]);

/** Words before a figure that make it no reading: more than, at least, about. */
export const COMPARING: ReadonlySet<string> = new Set([
  ...[
    "less",
    "more",
    "over",
    "under",
    "above",
    "below",
    "least",
    "most",
    "about",
    "around",
    "than",
    "exceed",
    "exceeds",
    "max",
  ],
  ...["maximum", "min", "minimum", "minus", "not", "up", "to", "was", "between", "or"],
]);
