import { expect, test } from "vitest";
import { lookInto } from "../../../src/build/data/look-into.ts";
import { MAX_BYTES } from "../../../src/build/data/source.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

const FACTS = "---\nid: X\n---\n\nA text.\n";

// path, what stands in the file, what is made of it; nothing where it is not looked into
const FILES: [string, string | Uint8Array, object | undefined][] = [
  ["x/a.yaml", "id: X\n", { value: { id: "X" } }],
  ["x/a.yml", "id: X\n", { value: { id: "X" } }],
  ["x/A.YAML", "id: X\n", { value: { id: "X" } }],
  ["x/a.ymal", "id: X\n", { value: { id: "X" } }],
  ["x/a.json", '{ "id": "X" }', { value: { id: "X" } }],
  ["x/a", "\uFEFFid: X\n", { value: { id: "X" } }],
  ["x/a.md", FACTS, { value: { id: "X" }, body: "A text." }],
  ["x/a.yaml.txt", FACTS, { value: { id: "X" }, body: "A text." }],
  ["x/a.md", FACTS.replaceAll("\n", "\r\n"), { value: { id: "X" }, body: "A text." }],
  ["x/a.md", "For ourselves.", { value: "For ourselves." }],
  ["x/a.yaml", "id: [\n", { value: "id: [\n" }],
  ["x/a.yaml", new Uint8Array([0x61, 0xff, 0xfe]), { value: undefined }],
  ["x/a.yaml", "#".repeat(MAX_BYTES + 1), { value: undefined }],
  [".x/a.yaml", "id: X\n", { value: undefined }],
  ["x/a.jpg", "id: X\n", undefined],
  ["x/a.xlsx", "id: X\n", undefined],
  ["x/a.csv", "id: X\n", undefined],
];
test.each(FILES.map(([path, text, made]) => ({ path, text, made, shown: String(text).slice(0, 30) })))(
  "$path, in which $shown stands",
  async ({ path, text, made }) => {
    expect(lookInto(await onDisk({ [path]: text }), path)).toEqual(made ? [{ path, ...made }] : []);
  },
);

test("a file that went in the meantime is no file", async () => {
  expect(lookInto(await onDisk({}), "x/a.yaml")).toEqual([]);
});
