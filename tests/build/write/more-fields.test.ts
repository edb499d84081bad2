import { expect, test } from "vitest";
import { moreFields } from "../../../src/build/write/more-fields.ts";

// what stands after --set, each time; the fields, or what is wrong
test.each([
  [[], { fields: {} }],
  [["links=[HY59-01]", "note=a=b"], { fields: { links: ["HY59-01"], note: "a=b" } }],
  [["links"], { fault: "--set links: write FIELD=YAML" }],
  [["=x"], { fault: "--set =x: write FIELD=YAML" }],
  [["a=["], { fault: expect.stringMatching(/^--set a=\[: this is not YAML: \S[^\n]*$/) }],
  [["a=*b"], { fault: expect.stringMatching(/^--set a=\*b: this is not YAML: /) }],
])("%j", (given, fields) => {
  expect(moreFields(given)).toEqual(fields);
});
