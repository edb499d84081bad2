import type { Catalog } from "../records/catalog.ts";
import type { CarSet } from "../scope/diagram.ts";
import { readScope } from "../scope/read-scope.ts";
import { shorter } from "../scope/shorter.ts";
import { writeScope } from "../scope/write-scope.ts";
import type { ScopeWords } from "./answer.ts";
import { sayScope } from "./say.ts";

/**
 * Some of the cars `among` as a scope that holds for none of the others, in as few words as will do; nothing where more than
 * `most` kinds of cars would have to be named.
 */
export function sayCars(catalog: Catalog, cars: CarSet, among: CarSet, most: number): ScopeWords | undefined {
  const { space } = catalog;
  const text = writeScope(space, shorter(space, cars, among), most);
  const read = text === undefined ? undefined : readScope(space, text);
  return read && "scope" in read ? sayScope(catalog, read.scope) : undefined;
}
