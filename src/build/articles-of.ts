/** The pages that people search in their own words, with what the index is told of each. */
import { askIndexOf, textsOf } from "../engine/answers/ask-index.ts";
import { cardAddress } from "../engine/ask/card.ts";
import type { Catalog } from "../engine/records/catalog.ts";
import type { Article } from "./index-search.ts";

export function articlesOf(catalog: Catalog): Article[] {
  const titles = new Map(askIndexOf(catalog).cards.map((card) => [cardAddress(card), `${card.id} ${card.title}`]));
  return textsOf(catalog).map(([address, text]) => ({ address, title: titles.get(address) ?? address, text }));
}
