import { expect, test } from "vitest";
import { fieldsIn } from "../../../src/build/write/fields-in.ts";
import { judgeMention } from "../../../src/build/write/judge-mention.ts";
import type { RenamedKind } from "../../../src/build/write/what-to-rename.ts";
import { type FileKindName, kindOf } from "../../../src/engine/records/file-kinds.ts";

// kind of thing, file, its text with > before the mention, what it is
const CASES: [RenamedKind, string, string, string][] = [
  ["part", "parts/p.yaml", "parts: [{ number: >HT-1b }]", "reference"],
  ["part", "parts/p.yaml", "parts: [{ number: x, castings: [>HT-1b] }]", "left: what is read off the part itself"],
  ["part", "parts/p.yaml", "parts: [{ marks: { stamp: >HT-1b } }]", "left: what is read off the part itself"],
  ["part", "parts/p.yaml", "parts: [{ marks: { >HT-1b: two } }]", "left: the name of a field"],
  ["part", "parts/p.yaml", "features: [{ id: >HT-1b }]", "left: another sort of name"],
  ["part", "parts/p.yaml", "parts: [{ aliases: [the old >HT-1b] }]", "text"],
  ["part", "parts/p.yaml", "# >HT-1b\n", "text"],
  ["record", "parts/p.yaml", "features: [{ record: >HT-1b }]", "reference"],
  ["record", "parts/p.yaml", "parts: [{ number: >HT-1b }]", "left: another sort of name"],
  ["part", "changes/a.md", "---\nscope: line=B; fitted!=A,>HT-1b\n---\n", "reference"],
  ["part", "changes/a.md", "---\nscope: fitted=A; line=>HT-1b\n---\n", "left: a value in a scope"],
  ["record", "changes/a.md", "---\nscope: fitted=>HT-1b\n---\n", "left: a value in a scope"],
  ["record", "changes/a.md", "---\nid: a\n---\nSee >HT-1b.", "text"],
  ["record", "changes/a.md", "---\naccept: [{ about: [>HT-1b] }]\n---\n", "reference"],
  ["record", "changes/a.md", '---\ntitle: "After >HT-1b"\n---\n', "text"],
  ["component", "changes/a.md", "---\ntitle: After >HT-1b\n---\n", "left: perhaps only a word or a figure"],
  ["component", "bulletins/a.md", "---\nid: a\n---\n[[x]] [[>HT-1b|HT-1b]]", "citation"],
  ["record", "bulletins/a.md", "---\nid: a\n---\n[[HT-1b|>HT-1b]]", "text"],
  ["record", "bulletins/a.md", "---\nid: a\n---\n[[HT-1b]] >HT-1b", "text"],
  ["system", "bulletins/a.md", "---\nid: a\n---\n[[>HT-1b]]", "left: a citation, but not of this system"],
  ["system", "bulletins/a.md", "---\nid: a\n---\n(/systems/>HT-1b/)", "citation"],
  ["system", "bulletins/a.md", "---\nid: a\n---\n(/records/>HT-1b/)", "left: in another address"],
  // Whose address it is.
  ...(
    [
      ["(/records/>HT-1b/)", "citation"],
      ["(../../records/>HT-1b/#a)", "citation"],
      ["<a href=/records/>HT-1b/>", "citation"],
      ["https://hollin.example/changes/records/>HT-1b/", "citation"],
      ["(http://Hollin.example/changes/records/>HT-1b/)", "citation"],
      ["https://hollin.example/records/>HT-1b/", "left: in another address"],
      ["https://other.example/records/>HT-1b/", "left: in another address"],
      ["https://other.example/docs/>HT-1b", "left: in another address"],
      ["https://other.example/?next=/records/>HT-1b/", "left: in another address"],
      ["//other.example/records/>HT-1b/", "left: in another address"],
      ["www.other.example/a-b/>HT-1b", "left: in another address"],
      ["other.example/records/>HT-1b/", "left: in another address"],
      ["(/docs/>HT-1b)", "left: in another address"],
      ["(../docs/>HT-1b)", "left: in another address"],
      ["FR58-01/>HT-1b", "text"],
    ] as const
  ).map(([marked, said]): (typeof CASES)[number] => ["record", "bulletins/a.md", `---\nid: a\n---\n${marked}`, said]),
  // What people call something.
  ["record", "parts/p.yaml", "parts: [{ aliases: [old, >HT-1b] }]", "left: what people call it"],
  ["record", "parts/p.yaml", "parts: [{ aliases: [the old >HT-1b] }]", "text"],
  ["record", "components/s.yaml", "components: [{ aliases: [>HT-1b] }]", "left: what people call it"],
];

test.each(CASES)("a %s in %s: %s", (kind, path, marked, said) => {
  const at = marked.indexOf(">HT-1b");
  const text = marked.replace(">HT-1b", "HT-1b");
  const file = kindOf(path) as FileKindName;
  const { as, why } = judgeMention(file, text, at, fieldsIn(file, text)(at), {
    id: "HT-1b",
    kind,
    kinds: [kind],
    site: "https://hollin.example/changes/",
  });
  expect(why === undefined ? as : `${as}: ${why}`).toBe(said);
});
