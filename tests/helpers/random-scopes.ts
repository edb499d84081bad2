/**
 * Random scopes about tractors, each as what is asked and as the text an editor would write. Outside judges translate what is
 * asked; the engine reads the text. Values come from small pools, so that limits are met exactly.
 */
import fc from "fast-check";

export type Asked =
  | { readonly ask: "values"; readonly trait: string; readonly not: boolean; readonly items: readonly Item[] }
  | { readonly ask: "bound"; readonly trait: string; readonly sign: ">=" | ">" | "<=" | "<"; readonly value: string }
  | { readonly ask: "flags"; readonly not: boolean; readonly traits: readonly string[] }
  | { readonly ask: "fitted"; readonly not: boolean; readonly parts: readonly string[] }
  | {
      readonly ask: "point";
      readonly plant: string;
      readonly year: number;
      readonly by: "number" | "built";
      readonly at: string;
      readonly from: boolean;
    };
/** First and last of several values; twice the same for one. */
export type Item = readonly [first: string, last: string];
/** Alternatives of clauses. */
export type AskedScope = readonly (readonly Asked[])[];

export const POOLS: Readonly<Record<string, readonly string[]>> = {
  line: ["B", "H", "M"],
  my: ["1957", "1958", "1959", "1960", "1961", "1962"],
  plant: ["K", "D2"],
  number: ["0000", "0001", "0411", "0412", "0413", "9998", "9999"],
  built: ["1956-08-01", "1958-12-31", "1959-01-01", "1959-02-28", "1960-02-29", "1962-07-31"],
  fuel: ["petrol", "diesel", "tvo"],
  tilt: ["-3", "-2", "-1", "0", "1", "2", "3"],
  axle: ["A000", "A001", "A999", "B000", "B001", "B412", "B999", "C000", "C999"],
};
export const FLAGS = ["PT", "WN", "repainted"];
export const FITTED_PARTS = ["HT-101", "HT-102"];

const oneOf = (trait: string): fc.Arbitrary<string> => fc.constantFrom(...(POOLS[trait] as readonly string[]));

const values = fc.constantFrom(...Object.keys(POOLS)).chain((trait) => {
  const single = oneOf(trait).map((value): Item => [value, value]);
  const pool = POOLS[trait] as readonly string[];
  const several = fc
    .tuple(fc.nat(pool.length - 1), fc.nat(pool.length - 1))
    .map(([a, b]): Item => [pool[Math.min(a, b)] as string, pool[Math.max(a, b)] as string]);
  const item = ["my", "tilt", "number", "axle"].includes(trait) ? fc.oneof(single, several) : single;
  return fc.record({
    ask: fc.constant("values" as const),
    trait: fc.constant(trait),
    not: fc.boolean(),
    items: fc.array(item, { minLength: 1, maxLength: 3 }),
  });
});
const bound = fc.constantFrom("my", "tilt", "number", "built", "axle").chain((trait) =>
  fc.record({
    ask: fc.constant("bound" as const),
    trait: fc.constant(trait),
    sign: fc.constantFrom(">=" as const, ">" as const, "<=" as const, "<" as const),
    value: oneOf(trait),
  }),
);
const flags = fc.record({
  ask: fc.constant("flags" as const),
  not: fc.boolean(),
  traits: fc.uniqueArray(fc.constantFrom(...FLAGS), { minLength: 1 }),
});
const fitted = fc.record({
  ask: fc.constant("fitted" as const),
  not: fc.boolean(),
  parts: fc.uniqueArray(fc.constantFrom(...FITTED_PARTS), { minLength: 1 }),
});
const point = fc.constantFrom("number" as const, "built" as const).chain((by) =>
  fc.record({
    ask: fc.constant("point" as const),
    plant: oneOf("plant"),
    year: oneOf("my").map(Number),
    by: fc.constant(by),
    at: oneOf(by),
    from: fc.boolean(),
  }),
);
const clause: fc.Arbitrary<Asked> = fc.oneof({ weight: 3, arbitrary: values }, bound, flags, fitted, point);

export const askedScope: fc.Arbitrary<AskedScope> = fc.array(fc.array(clause, { minLength: 1, maxLength: 4 }), {
  minLength: 1,
  maxLength: 4,
});

/** As an editor writes it. */
export function written(scope: AskedScope): string {
  return scope.map((clauses) => clauses.map(writtenClause).join("; ")).join(" || ");
}

function writtenClause(asked: Asked): string {
  switch (asked.ask) {
    case "values":
      return `${asked.trait}${asked.not ? "!=" : "="}${asked.items
        .map(([first, last]) => (first === last ? first : `${first}-${last}`))
        .join(",")}`;
    case "bound":
      return `${asked.trait} ${asked.sign} ${asked.value}`;
    case "flags":
      return `${asked.not ? "no" : "eq"}=${asked.traits.join(", ")}`;
    case "fitted":
      return `fitted${asked.not ? "!=" : "="}${asked.parts.join(",")}`;
    case "point": {
      const mark = asked.by === "number" ? "#" : "@";
      return `at=${asked.plant}${asked.year % 2 ? asked.year : asked.year % 100}${mark}${asked.at}${asked.from ? "+" : "-"}`;
    }
  }
}
