/** That it is what a build really writes is looked at beside real builds: tests/build/killed-site.test.ts and tests/site/manifest.test.ts. */
import { expect, test } from "vitest";
import { addressesOf } from "../../../src/build/publish/addresses-of.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const of = (spoil: Parameters<typeof spoiled>[0] = {}): ReturnType<typeof addressesOf> =>
  addressesOf(catalogOf(spoiled(spoil)));

test("every page is listed once, by address, with what it is", () => {
  const pages = of();
  const addresses = pages.map(({ address }) => address);
  expect(addresses).toEqual([...new Set(addresses)].sort());
  expect(
    pages.filter(({ kind }) => kind !== "list").map(({ address, kind, id }) => `${address} ${kind} ${id}`),
  ).toEqual([
    "/bulletins/TB-1/ bulletin TB-1",
    "/components/gasket/ component gasket",
    "/components/lift/ component lift",
    "/components/pump/ component pump",
    "/lines/B/ line B",
    "/lines/B/1957/ line-year B/1957",
    "/lines/B/1958/ line-year B/1958",
    "/lines/B/1959/ line-year B/1959",
    "/lines/B/1960/ line-year B/1960",
    "/lines/H/ line H",
    "/lines/H/1959/ line-year H/1959",
    "/lines/H/1960/ line-year H/1960",
    "/lines/H/1961/ line-year H/1961",
    "/parts/HT-099/ part HT-099",
    "/parts/HT-101/ part HT-101",
    "/parts/HT-102/ part HT-102",
    "/parts/HT-201/ part HT-201",
    "/parts/HT-290/ part HT-290",
    "/records/FR58-01/ record FR58-01",
    "/records/HY-1/ record HY-1",
    "/records/HY59-01/ record HY59-01",
    "/systems/frame/ system frame",
    "/systems/hydraulics/ system hydraulics",
    "/years/1957/ year 1957",
    "/years/1958/ year 1958",
    "/years/1959/ year 1959",
    "/years/1960/ year 1960",
    "/years/1961/ year 1961",
  ]);
});

test("an id that is no longer used says where it leads, or that nothing follows", () => {
  const moved = of().filter((page) => page.moved);
  expect(moved.map(({ address, moved }) => [address, moved])).toEqual([
    ["/parts/HT-099/", {}],
    ["/records/HY-1/", { to: "HY59-01" }],
  ]);
});

test("a record says which of its statements can be linked to, also when it was withdrawn", () => {
  const anchors = (pages: ReturnType<typeof of>, id: string): readonly string[] | undefined =>
    pages.find((page) => page.id === id)?.anchors;
  const before = anchors(of(), "HY59-01");
  expect(before).toEqual(
    expect.arrayContaining(["built-1", "built-3", "mixed-1", "stands-in-3", "setting-2", "cancels-1"]),
  );
  expect(anchors(of(), "FR58-01")).toBeUndefined();
  expect(anchors(of({ "changes/1959/HY59-01.md": ["kinds:", "withdrawn: a mistake\nkinds:"] }), "HY59-01")).toEqual(
    before,
  );
});
