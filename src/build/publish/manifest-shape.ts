/** The manifest of a published site: which addresses it has promised, and which bytes it consists of. */
import { z } from "zod";
import { NODE_KINDS } from "../../engine/graph/node.ts";

/** What a page may be of: something in the graph, a model line in one year, or one of the pages that every site has. */
export const PAGE_KINDS = [...NODE_KINDS, "line-year", "list"] as const;

/** Where it lies in the site. It is written last: a site without it is not whole. */
export const MANIFEST_FILE = "data/manifest.json";

const page = z.strictObject({
  address: z
    .string()
    .regex(/^\/(.*\/)?$/)
    .describe("Inside the site, beginning and ending with '/'."),
  kind: z.enum(PAGE_KINDS),
  id: z
    .string()
    .describe(
      "Of what the page is about; of a line in one year LINE/YEAR; of a list its name, of the first page 'home'.",
    ),
  moved: z
    .strictObject({ to: z.string().optional().describe("The id that it leads to. Without it nothing follows.") })
    .optional()
    .describe("The page only says where its id leads now, or why there is nothing any more."),
  anchors: z
    .array(z.string())
    .optional()
    .describe("Places on the page that answers link to: the statements of a record, as in /records/ID/#built-1."),
});

const file = z.strictObject({
  path: z.string().describe("Inside the folder of the site, with '/' between the names."),
  size: z.int().nonnegative().describe("Bytes."),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
});

export const manifestShape = z
  .strictObject({
    format: z.literal("yearmark-manifest/1"),
    site: z.string().describe("The address at which the site is published."),
    pages: z.array(page).describe("Every address that somebody may have linked to, sorted by address."),
    files: z.array(file).describe("Every file of the site but this one, sorted by path."),
  })
  .describe("manifest.json: the addresses of a published site and the hashes of its files.");

export type Manifest = z.infer<typeof manifestShape>;
export type PublishedPage = z.infer<typeof page>;
export type PublishedFile = z.infer<typeof file>;
