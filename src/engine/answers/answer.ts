/** What every answer has: a verdict, the statements that carry it, and, where it cannot be given yet, what to ask next. */
import { z } from "zod";

/** One statement that carries an answer, in the order of the argument. */
export const reason = z.strictObject({
  record: z.string().describe("Id of the change record or bulletin that says so."),
  statement: z
    .string()
    .describe("Which statement of the record: type and number, such as 'built 2'. 'record' for the record as a whole."),
  text: z.string().describe("The statement in plain words."),
  address: z.string().describe("Where it stands on the site."),
});
export type Reason = z.infer<typeof reason>;

/** What to find out before the answer can be given. */
export const ask = z.strictObject({
  what: z.string().describe("The question, in plain words."),
  options: z.array(z.string()).describe("What may be meant, where that is known."),
});
export type Ask = z.infer<typeof ask>;

export const answerBase = {
  question: z.string(),
  verdict: z.string(),
  because: z.array(reason).describe("The statements that carry the answer, in order. Empty when nothing is on record."),
  ask: ask.optional(),
};

export const scopeWords = z.strictObject({
  text: z.string().describe("The scope as written."),
  words: z.string().describe("The same in plain words."),
});
export type ScopeWords = z.infer<typeof scopeWords>;
