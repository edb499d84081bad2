/** The rules by which single files are read, in words. Those that are errors always hold: nothing can be read past them. */
import type { RuleText } from "../../engine/audit/rule.ts";

const LIFTS = `---
id: TB-2
title: Lifts
issued: 1959-06-01
about: Which lift goes where.
---

See [[lift]].
`;

const HERON = "      - { id: H, label: Heron }\n";

export const READING_RULES: readonly RuleText[] = [
  {
    id: "missing-file",
    gravity: "error",
    about: "Every file and folder that others rely on lies where it is read, under its name.",
    why: "Nothing in it is read, and all that other files name of it seems to be wrong.",
    mend: "Rename or move it as the message says; the complaints that only followed from it are gone then, or come back.",
    example: {
      wrong: { "bulletin/TB-2.md": ["", LIFTS] },
      right: { "bulletins/TB-2.md": ["", LIFTS] },
    },
  },
  {
    id: "line-without-file",
    gravity: "warning",
    about: "Each model line has a file that says which cars of it were built.",
    why: "Every combination counts as built: answers speak of cars that nobody made, and scopes that no car meets are not found.",
    mend: "Write the file, or bring back the one that was deleted.",
    example: {
      wrong: { "vehicles/traits.yaml": [HERON, `${HERON}      - { id: M, label: Magpie }\n`] },
      right: {
        "vehicles/traits.yaml": [HERON, `${HERON}      - { id: M, label: Magpie }\n`],
        "vehicles/magpie.yaml": ["", "line: M\nbuilt: [all]\n"],
      },
    },
  },
  {
    id: "unreadable",
    gravity: "error",
    about:
      "Every file is YAML, or Markdown with facts between two lines of '---', in UTF-8, below a million bytes, without anchors.",
    why: "Nothing in it can be read, and what other files name of it seems to be missing.",
    mend: "Mend the spot that is shown; most often a quote, a colon or an indent is missing before it.",
    example: {
      wrong: { "changes/1958/FR58-01.md": ["title: Frame drilled for a winch", "title: Frame: drilled for a winch"] },
      right: { "changes/1958/FR58-01.md": ["title: Frame drilled for a winch", 'title: "Frame: drilled for a winch"'] },
    },
  },
  {
    id: "shape",
    gravity: "error",
    about: "Every field is one that its file knows, has a value of its kind, and none that is needed is missing.",
    why: "A field that nobody reads says nothing, and the record seems to be silent.",
    mend: "Correct the field as the message says; the schemas describe each one.",
    example: {
      wrong: { "changes/1958/FR58-01.md": ["starts: start of 1958", "start: start of 1958"] },
      right: {},
    },
  },
  {
    id: "unknown-name",
    gravity: "error",
    about: "Every record, part, component, place, trait and check that a file names exists.",
    why: "The statement hangs in the air: no page, no answer and no link leads to it.",
    mend: "Take the nearest name that is shown, or add what is missing.",
    example: { wrong: { "changes/1959/HY59-01.md": ["links: [FR58-01]", "links: [FR58-10]"] }, right: {} },
  },
  {
    id: "scope",
    gravity: "error",
    about: "Every scope is written in the language of scopes, with traits and values that exist.",
    why: "A scope that cannot be read would be about every car, or about none.",
    mend: "Correct the marked piece; the README tells the clauses.",
    example: { wrong: { "changes/1958/FR58-01.md": ["scope: my>=1958", "scope: yaer>=1958"] }, right: {} },
  },
  {
    id: "disagreement",
    gravity: "error",
    about:
      "What a file says agrees with itself and with its name: ids with file names, codes with lengths, windows with their order, each name once.",
    why: "One of the two is wrong, and the address of a page is made of one of them.",
    mend: "Correct the one that is wrong.",
    example: { wrong: { "changes/1959/HY59-01.md": ["window: 120..135", "window: 135..120"] }, right: {} },
  },
  {
    id: "stray-file",
    gravity: "warning",
    about: "Every YAML or Markdown file of the folder is of a kind that is read.",
    why: "Its author thinks that it is published.",
    mend: "Move it to where its kind lies, or out of the folder.",
    example: { wrong: { "parst/gasket.yaml": ["", "component: gasket\nparts: []\n"] }, right: {} },
  },
  {
    id: "slip-of-the-pen",
    gravity: "warning",
    about: "No word that stands once or twice, and that nothing is called, lies a slip away from a word of the trade.",
    why: "Whoever searches for the word does not find the record.",
    mend: "Write it right; a word of its own goes into words.yaml, under 'plain'.",
    example: {
      wrong: { "changes/1959/HY59-01.md": ["when: after a pump was fitted", "when: after the hydraulcis were fitted"] },
      right: { "changes/1959/HY59-01.md": ["when: after a pump was fitted", "when: after the hydraulics were fitted"] },
    },
  },
  {
    id: "accepts-nothing",
    gravity: "warning",
    about: "Every finding that a file accepts is still found there.",
    why: "The excuse outlives its reason, and covers the next fault.",
    mend: "Take the acceptance out.",
    example: {
      wrong: {
        "changes/1958/FR58-01.md": [
          "scope: my>=1958\n",
          "scope: my>=1958\naccept:\n  - { check: no-such-car, why: to come }\n",
        ],
      },
      right: {},
    },
  },
  {
    id: "published-address",
    gravity: "error",
    about: "With --against: every address that the published site has still leads somewhere.",
    why: "Bulletins, bookmarks and codes on the wall name it.",
    mend: "Add the line that the message gives to moved.yaml.",
    example: {
      wrong: {
        "parts/gasket.yaml": ["number: HT-290", "number: HT-291"],
        "changes/1959/HY59-01.md": ["kit: HT-290", "kit: HT-291"],
      },
      right: {
        "parts/gasket.yaml": ["number: HT-290", "number: HT-291"],
        "changes/1959/HY59-01.md": ["kit: HT-290", "kit: HT-291"],
        "moved.yaml": ["moved:\n", "moved:\n  - { kind: part, from: HT-290, to: HT-291, why: renamed }\n"],
      },
    },
  },
];
