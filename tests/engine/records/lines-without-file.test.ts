import { expect, test } from "vitest";
import type { DataFile, FileKindName } from "../../../src/engine/records/file-kinds.ts";
import { linesWithoutFile } from "../../../src/engine/records/lines-without-file.ts";

const file = (kind: FileKindName, path: string, value: unknown, broken = false): DataFile => ({
  ...{ kind, path, value, broken },
});
const TRAITS = {
  traits: [
    { id: "my", role: "year" },
    {
      id: "line",
      role: "line",
      values: [
        { id: "B", label: "Badger" },
        { id: "M", label: "Moor Hen" },
      ],
    },
  ],
};
const traits = file("traits", "vehicles/traits.yaml", TRAITS);
const badger = file("vehicles", "vehicles/badger.yaml", { line: "B" });

// the files of a folder; the lines of which it is said, with what to do
const CASES: [string, DataFile[], string[]][] = [
  ["none is missing", [traits, badger, file("vehicles", "vehicles/x.yaml", { line: "M" })], []],
  ["one is missing", [traits, badger], ["M: write vehicles/moor-hen.yaml with 'line: M'"]],
  ["all are missing", [traits], ["B: write vehicles/badger.yaml with 'line: B'", "M: write vehicles/moor-hen.yaml"]],
  ["one cannot be read", [traits, badger, file("vehicles", "vehicles/x.yaml", undefined, true)], []],
  ["the traits cannot be read", [file("traits", "vehicles/traits.yaml", undefined, true)], []],
  ["the traits are no traits", [file("traits", "vehicles/traits.yaml", { traits: "none" })], []],
];

test.each(CASES)("%s", (_, files, said) => {
  const found = linesWithoutFile(files);
  const shown = found.map(({ message, hint }) => `${/'(.*)'/.exec(message)?.[1]}: ${hint}`);
  expect(shown).toEqual(said.map((begins) => expect.stringContaining(begins)));
  for (const { path } of found) expect(path.slice(0, 3)).toEqual(["traits", 1, "values"]);
});
