/** Random records with parts that go along, as files, and kind by kind what plain loops find wrong with the companions, without sets. */
import fc from "fast-check";
import { carsOf, KINDS, type Kind } from "../../helpers/random-records.ts";
import type { Folder } from "../../helpers/tiny-folder.ts";

const WHEELS = ["HW-1", "HW-2"];
const SEALS = ["HS-1", "HS-2", "HS-3"];
const RECORDS = ["R-1", "R-2", "R-3"];

interface About {
  readonly lines: readonly string[];
  readonly years: readonly number[];
}
interface Line {
  readonly record: string;
  /** What is fitted, or delivered. */
  readonly part: string;
  readonly old: string;
  readonly with: readonly string[];
  readonly about: About;
}
export interface DrawnCompanions {
  readonly built: readonly { readonly place: string; readonly part: string; readonly about: About }[];
  readonly orders: readonly Line[];
  readonly uses: readonly (Line & { readonly yes: boolean })[];
  /** R-3 ends R-1 for these. */
  readonly ended: About | undefined;
}

const about: fc.Arbitrary<About> = fc.record({
  lines: fc.subarray(["B", "H"], { minLength: 1 }),
  years: fc.subarray([1957, 1958, 1959, 1960], { minLength: 2 }),
});
const record = fc.constantFrom(...RECORDS);
const along = fc.subarray(SEALS, { maxLength: 2 });
const ofWheels = { record, part: fc.constantFrom(...WHEELS), old: fc.constantFrom(...WHEELS), with: along, about };
const ofSeals = { record, part: fc.constantFrom(...SEALS), old: fc.constantFrom(...SEALS), about };

export const drawnCompanions: fc.Arbitrary<DrawnCompanions> = fc
  .record({
    wheels: fc.array(fc.record({ place: fc.constant("front"), part: fc.constantFrom(...WHEELS), about }), {
      maxLength: 2,
    }),
    seals: fc.array(fc.record({ place: fc.constant("seal"), part: fc.constantFrom(...SEALS), about }), {
      maxLength: 2,
    }),
    orders: fc.array(fc.record(ofWheels), { maxLength: 2 }),
    sealOrders: fc.array(fc.record({ ...ofSeals, with: fc.constant([]) }), { maxLength: 3 }),
    uses: fc.array(fc.record({ ...ofWheels, yes: fc.constant(true) }), { minLength: 1, maxLength: 3 }),
    sealUses: fc.array(fc.record({ ...ofSeals, with: along, yes: fc.boolean() }), { maxLength: 2 }),
    ended: fc.option(about, { nil: undefined }),
  })
  .map(({ wheels, seals, orders, sealOrders, uses, sealUses, ended }) => ({
    built: [...wheels, ...seals],
    orders: [...orders, ...sealOrders],
    uses: [...uses, ...sealUses],
    ended,
  }));

export function filesOfCompanions(drawn: DrawnCompanions, tiny: Folder): Folder {
  const scope = ({ lines, years }: About): string => `line=${lines.join(",")}; my=${years.join(",")}`;
  const front = (id: string): object => ({
    id,
    title: `Record ${id}`,
    issued: "1957-01-01",
    kinds: ["part"],
    starts: "at once",
    scope: "all",
    built: id === "R-2" ? drawn.built.map(({ place, part, about: its }) => ({ place, part, scope: scope(its) })) : [],
    supersedes: drawn.orders
      .filter((it) => it.record === id)
      .map((it) => ({ old: it.old, new: it.part, with: it.with, scope: scope(it.about) })),
    "stands-in": drawn.uses
      .filter((it) => it.record === id)
      .map((it) => ({
        part: it.part,
        for: it.old,
        verdict: it.yes ? "on-conditions" : "does-not-go-on",
        with: it.with,
        why: "so",
        scope: scope(it.about),
      })),
    cancels: id === "R-3" && drawn.ended ? [{ record: "R-1", scope: scope(drawn.ended) }] : [],
  });
  const parts = (numbers: readonly string[]): string =>
    JSON.stringify(numbers.map((number) => ({ number, name: "a part" })));
  return {
    ...carsOf(tiny),
    "components/chassis.yaml":
      "id: chassis\nname: Chassis\norder: 1\ncomponents:\n  - { id: wheel, name: wheel, places: [front] }\n  - { id: seal, name: wheel seal, places: [seal] }\n",
    "parts/wheel.yaml": `component: wheel\nparts: ${parts(WHEELS)}\n`,
    "parts/seal.yaml": `component: seal\nparts: ${parts(SEALS)}\n`,
    // JSON is YAML.
    ...Object.fromEntries(
      RECORDS.map((id) => [`changes/1957/${id}.md`, `---\n${JSON.stringify(front(id))}\n---\nA story.\n`]),
    ),
  };
}

