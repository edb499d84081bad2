import { describe, expect, test } from "vitest";
import type { Finding } from "../../../src/build/data/read-folder.ts";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { complaintBox } from "../../../src/build/dev/complaint-box.ts";
import { onDisk, spoiled } from "../../helpers/tiny-folder.ts";

const FINDING: Finding = {
  ...{ severity: "error", rule: "shape", file: "parts/pump.yaml", path: [] },
  ...{ message: "'a<b' is no number", hint: "write one & only one", position: { line: 3, column: 7, length: 3 } },
  shown: "bore: a<b # here",
};

describe("the box of complaints", () => {
  test("is not there when there is nothing to say", () => expect(complaintBox([], "data")).toBe(""));

  test("says what, where and what to do, as text whatever the data holds", () => {
    const box = complaintBox([FINDING], "data");
    expect(box).toContain("<summary>1 error</summary>");
    expect(box).toContain("<code>data/parts/pump.yaml:3:7</code>");
    expect(box).toContain("&#39;a&lt;b&#39; is no number");
    expect(box).toContain("bore: <mark>a&lt;b</mark> # here");
    expect(box).toContain("→ write one &amp; only one");
  });

  test("also says what else has to do with it, and a car that shows it", () => {
    const also = [
      { file: "cautions.yaml", path: [], message: "says otherwise", position: { line: 2, column: 1, length: 1 } },
    ];
    const box = complaintBox([{ ...FINDING, also, car: { facts: {}, words: "Heron of 1960" } }], "data");
    expect(box).toContain("<p>also <code>data/cautions.yaml:2:1</code> says otherwise</p>");
    expect(box).toContain("<p>For example: Heron of 1960</p>");
  });

  test("marks the place where something is missing at the end of a line", () => {
    const position = { line: 3, column: 17, length: 1 };
    expect(complaintBox([{ ...FINDING, position }], "data")).toContain("bore: a&lt;b # here<mark> </mark>");
  });

  // findings, notes, whether it is open
  test.each([
    [["error"], [], true],
    [["warning", "error"], [], true],
    [["warning"], [], false],
    [["warning"], ["The folder is gone."], true],
    [[], ["The folder is gone."], true],
  ] as const)("of %j with notes %j is open: %s", (severities, notes, isOpen) => {
    const box = complaintBox(
      severities.map((severity) => ({ ...FINDING, severity })),
      "data",
      notes,
    );
    expect(/<details[^>]* open>/.test(box)).toBe(isOpen);
    for (const note of notes) expect(box).toContain(`<p>${note}</p>`);
  });

  test("holds so many as can be read, and counts the rest", async () => {
    const { findings } = await readFolder(await onDisk(spoiled({ "vehicles/traits.yaml": undefined })));
    expect(findings).toHaveLength(1);
    const box = complaintBox(
      Array.from({ length: 53 }, () => findings[0] as Finding),
      "data",
    );
    expect(box.match(/<li/g)).toHaveLength(50);
    expect(box).toContain("And 3 more: npm run check shows all.");
  });
});
