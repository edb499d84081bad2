import { expect, test } from "vitest";
import type { Answers } from "../../../src/build/write/field.ts";
import { NEW_FIELDS, type NewKind } from "../../../src/build/write/new-fields.ts";
import { readAnswer } from "../../../src/build/write/read-answer.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const desk = { catalog: catalogOf(), today: "1960-03-01" };

// what is new, field, what is typed, what it means or what is wrong
const ANSWERS: [NewKind, string, string[], unknown][] = [
  ["record", "title", [" Longer pump "], "Longer pump"],
  ["record", "title", [""], "an answer is needed"],
  ["record", "title", ["a", "b"], "it is given more than once"],
  ["record", "title", ["x".repeat(401)], /Too big/],
  ["record", "words", [""], undefined],
  ["record", "words", ["a, b,", "c"], ["a", "b", "c"]],
  ["record", "kinds", ["part, Setting"], ["part", "setting"]],
  ["record", "kinds", ["prat"], "there is no 'prat': did you mean 'part'?"],
  ["record", "components", ["hydraulic PUMP"], ["pump"]],
  ["record", "components", ["hydralic pump"], "there is no 'hydralic pump': did you mean 'hydraulic pump'?"],
  ["record", "scope", ["my>=1960; line=B"], "my>=1960; line=B"],
  [
    "record",
    "scope",
    ["mi=1; line=Q"],
    /^no trait is called 'mi' \(did you mean 'my'\?\); model line has no value 'Q'/,
  ],
  ["record", "issued", ["1960-02-30"], "there is no such day"],
  ["record", "year", ["60"], "a year has four digits"],
  ["record", "id", ["hy59-01"], "'HY59-01' is or was the id of something else"],
  ["record", "id", ["HY-1"], "'HY-1' is or was the id of something else"],
  ["record", "id", ["a/b"], /^letters, digits/],
  ["record", "links", ["fr58-01"], ["FR58-01"]],
  ["part", "number", ["HT-101"], "part HT-101 is there already, under pump"],
  ["part", "hand", ["lefd"], "there is no 'lefd': did you mean 'left'?"],
  ["part", "marks", ["ribs=two, bore=18.5"], ["ribs=two", "bore=18.5"]],
  ["part", "marks", ["ribs"], "write feature=value; none where it shows nothing"],
  ["part", "marks", ["rips=two"], "the parts of this component have no feature 'rips': did you mean 'ribs'?"],
];

test.each(ANSWERS)("%s %s %j", (kind, name, typed, meant) => {
  const field = NEW_FIELDS[kind].find((one) => one.name === name);
  const answers: Answers = { component: "pump" };
  const read = field && readAnswer(field, typed, desk, answers);
  const got = read && "fault" in read ? read.fault : read?.value;
  if (meant instanceof RegExp) expect(got).toMatch(meant);
  else expect(got).toEqual(meant);
});