/** By rule the kinds of tractors that show a fault. */
export function slowCompanions(drawn: DrawnCompanions): Map<string, Kind[]> {
  const isAbout = ({ lines, years }: About, kind: Kind): boolean =>
    lines.includes(kind.line) && years.includes(kind.my);
  const holds = (it: Line, kind: Kind): boolean =>
    isAbout(it.about, kind) && !(it.record === "R-1" && drawn.ended !== undefined && isAbout(drawn.ended, kind));
  const wasBuilt = (part: string, kind: Kind): boolean =>
    drawn.built.some((it) => it.part === part && isAbout(it.about, kind));
  // What no plant fitted may be on any tractor.
  const mayHave = (part: string, kind: Kind): boolean =>
    wasBuilt(part, kind) || !KINDS.some((other) => wasBuilt(part, other));
  const reached = (it: Line, kind: Kind): boolean => holds(it, kind) && mayHave(it.old, kind);
  const ordersFor = (old: string, kind: Kind): Line[] => drawn.orders.filter((it) => it.old === old && holds(it, kind));
  const isRefused = (part: string, old: string | undefined, kind: Kind): boolean =>
    drawn.uses.some((it) => !it.yes && it.part === part && it.old === old && holds(it, kind));
  const isStillToFit = (seal: string, kind: Kind): boolean => {
    const there = drawn.built.filter((it) => it.place === "seal" && isAbout(it.about, kind)).map((it) => it.part);
    const belonging = there.length > 0 ? there : [undefined];
    return belonging.some((it) => it !== seal && !isRefused(seal, it, kind));
  };
  /** Every way that the orders lead, without circles. */
  const waysFrom = (part: string, kind: Kind, seen: readonly string[] = []): Line[][] => {
    const orders = ordersFor(part, kind);
    if (orders.length === 0) return [[]];
    return orders.flatMap((it) =>
      [part, ...seen].includes(it.part) ? [] : waysFrom(it.part, kind, [part, ...seen]).map((rest) => [it, ...rest]),
    );
  };
  const brought = (list: readonly string[], byUses: boolean, kind: Kind): string[] => {
    const found = [...list];
    for (const part of found) {
      const uses = byUses ? drawn.uses.filter((it) => it.yes && it.part === part && holds(it, kind)) : [];
      const orders = ordersFor(part, kind);
      for (const one of [...orders.map((it) => it.part), ...[...orders, ...uses].flatMap((it) => it.with)])
        if (!found.includes(one)) found.push(one);
    }
    return found;
  };
  /** The refusals of what orders of a seal get that are found as such. */
  const refusalsTold = (seal: string): Line[] =>
    drawn.uses.filter(
      (it) =>
        !it.yes &&
        it.old === seal &&
        it.part !== seal &&
        KINDS.some((kind) => mayHave(seal, kind) && holds(it, kind) && brought([seal], false, kind).includes(it.part)),
    );
  const isNotCurrent = (it: Line, seal: string, kind: Kind): boolean =>
    waysFrom(seal, kind).some((way) => {
      const last = way.at(-1)?.part;
      if (last === undefined || last === it.part || it.with.includes(last)) return false;
      if (waysFrom(it.part, kind).some((own) => own.some((step) => step.part === last || step.with.includes(last))))
        return false;
      return !way.some((one) => refusalsTold(seal).some((it) => it.part === one.part && holds(it, kind)));
    });
  const isNamed = (part: string, list: readonly string[], kind: Kind, seen: readonly string[] = []): boolean =>
    list.includes(part) ||
    (!seen.includes(part) && ordersFor(part, kind).some((it) => isNamed(it.part, list, kind, [part, ...seen])));
  const agree = (order: Line, use: Line, kind: Kind): boolean => {
    const [sent, fitted] = [brought(order.with, false, kind), brought(use.with, true, kind)];
    const lacks = (list: readonly string[], other: readonly string[]): boolean =>
      list.some((it) => isStillToFit(it, kind) && !isNamed(it, other, kind));
    return !lacks(order.with, fitted) && !lacks(use.with, sent);
  };
  const permissions = drawn.uses.filter((it) => it.yes);
  const found: Record<string, (kind: Kind) => boolean> = {
    "companion-not-current": (kind) =>
      [...drawn.orders, ...permissions].some(
        (it) => reached(it, kind) && it.with.some((seal) => isStillToFit(seal, kind) && isNotCurrent(it, seal, kind)),
      ),
    "two-order-lists": (kind) =>
      drawn.orders.some((order) => {
        const same = permissions.filter(
          (it) => it.part === order.part && it.old === order.old && reached(it, kind) && reached(order, kind),
        );
        return same.length > 0 && !same.some((use) => agree(order, use, kind));
      }),
  };
  return new Map(Object.entries(found).map(([rule, isFaulty]) => [rule, KINDS.filter(isFaulty)]));
}
