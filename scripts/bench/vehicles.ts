/** The cars of the generated maker: six lines over ten years, two plants, five engines, eight items of equipment. */
import { LINES, PLANTS, YEARS } from "./words.ts";

const ENGINES = ["A", "B", "C", "V", "X"] as const;
const EQUIPMENT = [
  ["PB", "power brakes"],
  ["PS", "power steering"],
  ["AC", "air conditioning"],
  ["TW", "the tow package"],
  ["LS", "the limited-slip axle"],
  ["HC", "heavy-duty cooling"],
  ["TA", "the tachometer"],
  ["RW", "the rear wiper"],
] as const;

export function traits(): object[] {
  const list = (id: string, label: string, phrase: string, values: readonly (readonly [string, string])[]): object => ({
    id,
    label,
    kind: "list",
    find: `The ${label} stands on the plate.`,
    effort: 2,
    phrase,
    otherwise: `not ${phrase}`,
    values: values.map(([value, name]) => ({ id: value, label: name })),
  });
  return [
    {
      ...list(
        "line",
        "model line",
        "{}",
        LINES.map(({ id, label }) => [id, label]),
      ),
      role: "line",
    },
    {
      id: "my",
      label: "model year",
      role: "year",
      kind: "whole",
      from: YEARS.first,
      to: YEARS.last,
      find: "Second character of the plate.",
      effort: 2,
      phrase: "{}",
      otherwise: "not {}",
    },
    list("body", "body", "{} only", [
      ["1", "two-door sedan"],
      ["2", "four-door sedan"],
      ["3", "wagon"],
    ]),
    list(
      "eng",
      "engine",
      "with the {} engine",
      ENGINES.map((id) => [id, `engine ${id}`]),
    ),
    list("tr", "transmission", "with the {} transmission", [
      ["3", "three-speed"],
      ["4", "four-speed"],
      ["a", "automatic"],
    ]),
    {
      ...list(
        "plant",
        "plant",
        "from {}",
        PLANTS.map((id) => [id, id === "N" ? "Northbank" : "Eastmoor"]),
      ),
      role: "plant",
    },
    {
      id: "seq",
      label: "sequence number",
      role: "sequence",
      kind: "whole",
      from: 10001,
      to: 99999,
      find: "Last five digits of the plate.",
      effort: 2,
      phrase: "number {}",
      otherwise: "not number {}",
    },
    ...EQUIPMENT.map(([id, label]) => ({
      id,
      label,
      kind: "flag",
      find: "Look at the car.",
      effort: 1,
      phrase: `with ${label}`,
      otherwise: `without ${label}`,
    })),
  ];
}

/** The cars that were built of each line: smaller engines in smaller cars, and equipment that came year by year. */
export function builtLines(): { line: string; file: object }[] {
  return LINES.map(({ id, class: size }, i) => ({
    line: id,
    file: {
      line: id,
      class: size,
      about: `The ${size} car of the range.`,
      built: [
        `eng=${ENGINES.slice(0, 2).join()}; tr=3,4; my<=1965`,
        `eng=${ENGINES.slice(1, 4).join()}; tr=3,4,a; my>=1964`,
        ...(i >= 2 ? [`eng=${ENGINES.slice(3).join()}; tr=a`] : []),
      ],
      rules: [
        { if: "eng=X", must: "tr=a", because: "Only the automatic carries its torque." },
        { if: "all", must: size === "wagon" ? "body=3" : "body=1,2" },
      ],
      equipment: {
        PB: { standard: "my>=1968", optional: "my<=1967" },
        PS: { optional: "eng=C,V,X" },
        AC: { optional: "my>=1963" },
        TW: { optional: "eng=V,X" },
        LS: { optional: "all" },
        HC: { standard: "eq=AC", optional: "no=AC" },
        TA: { optional: "tr=4" },
        ...(size === "wagon" ? { RW: { optional: "my>=1966" } } : {}),
      },
    },
  }));
}
