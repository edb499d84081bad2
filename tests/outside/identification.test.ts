/**
 * What a look tells, against the 14-day weather table of J. R. Quinlan, "Induction of Decision Trees", Machine Learning 1 (1986): a
 * table of 14 mornings in two classes. The figures printed there are cut off at three places; the ones of four places follow from the
 * table by the article's formula.
 */
import { expect, test } from "vitest";
import { entropy, informationGain } from "../../src/engine/lookalikes/information-gain.ts";

const COLUMNS = ["outlook", "temperature", "humidity", "windy", "class"] as const;
const MORNINGS = [
  "sunny hot high false N",
  "sunny hot high true N",
  "overcast hot high false P",
  "rain mild high false P",
  "rain cool normal false P",
  "rain cool normal true N",
  "overcast cool normal true P",
  "sunny mild high false N",
  "sunny cool normal false P",
  "rain mild normal false P",
  "sunny mild normal true P",
  "overcast mild high true P",
  "overcast hot normal false P",
  "rain mild high true N",
].map((row) => Object.fromEntries(row.split(" ").map((word, i) => [COLUMNS[i], word])) as Record<string, string>);

const classes = (rows: typeof MORNINGS): number[] =>
  ["P", "N"].map((it) => rows.filter((row) => row.class === it).length);

test("the uncertainty about the class is 0.940 bits", () => {
  expect(classes(MORNINGS)).toEqual([9, 5]);
  expect(entropy([9, 5]).toFixed(3)).toBe("0.940");
});

// attribute, bits as printed, bits to four places
test.each([
  ["outlook", "0.246", "0.2467"],
  ["humidity", "0.151", "0.1518"],
  ["windy", "0.048", "0.0481"],
  ["temperature", "0.029", "0.0292"],
])("%s tells %s bits", (attribute, printed, exact) => {
  const values = [...new Set(MORNINGS.map((row) => row[attribute]))];
  const gain = informationGain(
    classes(MORNINGS),
    values.map((value) => classes(MORNINGS.filter((row) => row[attribute] === value))),
  );
  expect(gain.toFixed(4)).toBe(exact);
  expect((Math.floor(gain * 1000) / 1000).toFixed(3)).toBe(printed);
});
