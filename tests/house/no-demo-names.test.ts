/** The code knows nothing of the data folder: another maker's records must do as well. Nor does it know the machine it was written on. */
import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { codeFiles } from "../helpers/code-files.ts";
import { plainFiles } from "../helpers/demo-data.ts";

const code = codeFiles(".", ["src", "scripts", "tests"], /\.(ts|mjs|js|css|svg|json)$/);
const data = plainFiles();
const of = (path: string): (typeof data)[number]["facts"] => data.find((file) => file.path === path)?.facts;

/** Names that only this maker has. A word of its name that the data also writes small is any maker's: works, motor. */
function ownNames(): string[] {
  const text = data.map((file) => JSON.stringify(file.facts) + file.text).join("\n");
  const maker: string[] = of("maker.yaml").name.split(/\s+/);
  const valuesOf = (role: string): string[] =>
    of("vehicles/traits.yaml")
      .traits.find((trait: { role?: string }) => trait.role === role)
      .values.map(({ label }: { label: string }) => label);
  const numbers = data
    .filter(({ path }) => path.startsWith("parts/"))
    .flatMap(({ facts }) => facts.parts.map(({ number }: { number: string }) => number));
  return [
    ...maker.filter((word) => !new RegExp(`\\b${word.toLowerCase()}\\b`).test(text)),
    ...valuesOf("line"),
    ...valuesOf("plant"),
    ...data.filter(({ path }) => /^(changes|bulletins)\//.test(path)).map(({ facts }) => facts.id),
    ...numbers.filter((number) => number.length >= 5),
  ];
}

const names = ownNames();
const anyName = new RegExp(
  `(?<![\\w-])(?:${names.map((name) => name.replaceAll(".", "\\.")).join("|")})(?![\\w-])`,
  "gi",
);
const namesIn = (text: string): string[] => [...text.matchAll(anyName)].map(([name]) => name);

test("no name, record or part of the data folder stands in the code", () => {
  expect(code.flatMap(({ path, text }) => namesIn(text).map((name) => `${path}: ${name}`))).toEqual([]);
});

test("every one of them would be found", () => {
  expect(names.length).toBeGreaterThan(100);
  expect(names.flatMap((name) => namesIn(`of '${name.toLowerCase()}'.`))).toEqual(
    names.map((name) => name.toLowerCase()),
  );
});

test("nor does a place of one machine", () => {
  const homes = ["work", "root", "home", "Users"].join("|");
  const place = new RegExp(`(?<![\\w.}-])/(?:${homes})/[\\w.]`, "g");
  expect(code.flatMap(({ path, text }) => [...text.matchAll(place)].map(([found]) => `${path}: ${found}`))).toEqual([]);
});

test("every folder of code is looked at", () => {
  const folders = readdirSync(".", { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !/^[._]|^node_modules$/.test(entry.name))
    .map((entry) => entry.name);
  expect(folders.filter((name) => !["data", "schemas", "docs"].includes(name)).sort()).toEqual([
    "scripts",
    "src",
    "tests",
  ]);
});
