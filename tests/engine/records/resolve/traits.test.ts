import { describe, expect, test } from "vitest";
import { inShort, readTexts, saidOf, spoiled } from "../../../helpers/tiny-folder.ts";
import { TRAITS_SLIPS } from "./traits.cases.ts";

describe("a slip is said once, where it was made", () => {
  test.each(TRAITS_SLIPS)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

test("without traits the scopes of all other files are not judged", () => {
  const read = readTexts(spoiled({ "vehicles/traits.yaml": undefined }));
  expect(read.complaints.map(inShort)).toEqual([
    "vehicles/traits.yaml: the file is missing → describe there by which traits cars differ; the README shows one",
  ]);
});

test("model years without end are refused before anybody counts them", () => {
  const said = saidOf("vehicles/traits.yaml", "from: 1957, to: 1961", "from: 0, to: 9007199254740991");
  expect(said).toEqual([
    "vehicles/traits.yaml traits.1.to: the model years run from 0 to 9007199254740991 → keep them within 500 years",
  ]);
});
