/** How a number looks that tells which car it is (serials.ts). */
import { z } from "zod";

export const serialShape = z.strictObject({
  trait: z.string(),
  label: z.string(),
  /** What stands before the digits; none where the trait has to be named. */
  prefixes: z.array(z.string()),
  /** The trait that the letter itself is a value of. */
  letter: z.string().optional(),
  digits: z.int(),
  from: z.int(),
  to: z.int(),
  called: z.array(z.string()).describe("Words of its name, folded."),
});
export type Serial = z.infer<typeof serialShape>;
