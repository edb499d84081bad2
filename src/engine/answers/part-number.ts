/**
 * The part that a typed number means. Spaces, dashes and case are forgiven, and the usual misreadings of a worn number
 * (O for 0, I or L for 1) where only one part can be meant. A casting number is not a part number; it is told apart.
 */
import type { Catalog, Part } from "../records/catalog.ts";
import { askOfMoved } from "./moved.ts";
import { QuestionError } from "./question-error.ts";

export type FoundPart =
  | { readonly as: "part number"; readonly part: Part }
  | { readonly as: "casting number"; readonly parts: readonly Part[] }
  | { readonly as: "several"; readonly parts: readonly Part[] }
  | { readonly as: "unknown" };

export function findPart(catalog: Catalog, typed: string): FoundPart {
  const exact = catalog.parts.get(typed.trim());
  if (exact) return { as: "part number", part: exact };
  const all = [...catalog.parts.values()];
  for (const simplify of [plain, misread]) {
    const wanted = simplify(typed);
    if (wanted === "") return { as: "unknown" };
    const found = all.filter((part) => simplify(part.number) === wanted);
    if (found.length === 1) return { as: "part number", part: found[0] as Part };
    if (found.length > 1) return { as: "several", parts: found };
    const cast = all.filter((part) => part.castings.some((casting) => simplify(casting) === wanted));
    if (cast.length > 0) return { as: "casting number", parts: cast };
  }
  return { as: "unknown" };
}

/** The name of a part; the number itself where the catalog has no such part, as on a page that has the records of one line. */
export function partName({ parts }: Catalog, number: string): string {
  return parts.get(number)?.name ?? number;
}

/** The part meant. Throws a QuestionError that says why there is none, or that several are. */
export function requirePart(catalog: Catalog, typed: string): Part {
  const found = findPart(catalog, typed);
  if (found.as === "part number") return found.part;
  if (found.as === "several")
    throw new QuestionError(
      `'${typed}' may be any of ${found.parts.map((part) => part.number).join(", ")}. Write the number as it stands there.`,
    );
  if (found.as === "casting number") throw new QuestionError(`'${typed}' is a casting number, not a part number.`);
  const gone = askOfMoved(catalog, "part", typed.trim());
  const instead = gone?.options.map((part) => ` It is ${part} now.`).join("") ?? "";
  throw new QuestionError(gone ? `${gone.what}${instead}` : `No part is called '${typed}'.`);
}

function plain(text: string): string {
  return text.toUpperCase().replaceAll(/[\s.‐-―-]/g, "");
}

export function misread(text: string): string {
  return plain(text).replaceAll("O", "0").replaceAll(/[IL]/g, "1");
}
