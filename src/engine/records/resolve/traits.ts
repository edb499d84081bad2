import { Space } from "../../scope/space.ts";
import { span, type Trait } from "../../scope/trait.ts";
import type { Shaped } from "../read-catalog.ts";
import { mustKnow } from "./names.ts";

/** Pages list the model years one by one. */
const MOST_YEARS = 500;
const RESERVED = ["eq", "no", "at", "fitted", "all"];

/**
 * The space of cars that traits.yaml opens. Names must be unique, and the reserved words of the scope language are taken.
 * While there is something wrong with them the space is empty: every scope would only echo it.
 */
export function resolveTraits(file: Shaped<"traits"> | undefined): Space {
  if (!file) return new Space([]);
  const { complaints } = file;
  const names = new Set<string>();
  const roles = new Set<string>();
  file.value.traits.forEach((trait, i) => {
    const path = ["traits", i, "id"];
    if (RESERVED.includes(trait.id.toLowerCase()))
      complaints.error(
        path,
        `'${trait.id}' is a word of the scope language`,
        `use a name other than ${RESERVED.join(", ")}`,
      );
    if (names.has(trait.id.toLowerCase()))
      complaints.error(path, `two traits are called '${trait.id}'`, "rename one of them");
    names.add(trait.id.toLowerCase());
    if (trait.role && roles.has(trait.role))
      complaints.error(["traits", i, "role"], `two traits have the role '${trait.role}'`, "keep it with one of them");
    if (trait.role) roles.add(trait.role);
    checkDomain(trait as Trait, i, file);
  });
  for (const role of ["line", "year"])
    if (!roles.has(role))
      complaints.error(
        ["traits"],
        `no trait has the role '${role}'`,
        `add 'role: ${role}' to the trait that is the model ${role}`,
      );
  return new Space(complaints.list.length > 0 ? [] : (file.value.traits as Trait[]));
}

function checkDomain(trait: Trait, i: number, { complaints, value }: Shaped<"traits">): void {
  if (trait.role === "line" && trait.kind !== "list")
    complaints.error(["traits", i, "kind"], "the model line must be a list", "write kind: list with its values");
  if (trait.role === "year" && trait.kind !== "whole")
    complaints.error(
      ["traits", i, "kind"],
      "the model year must be a whole number",
      "write kind: whole with from and to",
    );
  if (trait.role === "year" && trait.kind === "whole" && trait.to - trait.from >= MOST_YEARS)
    complaints.error(
      ["traits", i, "to"],
      `the model years run from ${trait.from} to ${trait.to}`,
      `keep them within ${MOST_YEARS} years`,
    );
  if (trait.kind === "list") {
    const seen = new Set<string>();
    trait.values.forEach((value, j) => {
      if (seen.has(value.id))
        complaints.error(["traits", i, "values", j, "id"], `two values are called '${value.id}'`, "rename one of them");
      seen.add(value.id);
    });
  }
  const known = new Map(value.traits.map((one) => [one.id, one]));
  if (trait.of !== undefined) mustKnow(known, trait.of, "trait", ["traits", i, "of"], complaints, "this file");
  const [from, to] = span(trait);
  if (from > to) complaints.error(["traits", i, "to"], "the last value comes before the first", "swap from and to");
  if (trait.kind !== "flag" && !trait.phrase.includes("{}"))
    complaints.error(["traits", i, "phrase"], "the phrase has no place for the value", "put {} where the value goes");
}
