import { describe, expect, test } from "vitest";
import { catalogOf, saidOf, spoiled } from "../../../helpers/tiny-folder.ts";
import { RECORDS_SLIPS } from "./records.cases.ts";

describe("a slip is said once, where it was made", () => {
  test.each(RECORDS_SLIPS)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

test("records come by id, each with its components and their systems", () => {
  const { records } = catalogOf();
  expect([...records.keys()]).toEqual(["FR58-01", "HY59-01"]);
  expect(records.get("HY59-01")).toMatchObject({ file: "changes/1959/HY59-01.md", systems: ["hydraulics"] });
  expect(records.get("HY59-01")?.components.map((component) => component.id)).toEqual(["pump", "gasket"]);
  expect(records.get("FR58-01")).toMatchObject({ components: [], systems: [], statements: [] });
});

test("HTML in a record stays the text that it is", () => {
  const html = "<script>alert(1)</script><img src=x onerror=alert(1)>";
  const { records } = catalogOf(
    spoiled({ "changes/1958/FR58-01.md": ["title: Frame drilled for a winch", `title: ${JSON.stringify(html)}`] }),
  );
  expect(records.get("FR58-01")?.facts.title).toBe(html);
});
