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

/** What ends, where a sentence takes up the one before it: the record named there, or what that asks for. */
const INSTRUCTION = String.raw`(?:this|that|the|these|those) (?:advice|allowance|ban|exception|instruction|limit|note|notice|order|permission|procedure|prohibition|record|requirement|rule|bulletin)s?`;
/** From when on, for which cars, or nothing more: a clip that is cancelled by hand, or no longer holds the rod, has other words there. */
const TIME = String.raw`(?:the )?(?:\d|(?:beginning|start|end|early|late|mid|model year|spring|summer|autumn|winter|january|february|march|april|may|june|july|august|september|october|november|december)\b)`;
const NO_MORE = String.raw`(?=\s*$|\s*[.!?;:,]|\s+(?:since|as of)\b|\s+(?:after|from|in|on|with) ${TIME})`;
const FOR_SOME = String.raw`(?:${NO_MORE}|(?=\s+(?:for|to)\b))`;
const NOW = String.raw`(?:(?:hereby|now|since|then|thereby|therefore|thus) )?`;
const ENDS_WHAT_WAS_NAMED = new RegExp(
  [
    // What may be a part or an option too is said to have ended only in words that fit neither.
    String.raw`(?:it|they|this|that|these|those|both|${INSTRUCTION}) ${NOW}(?:${[
      String.raw`(?:is|are|was|were|has been|have been) ${NOW}(?:revoked|rescinded|repealed|void)${NO_MORE}`,
      String.raw`(?:is|are) no longer in force\b`,
      String.raw`no longer appl(?:y|ies)${FOR_SOME}`,
      String.raw`do(?:es)? not apply any ?(?:longer|more)\b`,
    ].join("|")})`,
    String.raw`${INSTRUCTION} ${NOW}(?:${[
      String.raw`(?:is|are|was|were|has been|have been) ${NOW}(?:cancell?ed|withdrawn)${NO_MORE}`,
      String.raw`(?:is|are) (?:at an end|gone|no longer valid)\b`,
      String.raw`no longer (?:holds?|counts?)${FOR_SOME}`,
      String.raw`(?:(?:has|have) )?(?:ended|expired|lapsed)${NO_MORE}`,
    ].join("|")})`,
    String.raw`(?:this|that|the) (?:bulletin|record) (?:cancels|ends|repeals|revokes|withdraws) (?:this|that|it|the)\b`,
  ]
    .map(
      (said) => String.raw`^(?:(?:after|as of|but|by|from|in|on|since|until|with|today)\b[^,]{0,40}?,? )?(?:${said})`,
    )
    .join("|"),
  "i",
);

/**
 * A record of the kind 'cancellation' cancels one; and where a sentence names other records and says that something ended, or the
 * next sentence takes that up and says so ("That rule no longer applies"), one of these and its own record cancel the one the other,
 * or one is withdrawn. The words are English: sentences of other languages are left alone.
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
        for (const { from, sentence, named: ids } of endingsIn(text, (id) => catalog.records.has(id))) {
          const named = ids.flatMap((id) => (id === record.id ? [] : (catalog.records.get(id) ?? [])));
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

interface Ending {
  readonly from: number;
  readonly sentence: string;
  /** The records that it names, or takes up from the sentence before. */
  readonly named: readonly string[];
}

function* endingsIn(text: string, isRecord: (id: string) => boolean): Generator<Ending> {
  const namedIn = (sentence: string): string[] => idsIn(sentence).filter(isRecord);
  let before = { to: 0, sentence: "" };
  for (const { from, sentence } of sentencesOf(text)) {
    const takesUp = ENDS_WHAT_WAS_NAMED.test(sentence.replace(/\s+/g, " "));
    const ends = ENDS.test(sentence);
    if (takesUp || ends) {
      const named = namedIn(sentence);
      // A new paragraph takes nothing up.
      const isNext = !/\n\s*\n/.test(text.slice(before.to, from));
      if (named.length > 0) yield { from, sentence, named: ends ? named : [] };
      else if (takesUp && isNext) yield { from, sentence, named: namedIn(before.sentence) };
    }
    before = { to: from + sentence.length, sentence };
  }
}

function* sentencesOf(text: string): Generator<{ from: number; sentence: string }> {
  for (const match of text.matchAll(/[^.!?;:]+(?:[.!?;:](?!\s|$)[^.!?;:]*)*[.!?;:]?/g)) {
    const lead = match[0].search(/\S/);
    if (lead >= 0) yield { from: match.index + lead, sentence: match[0].slice(lead).trimEnd() };
  }
}
