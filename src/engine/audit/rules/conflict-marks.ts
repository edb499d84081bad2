import type { Place } from "../../records/complaint.ts";
import { inRecord } from "../place-of.ts";
import type { Rule, World } from "../rule.ts";
import { textsOf } from "../texts-of.ts";

/** Seven signs at the start of a line, as git writes them; the middle one alone underlines a heading too. */
const OUTER = /^(?:<{7}|\|{7}|>{7})(?= |$)/m;
const MIDDLE = /(?:^|\n[ \t]*\n)(={7})[ \t]*(?=\n|$)/;

/** In no text stands a line with which git marks two versions that it could not join. */
export const conflictMarks: Rule = {
  id: "conflict-marks",
  gravity: "error",
  about: "No text holds the marks of two versions that were not joined.",
  why: "Both versions stand on the page, one saying what the other takes back.",
  mend: "Keep the version that holds, and take the other one and the marks out.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "The pump grew **longer**.\n",
        "<<<<<<< HEAD\nThe pump grew **longer**.\n=======\nThe pump grew shorter.\n>>>>>>> shorter\n",
      ],
    },
    right: {},
  },
  *find(world) {
    for (const { at, text, id } of texts(world)) {
      const match = OUTER.exec(text) ?? MIDDLE.exec(text);
      if (!match) continue;
      const from = match.index + match[0].search(/[<|>=]/);
      yield {
        at: { ...at, within: [from, from + 7] },
        message: `'${text.slice(from, from + 7)}' marks two versions that were not joined`,
        hint: "keep the version that holds, and take the other one and the marks out",
        records: [id],
        names: [],
      };
    }
  },
};

function* texts({ catalog }: World): Generator<{ at: Place; text: string; id: string }> {
  for (const record of catalog.records.values())
    for (const { path, text } of textsOf(record)) yield { at: inRecord(record, ...path), text, id: record.id };
  for (const { id, file, facts } of catalog.bulletins.values())
    yield { at: { file, path: ["text"] }, text: facts.text, id };
}
