/** How hard a mark is to see, in words; the data says it as a number. */
export const EFFORT_WORDS: Readonly<Record<number, string>> = {
  1: "a glance",
  2: "open a door or the hood",
  3: "crawl under",
  4: "take something off",
  5: "take it apart",
};
