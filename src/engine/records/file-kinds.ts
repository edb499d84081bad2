/** The kinds of file in a data folder: where each lies, its shape, and the field that the text below its facts fills. */
import type { z } from "zod";
import { bulletin } from "./shapes/bulletin.ts";
import { change } from "./shapes/change.ts";
import { checks } from "./shapes/checks.ts";
import { cautions, system } from "./shapes/components.ts";
import { maker } from "./shapes/maker.ts";
import { parts } from "./shapes/parts.ts";
import { sums } from "./shapes/sums.ts";
import { traits } from "./shapes/traits.ts";
import { plates, vehicles } from "./shapes/vehicles.ts";
import { moved, words } from "./shapes/words.ts";

export interface FileKind {
  readonly path: RegExp;
  readonly shape: z.ZodType;
  /** Markdown files: the field filled by the text below the facts. */
  readonly body?: string;
}

/** The first kind whose path fits is the kind of a file. */
export const FILE_KINDS = {
  maker: { path: /^maker\.yaml$/, shape: maker },
  traits: { path: /^vehicles\/traits\.yaml$/, shape: traits },
  plates: { path: /^vehicles\/plates\.yaml$/, shape: plates },
  vehicles: { path: /^vehicles\/[^/]+\.yaml$/, shape: vehicles },
  system: { path: /^components\/[^/]+\.yaml$/, shape: system },
  cautions: { path: /^cautions\.yaml$/, shape: cautions },
  parts: { path: /^parts\/[^/]+\.yaml$/, shape: parts },
  change: { path: /^changes\/(?:[^/]+\/)*[^/]+\.md$/, shape: change, body: "story" },
  bulletin: { path: /^bulletins\/[^/]+\.md$/, shape: bulletin, body: "text" },
  sums: { path: /^sums\.yaml$/, shape: sums },
  words: { path: /^words\.yaml$/, shape: words },
  checks: { path: /^checks\.yaml$/, shape: checks },
  moved: { path: /^moved\.yaml$/, shape: moved },
} as const satisfies Record<string, FileKind>;

export type FileKindName = keyof typeof FILE_KINDS;

export function kindOf(path: string): FileKindName | undefined {
  return (Object.keys(FILE_KINDS) as FileKindName[]).find((name) => FILE_KINDS[name].path.test(path));
}

/** A file of the data folder, read but not yet understood. */
export interface DataFile {
  /** Path inside the data folder, with '/'. */
  readonly path: string;
  readonly kind: FileKindName;
  /** Its facts. Of a broken file its text, or nothing when not even that could be read. */
  readonly value: unknown;
  /** It has a fault that has been reported already, and is only here for the names in it. */
  readonly broken?: boolean;
}

export type ValueOf<K extends FileKindName> = z.infer<(typeof FILE_KINDS)[K]["shape"]>;
