/** Where the rules of the audit begin and end: small changes of the tiny folder, and what one rule then says of them. */
import type { Spoil } from "../../helpers/tiny-folder.ts";

const RECORD = "changes/1959/HY59-01.md";
const FRAME = "changes/1958/FR58-01.md";
const BULLETIN = "bulletins/TB-1.md";
const GASKETS = "parts/gasket.yaml";
const PUMPS = "parts/pump.yaml";
const CHASSIS = "vehicles/traits.yaml";
const HYDRAULICS = "components/hydraulics.yaml";

/** Pieces of the big record, put in place of others. */
const standsIn = (...lines: string[]): string[] => put("why: It runs dry. }", lines);
const supersedes = (...lines: string[]): string[] => ["supersedes:\n", `supersedes:\n${listed(lines)}`];
const builtIn = (...lines: string[]): string[] => ["built:\n", `built:\n${listed(lines)}`];
const settings = (...lines: string[]): string[] => ["settings:\n", `settings:\n${listed(lines)}`];
const intervals = (...lines: string[]): string[] => put("months: 12, scope: all }", lines);
const put = (after: string, lines: readonly string[]): string[] => [after, `${after}\n${listed(lines)}`.trimEnd()];
const listed = (lines: readonly string[]): string => lines.map((line) => `  - { ${line} }\n`).join("");
/** Facts of the small record. */
const frame = (...lines: string[]): string[] => ["scope: my>=1958\n", `scope: my>=1958\n${lines.join("\n")}\n`];
const forNone = [
  'part: HT-102, for: none, verdict: "yes", scope: line=H }',
  'part: HT-102, for: none, verdict: "yes", with: [HT-201], scope: line=H }',
];
const isHistory: string[] = ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01 }"];
const cancelsNone: string[] = ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""];
const says = (sentence: string): Spoil => ({ [FRAME]: ["Four holes.", sentence], [RECORD]: cancelsNone });
/** More parts beside those of the folder. */
const pump3 = put("marks: { ribs: two, bore: none }", ["number: HT-103, name: pump for two, marks: { ribs: three }"]);
const gaskets = (...lines: string[]): string[] => put("name: gasket kit }", lines);
const thinAndThick = gaskets("number: HT-202, name: thin gasket", "number: HT-203, name: thick gasket");
const hands = gaskets(
  "number: HT-210L, name: seal, hand: left",
  "number: HT-210R, name: seal, hand: right",
  "number: HT-211, name: seal",
);
const twoPlaces = ["places: [pump gasket]", "places: [left gasket, right gasket]"];
const both211 = builtIn(
  "place: left gasket, part: HT-211, scope: all",
  "place: right gasket, part: HT-211, scope: all",
);
const ownNumber: Spoil = {
  [CHASSIS]: [
    "  - { id: PT,",
    '  - { id: pumpno, kind: whole, of: line, from: 1, to: 9999, label: pump number, find: the flange, effort: 3, phrase: "with pump number {}", otherwise: "not with pump number {}" }\n  - { id: PT,',
  ],
  [HYDRAULICS]: ["{ id: pump, name", "{ id: pump, goes-by: pumpno, name"],
};
const painted = ["name: ribs on the body, made: cast,", "name: red rings, made: painted,"];

