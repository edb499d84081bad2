/** Which pages the site of a catalog has, known without building it. */
import { anchor } from "../../engine/answers/say.ts";
import { address } from "../../engine/graph/node.ts";
import type { Catalog, ChangeRecord } from "../../engine/records/catalog.ts";
import { yearsOf } from "../../engine/records/concerned.ts";
import type { PublishedPage } from "./manifest-shape.ts";

/** Pages that every site has, whatever the records say. */
const LISTS = [
  ..."ask car fit retrofits settings apart sums map feeds data".split(" "),
  ..."records parts components systems lines years bulletins".split(" "),
];

/**
 * A page for everything that has an id, for each line in each of its years, and for each id that is no longer used; and the
 * lists. A test holds this against what a build writes.
 */
export function addressesOf(catalog: Catalog): PublishedPage[] {
  const { records, parts, components, bulletins, systems, lines, years, moved } = catalog;
  const pageOf = (kind: Parameters<typeof address>[0], id: string): PublishedPage => ({
    address: address(kind, id),
    kind,
    id,
  });
  const pages: PublishedPage[] = [
    { address: "/", kind: "list", id: "home" },
    ...LISTS.map((id): PublishedPage => ({ address: `/${id}/`, kind: "list", id })),
    ...[...records.values()].map((record) => ({ ...pageOf("record", record.id), ...anchorsOf(record) })),
    ...[...parts.keys()].map((number) => pageOf("part", number)),
    ...[...components.keys()].map((id) => pageOf("component", id)),
    ...[...bulletins.keys()].map((id) => pageOf("bulletin", id)),
    ...systems.map(({ id }) => pageOf("system", id)),
    ...lines.map(({ id }) => pageOf("line", id)),
    ...lines.flatMap((line) =>
      yearsOf(catalog.space, line.cars).map((year): PublishedPage => {
        const id = `${line.id}/${year}`;
        return { address: `/lines/${id}/`, kind: "line-year", id };
      }),
    ),
    ...years.map((year) => pageOf("year", String(year))),
    ...moved.map(({ kind, from, to }) => ({ ...pageOf(kind, from), moved: to === undefined ? {} : { to } })),
  ];
  return pages.sort((a, b) => (a.address < b.address ? -1 : 1));
}

/** A withdrawn record states nothing any more, but its page still shows what it stated. */
function anchorsOf({ stated }: ChangeRecord): Pick<PublishedPage, "anchors"> {
  return stated.length === 0 ? {} : { anchors: stated.map(anchor) };
}
