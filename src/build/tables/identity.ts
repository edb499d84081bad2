/**
 * By which columns two rows of a table speak of the same thing, so that a row with another figure is a change and no second
 * statement. A table that is not listed has none: its rows are either there already, as they are, or new.
 */
export const IDENTITY: Readonly<Record<string, readonly string[]>> = {
  built: ["place", "scope"],
  mixed: ["place", "scope"],
  supersedes: ["old", "scope"],
  "stands-in": ["part", "for", "place", "scope"],
  settings: ["name", "conditions", "component", "scope"],
  procedures: ["when"],
  intervals: ["name", "scope"],
  parts: ["number"],
  features: ["id"],
  moves: ["setting"],
  components: ["id"],
  cautions: ["id"],
  moved: ["kind", "from"],
};

/** Two entries may speak of the same thing: a work may have several procedures. */
export const REPEATED: readonly string[] = ["procedures"];
