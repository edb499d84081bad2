import type { ChangeRecord } from "../../records/catalog.ts";
import { inRecord } from "../place-of.ts";
import type { Rule } from "../rule.ts";
import { idsIn, textsOf } from "../texts-of.ts";

const ENDS = new RegExp(
  [
    // Not the two ends of a rod, nor where a thread ends.
    String.raw`(?<!\b(?:an?|all|both|each|its|of|other|the|their|two) )\bends\b(?! (?:at|of|on|up|where)\b)`,
    String.raw`\bended\b(?! up\b)`,
    String.raw`\bcancel(?:s|led|ed)?\b(?! out\b)`,
    // Nor is a pin that is withdrawn with a puller.
    String.raw`\b(?:withdraws|withdrew|withdrawn(?! (?:through|with)))\b`,
    String.raw`\b(?:revok(?:es?|ed)|rescind(?:s|ed)?|repeal(?:s|ed)?|lapses|(?:ha[ds]|have) (?:expired|lapsed)|(?:are|is|was|were|now) void)\b`,
    // An engine is stopped too.
    String.raw`\bstopped (?:it|that|the|this)\b`,
    String.raw`\bno longer (?:holds?|appl(?:y|ies)|counts?|valid|(?:is |are )?in force)\b`,
    String.raw`\bdo(?:es)? not (?:hold|apply|count) any ?(?:longer|more)\b`,
  ].join("|"),
  "i",
);

/**
 * A record of the kind 'cancellation' cancels one; and where a sentence names other records and says that something ended, one of
 * these and its own record cancel the one the other, or one is withdrawn. The words are English: sentences of other languages are
 * left alone.
 */
export const endedInWordsOnly: Rule = {
  id: "ended-in-words-only",
  gravity: "error",
  about: "What a record says has ended is also ended by 'cancels'.",
  why: "Only the relation ends an instruction: the old record goes on telling people what no longer holds.",
  mend: "Add 'cancels' with the record's id, and its scope where only some cars are meant.",
  example: {
    wrong: {
      "changes/1958/FR58-01.md": ["Four holes.", "Four holes. With them the rule of HY59-01 no longer holds."],
      "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
    },
    right: {
      "changes/1958/FR58-01.md": ["Four holes.", "Four holes. With HY59-01 they ended."],
    },
  },
  *find({ catalog }) {
    const isEnglish = /^en\b/.test(catalog.maker.language);
    for (const record of catalog.records.values()) {
      if (record.facts.withdrawn !== undefined) continue;
      if (record.facts.kinds.includes("cancellation") && record.facts.cancels.length === 0)
        yield {
          at: inRecord(record, "kinds"),
          message: "this record is a cancellation, and cancels nothing",
          hint: "add 'cancels' with the id of the record whose instruction ended",
          records: [record.id],
          names: [],
        };
      for (const { path, text } of isEnglish ? textsOf(record) : [])
        for (const { from, sentence } of sentencesOf(text)) {
          if (!ENDS.test(sentence)) continue;
          const named = idsIn(sentence).flatMap((id) => (id === record.id ? [] : (catalog.records.get(id) ?? [])));
          const [other] = named;
          if (!other || named.some((one) => isEnded(record, one) || isEnded(one, record))) continue;
          yield {
            at: { ...inRecord(record, ...path), within: [from, from + sentence.length] },
            message: `it says that something ended and names ${other.id}, and neither of the two records cancels the other`,
            hint: `add 'cancels: [{ record: … }]' to the one that ends it, or say it in other words`,
            records: [record.id, other.id],
            names: [],
          };
        }
    }
  },
};

function isEnded(by: ChangeRecord, other: ChangeRecord): boolean {
  return other.facts.withdrawn !== undefined || by.facts.cancels.some((cancel) => cancel.record === other.id);
}

function* sentencesOf(text: string): Generator<{ from: number; sentence: string }> {
  for (const match of text.matchAll(/[^.!?;:]+(?:[.!?;:](?!\s|$)[^.!?;:]*)*[.!?;:]?/g)) {
    const lead = match[0].search(/\S/);
    if (lead >= 0) yield { from: match.index + lead, sentence: match[0].slice(lead).trimEnd() };
  }
}
