import { expect, test } from "vitest";
import { whyVain, withoutVainCancels } from "../../../src/engine/records/vain-cancels.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const record = (id: string, issued: string, more: string): string =>
  `---\nid: ${id}\ntitle: A change\nissued: ${issued}\nkinds: [part]\ncomponents: [pump]\nstarts: then\nscope: all\n${more}---\n\nIt changed.\n`;

/** Records by id: when issued, and what else they say; with why the first one ends nothing of the others, target by target. */
const CASES: [name: string, Record<string, [issued: string, more: string]>, expected: Record<string, string>][] = [
  ["an earlier one", { A: ["1959-02-01", "cancels: [{ record: B }]\n"], B: ["1958-01-01", ""] }, {}],
  ["one of the same day", { A: ["1959-02-01", "cancels: [{ record: B }]\n"], B: ["1959-02-01", ""] }, {}],
  [
    "a later one",
    { A: ["1958-02-01", "cancels: [{ record: B }]\n"], B: ["1959-01-01", ""] },
    { B: "it was issued later, on 1959-01-01" },
  ],
  [
    "a later one, by a revision of the same day",
    {
      A: ["1958-02-01", "revision: 2\nrevised: 1959-01-01\ncancels: [{ record: B }]\n"],
      B: ["1959-01-01", ""],
    },
    {},
  ],
  ["itself", { A: ["1958-02-01", "cancels: [{ record: A }]\n"] }, { A: "it is this record itself" }],
  [
    "each other",
    { A: ["1959-02-01", "cancels: [{ record: B }]\n"], B: ["1959-02-01", "cancels: [{ record: A }]\n"] },
    { B: "it cancels this record in turn" },
  ],
  [
    "each other, where the other one comes too early to count",
    { A: ["1959-02-01", "cancels: [{ record: B }]\n"], B: ["1958-02-01", "cancels: [{ record: A }]\n"] },
    {},
  ],
  [
    "each other, where the other one is withdrawn",
    {
      A: ["1959-02-01", "cancels: [{ record: B }]\n"],
      B: ["1959-02-01", "withdrawn: a slip\ncancels: [{ record: A }]\n"],
    },
    {},
  ],
  [
    "in a circle of three",
    {
      A: ["1959-02-01", "cancels: [{ record: B }]\n"],
      B: ["1959-02-01", "cancels: [{ record: C }]\n"],
      C: ["1959-02-01", "cancels: [{ record: A }]\n"],
    },
    { B: "it cancels this record in turn" },
  ],
  [
    "another one of several",
    {
      A: ["1958-02-01", "cancels: [{ record: B }, { record: C }]\n"],
      B: ["1959-01-01", ""],
      C: ["1957-01-01", ""],
    },
    { B: "it was issued later, on 1959-01-01" },
  ],
];

test.each(CASES)("ending %s", (_, records, expected) => {
  const files = Object.entries(records).map(([id, [issued, more]]) => [
    `changes/1959/${id}.md`,
    record(id, issued, more),
  ]);
  const { records: all } = catalogOf(spoiled(Object.fromEntries(files)));
  const first = all.get("A");
  if (!first) throw new Error("there is no A");
  const targets = first.stated.flatMap((it) => (it.type === "cancels" ? [it.target] : []));
  const why = targets.flatMap((id) => {
    const target = all.get(id);
    const found = target && whyVain(all, first, target);
    return found === undefined ? [] : [[id, found]];
  });
  expect(Object.fromEntries(why)).toEqual(expected);
  // The catalog has them without; done twice it is the same.
  const counted = first.statements.flatMap((it) => (it.type === "cancels" ? [it.target] : []));
  expect(counted).toEqual(targets.filter((id) => !(id in expected)));
  expect(withoutVainCancels(all)).toEqual(all);
});
