import { z } from "zod";
import { accept, day, id, words } from "./common.ts";

export const bulletin = z
  .strictObject({
    id,
    title: words,
    issued: day,
    about: words.describe("One sentence for lists."),
    accept,
    text: z
      .string()
      .trim()
      .min(1)
      .max(100_000)
      .describe(
        "Markdown below the second '---'. [[ID]] cites a record, part or component; [[ID|words]] cites it in other words.",
      ),
  })
  .describe("bulletins/<id>.md: a document that cites records.");
export type BulletinFile = z.infer<typeof bulletin>;
