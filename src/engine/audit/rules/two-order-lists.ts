import { isPermission, type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import type { StandsIn, Supersedes } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { bothFitted } from "../both-fitted.ts";
import { placeOf } from "../place-of.ts";
import { reachedBy } from "../reached-by.ts";
import type { Rule, World } from "../rule.ts";
import { stillToFit } from "../still-to-fit.ts";
import { whose } from "../whose.ts";

/**
 * Where one part is delivered for another and may stand in for it on the same cars, some permission for these cars names what is
 * sent along, and nothing else.
 *   What the car has already, and what is refused there, need not be named.
 *   A part is named too by what is delivered for it, by a kit that holds it and by what a kit holds; and in the permission by what
 *   its companions ask for themselves.
 *   A permission for one place alone says nothing of the other places: it may agree, but contradicts nobody.
 */
export const twoOrderLists: Rule = {
  id: "two-order-lists",
  gravity: "error",
  about: "What is sent along with a part is what must go along with it in the place of the old one.",
  why: "The counter orders by one list and the workshop fits by the other: something is missing, or bought for nothing.",
  mend: "Name the same parts in both, or part the cars that need different ones by scopes.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102 }\nstands-in:",
        "do: Bleed the lift., scope: fitted=HT-201 }",
        "do: Bleed the lift., scope: my<=1958 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "{ old: HT-101, new: HT-102, with: [HT-201] }\nstands-in:",
        "{ old: HT-101, new: HT-102, scope: my>=1959 }\n  - { old: HT-101, new: HT-102, with: [HT-201], scope: my<=1958 }\nstands-in:",
        "do: Bleed the lift., scope: fitted=HT-201 }",
        "do: Bleed the lift., scope: my<=1958 }",
      ],
    },
  },
  *find(world) {
    const { catalog, index } = world;
    const { sets } = catalog.space;
    for (const order of [...index.ordersOf.values()].flat()) {
      const permissions = (index.standInsOf.get(order.new) ?? []).filter(
        (it) => it.for === order.old && isPermission(it),
      );
      if (![order, ...permissions].some((it) => it.with.length > 0)) continue;
      const compared = permissions.map((it) => ({ it, ...compare(world, order, it) }));
      const agreed = index.space.any(compared.map(({ agree }) => agree));
      const others = compared
        .filter(({ it }) => it.place === undefined)
        .map(({ it, differ }) => ({ it, cars: sets.minus(differ, agreed) }))
        .filter(({ cars }) => cars !== NONE);
      const [first] = others;
      if (!first) continue;
      yield {
        at: order.with.length > 0 ? placeOf(catalog, order, "with") : placeOf(catalog, order),
        message: `${order.new} is sent for ${order.old} ${sayList(order)} here, and may take its place ${sayList(first.it)} by ${whose(first.it.record, order.record)} on the same cars`,
        hint: "name the same parts in both, or give each the scope that it is meant for",
        records: [order.record, ...others.map(({ it }) => it.record)],
        names: [order.old, order.new, ...new Set([order, ...others.map(({ it }) => it)].flatMap((it) => it.with))],
        also: others.map(({ it }) => ({ ...placeOf(catalog, it), message: `the permission: ${sayList(it)}` })),
        cars: index.space.any(others.map(({ cars }) => cars)),
      };
    }
  },
};

function sayList({ with: along }: Supersedes | StandsIn): string {
  return along.length > 0 ? `with ${along.join(" and ")}` : "with nothing else";
}

/** The cars of both on which they name the same, and those on which they do not. */
function compare(
  { catalog, index }: World,
  order: Supersedes,
  permission: StandsIn,
): { agree: CarSet; differ: CarSet } {
  const { space } = index;
  const both = space.sets.minus(
    space.sets.and(reachedBy(index, order), reachedBy(index, permission)),
    bothFitted(catalog, order.scope, permission.scope),
  );
  if (both === NONE) return { agree: NONE, differ: NONE };
  const sent = brought(index, order, both, false);
  const fitted = brought(index, permission, both, true);
  const differ = space.any([
    ...order.with.map((part) => notNamed(index, part, fitted, both)),
    ...permission.with.map((part) => notNamed(index, part, sent, both)),
  ]);
  return { agree: space.sets.minus(both, differ), differ };
}

/** By part the cars for which it comes with one of these lines, however far that leads; a circle comes to an end. */
function brought(
  index: PartIndex,
  it: Supersedes | StandsIn,
  cars: CarSet,
  byPermissions: boolean,
): ReadonlyMap<string, CarSet> {
  const found = new Map<string, CarSet>();
  const todo: string[] = [];
  const add = (part: string | undefined, more: CarSet): void => {
    const before = (part !== undefined && found.get(part)) || NONE;
    const now = index.space.sets.or(before, more);
    if (part === undefined || now === before) return;
    found.set(part, now);
    todo.push(part);
  };
  for (const part of it.with) add(part, cars);
  for (const content of index.contentsOf.get(it.type === "supersedes" ? it.new : it.part) ?? [])
    add(content.part, cars);
  for (const part of todo) {
    const here = found.get(part) ?? NONE;
    for (const content of index.contentsOf.get(part) ?? []) add(content.part, here);
    for (const rule of index.ordersOf.get(part) ?? [])
      for (const one of [rule.new, ...rule.with]) add(one, whereHolds(index, rule, here));
    for (const one of byPermissions ? (index.standInsOf.get(part) ?? []) : [])
      if (isPermission(one)) for (const companion of one.with) add(companion, whereHolds(index, one, here, one.place));
  }
  return found;
}

/** Those of the cars on which a part has to be fitted and nothing that is brought stands for it. */
function notNamed(index: PartIndex, part: string, found: ReadonlyMap<string, CarSet>, cars: CarSet): CarSet {
  const left = index.space.sets.minus(cars, named(index, part, found, cars, []));
  return left === NONE ? NONE : stillToFit(index, part, left);
}

/** The cars for which a part is brought, or what is delivered for it, or all that is in it. */
function named(
  index: PartIndex,
  part: string,
  found: ReadonlyMap<string, CarSet>,
  cars: CarSet,
  asking: readonly string[],
): CarSet {
  if (asking.includes(part)) return NONE;
  const its = (other: string, among: CarSet): CarSet => named(index, other, found, among, [...asking, part]);
  const contents = (index.contentsOf.get(part) ?? []).flatMap((content) => content.part ?? []);
  return index.space.any([
    index.space.sets.and(found.get(part) ?? NONE, cars),
    ...(index.ordersOf.get(part) ?? []).map((rule) => its(rule.new, whereHolds(index, rule, cars))),
    contents.length === 0 ? NONE : contents.reduce((all, content) => its(content, all), cars),
  ]);
}
