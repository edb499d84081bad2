import { expect, test } from "vitest";
import { articlesOf } from "../../src/build/articles-of.ts";
import { catalogOf } from "../helpers/tiny-folder.ts";

test("every record and bulletin is one, with its number and title", () => {
  expect(articlesOf(catalogOf()).map(({ address, title }) => [address, title])).toEqual([
    ["/records/FR58-01/", "FR58-01 Frame drilled for a winch"],
    ["/records/HY59-01/", "HY59-01 Longer hydraulic pump"],
    ["/bulletins/TB-1/", "TB-1 Pumps"],
  ]);
});
