import { expect, test } from "vitest";
import { readDrill, readGoesNotGoes, withoutDrill } from "../../../src/engine/settings/read-gauge.ts";

// what is typed, the drill
const DRILLS: [string, string | undefined][] = [
  ["No. 42 drill", "No. 42"],
  ["no 42", "No. 42"],
  ["number 42", "No. 42"],
  ["#42", "No. 42"],
  ["# 42 drill", "No. 42"],
  ["drill #42", "No. 42"],
  ["drill 42", "No. 42"],
  ["42 drill", "No. 42"],
  ["E drill", "letter E"],
  ["letter e", "letter E"],
  ["drill E", "letter E"],
  ["42", undefined],
  ["E", undefined],
  ["7/64 drill", undefined],
  ["letter 4", undefined],
];
test.each(DRILLS)("'%s' is %s", (text, name) => {
  expect(readDrill(text)?.drill?.name).toBe(name);
});

test.each(["No. 0", "No. 81", "#100"])("'%s' names a drill that does not exist", (text) => {
  expect(readDrill(text)).toMatchObject({ drill: undefined });
});

test("the word itself can be left out", () => {
  expect(withoutDrill("7/64 in drill bit")).toBe("7/64 in");
});

// what is typed, what went in, what did not
const SENTENCES: [string, string, string][] = [
  ["drill 55 goes, 51 does not", "55", "51"],
  ["55 goes 51 does not", "55", "51"],
  ["55 goes in, 51 doesn't go", "55", "51"],
  ["goes 55 not 51", "55", "51"],
  ["goes 55, but not 51", "55", "51"],
  ["#55 drill goes and #51 drill won't", "#55", "#51"],
  ["51 does not, 55 goes", "55", "51"],
  ["E goes, F doesn't", "E", "F"],
  ["0.060 in fits, 0.065 in does not fit", "0.060 in", "0.065 in"],
  ["55 go, 51 no go", "55", "51"],
];
test.each(SENTENCES)("'%s'", (text, goes, stays) => {
  expect(readGoesNotGoes(text)).toEqual({ goes, stays });
});

test.each(["55 goes", "51 does not", "55", "0.76 mm", "goes"])("'%s' is no pair of gauges", (text) => {
  expect(readGoesNotGoes(text)).toBeUndefined();
});
