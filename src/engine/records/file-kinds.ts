/** The kinds of file in a data folder: what each is, where it lies, its shape, and the field that the text below its facts fills. */
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
  /** In words, with what an editor fills in between '<' and '>'. */
  readonly home: string;
  readonly what: string;
  readonly shape: z.ZodType;
  /** Markdown files: the field filled by the text below the facts. */
  readonly body?: string;
}

/** The first kind whose path fits is the kind of a file. */
export const FILE_KINDS = {
  maker: {
    path: /^maker\.yaml$/,
    home: "maker.yaml",
    what: "the file about the maker",
    shape: maker,
  },
  traits: {
    path: /^vehicles\/traits\.yaml$/,
    home: "vehicles/traits.yaml",
    what: "the file of the traits",
    shape: traits,
  },
  plates: {
    path: /^vehicles\/plates\.yaml$/,
    home: "vehicles/plates.yaml",
    what: "the file of the plates",
    shape: plates,
  },
  vehicles: {
    path: /^vehicles\/[^/]+\.yaml$/,
    home: "vehicles/<line>.yaml",
    what: "the file of a model line",
    shape: vehicles,
  },
  system: {
    path: /^components\/[^/]+\.yaml$/,
    home: "components/<id>.yaml",
    what: "a system with its components",
    shape: system,
  },
  cautions: {
    path: /^cautions\.yaml$/,
    home: "cautions.yaml",
    what: "the file of the cautions",
    shape: cautions,
  },
  parts: {
    path: /^parts\/[^/]+\.yaml$/,
    home: "parts/<component>.yaml",
    what: "the parts of a component",
    shape: parts,
  },
  change: {
    path: /^changes\/(?:[^/]+\/)*[^/]+\.md$/,
    home: "changes/<year>/<id>.md",
    what: "a change record",
    shape: change,
    body: "story",
  },
  bulletin: {
    path: /^bulletins\/[^/]+\.md$/,
    home: "bulletins/<id>.md",
    what: "a bulletin",
    shape: bulletin,
    body: "text",
  },
  sums: {
    path: /^sums\.yaml$/,
    home: "sums.yaml",
    what: "the file of the shop sums",
    shape: sums,
  },
  words: {
    path: /^words\.yaml$/,
    home: "words.yaml",
    what: "the file of the words",
    shape: words,
  },
  checks: {
    path: /^checks\.yaml$/,
    home: "checks.yaml",
    what: "the file of how the checks are set",
    shape: checks,
  },
  moved: {
    path: /^moved\.yaml$/,
    home: "moved.yaml",
    what: "the file of the ids that moved",
    shape: moved,
  },
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
