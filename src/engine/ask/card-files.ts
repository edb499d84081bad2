/**
 * In which files the cards lie: one for each system, with the cards of what is under no system in each of them. Where the records know
 * no system, all cards lie in one file.
 */

/** No system can be called so: an id begins with a letter or digit. */
const NO_SYSTEM = "-";

/** What the files are called for these systems, all of the catalog's or some. */
export function cardFiles(systems: readonly string[]): readonly string[] {
  return systems.length > 0 ? systems : [NO_SYSTEM];
}