/** The rule, what the case shows, how the folder is changed, and the beginning of each thing that the rule then says. */
export const CASES: readonly (readonly [rule: string, shows: string, files: Spoil, found: readonly string[]])[] = [
  [
    "no-such-car",
    "one alternative of several",
    { [RECORD]: ["part: none, scope: line=H }", "part: none, scope: line=H || line=H; my=1957 }"] },
    ["no car that was built is in this alternative of the scope"],
  ],
  [
    "no-such-car",
    "of a scope without any car its alternatives are not told again",
    { [RECORD]: ["part: none, scope: line=H }", "part: none, scope: line=H; my=1958 || line=H; my=1957 }"] },
    ["no car that was built is in this scope"],
  ],
  [
    "two-parts-in-one-place",
    "the same part twice",
    { [RECORD]: builtIn("place: pump, part: HT-101, scope: line=B; my=1957") },
    [],
  ],
  [
    "two-parts-in-one-place",
    "the same parts in another order",
    { [RECORD]: put("mixed:", ["place: pump, parts: [HT-102, HT-101], scope: line=H; my=1959; plant=K"]) },
    [],
  ],
  [
    "two-parts-in-one-place",
    "nothing and a part",
    { [RECORD]: builtIn("place: lift arms, part: HT-290, scope: line=H; my=1960") },
    ["'lift arms' holds nothing here, and HT-290 by another line of this record"],
  ],
  [
    "running-change-without-plant",
    "whatever the plant: years beside the year that numbers part",
    {
      [RECORD]: [
        ...["starts: during 1959", "starts: during 1959, whatever the plant"],
        ...[
          "HT-101, scope: line=B; at=K59#0412- }",
          "HT-101, scope: line=B; my<=1958 || line=B; my=1959; number<0412 }",
        ],
        ...[
          "HT-102, scope: line=B; at=K59#0412+ }",
          "HT-102, scope: line=B; my>=1960 || line=B; my=1959; number>=0412 }",
        ],
      ],
    },
    [],
  ],
  [
    "running-change-without-plant",
    "a number of the car alone is each plant's own",
    {
      [RECORD]: [
        ...["HT-101, scope: line=B; at=K59#0412- }", "HT-101, scope: line=B; my=1959; number<0412 }"],
        ...["HT-102, scope: line=B; at=K59#0412+ }", "HT-102, scope: line=B; plant=K; my=1959; number>=0412 }"],
      ],
    },
    ["this running change names no plant"],
  ],
  [
    "running-change-without-plant",
    "a component's own number",
    {
      ...ownNumber,
      [RECORD]: [
        "HT-101, scope: line=B; at=K59#0412- }",
        "HT-101, scope: line=B; pumpno<500 }",
        "HT-102, scope: line=B; at=K59#0412+ }",
        "HT-102, scope: line=B; pumpno>=500 }",
      ],
    },
    [],
  ],
  [
    "running-change-without-plant",
    "its own scope, though nothing beside it names a plant",
    { [RECORD]: ["scope: line=B; at=K59#0412+\nbuilt", "scope: line=B; my>=1959\nbuilt"] },
    ["this running change names no plant"],
  ],
  [
    "running-change-gap",
    "one number",
    { [RECORD]: ["at=K59#0412- }", "at=K59#0411- }"] },
    ["of 'pump' nothing is said"],
  ],
  [
    "running-change-gap",
    "at one plant of two",
    {
      [RECORD]: [
        ...["HT-101, scope: line=B; at=K59#0412- }", "HT-101, scope: line=B; at=K59#0412- || line=B; at=D59#0300- }"],
        ...["HT-102, scope: line=B; at=K59#0412+ }", "HT-102, scope: line=B; at=K59#0412+ || line=B; at=D59#0305+ }"],
      ],
    },
    ["of 'pump' nothing is said"],
  ],
  [
    "running-change-gap",
    "a plant that the record is about, and no statement",
    { [RECORD]: ["scope: line=B; at=K59#0412+\nbuilt", "scope: line=B; at=K59#0412+ || line=B; plant=D\nbuilt"] },
    ["this running change is about cars of which nothing is said in 'pump', 'lift arms'"],
  ],
  [
    "running-change-gap",
    "what is no running change",
    {
      [RECORD]: [
        ...["scope: line=B; at=K59#0412+\nbuilt", "scope: line=B; at=K59#0412+ || line=B; plant=D\nbuilt"],
        ...["kinds: [part, running]", "kinds: [part]"],
      ],
    },
    [],
  ],
  [
    "running-change-gap",
    "of a component's own numbers",
    {
      ...ownNumber,
      [RECORD]: [
        "HT-101, scope: line=B; at=K59#0412- }",
        "HT-101, scope: line=B; pumpno<499 }",
        "HT-102, scope: line=B; at=K59#0412+ }",
        "HT-102, scope: line=B; pumpno>=500 }",
      ],
    },
    ["of 'pump' nothing is said"],
  ],
  [
    "own-number-not-used",
    "the component's own number",
    {
      ...ownNumber,
      [RECORD]: [
        "HT-101, scope: line=B; at=K59#0412- }",
        "HT-101, scope: line=B; pumpno<500 }",
        "HT-102, scope: line=B; at=K59#0412+ }",
        "HT-102, scope: line=B; pumpno>=500 }",
      ],
    },
    [],
  ],
  [
    "own-number-not-used",
    "of the component that it is under",
    {
      ...ownNumber,
      [RECORD]: [
        ...["HT-101, scope: line=B; at=K59#0412- }", "HT-101, scope: line=B; pumpno<500 }"],
        ...["HT-102, scope: line=B; at=K59#0412+ }", "HT-102, scope: line=B; pumpno>=500 }"],
        ...builtIn("place: pump gasket, part: HT-201, scope: line=B; at=K59#0412+"),
      ],
    },
    ["'pump gasket' goes by pump number"],
  ],
  [
    "repair-part-built-in",
    "in a mixed stretch",
    { [RECORD]: ["service-only: [HT-201]", "service-only: [HT-201, HT-102]"] },
    ["HT-102 is for repair only here, and fitted by the plant in 'pump' by this record itself"],
  ],
  [
    "wrong-hand",
    "both hands in a place without a word for its side",
    {
      [GASKETS]: hands,
      [RECORD]: builtIn(
        "place: pump gasket, part: HT-210L, scope: line=B",
        "place: pump gasket, part: HT-210R, scope: line=H",
      ),
    },
    ["HT-210R is for the right side, and fitted in 'pump gasket'"],
  ],
  [
    "wrong-hand",
    "a place of one side, with the part for it and one for both",
    {
      [HYDRAULICS]: twoPlaces,
      [GASKETS]: hands,
      [RECORD]: builtIn(
        "place: right gasket, part: HT-211, scope: line=B",
        "place: right gasket, part: HT-210R, scope: line=H",
      ),
    },
    [],
  ],
  [
    "names-itself",
    "in place of itself",
    { [RECORD]: standsIn("part: HT-101, for: HT-101, verdict: yes") },
    ["HT-101 is to stand in for itself"],
  ],
  [
    "names-itself",
    "ordered along with itself",
    { [RECORD]: ["new: HT-102, with: [HT-201] }", "new: HT-102, with: [HT-201, HT-102] }"] },
    ["HT-102 is to go along with itself"],
  ],
  [
    "permitted-and-refused",
    "a part on the car today or another one, where there is one place for them",
    {
      [RECORD]: standsIn(
        'part: HT-201, for: HT-290, verdict: "yes", scope: fitted=HT-101',
        "part: HT-201, for: HT-290, verdict: does-not-go-on, why: It is thin., scope: fitted=HT-102",
      ),
    },
    [],
  ],
  [
    "permitted-and-refused",
    "a part on the car today or another one, where both may be on it",
    {
      [HYDRAULICS]: ["places: [pump] }", "places: [pump, second pump] }"],
      [RECORD]: standsIn(
        'part: HT-201, for: HT-290, verdict: "yes", scope: fitted=HT-101',
        "part: HT-201, for: HT-290, verdict: does-not-go-on, why: It is thin., scope: fitted=HT-102",
      ),
    },
    ["HT-201 in place of HT-290 is permitted here and refused by another line of this record"],
  ],
  [
    "permitted-and-refused",
    "a refusal for one place, a permission for all",
    {
      [HYDRAULICS]: twoPlaces,
      [RECORD]: standsIn(
        "part: HT-290, for: HT-201, verdict: yes",
        "part: HT-290, for: HT-201, place: left gasket, verdict: does-not-go-on, why: It is square.",
      ),
    },
    ["HT-290 in place of HT-201 is permitted here"],
  ],
  [
    "permitted-and-refused",
    "two places",
    {
      [HYDRAULICS]: twoPlaces,
      [RECORD]: standsIn(
        "part: HT-290, for: HT-201, place: right gasket, verdict: yes",
        "part: HT-290, for: HT-201, place: left gasket, verdict: does-not-go-on, why: It is square.",
      ),
    },
    [],
  ],
  [
    "permitted-and-refused",
    "on other cars",
    { [RECORD]: standsIn("part: HT-101, for: HT-102, verdict: does-not-go-on, why: It is short., scope: line=H") },
    [],
  ],
  [
    "closed-permission",
    "what is ordered along",
    {
      [RECORD]: [
        ...["verdict: on-conditions, with: [HT-201], do", "verdict: on-conditions, do"],
        ...standsIn("part: HT-201, for: none, verdict: must-not-be-used, why: It leaks., scope: line=B"),
      ],
    },
    ["HT-201 is ordered along, and cannot go on: HY59-01 refuses HT-201 (It leaks.)"],
  ],
  [
    "closed-permission",
    "what is ordered along, refused on cars that were not built with the number",
    {
      [RECORD]: [
        ...["verdict: on-conditions, with: [HT-201], do", "verdict: on-conditions, do"],
        ...standsIn("part: HT-201, for: none, verdict: must-not-be-used, why: It leaks., scope: line=H; my=1960"),
      ],
    },
    [],
  ],
  [
    "closed-permission",
    "where nothing belongs",
    {
      [RECORD]: [
        ...forNone,
        ...builtIn("place: pump, part: none, scope: line=H; my=1960"),
        ...standsIn("part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: line=H; my=1960"),
      ],
    },
    ["HT-102 may go on here, but not all that must go along with it: HY59-01 refuses HT-201 (It is square.)"],
  ],
  [
    "closed-permission",
    "where nothing belongs, on other cars than those that the companion is refused on",
    {
      [RECORD]: [
        ...forNone,
        ...builtIn("place: pump, part: none, scope: line=H; my=1961"),
        ...standsIn("part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: line=H; my=1960"),
      ],
    },
    [],
  ],
  [
    "closed-permission",
    "a mixed stretch",
    {
      [RECORD]: standsIn(
        "part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: line=H; my=1959",
      ),
    },
    ["HT-102 may go on here, but not all", "HT-201 is ordered along"],
  ],
  [
    "closed-permission",
    "what is also refused by name is told by another rule",
    {
      [RECORD]: standsIn(
        "part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: line=B; my=1957",
        "part: HT-102, for: HT-101, verdict: does-not-go-on, why: It is long., scope: line=B; my=1957",
      ),
    },
    ["HT-201 is ordered along"],
  ],
  ...["for: HT-101, scope: line=H; my=1960", "for: HT-290, scope: line=B; my=1957"].map(
    (about) =>
      [
        "closed-permission",
        `refused by name elsewhere: ${about}`,
        {
          [RECORD]: standsIn(
            "part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: line=B; my=1957",
            `part: HT-102, verdict: does-not-go-on, why: It is long., ${about}`,
          ),
        },
        ["HT-102 may go on here, but not all", "HT-201 is ordered along"],
      ] as const,
  ),
  [
    "closed-permission",
    "another part belongs in the place of what goes along",
    {
      [RECORD]: builtIn(
        "place: pump gasket, part: HT-201, scope: line=H",
        "place: pump gasket, part: HT-290, scope: line=B",
      ),
    },
    ["HT-201 is to go along, and no record says that it may take the place of HT-290 on these cars"],
  ],
  [
    "closed-permission",
    "another part belongs there, and a record speaks of the two",
    {
      [RECORD]: [
        ...builtIn(
          "place: pump gasket, part: HT-201, scope: line=H",
          "place: pump gasket, part: HT-290, scope: line=B",
        ),
        ...standsIn("part: HT-201, for: HT-290, verdict: yes"),
      ],
    },
    [],
  ],
  [
    "closed-permission",
    "another part belongs there on other cars",
    {
      [RECORD]: builtIn(
        "place: pump gasket, part: HT-201, scope: line=B",
        "place: pump gasket, part: HT-290, scope: line=H; my=1960",
      ),
    },
    [],
  ],
  [
    "closed-permission",
    "another part belongs there, where nothing belonged in the place of the part",
    {
      [RECORD]: [
        ...forNone,
        ...["with: [HT-201], do: Bleed", "do: Bleed"],
        ...builtIn(
          "place: pump gasket, part: HT-201, scope: line=B",
          "place: pump gasket, part: HT-290, scope: line=H; my=1960",
        ),
      ],
    },
    ["HT-201 is to go along, and no record says that it may take the place of HT-290 on these cars"],
  ],
  [
    "closed-permission",
    "of two places it is told once",
    {
      [HYDRAULICS]: ["places: [pump] }", "places: [pump, second pump] }"],
      [RECORD]: [
        ...builtIn("place: second pump, part: HT-101, scope: line=B"),
        ...standsIn("part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: line=B; my=1957"),
      ],
    },
    ["HT-102 may go on here, but not all", "HT-201 is ordered along"],
  ],
  [
    "other-direction-unsaid",
    "what was ended for all cars states nothing",
    {
      [FRAME]: frame("stands-in:", "  - { part: HT-102, for: HT-201, verdict: does-not-go-on, why: It is a pump. }"),
      [RECORD]: isHistory,
    },
    [],
  ],
  [
    "other-direction-unsaid",
    "what was ended for all cars is no answer to what still counts",
    {
      [FRAME]: frame("stands-in:", "  - { part: HT-102, for: HT-201, verdict: does-not-go-on, why: It is a pump. }"),
      [RECORD]: [...isHistory, ...standsIn("part: HT-201, for: HT-102, verdict: does-not-go-on, why: It is a gasket.")],
    },
    ["nothing is said of HT-102 where HT-201 belongs"],
  ],
  [
    "other-direction-unsaid",
    "a kit, and where nothing belongs",
    {
      [RECORD]: standsIn(
        "part: HT-290, for: HT-201, verdict: yes",
        "part: HT-101, for: none, verdict: does-not-go-on, why: It is short.",
      ),
    },
    [],
  ],
  [
    "other-direction-unsaid",
    "several lines about one pair are told once",
    {
      [RECORD]: standsIn(
        "part: HT-201, for: HT-102, verdict: does-not-go-on, why: It is a gasket., scope: line=B",
        "part: HT-201, for: HT-102, verdict: does-not-go-on, why: It is a gasket., scope: line=H",
      ),
    },
    ["nothing is said of HT-102 where HT-201 belongs"],
  ],
  [
    "no-car-to-fit",
    "a delivery rule about cars that were not built with the number",
    { [RECORD]: ["new: HT-102, with: [HT-201] }", "new: HT-102, with: [HT-201], scope: line=H; my=1960 }"] },
    ["HT-102 is delivered for HT-101, and no car in the scope has HT-101"],
  ],
  [
    "no-car-to-fit",
    "a delivery rule for a number that comes to cars by another delivery",
    { [RECORD]: supersedes("old: HT-102, new: HT-290, scope: line=H; my=1960") },
    [],
  ],
  [
    "no-car-to-fit",
    "a delivery rule for a number that no plant fitted",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-202, new: HT-203, scope: line=H") },
    [],
  ],
  [
    "no-car-to-fit",
    "a permission that was ended",
    {
      [FRAME]: frame("stands-in:", "  - { part: HT-201, for: HT-101, verdict: yes, scope: line=H; my=1960 }"),
      [RECORD]: isHistory,
    },
    [],
  ],
  [
    "one-hand-only",
    "in place of a part that sits on both sides",
    { [HYDRAULICS]: twoPlaces, [GASKETS]: hands, [RECORD]: [...both211, ...supersedes("old: HT-211, new: HT-210L")] },
    ["HT-210L is for the left side only, and takes the place of HT-211"],
  ],
  [
    "one-hand-only",
    "with its twin, or refused",
    {
      [HYDRAULICS]: twoPlaces,
      [GASKETS]: hands,
      [RECORD]: [
        ...both211,
        ...supersedes("old: HT-211, new: HT-210L, with: [HT-210R]"),
        ...standsIn("part: HT-210L, for: HT-211, verdict: does-not-go-on, why: It is thin."),
      ],
    },
    [],
  ],
  [
    "one-hand-only",
    "named in what is to be done",
    {
      [GASKETS]: hands,
      [RECORD]: ["do: Bleed the lift.,", "do: Fit HT-210L and bleed the lift.,"],
    },
    ["HT-210L goes along for the left side only"],
  ],
  [
    "one-hand-only",
    "both named in what is to be done",
    { [GASKETS]: hands, [RECORD]: ["do: Bleed the lift.,", "do: 'Fit HT-210L, HT-210R.',"] },
    [],
  ],
  [
    "one-hand-only",
    "along with a part for the same hand",
    {
      [GASKETS]: gaskets(
        "number: HT-210L, name: seal, hand: left",
        "number: HT-210R, name: seal, hand: right",
        "number: HT-250L, name: lip, hand: left",
      ),
      [RECORD]: supersedes("old: HT-290, new: HT-250L, with: [HT-210L]"),
    },
    [],
  ],
  [
    "part-nowhere",
    "named only as what it replaced",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-202, new: HT-203") },
    ["no record says where HT-202 goes"],
  ],
  [
    "part-nowhere",
    "named only as what another part stands in for",
    { [GASKETS]: thinAndThick, [RECORD]: standsIn("part: HT-203, for: HT-202, verdict: yes") },
    ["no record says where HT-202 goes"],
  ],
  [
    "part-nowhere",
    "spoken of in a sentence",
    { [GASKETS]: thinAndThick, [RECORD]: ["The pump grew", "HT-202 and HT-203. The pump grew"] },
    [],
  ],
  [
    "delivery-circle",
    "of three, on the cars that all of its rules are about",
    {
      [PUMPS]: pump3,
      [RECORD]: supersedes("old: HT-102, new: HT-103, scope: line=B", "old: HT-103, new: HT-101, scope: my=1958"),
    },
    ["the delivery rules run in a circle: HT-102 → HT-103 → HT-101 → HT-102"],
  ],
  [
    "delivery-circle",
    "of one",
    { [RECORD]: supersedes("old: HT-290, new: HT-290") },
    ["the delivery rules run in a circle: HT-290 → HT-290"],
  ],
  [
    "delivery-circle",
    "two of them",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes("old: HT-102, new: HT-101", "old: HT-202, new: HT-203", "old: HT-203, new: HT-202"),
    },
    [
      "the delivery rules run in a circle: HT-102 → HT-101 → HT-102",
      "the delivery rules run in a circle: HT-202 → HT-203 → HT-202",
    ],
  ],
  [
    "two-deliveries",
    "by the part that is on the car today",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes(
        "old: HT-201, new: HT-202, scope: fitted=HT-101",
        "old: HT-201, new: HT-203, scope: fitted=HT-102",
      ),
    },
    [],
  ],
  [
    "two-deliveries",
    "by parts of two components",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes(
        "old: HT-102, new: HT-202, scope: fitted=HT-101",
        "old: HT-102, new: HT-203, scope: fitted=HT-290",
      ),
    },
    ["who orders HT-102 gets HT-203 here, and HT-202 by another line of this record"],
  ],
  [
    "two-deliveries",
    "of one number by two rules",
    { [RECORD]: supersedes("old: HT-101, new: HT-102, scope: line=B") },
    [],
  ],
  [
    "delivered-but-refused",
    "at the end of a chain",
    {
      [PUMPS]: pump3,
      [RECORD]: [
        ...supersedes("old: HT-102, new: HT-103"),
        ...standsIn("part: HT-103, for: HT-101, verdict: does-not-go-on, why: It is too long."),
      ],
    },
    ["HT-103 is delivered for HT-101, and refused in its place by this record itself"],
  ],
  [
    "delivered-but-refused",
    "for a number that no plant fitted",
    {
      [PUMPS]: pump3,
      [RECORD]: [
        ...supersedes("old: HT-103, new: HT-102"),
        ...standsIn("part: HT-102, for: HT-103, verdict: does-not-go-on, why: It is too short."),
      ],
    },
    ["HT-102 is delivered for HT-103, and refused in its place by this record itself"],
  ],
  [
    "delivered-but-refused",
    "on cars that were not built with it",
    {
      [RECORD]: standsIn("part: HT-102, for: HT-101, verdict: does-not-go-on, why: The pedal., scope: line=H; my=1960"),
    },
    [],
  ],
  [
    "split-leaves-cars-out",
    "one number by several rules is no split",
    {
      [RECORD]: [
        "new: HT-102, with: [HT-201] }",
        "new: HT-102, with: [HT-201], scope: my=1957 }\n  - { old: HT-101, new: HT-102, scope: my=1958 }",
      ],
    },
    [],
  ],
  [
    "kit-content-not-current",
    "for every car one number or another",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes("old: HT-201, new: HT-202, scope: line=B", "old: HT-201, new: HT-203, scope: line=H"),
    },
    ["kit HT-290 holds HT-201, for which HT-202 or HT-203 is delivered"],
  ],
  [
    "kit-content-not-current",
    "for some cars",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202, scope: line=B") },
    [],
  ],
  [
    "kit-content-not-current",
    "a part for which the kit itself is delivered",
    { [RECORD]: supersedes("old: HT-201, new: HT-290") },
    ["kit HT-290 holds HT-201, for which HT-290 is delivered"],
  ],
  [
    "kit-content-not-current",
    "a kit that is itself no longer delivered",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202", "old: HT-290, new: HT-203") },
    [],
  ],
  [
    "kit-in-itself",
    "in another kit",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: put("kits:", [
        "kit: HT-202, contents: [{ part: HT-290 }, { name: glue }]",
        "kit: HT-201, contents: [{ part: HT-202 }]",
      ]),
    },
    [
      "kit HT-202 holds HT-290, which holds it in turn",
      "kit HT-201 holds HT-202, which holds it in turn",
      "kit HT-290 holds HT-201, which holds it in turn",
    ],
  ],
  [
    "two-figures-in-force",
    "a limit with one digit more",
    {
      [RECORD]: settings("name: oil pressure, window: 120.0..135.00, nominal: 130, unit: bar, scope: line=B; my=1960"),
    },
    [],
  ],
  [
    "two-figures-in-force",
    "another figure to aim for",
    { [RECORD]: settings("name: oil pressure, window: 120..135, nominal: 125, unit: bar, scope: line=B; my=1960") },
    ["'oil pressure' is 120..135 bar, to be set at 130 here, and 120..135 bar, to be set at 125 by another line"],
  ],
  [
    "two-figures-in-force",
    "an exact count",
    {
      [RECORD]: settings(
        "name: shims, window: 8..8, unit: pieces, scope: line=B",
        "name: shims, window: 8..9, unit: pieces, scope: all",
      ),
    },
    ["'shims' is 8..9 pieces here, and 8 pieces by"],
  ],
  [
    "two-figures-in-force",
    "of a part that is on the car and of another one",
    {
      [RECORD]: settings(
        "name: play, window: ..1, unit: mm, scope: fitted=HT-101",
        "name: play, window: ..2, unit: mm, scope: fitted=HT-102",
      ),
    },
    [],
  ],
  [
    "two-figures-in-force",
    "of parts of two components",
    {
      [RECORD]: settings(
        "name: play, window: ..1, unit: mm, scope: fitted=HT-101",
        "name: play, window: ..2, unit: mm, scope: fitted=HT-201",
      ),
    },
    ["'play' is ..2 mm here, and ..1 mm by"],
  ],
  [
    "two-figures-in-force",
    "intervals",
    {
      [RECORD]: intervals(
        "name: oil change, months: 12, miles: 9000, scope: line=H",
        "name: oil change, none: true, scope: line=B; my=1957",
      ),
    },
    [
      "'oil change' is every 12 months or 9000 miles here, and every 12 months by",
      "'oil change' is without an interval here",
    ],
  ],
  [
    "two-figures-in-force",
    "of a record that was ended",
    {
      [FRAME]: frame(
        "components: [pump]",
        "settings:",
        "  - { name: oil pressure, window: 100..110, unit: bar, scope: line=B }",
      ),
    },
    [],
  ],
  [
    "mixed-units",
    "the rarer unit is in doubt",
    {
      [RECORD]: settings(
        "name: oil pressure, window: ..95, unit: psi, scope: line=H",
        "name: oil pressure, window: ..95, unit: bar, scope: line=H",
      ),
    },
    ["'oil pressure' is in psi here, and in bar elsewhere"],
  ],
  ["aim-outside-window", "limits count as inside", { [RECORD]: ["nominal: 130,", "nominal: 120,"] }, []],
  ["aim-outside-window", "limits count as inside above", { [RECORD]: ["nominal: 130,", "nominal: 135,"] }, []],
  [
    "aim-outside-window",
    "only an upper limit",
    { [RECORD]: ["window: ..90, unit", "window: ..90, nominal: 91, unit"] },
    ["'oil pressure' is to be set at 91 bar, outside its window ..90"],
  ],
  [
    "aim-outside-window",
    "only a lower limit",
    { [RECORD]: ["window: ..90, unit", "window: 90.., nominal: 91, unit"] },
    [],
  ],
  [
    "implausible-figure",
    "beyond what checks.yaml has",
    { [RECORD]: ["window: ..90, unit", "window: ..301, unit"] },
    ["'oil pressure' has 301 bar; for 'oil pressure' checks.yaml has 20 to 300 bar"],
  ],
  [
    "implausible-figure",
    "as much as checks.yaml has",
    { [RECORD]: ["window: ..90, unit", "window: 20..300, unit"] },
    [],
  ],
  [
    "implausible-figure",
    "in another unit, or of another name",
    {
      [RECORD]: settings(
        "name: oil pressure, window: ..900, unit: psi, scope: line=H",
        "name: gas pressure, window: ..900, unit: bar, scope: line=H",
      ),
    },
    [],
  ],
  [
    "implausible-figure",
    "six times as much as the earlier one",
    {
      [RECORD]: settings(
        "name: play, window: 1..1, unit: mm, scope: line=B",
        "name: play, window: 6.., unit: mm, scope: line=H",
      ),
    },
    ["'play' is 6 mm here and 1 mm elsewhere: 6 times as much"],
  ],
  [
    "implausible-figure",
    "less than six times, by the middle of the window",
    {
      [RECORD]: settings(
        "name: play, window: 0..2, unit: mm, scope: line=B",
        "name: play, window: 5..6.8, unit: mm, scope: line=H",
      ),
    },
    [],
  ],
  [
    "implausible-figure",
    "of three the one that is far from the middle one",
    {
      [RECORD]: settings(
        "name: play, window: 0.1..0.1, unit: mm, scope: my=1957",
        "name: play, window: 1..1, unit: mm, scope: my=1958",
        "name: play, window: 2..2, unit: mm, scope: my=1959",
      ),
    },
    ["'play' is 0.1 mm here and 1 mm elsewhere: 10 times less"],
  ],
  [
    "implausible-figure",
    "nought is no measure",
    {
      [RECORD]: settings(
        "name: tilt, window: -2..2, nominal: 0, unit: degrees, scope: line=B",
        "name: tilt, window: -1..3, nominal: 1, unit: degrees, scope: line=H",
      ),
    },
    [],
  ],
  [
    "figure-promised",
    "without a space before the unit",
    { [RECORD]: ["do: Bleed the lift., scope", "do: Bleed the lift; the oil pressure is then 140bar., scope"] },
    ["'oil pressure' is to be 140 bar with HT-102"],
  ],
  [
    "figure-promised",
    "a limit that is in force",
    {
      [RECORD]: [
        "do: Bleed the lift., scope: fitted=HT-201 }",
        "do: The oil pressure is then at least 120 bar., scope: line=B; fitted=HT-201 }",
      ],
    },
    [],
  ],
  [
    "figure-promised",
    "in force on other cars only",
    { [RECORD]: ["do: Bleed the lift., scope", "do: The oil pressure is then 130 bar., scope"] },
    ["'oil pressure' is to be 130 bar with HT-102"],
  ],
  [
    "figure-promised",
    "a figure of something else",
    { [RECORD]: ["do: Bleed the lift., scope", "do: Use oil of 140 bar., scope"] },
    [],
  ],
  [
    "exception-named-once",
    "another record whose id begins like it",
    {
      [FRAME]: [
        "scope: my>=1958\n",
        "components: [gasket]\notherwise: Not as HY59-012 has it.\nscope: my>=1958\nsettings:\n  - { name: gasket oil pressure, window: 100..110, unit: bar, scope: line=H }\n",
      ],
      [RECORD]: ["The pump grew", "The gasket has a figure of its own (FR58-01). The pump grew"],
    },
    ["'gasket oil pressure' departs from a general figure, and FR58-01 does not say so"],
  ],
  ...[
    "window: ..90, unit: bar, scope: line=H",
    "window: 100..110, unit: psi, scope: line=H",
    "component: lift, window: 100..110, unit: bar, scope: line=H",
    "window: 100..110, unit: bar, scope: line=B",
  ].map(
    (rest) =>
      [
        "exception-named-once",
        `no exception: ${rest}`,
        {
          [FRAME]: frame("components: [gasket]", "settings:", `  - { name: lift oil pressure, ${rest} }`),
          [RECORD]: [
            "oil pressure, window: 120..135, nominal: 130",
            "pump oil pressure, window: 120..135, nominal: 130",
          ],
        },
        [],
      ] as const,
  ),
  [
    "exception-named-once",
    "in one record",
    { [RECORD]: settings("name: winch oil pressure, component: gasket, window: 100..110, unit: bar, scope: line=H") },
    [],
  ],
  [
    "exception-named-once",
    "one word is no name for a quantity",
    {
      [FRAME]: frame("components: [gasket]", "settings:", "  - { name: play, window: ..1, unit: mm, scope: line=H }"),
      [RECORD]: settings("name: play of the rod, window: ..2, unit: mm, scope: line=H"),
    },
    [],
  ],
  ["only-paint-tells", "a second mark", { [PUMPS]: painted }, []],
  [
    "only-paint-tells",
    "where nothing tells apart",
    { [PUMPS]: [...painted, "marks: { ribs: two, bore: none }", "marks: { ribs: none }"] },
    [],
  ],
  [
    "nothing-tells-apart",
    "words of a record that names one of the two",
    {
      [PUMPS]: ["marks: { ribs: two, bore: none }", "marks: { ribs: none }"],
      [RECORD]: ["links: [FR58-01]", "tell-apart: HT-101 is short.\nlinks: [FR58-01]"],
    },
    [],
  ],
  [
    "nothing-tells-apart",
    "words that name neither",
    {
      [PUMPS]: ["marks: { ribs: two, bore: none }", "marks: { ribs: none }"],
      [RECORD]: ["links: [FR58-01]", "tell-apart: One is short.\nlinks: [FR58-01]"],
    },
    ["HT-101 must not be used for HT-102"],
  ],
  ["ended-in-words-only", "an engine that is stopped", says("With the engine stopped drill as HY59-01 shows."), []],
  [
    "ended-in-words-only",
    "the ends of a rod",
    says("Grease both ends as HY59-01 shows. The row ends where the pump of HY59-01 sits."),
    [],
  ],
  [
    "ended-in-words-only",
    "no longer in force",
    says("HY59-01 is no longer in force."),
    ["it says that something ended and names HY59-01"],
  ],
  ["ended-in-words-only", "lapsed", says("HY59-01 has lapsed."), ["it says that something ended and names HY59-01"]],
  [
    "ended-in-words-only",
    "stopped it",
    says("HY59-01 stopped the drilling."),
    ["it says that something ended and names HY59-01"],
  ],
  ["ended-in-words-only", "ends what", says("HY59-01 ends this."), ["it says that something ended and names HY59-01"]],
  [
    "ended-in-words-only",
    "any more",
    says("What HY59-01 has does not apply any more."),
    ["it says that something ended and names HY59-01"],
  ],
  ["ended-in-words-only", "its own id", says("FR58-01 is cancelled."), []],
  [
    "ended-in-words-only",
    "two records in one sentence, of which it cancels the second",
    {
      [RECORD]: ["The pump grew", "As HY58-09 tells, FR58-01 is cancelled. The pump grew"],
      "changes/1958/HY58-09.md":
        "---\nid: HY58-09\ntitle: Bleeding\nissued: 1958-05-01\nkinds: [procedure]\nstarts: at once\nscope: all\n---\n\nBleed it.\n",
    },
    [],
  ],
  [
    "ended-in-words-only",
    "another language: only the kind is looked at",
    {
      "maker.yaml": ["site:", "language: de\nsite:"],
      [FRAME]: ["Four holes.", "HY59-01 ended.", "kinds: [equipment]", "kinds: [cancellation]"],
      [RECORD]: cancelsNone,
    },
    ["this record is a cancellation, and cancels nothing"],
  ],
  [
    "ended-in-words-only",
    "a cancellation that cancels",
    { [RECORD]: ["kinds: [part, running]", "kinds: [part, cancellation]"] },
    [],
  ],
  [
    "cancels-nothing",
    "itself",
    { [RECORD]: ["{ record: FR58-01, scope: line=B }", "{ record: HY59-01 }"] },
    ["nothing of HY59-01 is cancelled: it is this record itself"],
  ],
  [
    "cancels-nothing",
    "what is withdrawn",
    { [FRAME]: frame("withdrawn: never done") },
    ["nothing of FR58-01 is cancelled: it is withdrawn already"],
  ],
  [
    "cancels-nothing",
    "what came later",
    { [FRAME]: ["issued: 1958-03-01", "issued: 1959-02-02"] },
    ["nothing of FR58-01 is cancelled: it was issued later, on 1959-02-02"],
  ],
  ["cancels-nothing", "of the same day", { [FRAME]: ["issued: 1958-03-01", "issued: 1959-02-01"] }, []],
  [
    "cancels-nothing",
    "each other",
    { [FRAME]: ["issued: 1958-03-01", "issued: 1959-02-01", ...frame("cancels: [{ record: HY59-01 }]")] },
    [
      "nothing of HY59-01 is cancelled: it cancels this record in turn",
      "nothing of FR58-01 is cancelled: it cancels this record in turn",
    ],
  ],
  [
    "cites-what-ended",
    "the end of a chain",
    {
      [PUMPS]: pump3,
      [RECORD]: supersedes("old: HT-102, new: HT-103"),
      [BULLETIN]: ["See [[HY59-01]], [[HT-102|the long pump]]", "See [[HT-101]], today [[HT-103]]"],
    },
    [],
  ],
  [
    "cites-what-ended",
    "the hint names what is delivered today",
    {
      [PUMPS]: pump3,
      [RECORD]: supersedes("old: HT-102, new: HT-103"),
      [BULLETIN]: ["See [[HY59-01]], [[HT-102|the long pump]]", "See [[HT-101]] and again [[HT-101]]"],
    },
    ["HT-101 is delivered as HT-103"],
  ],
  [
    "cites-what-ended",
    "for every car one number or another",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes("old: HT-290, new: HT-202, scope: line=B", "old: HT-290, new: HT-203, scope: line=H"),
      [BULLETIN]: ["See [[HY59-01]],", "See [[HT-290]],"],
    },
    ["HT-290 is delivered as HT-202 or HT-203"],
  ],
  [
    "cites-what-ended",
    "for some cars",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes("old: HT-290, new: HT-202, scope: line=B"),
      [BULLETIN]: ["See [[HY59-01]],", "See [[HT-290]],"],
    },
    [],
  ],
  [
    "cites-what-ended",
    "the record that says so",
    {
      [RECORD]: supersedes("old: HT-290, new: HT-201"),
      [BULLETIN]: ["See [[HY59-01]],", "See [[HY59-01]], [[HT-290]],"],
    },
    [],
  ],
  [
    "cites-what-ended",
    "a withdrawn record, and what holds instead",
    {
      [FRAME]: frame("withdrawn: never done", "instead: [HY59-01]"),
      [RECORD]: cancelsNone,
      [BULLETIN]: ["See [[HY59-01]],", "See [[FR58-01]],"],
    },
    ["FR58-01 is withdrawn"],
  ],
  [
    "cites-what-ended",
    "a withdrawn record, and nothing instead",
    {
      [FRAME]: frame("withdrawn: never done"),
      [RECORD]: cancelsNone,
      [BULLETIN]: ["See [[HY59-01]],", "See [[FR58-01]],"],
    },
    ["FR58-01 is withdrawn"],
  ],
  [
    "rests-on-withdrawn",
    "a sum",
    {
      [FRAME]: frame("withdrawn: never done"),
      [RECORD]: cancelsNone,
      "sums.yaml": ["record: HY59-01", "record: FR58-01"],
    },
    ["this sum rests on FR58-01, which is withdrawn"],
  ],
  ...(
    [
      [RECORD, "conditions: hot", "conditions: on the driver's side"],
      [RECORD, "use: to draw the shaft", "use: to draw the shaft on the passenger-side"],
      [RECORD, "name: oil change,", "name: oil change on the driver side,"],
      [RECORD, "title: Longer hydraulic pump", "title: Pump on the drivers' side"],
      [RECORD, "when: after a pump was fitted", "when: on the driver-hand side"],
      [RECORD, "links: [FR58-01]", "caution: Block the side of the driver.\nlinks: [FR58-01]"],
      [RECORD, "links: [FR58-01]", "tell-apart: HT-102 is on the near side.\nlinks: [FR58-01]"],
      [PUMPS, "name: ribs on the body, made", "name: ribs on the body, note: Look from the passenger's side., made"],
      [PUMPS, "ribs: two,", "ribs: two on the near side,"],
      [PUMPS, "name: pump, long", "name: pump, near side"],
      [GASKETS, "name: round gasket", "name: near side gasket"],
      [HYDRAULICS, "places: [lift arms]", "places: [lift arms, near side arm]"],
      [CHASSIS, "find: the frame,", "find: the frame on the driver’s side,"],
      ["vehicles/plates.yaml", "where: left of the seat", "where: on the driver's side"],
    ] as const
  ).map(([file, old, instead]) => ["misleading-words", instead, { [file]: [old, instead] }, ["'"]] as const),
  [
    "misleading-words",
    "an explanation",
    {
      [RECORD]: [
        "links: [FR58-01]",
        "customer: It is on the driver's side.\notherwise: The near side is another one.\nlinks: [FR58-01]",
      ],
    },
    [],
  ],
  ["misleading-words", "a longer word", { [RECORD]: ["do: Bleed the lift.,", "do: Bleed the linear side pipe.,"] }, []],
  [
    "nearly-the-same",
    "a record that was copied",
    {
      "changes/1958/FR58-02.md":
        "---\nid: FR58-02\ntitle: Frame drilled for a winch\nissued: 1958-03-01\nkinds: [equipment]\nstarts: start of 1958\nscope: my>=1958\n---\n\nFour holes.\n",
    },
    ["FR58-02 says word for word what FR58-01 says"],
  ],
  [
    "nearly-the-same",
    "of two such records one is withdrawn, or is about other cars",
    {
      "changes/1958/FR58-02.md":
        "---\nid: FR58-02\ntitle: Frame drilled for a winch\nissued: 1958-03-01\nwithdrawn: it was FR58-01\nkinds: [equipment]\nstarts: start of 1958\nscope: my>=1958\n---\n\nFour holes.\n",
      "changes/1958/FR58-03.md":
        "---\nid: FR58-03\ntitle: Frame drilled for a winch\nissued: 1958-03-01\nkinds: [equipment]\nstarts: start of 1958\nscope: my=1957\n---\n\nFour holes.\n",
    },
    [],
  ],
  [
    "nearly-the-same",
    "intervals",
    { [RECORD]: intervals("name: oil changes, months: 6, scope: line=H") },
    ["interval 'oil changes' differs from 'oil change' by a slip only"],
  ],
  [
    "nearly-the-same",
    "conditions",
    {
      [RECORD]: settings(
        "name: oil pressure, window: ..90, unit: bar, conditions: hott oil, scope: line=H",
        "name: oil pressure, window: ..90, unit: bar, conditions: hot oil, scope: line=H",
      ),
    },
    [],
  ],
  [
    "nearly-the-same",
    "conditions, a longer word",
    {
      [RECORD]: settings(
        "name: oil pressure, window: ..90, unit: bar, conditions: engien hot, scope: line=H",
        "name: oil pressure, window: ..90, unit: bar, conditions: engine hot, scope: line=H",
        "name: oil pressure, window: ..90, unit: bar, conditions: engine hot, scope: line=H",
      ),
    },
    [],
  ],
  [
    "nearly-the-same",
    "two letters of a word of seven",
    {
      [RECORD]: settings(
        "name: bearing play, window: ..1, unit: mm, scope: line=H",
        "name: baering play, window: ..1, unit: mm, scope: line=H",
      ),
    },
    ["setting 'baering play' differs from 'bearing play'"],
  ],
  [
    "nearly-the-same",
    "numbers, other words, one word more",
    {
      [RECORD]: settings(
        ...["play of pump 1", "play of pump 2", "gap, top", "cap, top", "play of pump 1 cold"].map(
          (name) => `name: '${name}', window: ..1, unit: mm, scope: line=H`,
        ),
      ),
    },
    [],
  ],
  [
    "nearly-the-same",
    "two words differ",
    {
      [RECORD]: settings(
        "name: front lever, window: ..1, unit: mm, scope: line=H",
        "name: fromt level, window: ..1, unit: mm, scope: line=H",
      ),
    },
    [],
  ],
  [
    "delivery-circle",
    "a shorter way back that is for other cars is not told",
    {
      [PUMPS]: pump3,
      [RECORD]: [
        ...["new: HT-102, with: [HT-201] }", "new: HT-102, scope: line=B }"],
        ...supersedes(
          "old: HT-102, new: HT-101, scope: line=H",
          "old: HT-102, new: HT-103, scope: line=B",
          "old: HT-103, new: HT-101, scope: line=B",
        ),
      ],
    },
    ["the delivery rules run in a circle: HT-102 → HT-103 → HT-101 → HT-102"],
  ],
  [
    "delivery-circle",
    "it is that of one kind of cars, where other cars go round the other way",
    {
      [PUMPS]: pump3,
      [RECORD]: [
        ...["new: HT-102, with: [HT-201] }", "new: HT-102, scope: line=B }"],
        ...supersedes(
          "old: HT-102, new: HT-101, scope: line=H",
          "old: HT-102, new: HT-103, scope: line=B",
          "old: HT-103, new: HT-101, scope: line=B",
          "old: HT-101, new: HT-103, scope: line=H",
          "old: HT-103, new: HT-102, scope: line=H",
        ),
      ],
    },
    ["the delivery rules run in a circle: HT-102 → HT-101 → HT-103 → HT-102"],
  ],
  [
    "ended-in-words-only",
    "a withdrawn record",
    {
      [FRAME]: ["kinds: [equipment]", "kinds: [cancellation]", ...frame("withdrawn: never done")],
      [RECORD]: cancelsNone,
    },
    [],
  ],
  [
    "exception-named-once",
    "of a record that was ended",
    {
      [FRAME]: frame(
        "components: [gasket]",
        "settings:",
        "  - { name: gasket oil pressure, window: 100..110, unit: bar, scope: line=B }",
      ),
    },
    [],
  ],
  [
    "exception-named-once",
    "from a general figure of a record that was ended",
    {
      [FRAME]: frame(
        "components: [gasket]",
        "settings:",
        "  - { name: gasket play, window: ..3, unit: mm, scope: line=B }",
      ),
      [RECORD]: settings("name: gasket play of the lift, component: lift, window: ..4, unit: mm, scope: line=B"),
    },
    [],
  ],
  [
    "exception-named-once",
    "one word in common",
    {
      [FRAME]: frame(
        "components: [gasket]",
        "settings:",
        "  - { name: oil gauge of the gasket, window: ..80, unit: bar, scope: line=H }",
      ),
    },
    [],
  ],
  [
    "exception-named-once",
    "one limit in common",
    {
      [FRAME]: frame(
        "components: [gasket]",
        "settings:",
        "  - { name: gasket oil pressure, window: 80..90, unit: bar, scope: line=H }",
      ),
    },
    ["'oil pressure' has an exception, and HY59-01 does not say so", "'gasket oil pressure' departs from a general"],
  ],
  [
    "figure-promised",
    "in a record that was ended",
    {
      [FRAME]: frame(
        "components: [gasket]",
        "settings:",
        "  - { name: gasket play, window: 5..5, unit: mm, scope: line=B }",
      ),
      [RECORD]: [
        "do: Bleed the lift., scope: fitted=HT-201 }",
        "do: The gasket play is then 5 mm., scope: line=B; fitted=HT-201 }",
      ],
    },
    ["'gasket play' is to be 5 mm with HT-102"],
  ],
  [
    "figure-promised",
    "a unit of two words",
    {
      [RECORD]: [
        ...["do: Bleed the lift., scope", "do: The bolt torque is then 20 N m., scope"],
        ...settings("name: bolt torque, window: 10..12, unit: N m, scope: all"),
      ],
    },
    ["'bolt torque' is to be 20 N m with HT-102"],
  ],
  [
    "implausible-figure",
    "the middle of a window, not its end",
    {
      [RECORD]: settings(
        "name: play, window: 1..3, unit: mm, scope: line=B",
        "name: play, window: 9..13, unit: mm, scope: line=H",
      ),
    },
    [],
  ],
  [
    "nearly-the-same",
    "conditions of one setting",
    {
      [RECORD]: settings(
        "name: play, window: ..1, unit: mm, conditions: running enginne, scope: line=B",
        "name: play, window: ..1, unit: mm, conditions: running engine, scope: line=H",
      ),
    },
    ["condition 'running engine' differs from 'running enginne' by a slip only"],
  ],
  [
    "nearly-the-same",
    "one letter of a word of four",
    {
      [RECORD]: settings(
        "name: cold play, window: ..1, unit: mm, scope: line=B",
        "name: cald play, window: ..1, unit: mm, scope: line=H",
      ),
    },
    ["setting 'cald play' differs from 'cold play' by a slip only"],
  ],
  [
    "nothing-tells-apart",
    "words of one of two records that name them",
    {
      [PUMPS]: ["marks: { ribs: two, bore: none }", "marks: { ribs: none }"],
      [FRAME]: frame("supersedes:", "  - { old: HT-101, new: HT-102, scope: line=B }"),
      [RECORD]: ["links: [FR58-01]", "tell-apart: HT-101 is short.\nlinks: [FR58-01]"],
    },
    [],
  ],
  [
    "one-hand-only",
    "in place of a part that sits on one side, or is for one hand",
    {
      [HYDRAULICS]: twoPlaces,
      [GASKETS]: hands,
      [RECORD]: [
        ...builtIn(
          "place: left gasket, part: HT-211, scope: all",
          "place: right gasket, part: HT-210R, scope: my<=1958",
          "place: pump, part: HT-210R, scope: line=H; my=1960",
        ),
        ...supersedes("old: HT-211, new: HT-210L", "old: HT-210R, new: HT-210L"),
      ],
    },
    [],
  ],
  [
    "running-change-gap",
    "a running change that says nothing of what the plant fitted",
    { [FRAME]: ["kinds: [equipment]", "kinds: [running]", ...frame("left-alone: [The bolts.]")] },
    [],
  ],
  [
    "running-change-without-plant",
    "whatever the plant: neither a year nor a number",
    {
      [RECORD]: [
        ...["starts: during 1959", "starts: during 1959, whatever the plant"],
        ...["HT-101, scope: line=B; at=K59#0412- }", "HT-101, scope: line=B }"],
        ...["HT-102, scope: line=B; at=K59#0412+ }", "HT-102, scope: line=B; my=1959; number>=0412 }"],
      ],
    },
    ["this running change names no plant"],
  ],
  ...[
    "HY59-01 is withdrawn.",
    "This cancels what HY59-01 says.",
    "HY59-01 was revoked.",
    "HY59-01 is now void.",
    "HY59-01 has expired.",
    "HY59-01 ended in 1959.",
    "The rule of HY59-01 ends with 1959.",
    "HY59-01 no longer applies.",
  ].map((sentence) => ["ended-in-words-only", sentence, says(sentence), ["it says that something ended"]] as const),
  ...[
    "Withdraw the pin as HY59-01 shows.",
    "The pin is withdrawn with the puller of HY59-01.",
    "The pull cancels out as in HY59-01.",
    "The void behind the cup is that of HY59-01.",
    "Some ended up on the tractors of HY59-01.",
    "HY59-01 shows the other. Its rod is cancelled.",
  ].map((sentence) => ["ended-in-words-only", sentence, says(sentence), []] as const),
  [
    "one-hand-only",
    "in what goes along, where nothing is to be done",
    {
      [GASKETS]: hands,
      [RECORD]: [
        'part: HT-102, for: none, verdict: "yes", scope: line=H }',
        'part: HT-102, for: none, verdict: "yes", with: [HT-210L], scope: line=H }',
      ],
    },
    ["HT-210L goes along for the left side only"],
  ],
];
