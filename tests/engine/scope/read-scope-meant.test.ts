import { expect, test } from "vitest";
import { meantBy } from "../../../src/engine/scope/read-scope-meant.ts";

// Pieces of scopes with what was meant stand among the slips of read-scope.
const words = {
  names: ["line", "my", "model year", "eq"],
  years: ["my"],
  fullYear: (two: string) => 1900 + Number(two),
};
const meant = (piece: string, isRead = true) => meantBy(piece, words, () => isRead)?.text;

test("what cannot be read afterwards is no help, but clauses told apart are", () => {
  expect(meant("my≥1958")).toBe("my>=1958");
  expect(meant("my≥1958", false)).toBeUndefined();
  expect(meant("line=Q my=1958", false)).toBe("line=Q; my=1958");
});

test("what is written rightly is left alone", () => {
  expect(meant("my=1958-1960,1962")).toBeUndefined();
  expect(meant("model year=1958")).toBeUndefined();
});

test("very many slips come to an end", () => {
  expect(meant("line=B my=1958 ".repeat(200))).toBeDefined();
  expect(meant("=".repeat(2000))).toBeDefined();
});
