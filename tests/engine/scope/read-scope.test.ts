import { describe, expect, test } from "vitest";
import { ALL } from "../../../src/engine/scope/diagram.ts";
import { outside } from "../../../src/engine/scope/ranges.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import type { Clause, Scope } from "../../../src/engine/scope/scope.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import { span, writtenValue } from "../../../src/engine/scope/trait.ts";
import { tractorSpace, tractorTrait } from "../../helpers/tractor-space.ts";
import { SLIPS, UNDERSTOOD } from "./read-scope.cases.ts";

describe("a scope is understood", () => {
  test.each(UNDERSTOOD)("%j is %s", (text, meaning) => {
    const space = tractorSpace();
    expect(inWords(space, understood(space, text))).toBe(meaning);
  });
});

describe("a slip is shown at its place, with what was expected", () => {
  test.each(SLIPS)("%s", (marked, ...said) => {
    const read = readScope(tractorSpace(), marked.replaceAll(/[«»]/g, ""));
    const places = placesOf(marked);
    expect(read).toEqual({ slips: said.map(([message, hint], i) => ({ ...places[i], message, hint })) });
  });
});

describe("scopes that mean the same are the same set", () => {
  // one way to say it, another way
  const SAME: [string, string][] = [
    ["all", "line=B,H,M"],
    ["all", "line=B || line!=B"],
    ["my>1958", "my>=1959"],
    ["my!=1957-1959", "my=1960,1961,1962"],
    ["eq=PT,WN", "eq=PT || eq=WN"],
    ["no=PT,WN", "no=PT; no=WN"],
    ["PT=no", "no=PT"],
    ["line=B; my=1958 || line=B; my=1959", "my=1958-1959; line=B"],
    ["at=K59#0+", "plant=K; my>=1959"],
    ["at=K59#412- || at=K59#412+", "plant=K"],
    ["fitted!=HT-1,HT-2", "fitted!=HT-2; fitted!=HT-1"],
    ["axle<B001", "axle=B0"],
  ];
  test.each(SAME)("%s = %s", (one, other) => {
    const space = tractorSpace();
    expect(understood(space, one).cars).toBe(understood(space, other).cars);
  });
});

test("the text is kept without the white space round it", () => {
  const space = tractorSpace();
  expect(understood(space, "  line=B ; my=1958\n").text).toBe("line=B ; my=1958");
  expect(understood(space, " all ")).toEqual({ text: "all", alternatives: [[]], cars: ALL });
});

test("two digits of a year are enough where just one year ends in them", () => {
  const century = new Space([
    { ...tractorTrait("my"), kind: "whole", from: 1950, to: 2055 },
    tractorTrait("plant"),
    tractorTrait("number"),
  ]);
  expect(readScope(century, "at=K61#1+")).toHaveProperty("scope");
  expect(readScope(century, "at=K55#1+")).toHaveProperty("slips.0.message", "no model year is '55'");
  expect(readScope(century, "at=K1955#1+")).toHaveProperty("scope");
});

test("without plants and numbers among the traits there are no points", () => {
  const plain = new Space([tractorTrait("line"), tractorTrait("my")]);
  expect(readScope(plain, "at=K59@1959-01-01+")).toEqual({
    slips: [
      {
        from: 3,
        to: 18,
        message: "the traits do not say how cars are numbered",
        hint: "give a trait each the roles plant, year and date",
      },
    ],
  });
});

function understood(space: Space, text: string): Scope {
  const read = readScope(space, text);
  if ("slips" in read) throw new Error(read.slips.map((slip) => slip.message).join());
  return read.scope;
}

function inWords(space: Space, scope: Scope): string {
  return (
    scope.alternatives
      .map((clauses) => clauses.map((clause) => clauseInWords(space, clause)).join(" & "))
      .join(" | ") || "every car"
  );
}

function clauseInWords(space: Space, clause: Clause): string {
  const written = (trait: number, value: number): string => writtenValue(space.trait(trait), value);
  if (clause.type === "flags")
    return `has ${clause.side === "none" ? "no " : ""}${clause.traits
      .map((trait) => space.trait(trait).id)
      .join(clause.side === "none" ? ", " : " or ")}`;
  if (clause.type === "point") {
    const at = space.role(clause.by) as number;
    const mark = clause.by === "sequence" ? "number" : "date";
    return `built at ${written(2, clause.plant)} ${clause.side} ${clause.year} ${mark} ${written(at, clause.at)}`;
  }
  const { kind, id } = space.trait(clause.trait);
  // For "none of" the table names what is left out, as the editor did.
  const shown = clause.written === "none of" ? outside(clause.values, span(space.trait(clause.trait))) : clause.values;
  const words = shown.flatMap(([from, to]) => {
    if (from === to) return [written(clause.trait, from)];
    if (kind === "list") return Array.from({ length: to - from + 1 }, (_, i) => written(clause.trait, from + i));
    return [`${written(clause.trait, from)} to ${written(clause.trait, to)}`];
  });
  return `${id} ${clause.written} ${words.join(", ") || "nothing"}`;
}

function placesOf(marked: string): { from: number; to: number }[] {
  let signs = 0;
  return [...marked.matchAll(/«([^»]*)»/g)].map((match) => {
    const from = match.index - signs;
    signs += 2;
    return { from, to: from + Math.max(1, (match[1] as string).trim().length) };
  });
}
