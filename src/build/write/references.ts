/** Which fields of a data folder name what: all that has to change when something gets another id. */
import type { Move } from "../../engine/records/catalog.ts";
import type { Path } from "../../engine/records/complaint.ts";
import type { FileKindName } from "../../engine/records/file-kinds.ts";

type Fields = Readonly<Partial<Record<FileKindName, readonly string[]>>>;

/** Kind of thing, kind of file, fields; '*' is every entry of a list or of a set of names. moved.yaml is not here: it keeps old ids. */
export const REFERENCES: Readonly<Record<Move["kind"], Fields>> = {
  record: {
    change: ["id", "instead.*", "links.*", "cancels.*.record"],
    parts: ["features.*.record"],
    sums: ["sums.*.record"],
  },
  part: {
    parts: ["parts.*.number"],
    change: [
      "built.*.part",
      "mixed.*.parts.*",
      "supersedes.*.old",
      "supersedes.*.new",
      "supersedes.*.with.*",
      "stands-in.*.part",
      "stands-in.*.for",
      "stands-in.*.with.*",
      "kits.*.kit",
      "kits.*.contents.*.part",
      "service-only.*",
    ],
    sums: ["sums.*.inputs.*.part"],
  },
  component: {
    system: ["components.*.id", "components.*.under"],
    parts: ["component"],
    change: ["components.*", "settings.*.component"],
    cautions: ["cautions.*.components.*"],
    sums: ["sums.*.component", "sums.*.inputs.*.component"],
  },
  system: { system: ["id"], cautions: ["cautions.*.systems.*"] },
  bulletin: { bulletin: ["id"] },
};

/** Findings are accepted by the names of what they are about, of whatever kind. */
const OF_ANY_KIND: Fields = {
  change: ["accept.*.about.*"],
  bulletin: ["accept.*.about.*"],
  parts: ["accept.*.about.*"],
  system: ["accept.*.about.*"],
};

/** Scopes may want a part on the car: fitted=PART. */
export const SCOPES: Fields = {
  change: [
    "scope",
    ...["built", "mixed", "supersedes", "stands-in", "settings", "intervals", "tools", "cancels"].map(
      (it) => `${it}.*.scope`,
    ),
  ],
  vehicles: ["built.*", "rules.*.if", "rules.*.must", "equipment.*.standard", "equipment.*.optional"],
};

/** What is read off a part or a plate: it stays what it is, whatever the part is called on paper. */
export const SEEN: Fields = {
  parts: ["parts.*.castings.*", "parts.*.marks.*", "features.*.absent"],
  plates: ["plates.*.example"],
};

/** What people call something stays what they say, though it be the id of something else. */
export const CALLED: Fields = {
  parts: ["parts.*.aliases.*"],
  system: ["aliases.*", "components.*.aliases.*"],
};

export function isReference(kind: Move["kind"], file: FileKindName, path: Path): boolean {
  return isAmong(REFERENCES[kind], file, path) || isAmong(OF_ANY_KIND, file, path);
}

export function isAmong(fields: Fields, file: FileKindName, path: Path): boolean {
  return fields[file]?.some((pattern) => fits(pattern.split("."), path)) ?? false;
}

function fits(pattern: readonly string[], path: Path): boolean {
  return pattern.length === path.length && pattern.every((step, i) => step === "*" || step === path[i]);
}
