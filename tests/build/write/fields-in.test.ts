import { expect, test } from "vitest";
import { fieldsIn } from "../../../src/build/write/fields-in.ts";

const TEXT = `---
# HT-1 is a comment
id: HT-2
parts: [HT-3, "HT-4"]
HT-5: { a: >-
    folded
    HT-6 }
---

Story of HT-7.
`;

test("each place belongs to a field, or is a comment", () => {
  const text = TEXT.replace("{ a: >-\n    folded\n    HT-6 }", "\n  a: >-\n    folded\n    HT-6");
  const fieldAt = fieldsIn("change", text);
  const said = (id: string) => {
    const field = fieldAt(text.indexOf(id));
    return field && [field.path.join("."), field.key, field.plain];
  };
  expect(said("HT-1")).toBeUndefined();
  expect(said("HT-2")).toEqual(["id", false, true]);
  expect(said("HT-3")).toEqual(["parts.0", false, true]);
  expect(said("HT-4")).toEqual(["parts.1", false, false]);
  expect(said("HT-5")).toEqual(["HT-5", true, true]);
  expect(said("HT-6")).toEqual(["HT-5.a", false, false]);
  expect(said("HT-7")).toEqual(["story", false, true]);
});

test("with a byte order mark they stand one place further on", () => {
  const fieldAt = fieldsIn("maker", "\uFEFFname: HT-1\n");
  expect(fieldAt(7)).toMatchObject({ path: ["name"], from: 7, to: 11 });
  expect(fieldAt(6)).toBeUndefined();
});

test("of a file without facts nothing is known", () => {
  expect(fieldsIn("change", "id: HT-1")(4)).toBeUndefined();
});
