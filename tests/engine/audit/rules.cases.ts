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
/** The one permission of the big record, as it may go on any car. */
const forAnyCar = ["do: Bleed the lift., scope: fitted=HT-201 }", "do: Bleed the lift. }"];
/** What the one delivery sends along, and what the one permission asks for. */
const lists = (sent: string, asked: string): string[] => [
  ...["new: HT-102, with: [HT-201] }", `new: HT-102, with: [${sent}] }`],
  ...[
    "verdict: on-conditions, with: [HT-201], do: Bleed the lift., scope",
    `verdict: on-conditions, with: [${asked}], do: Bleed the lift., scope`,
  ],
  ...forAnyCar,
];
/** The small record about the lift of the Badger. */
const lift = (field: string, ...lines: string[]): string[] =>
  frame("components: [lift]", `${field}:`, listed(lines).trimEnd());
const arms = (...said: (readonly [part: string, when: string])[]): string[] =>
  lift("built", ...said.map(([part, when]) => `place: lift arms, part: ${part}, scope: line=B; ${when}`));
const speed = (...when: string[]): string[] =>
  when.map((it) => `name: lift speed, window: 1..2, unit: m/s, scope: line=B; ${it}`);
const armsStay = builtIn("place: lift arms, part: HT-290, scope: line=B");
const painted = ["name: ribs on the body, made: cast,", "name: red rings, made: painted,"];
/** A part for each hand, each on its side. */
const pair210 = builtIn(
  "place: left gasket, part: HT-210L, scope: all",
  "place: right gasket, part: HT-210R, scope: all",
);
const cracks = (when: string): string =>
  `part: HT-102, for: HT-103, verdict: must-not-be-used, why: It cracks., ${when}`;
const done = (text: string, when: string): string =>
  `part: HT-290, for: HT-201, verdict: on-conditions, do: "${text}", scope: line=B; ${when}`;
const leaks = (other: string, when = "line=B"): string[] => [
  ...["built:", `  - { place: pump gasket, part: ${other}, scope: ${when} }`],
  ...["stands-in:", `  - { part: HT-201, for: ${other}, verdict: must-not-be-used, why: It leaks. }`],
];
const issuedLater = ["issued: 1958-03-01", "issued: 1960-03-01"];

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
    "what is in the kit",
    {
      [GASKETS]: gaskets("number: HT-203, name: thick gasket"),
      [RECORD]: [
        ...["verdict: on-conditions, with: [HT-201], do", "verdict: on-conditions, do"],
        ...["with: [HT-201] }", "with: [] }"],
        ...standsIn("part: HT-203, for: none, verdict: must-not-be-used, why: It leaks., scope: my=1959"),
        ...["kits:\n", "kits:\n  - { kit: HT-102, contents: [{ part: HT-203 }] }\n"],
      ],
    },
    ["HT-102 may go on here, but not all that is in it or must go along with it: HY59-01 refuses HT-203 (It leaks.)"],
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
    "what is withdrawn is the matter of another rule",
    { [FRAME]: frame("withdrawn: never done") },
    [],
  ],
  [
    "cancels-withdrawn",
    "what is withdrawn",
    { [FRAME]: frame("withdrawn: never done") },
    ["FR58-01 is withdrawn already, so there is nothing to cancel"],
  ],
  [
    "cancels-nothing",
    "what came later, but for a revision since",
    {
      [FRAME]: ["issued: 1958-03-01", "issued: 1959-02-02"],
      [RECORD]: ["issued: 1959-02-01", "issued: 1959-02-01\nrevision: 2\nrevised: 1959-02-02"],
    },
    [],
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
  [
    "companion-not-current",
    "two deliveries, one after the other",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202", "old: HT-202, new: HT-203") },
    ["HT-201 is to go along, and who orders it for these cars gets HT-203"],
  ],
  [
    "companion-not-current",
    "several lines of a record are told once",
    { [GASKETS]: thinAndThick, [RECORD]: [...supersedes("old: HT-201, new: HT-202"), ...forAnyCar] },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202"],
  ],
  [
    "companion-not-current",
    "what comes instead is named too",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [...lists("HT-201, HT-202", "HT-201, HT-202"), ...supersedes("old: HT-201, new: HT-202")],
    },
    [],
  ],
  ["companion-not-current", "a kit that holds it", { [RECORD]: supersedes("old: HT-201, new: HT-290") }, []],
  [
    "companion-not-current",
    "what comes instead is in a kit that is named too",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...lists("HT-201, HT-290", "HT-201, HT-290"),
        ...["contents: [{ part: HT-201, count: 2 }", "contents: [{ part: HT-202, count: 2 }"],
        ...supersedes("old: HT-201, new: HT-202"),
      ],
    },
    [],
  ],
  [
    "companion-not-current",
    "cars that were built with it",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...supersedes("old: HT-201, new: HT-202"),
        ...builtIn("place: pump gasket, part: HT-201, scope: all"),
        ...forAnyCar,
      ],
    },
    [],
  ],
  [
    "companion-not-current",
    "cars that were not built with the old part",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202, scope: line=H; my=1960") },
    [],
  ],
  [
    "companion-not-current",
    "where nothing sits, only such cars",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...forNone,
        ...lists("", ""),
        ...supersedes("old: HT-201, new: HT-202, scope: line=H; my=1959"),
        ...builtIn("place: pump, part: none, scope: line=H; my=1960"),
      ],
    },
    [],
  ],
  [
    "companion-not-current",
    "where nothing sits",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...forNone,
        ...lists("", ""),
        ...supersedes("old: HT-201, new: HT-202, scope: line=H; my=1960"),
        ...builtIn("place: pump, part: none, scope: line=H; my=1960"),
      ],
    },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202"],
  ],
  [
    "companion-not-current",
    "the part itself comes as another one, with the old companion",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes("old: HT-102, new: HT-290", "old: HT-201, new: HT-202"),
    },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202"],
  ],
  [
    "companion-not-current",
    "the part itself comes as another one, with what comes instead",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes("old: HT-102, new: HT-203, with: [HT-202]", "old: HT-201, new: HT-202"),
    },
    [],
  ],
  [
    "companion-not-current",
    "both come as one",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: supersedes("old: HT-102, new: HT-203", "old: HT-201, new: HT-203"),
    },
    [],
  ],
  [
    "companion-not-current",
    "what comes instead is refused in its place, which is told of the delivery",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...supersedes("old: HT-201, new: HT-202"),
        ...standsIn("part: HT-202, for: HT-201, verdict: does-not-go-on, why: It is thin."),
      ],
    },
    [],
  ],
  [
    "companion-not-current",
    "what comes instead is refused where another one sits",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...supersedes("old: HT-201, new: HT-202"),
        ...builtIn("place: pump gasket, part: HT-203, scope: all"),
        ...standsIn(
          'part: HT-201, for: HT-203, verdict: "yes"',
          "part: HT-202, for: HT-203, verdict: does-not-go-on, why: It is thin., scope: line=B",
        ),
      ],
    },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202, which HY59-01 refuses there (It is thin.)"],
  ],
  [
    "companion-not-current",
    "a delivery that asks for another part of the component on the car",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202, scope: fitted=HT-203") },
    [],
  ],
  [
    "companion-not-current",
    "a delivery for cars without the part that is fitted",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202, scope: fitted!=HT-102") },
    [],
  ],
  [
    "companion-not-current",
    "a delivery for cars with the part that is fitted",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202, scope: fitted=HT-102") },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202"],
  ],
  [
    "companion-not-current",
    "deliveries in a circle",
    { [GASKETS]: thinAndThick, [RECORD]: supersedes("old: HT-201, new: HT-202", "old: HT-202, new: HT-201") },
    [],
  ],
  [
    "companion-not-current",
    "a delivery that was ended",
    { [GASKETS]: thinAndThick, [FRAME]: frame("supersedes:", "  - { old: HT-201, new: HT-202, scope: line=B }") },
    [],
  ],
  [
    "companion-not-current",
    "what comes instead is refused in its place, which is told of the delivery for other cars",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...builtIn("place: pump gasket, part: HT-201, scope: line=H"),
        ...supersedes("old: HT-201, new: HT-202"),
        ...standsIn("part: HT-202, for: HT-201, verdict: does-not-go-on, why: It is thin."),
      ],
    },
    [],
  ],
  [
    "companion-not-current",
    "what comes instead is refused in its place, on cars that were not built with it",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...builtIn("place: pump gasket, part: HT-201, scope: line=H"),
        ...supersedes("old: HT-201, new: HT-202"),
        ...standsIn("part: HT-202, for: HT-201, verdict: does-not-go-on, why: It is thin., scope: line=B"),
      ],
    },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202"],
  ],
  [
    "two-order-lists",
    "the delivery names more",
    { [GASKETS]: thinAndThick, [RECORD]: lists("HT-201, HT-202", "HT-201") },
    [
      "HT-102 is sent for HT-101 with HT-201 and HT-202 here, and may take its place with HT-201 by another line of this record",
    ],
  ],
  [
    "two-order-lists",
    "the permission names more",
    { [GASKETS]: thinAndThick, [RECORD]: lists("", "HT-202") },
    ["HT-102 is sent for HT-101 with nothing else here, and may take its place with HT-202"],
  ],
  [
    "two-order-lists",
    "the same in another order",
    { [GASKETS]: thinAndThick, [RECORD]: lists("HT-202, HT-201", "HT-201, HT-202") },
    [],
  ],
  [
    "two-order-lists",
    "one of two permissions agrees",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [...lists("HT-201", "HT-201"), ...standsIn('part: HT-102, for: HT-101, verdict: "yes"')],
    },
    [],
  ],
  [
    "two-order-lists",
    "one of two permissions agrees on some cars",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...lists("HT-201", "HT-202"),
        ...standsIn('part: HT-102, for: HT-101, verdict: "yes", with: [HT-201], scope: line=B'),
      ],
    },
    ["HT-102 is sent for HT-101 with HT-201 here, and may take its place with HT-202"],
  ],
  [
    "two-order-lists",
    "a permission for one place",
    { [RECORD]: [...lists("", "HT-201"), "part: HT-102, for: HT-101,", "part: HT-102, for: HT-101, place: pump,"] },
    [],
  ],
  [
    "two-order-lists",
    "cars that were not built with the old part",
    {
      [RECORD]: [
        ...lists("", "HT-201"),
        ...["new: HT-102, with: [] }", "new: HT-102, with: [], scope: line=H; my=1960 }"],
      ],
    },
    [],
  ],
  [
    "two-order-lists",
    "what the cars have already",
    { [RECORD]: [...lists("HT-201", ""), ...builtIn("place: pump gasket, part: HT-201, scope: all")] },
    [],
  ],
  [
    "two-order-lists",
    "what some of the cars have already",
    { [RECORD]: [...lists("HT-201", ""), ...builtIn("place: pump gasket, part: HT-201, scope: line=B")] },
    ["HT-102 is sent for HT-101 with HT-201 here, and may take its place with nothing else"],
  ],
  [
    "two-order-lists",
    "a permission for cars that have it on them",
    { [RECORD]: ["with: [HT-201], do: Bleed", "do: Bleed"] },
    [],
  ],
  [
    "two-order-lists",
    "what is refused, which is told of the delivery",
    {
      [RECORD]: [
        ...lists("HT-201", ""),
        ...standsIn("part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: all"),
      ],
    },
    [],
  ],
  ["two-order-lists", "a kit and what it holds", { [RECORD]: lists("HT-290", "HT-201") }, []],
  ["two-order-lists", "what a kit holds, and the kit", { [RECORD]: lists("HT-201", "HT-290") }, []],
  [
    "two-order-lists",
    "half of what a kit holds",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...lists("HT-201", "HT-290"),
        ...["contents: [{ part: HT-201, count: 2 }", "contents: [{ part: HT-201 }, { part: HT-202 }"],
      ],
    },
    ["HT-102 is sent for HT-101 with HT-201 here, and may take its place with HT-290"],
  ],
  [
    "two-order-lists",
    "what is delivered for the other",
    { [GASKETS]: thinAndThick, [RECORD]: [...lists("HT-202", "HT-201"), ...supersedes("old: HT-201, new: HT-202")] },
    [],
  ],
  [
    "two-order-lists",
    "for what the other is delivered",
    { [GASKETS]: thinAndThick, [RECORD]: [...lists("HT-201", "HT-202"), ...supersedes("old: HT-201, new: HT-202")] },
    [],
  ],
  [
    "two-order-lists",
    "what a companion asks for itself",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...lists("HT-201, HT-202", "HT-201"),
        ...standsIn('part: HT-201, for: none, verdict: "yes", with: [HT-202]'),
      ],
    },
    [],
  ],
  [
    "two-order-lists",
    "what a companion asks for itself is not sent along with it",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...lists("HT-201", "HT-201, HT-202"),
        ...standsIn('part: HT-201, for: none, verdict: "yes", with: [HT-202]'),
      ],
    },
    ["HT-102 is sent for HT-101 with HT-201 here, and may take its place with HT-201 and HT-202"],
  ],
  [
    "two-order-lists",
    "each asks for its own part on the car",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...lists("HT-201", ""),
        ...["new: HT-102, with: [HT-201] }", "new: HT-102, with: [HT-201], scope: fitted=HT-202 }"],
        ...["do: Bleed the lift. }", "do: Bleed the lift., scope: fitted=HT-203 }"],
      ],
    },
    [],
  ],
  [
    "two-order-lists",
    "a delivery that was ended",
    {
      [FRAME]: frame("supersedes:", "  - { old: HT-101, new: HT-102, scope: line=B }"),
      [RECORD]: forAnyCar,
    },
    [],
  ],
  [
    "year-left-out",
    "one year of many",
    { [FRAME]: arms(["HT-290", "my=1957"], ["none", "my>=1959"]) },
    ["of 'lift arms' nothing is said for 1958, and for 1957 and 1959 it is"],
  ],
  ["year-left-out", "the first and the last year", { [FRAME]: arms(["HT-290", "my=1958-1959"]) }, []],
  ["year-left-out", "two years", { [FRAME]: arms(["HT-290", "my=1957"], ["none", "my=1960"]) }, []],
  [
    "year-left-out",
    "some cars of a year",
    { [FRAME]: arms(["HT-290", "my<=1958"], ["HT-290", "my=1959; no=PT"], ["none", "my>=1960"]) },
    ["of 'lift arms' nothing is said for 1959"],
  ],
  [
    "year-left-out",
    "some of the cars that are alike",
    { [FRAME]: arms(["HT-290", "my<=1958"], ["HT-290", "at=K59#0100-"], ["none", "my>=1960"]) },
    [],
  ],
  [
    "year-left-out",
    "before it, some of the cars that are alike",
    { [FRAME]: arms(["HT-290", "my=1958; number<0100"], ["none", "my>=1960"]) },
    [],
  ],
  [
    "year-left-out",
    "before it, cars that have a part on them today",
    {
      [FRAME]: lift("settings", ...speed("my=1958; fitted=HT-290", "my>=1960")),
      [RECORD]: [...armsStay, ...cancelsNone],
    },
    [],
  ],
  [
    "year-left-out",
    "equipment that came in that year, of which nothing is asked",
    {
      "vehicles/badger.yaml": ["standard: my>=1960, optional: my=1958-1959", "standard: my>=1958"],
      [FRAME]: arms(["HT-290", "my=1957"], ["none", "my>=1959"]),
    },
    ["of 'lift arms' nothing is said for 1958"],
  ],
  [
    "year-left-out",
    "equipment that came in that year, and is asked",
    {
      "vehicles/badger.yaml": ["standard: my>=1960, optional: my=1958-1959", "standard: my>=1958"],
      [FRAME]: arms(["HT-290", "my=1957; no=PT"], ["none", "my>=1959; eq=PT"]),
    },
    [],
  ],
  [
    "year-left-out",
    "a year without such a car",
    {
      "vehicles/badger.yaml": ["my=1957-1960", "my=1957-1958 || my=1960"],
      [FRAME]: arms(["HT-290", "my<=1958"], ["none", "my>=1960"]),
      [RECORD]: [
        "at=K59#0412- }",
        "my<=1958 }",
        "at=K59#0412+ }",
        "my>=1960 }",
        "scope: line=B; at=K59#0412+",
        "scope: line=B; my>=1960",
      ],
    },
    [],
  ],
  [
    "year-left-out",
    "another place of the component begins in it",
    {
      [HYDRAULICS]: ["places: [lift arms]", "places: [lift arms, lift arm]"],
      [FRAME]: arms(["HT-290", "my<=1958"], ["none", "my>=1960"]),
      [RECORD]: builtIn("place: lift arm, part: HT-290, scope: line=B; my>=1959"),
    },
    [],
  ],
  [
    "year-left-out",
    "another place of the component goes on",
    {
      [HYDRAULICS]: ["places: [lift arms]", "places: [lift arms, lift arm]"],
      [FRAME]: arms(["HT-290", "my<=1958"], ["none", "my>=1960"]),
      [RECORD]: builtIn("place: lift arm, part: HT-290, scope: line=B"),
    },
    ["of 'lift arms' nothing is said for 1959"],
  ],
  [
    "year-left-out",
    "a record about the component that begins in it and says nothing of the place",
    {
      [RECORD]: ["components: [pump, gasket]", "components: [pump, gasket, lift]"],
      [FRAME]: arms(["HT-290", "my<=1958"], ["none", "my>=1960"]),
    },
    ["of 'lift arms' nothing is said for 1959"],
  ],
  [
    "year-left-out",
    "a record about the component that says nothing of the place, and begins in it",
    {
      [RECORD]: [
        ...["components: [pump, gasket]", "components: [pump, gasket, lift]"],
        ...["scope: line=B; at=K59#0412+", "scope: line=B; my>=1959"],
        ...["  - { place: lift arms, part: none, scope: line=H }\n", ""],
      ],
      [FRAME]: arms(["HT-290", "my<=1958"], ["none", "my>=1960"]),
    },
    [],
  ],
  [
    "year-left-out",
    "a withdrawn record said it",
    {
      [FRAME]: frame("withdrawn: never done", "built:", "  - { place: lift arms, part: none, scope: line=B; my=1959 }"),
      [RECORD]: [
        ...cancelsNone,
        ...builtIn("place: lift arms, part: none, scope: line=B; my<=1958 || line=B; my>=1960"),
      ],
    },
    [],
  ],
  [
    "year-left-out",
    "a running change whose own gap it is",
    {
      [FRAME]: [...arms(["HT-290", "my<=1958"], ["none", "my>=1960"]), ...["kinds: [equipment]", "kinds: [running]"]],
    },
    [],
  ],
  [
    "year-left-out",
    "a figure, where the part stays",
    { [FRAME]: lift("settings", ...speed("my<=1958", "my>=1960")), [RECORD]: [...armsStay, ...cancelsNone] },
    ["of the figure 'lift speed' nothing is said for 1959"],
  ],
  [
    "year-left-out",
    "a figure, where no record says what sits there",
    {
      [FRAME]: lift("settings", ...speed("my<=1958", "my>=1960")),
      [RECORD]: ["  - { place: lift arms, part: none, scope: line=H }\n", "", ...cancelsNone],
    },
    ["of the figure 'lift speed' nothing is said for 1959"],
  ],
  [
    "year-left-out",
    "a figure, where the year has another part",
    {
      [FRAME]: lift("settings", ...speed("my<=1958", "my>=1960")),
      [RECORD]: [
        ...cancelsNone,
        ...builtIn(
          "place: lift arms, part: HT-290, scope: line=B; my<=1958",
          "place: lift arms, part: HT-201, scope: line=B; my=1959",
          "place: lift arms, part: HT-290, scope: line=B; my>=1960",
        ),
      ],
    },
    [],
  ],
  [
    "year-left-out",
    "a figure of another name begins in it",
    {
      [FRAME]: lift(
        "settings",
        ...speed("my<=1958", "my>=1960"),
        "name: time to lift, window: ..9, unit: s, scope: line=B; my=1959",
      ),
      [RECORD]: [...armsStay, ...cancelsNone],
    },
    [],
  ],
  [
    "year-left-out",
    "a figure that was ended for the year",
    {
      [FRAME]: lift("settings", ...speed("my<=1960")),
      [RECORD]: [...armsStay, "{ record: FR58-01, scope: line=B }", "{ record: FR58-01, scope: line=B; my=1959 }"],
    },
    [],
  ],
  [
    "year-left-out",
    "an interval",
    {
      [FRAME]: frame("intervals:", "  - { name: frame check, months: 6, scope: line=B; my<=1958 || line=B; my>=1960 }"),
      [RECORD]: cancelsNone,
    },
    ["of the figure 'frame check' nothing is said for 1959"],
  ],
  [
    "year-left-out",
    "an interval that there is not in the year",
    {
      [FRAME]: frame(
        "intervals:",
        "  - { name: frame check, months: 6, scope: line=B; my<=1958 || line=B; my>=1960 }",
        "  - { name: frame check, none: true, scope: line=B; my=1959 }",
      ),
      [RECORD]: cancelsNone,
    },
    [],
  ],
  [
    "companion-not-current",
    "a permission that asks for another part of the component itself",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...lists("", "HT-201"),
        ...["do: Bleed the lift. }", "do: Bleed the lift., scope: fitted=HT-203 }"],
        ...supersedes("old: HT-201, new: HT-202"),
      ],
    },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202"],
  ],
  [
    "companion-not-current",
    "what comes instead is refused in its place on other cars",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...supersedes("old: HT-201, new: HT-202"),
        ...standsIn("part: HT-202, for: HT-201, verdict: does-not-go-on, why: It is thin., scope: line=H"),
      ],
    },
    ["HT-201 is to go along, and who orders it for these cars gets HT-202"],
  ],
  [
    "two-order-lists",
    "a kit that is delivered, and what it holds",
    {
      [RECORD]: [
        ...supersedes("old: HT-101, new: HT-290"),
        ...standsIn('part: HT-290, for: HT-101, verdict: "yes", with: [HT-201]'),
      ],
    },
    [],
  ],
  [
    "year-left-out",
    "of a line that was not built the year before",
    {
      "vehicles/badger.yaml": ["my=1957-1960", "my=1957-1958 || my=1960"],
      [FRAME]: lift(
        "built",
        "place: lift arms, part: HT-290, scope: my<=1958",
        "place: lift arms, part: none, scope: my>=1960",
      ),
      [RECORD]: [
        ...["at=K59#0412- }", "my<=1958 }", "at=K59#0412+ }", "my>=1960 }"],
        ...["scope: line=B; at=K59#0412+", "scope: line=B; my>=1960"],
        ...["  - { place: lift arms, part: none, scope: line=H }\n", ""],
      ],
    },
    [],
  ],
  [
    "year-left-out",
    "before it only a withdrawn record says it",
    {
      [FRAME]: frame(
        "withdrawn: never done",
        "built:",
        "  - { place: lift arms, part: none, scope: line=B; my<=1958 }",
      ),
      [RECORD]: [...cancelsNone, ...builtIn("place: lift arms, part: none, scope: line=B; my>=1960")],
    },
    [],
  ],
  ...[
    "HY59-01 asks for a second bleed. From April it no longer applies.",
    "HY59-01 asks for a second bleed. That rule is gone from 1960.",
    "Bleed twice, as HY59-01 says. That instruction was cancelled in 1960.",
    "The limit is that of HY59-01. It is no longer in force.",
    "The limit is that of HY59-01; since 1960 that limit has lapsed.",
    "HY59-01 forbids the short pump. That ban no longer holds.",
    "HY59-01 forbids it. With the 1960 tractors the prohibition no longer counts.",
    "See HY59-01. That record cancels this one.",
    "HY59-01 has more. That instruction has been withdrawn.",
    "HY59-01 has a limit. The limit ended with 1959.",
    "HY59-01 has a limit. It is now void.",
    "HY59-01 has a limit. It does not apply any more to the Heron.",
    "HY59-01 allows the short pump. The permission is at an end.",
    "HY59-01 has a limit. That was revoked.",
  ].map((two) => ["ended-in-words-only", two, says(two), ["it says that something ended"]] as const),
  // Harmless: a part or a movement ends, or something that the record named before does not ask for.
  ...[
    "The early lever is used up to March. From April it is gone.",
    "HY59-01 brought the early lever. From April it is gone.",
    "The clip of HY59-01 is weak. It no longer holds.",
    "The clip of HY59-01 is weak. It no longer holds the rod.",
    "HY59-01 has the shoe. It no longer applies pressure at the toe.",
    "Turn the pin of HY59-01. It is withdrawn to the rear.",
    "Loosen the bolt as HY59-01 says. It is then withdrawn.",
    "HY59-01 shows the puller. It was withdrawn through the bore.",
    "The pull of HY59-01 is felt. It is cancelled by the other side.",
    "The lamp is that of HY59-01. It is cancelled at the lever.",
    "HY59-01 has the lamp. This is cancelled when the wheel returns.",
    "HY59-01 shows the row. It ends at the flange.",
    "HY59-01 has the procedure. The procedure ends with a drive.",
    "HY59-01 names the tool. They ended up on the Heron.",
    "HY59-01 tells the figure. The figure stays.",
    "HY59-01 has the limit. It still applies.",
    "HY59-01 has the limit. It is not cancelled.",
    "HY59-01 has the limit. If it is revoked, a record will say so.",
    "HY59-01 has the counter. It no longer counts the hours.",
    "HY59-01 has a void behind the cup. The void is filled with grease.",
    "Read HY59-01 first.\n\nIt no longer applies.",
    "The pump has changed. That rule no longer applies.",
    "The rod is that of HY59-01. Its end is gone.",
    "HY59-01 names the seal. The old seal is no longer valid stock.",
    "HY59-01 has the pump. The engine is stopped; it is drained then.",
    "As HY59-01 says, bleed it. The old rule of another maker no longer holds.",
    "HY59-01 has it. Nothing ended with that.",
    "HY59-01 shows the order of the bolts. The order ended with the last bolt of the row.",
    "HY59-01 shows the note. Both ends are greased.",
    "HY59-01 tells of the seal. It has expired grease on it.",
    "HY59-01 tells the age of the hose. It has expired.",
    "HY59-01 brought the winch as an option. It was cancelled in 1960.",
    "The early lever came with HY59-01. It was withdrawn in 1960.",
    "HY59-01 gave the pump a number. It is no longer valid.",
    "That rule is gone with HY59-01.",
  ].map((two) => ["ended-in-words-only", two, says(two), []] as const),
  [
    "other-component",
    "a part of another component in a place",
    { [RECORD]: builtIn("place: pump gasket, part: HT-102, scope: line=B") },
    ["HT-102 (hydraulic pump) was fitted in 'pump gasket', a place of another component (pump gasket)"],
  ],
  [
    "other-component",
    "one of several parts of a stretch",
    { [RECORD]: put("mixed:", ["place: pump gasket, parts: [HT-201, HT-101], scope: line=H; my=1959"]) },
    ["HT-101 (hydraulic pump) was fitted in 'pump gasket'"],
  ],
  [
    "other-component",
    "what is delivered",
    { [RECORD]: supersedes("old: HT-201, new: HT-102") },
    ["HT-102 (hydraulic pump) is delivered for a part of another component: HT-201 (pump gasket)"],
  ],
  [
    "other-component",
    "where nothing belongs, the place that is named",
    { [RECORD]: standsIn('part: HT-102, for: none, place: lift arms, verdict: "yes", scope: line=B') },
    ["HT-102 (hydraulic pump) is permitted in a place of another component: 'lift arms' (lift)"],
  ],
  [
    "other-component",
    "where a plant fitted it there too, only that is told",
    {
      [RECORD]: [
        ...builtIn("place: pump gasket, part: HT-102, scope: line=B"),
        ...standsIn('part: HT-102, for: HT-201, verdict: "yes", scope: line=B'),
      ],
    },
    ["HT-102 (hydraulic pump) was fitted in 'pump gasket'"],
  ],
  [
    "other-component",
    "a kit that holds such a part, also by a kit that holds it back",
    {
      [GASKETS]: gaskets("number: HT-291, name: set"),
      [RECORD]: [
        ...put("kits:", ["kit: HT-291, contents: [{ part: HT-101, count: 1 }, { part: HT-290, count: 1 }]"]),
        ...["contents: [{ part: HT-201, count: 2 }", "contents: [{ part: HT-291, count: 1 }"],
        ...supersedes("old: HT-101, new: HT-290"),
        ...standsIn('part: HT-290, for: HT-101, verdict: "yes", scope: line=B'),
      ],
    },
    [],
  ],
  [
    "other-component",
    "a refusal is told by a rule of its own",
    { [RECORD]: standsIn("part: HT-201, for: HT-102, verdict: does-not-go-on, why: It is flat.") },
    [],
  ],
  [
    "other-component-refused",
    "a refusal",
    { [RECORD]: standsIn("part: HT-201, for: HT-102, verdict: does-not-go-on, why: It is flat.") },
    ["HT-201 (pump gasket) is refused in place of a part of another component: HT-102 (hydraulic pump)"],
  ],
  [
    "other-component-refused",
    "where nothing belongs",
    { [RECORD]: standsIn("part: HT-201, for: none, verdict: does-not-go-on, why: It is flat.") },
    [],
  ],
  [
    "hand-left-out",
    "the number beside one that has a hand",
    { [GASKETS]: gaskets("number: HT-210L, name: seal, hand: left", "number: HT-210R, name: seal") },
    ["HT-210R has no hand, and beside HT-210L its number says right"],
  ],
  [
    "hand-left-out",
    "both of a pair, where there are places on both sides",
    { [HYDRAULICS]: twoPlaces, [GASKETS]: gaskets("number: HT-210L, name: seal", "number: HT-210R, name: seal") },
    [
      "HT-210L has no hand, and beside HT-210R its number says left",
      "HT-210R has no hand, and beside HT-210L its number says right",
    ],
  ],
  [
    "hand-left-out",
    "a component without a left and a right",
    { [GASKETS]: gaskets("number: HT-210L, name: left seal", "number: HT-210R, name: seal") },
    [],
  ],
  ...["seal for left or right", "seal with left-hand thread", "seal for left-hand drive", "seal, leftover stock"].map(
    (name) =>
      [
        "hand-left-out",
        name,
        { [HYDRAULICS]: twoPlaces, [GASKETS]: gaskets(`number: HT-210, name: "${name}"`) },
        [],
      ] as const,
  ),
  [
    "hand-left-out",
    "a number that differs by another sign",
    {
      [GASKETS]: gaskets(
        "number: HT-210L, name: seal, hand: left",
        "number: HT-210B, name: seal",
        "number: HT-211, name: seal",
      ),
    },
    [],
  ],
  [
    "hand-left-out",
    "fitted on one side only",
    { [HYDRAULICS]: twoPlaces, [GASKETS]: hands, [RECORD]: builtIn("place: left gasket, part: HT-211, scope: all") },
    ["HT-211 has no hand, and the records put it only left"],
  ],
  ["hand-left-out", "fitted on both sides", { [HYDRAULICS]: twoPlaces, [GASKETS]: hands, [RECORD]: both211 }, []],
  [
    "hand-left-out",
    "permitted on one side only",
    {
      [HYDRAULICS]: twoPlaces,
      [GASKETS]: hands,
      [RECORD]: [...pair210, ...standsIn('part: HT-211, for: HT-210L, verdict: "yes"')],
    },
    ["HT-211 has no hand, and the records put it only left"],
  ],
  [
    "hand-left-out",
    "permitted on both sides",
    {
      [HYDRAULICS]: twoPlaces,
      [GASKETS]: hands,
      [RECORD]: [
        ...pair210,
        ...standsIn('part: HT-211, for: HT-210L, verdict: "yes"', 'part: HT-211, for: HT-210R, verdict: "yes"'),
      ],
    },
    [],
  ],
  [
    "instead-withdrawn",
    "two that name each other",
    {
      [FRAME]: frame("withdrawn: never done", "instead: [HY59-01]"),
      [RECORD]: ["issued:", "withdrawn: never built\ninstead: [FR58-01]\nissued:", ...cancelsNone],
    },
    ["HY59-01 is to hold instead, and is withdrawn too", "FR58-01 is to hold instead, and is withdrawn too"],
  ],
  [
    "instead-withdrawn",
    "a record that names itself",
    { [FRAME]: frame("withdrawn: never done", "instead: [FR58-01]"), [RECORD]: cancelsNone },
    ["FR58-01 is to hold instead, and is this record itself"],
  ],
  ...[
    ["1954", ["it was issued in 1954, and is about cars of 1958 to 1961"]],
    ["1955", []],
    ["1964", []],
    ["1965", ["it was issued in 1965, and is about cars of 1958 to 1961"]],
  ].map(
    ([year, said]) =>
      [
        "issued-far-off",
        `a record about 1958 and later of ${year}`,
        { [FRAME]: ["issued: 1958-03-01", `issued: ${year}-03-01`] },
        said as string[],
      ] as const,
  ),
  [
    "issued-far-off",
    "years that the vehicles do not have are not those of its cars",
    { [FRAME]: ["scope: my>=1958", "scope: line=B; my>=1960", "issued: 1958-03-01", "issued: 1964-03-01"] },
    ["it was issued in 1964, and is about cars of 1960"],
  ],
  ...[
    ["<<<<<<< HEAD\nFour holes.\n=======\nFive holes.\n>>>>>>> five", ["'<<<<<<<' marks"]],
    ["Four holes.\n>>>>>>> five", ["'>>>>>>>' marks"]],
    ["Four holes.\n||||||| before\nThree holes.", ["'|||||||' marks"]],
    ["Four holes.\n\n=======\nFive holes.", ["'=======' marks"]],
    ["Four holes.\n=======\n\nIt says <<<<<<< there.", []],
    ["Four holes.\n\n========\n\n<<<<<<<<", []],
  ].map(
    ([story, said]) =>
      ["conflict-marks", story as string, { [FRAME]: ["Four holes.", story as string] }, said as string[]] as const,
  ),
  [
    "conflict-marks",
    "a bulletin",
    { [BULLETIN]: ["See [[HY59-01]]", "<<<<<<< HEAD\nSee [[HY59-01]]"] },
    ["'<<<<<<<' marks two versions"],
  ],
  [
    "refusal-without-effect",
    "in place of a part that is on no car",
    { [PUMPS]: pump3, [RECORD]: standsIn("part: HT-102, for: HT-103, verdict: must-not-be-used, why: It cracks.") },
    ["HT-102 is refused in place of HT-103, and no car in the scope has HT-103"],
  ],
  [
    "refusal-without-effect",
    "cars that have the refused part, and nothing is delivered for it",
    { [PUMPS]: pump3, [RECORD]: standsIn(cracks("scope: line=B; my=1960")) },
    ["HT-102 is refused, and stays 'as built'"],
  ],
  [
    "refusal-without-effect",
    "a delivery for a part of the cars only",
    {
      [PUMPS]: pump3,
      [RECORD]: [
        ...standsIn(cracks("scope: line=B; my>=1959")),
        ...supersedes("old: HT-102, new: HT-103, scope: line=B; my=1960"),
      ],
    },
    ["HT-102 is refused, and stays 'as built'"],
  ],
  [
    "refusal-without-effect",
    "a delivery in two steps",
    {
      [PUMPS]: put("marks: { ribs: two, bore: none }", [
        "number: HT-103, name: pump for two",
        "number: HT-104, name: pump for four",
      ]),
      [RECORD]: [
        ...standsIn(cracks("scope: line=B; my=1960")),
        ...supersedes(
          "old: HT-102, new: HT-104, scope: line=B; my=1960",
          "old: HT-104, new: HT-103, scope: line=B; my=1960",
        ),
      ],
    },
    [],
  ],
  [
    "refusal-without-effect",
    "the refusal has no scope, and the other part is delivered",
    {
      [PUMPS]: pump3,
      [RECORD]: [
        ...standsIn("part: HT-102, for: HT-103, verdict: must-not-be-used, why: It cracks."),
        ...supersedes("old: HT-102, new: HT-103, scope: line=B; my=1960"),
      ],
    },
    ["HT-102 is refused, and stays 'as built'"],
  ],
  [
    "refusal-without-effect",
    "what was fitted before does not go on again once the other part is on the car",
    {
      [PUMPS]: pump3,
      [RECORD]: [
        ...standsIn("part: HT-102, for: HT-103, verdict: does-not-go-on, why: The flange is drilled out."),
        ...supersedes("old: HT-102, new: HT-103"),
      ],
    },
    [],
  ],
  [
    "refusal-without-effect",
    "the way back from a part that may be fitted later",
    {
      [PUMPS]: pump3,
      [RECORD]: standsIn(
        "part: HT-102, for: HT-103, verdict: must-not-be-used, why: It runs dry.",
        'part: HT-103, for: HT-102, verdict: "yes"',
      ),
    },
    [],
  ],
  [
    "refusal-without-effect",
    "some car has the other part, and it is delivered whatever the car",
    {
      [RECORD]: [
        ...standsIn("part: HT-102, for: HT-101, verdict: must-not-be-used, why: It cracks., scope: line=B; my>=1958"),
        ...supersedes("old: HT-102, new: HT-101"),
      ],
    },
    ["HT-102 is refused, and stays 'as built'"],
  ],
  [
    "refusal-without-effect",
    "some car has the other part, and it is delivered for these cars",
    {
      [RECORD]: [
        ...standsIn("part: HT-102, for: HT-101, verdict: must-not-be-used, why: It cracks., scope: line=B; my>=1958"),
        ...supersedes("old: HT-102, new: HT-101, scope: line=B"),
      ],
    },
    [],
  ],
  [
    "refusal-without-effect",
    "some car has the other part",
    {
      [RECORD]: standsIn(
        "part: HT-102, for: HT-101, verdict: must-not-be-used, why: It cracks., scope: line=B; my>=1959",
      ),
    },
    [],
  ],
  [
    "refusal-without-effect",
    "where nothing belongs, cars that were built with it",
    {
      [RECORD]: standsIn(
        "part: HT-102, for: none, verdict: must-not-be-used, why: It cracks., scope: line=B; my=1960; plant=K",
      ),
    },
    ["HT-102 is refused, and stays 'as built'"],
  ],
  [
    "refusal-without-effect",
    "where nothing belongs, other cars too",
    { [RECORD]: standsIn("part: HT-102, for: none, verdict: must-not-be-used, why: It cracks., scope: my=1960") },
    [],
  ],
  [
    "refusal-without-effect",
    "what has no place on the car",
    {
      [HYDRAULICS]: [", places: [pump gasket]", ""],
      [GASKETS]: thinAndThick,
      [RECORD]: standsIn("part: HT-202, for: HT-203, verdict: must-not-be-used, why: It leaks."),
    },
    [],
  ],
  [
    "refusal-without-effect",
    "what was ended for all its cars",
    {
      [PUMPS]: pump3,
      [FRAME]: frame("stands-in:", `  - { ${cracks("scope: line=B; my=1960")} }`),
      [RECORD]: isHistory,
    },
    [],
  ],
  ...(
    [
      ["Then fit HT-101 too.", ["HT-101 is named in what is to be done, and is refused on these cars: HY59-01"]],
      ["Never fit HT-101.", []],
      ["Take off HT-101, then bleed the lift.", []],
      ["Take the HT-101 off.", []],
      ["Do not bleed the lift, fit HT-101.", ["HT-101 is named"]],
      ["Tighten to the HT-101 figure.", []],
    ] as const
  ).map(([text, said]) => ["told-to-fit-refused", text, { [RECORD]: standsIn(done(text, "my=1960")) }, said] as const),
  ["told-to-fit-refused", "a car that has it", { [RECORD]: standsIn(done("Fit HT-101 too.", "my=1957")) }, []],
  [
    "told-to-fit-refused",
    "what goes along is looked at elsewhere",
    { [RECORD]: standsIn(`${done("Fit HT-101 too.", "my=1960")}, with: [HT-101]`) },
    [],
  ],
  [
    "told-to-fit-refused",
    "another language",
    {
      "maker.yaml": ["name:", "language: de\nname:"],
      [RECORD]: standsIn(done("Nicht HT-101 nehmen.", "my=1960")),
    },
    [],
  ],
  [
    "told-to-fit-refused",
    "refused on the other side only",
    {
      [HYDRAULICS]: twoPlaces,
      [GASKETS]: hands,
      [RECORD]: [
        ...builtIn(
          "place: left gasket, part: HT-210L, scope: my=1957",
          "place: right gasket, part: HT-210R, scope: all",
        ),
        ...standsIn(
          "part: HT-210L, for: HT-210R, verdict: must-not-be-used, why: It is bent the other way.",
          "part: HT-102, for: HT-101, verdict: on-conditions, do: Fit HT-210L in the left place., scope: my=1958",
        ),
      ],
    },
    [],
  ],
  [
    "companion-refused-later",
    "the permission came later",
    { [GASKETS]: thinAndThick, [FRAME]: frame(...leaks("HT-202")), [RECORD]: [...forAnyCar, ...cancelsNone] },
    [],
  ],
  [
    "companion-refused-later",
    "the refusal was revised later",
    {
      [GASKETS]: thinAndThick,
      [FRAME]: [
        ...frame(...leaks("HT-202")),
        "issued: 1958-03-01",
        "issued: 1958-03-01\nrevised: 1960-03-01\nrevision: 2",
      ],
      [RECORD]: [...forAnyCar, ...cancelsNone],
    },
    ["HT-201 is refused here whatever the car, and stays permitted in the set of HT-102, which HY59-01 permits"],
  ],
  [
    "companion-refused-later",
    "where nothing belongs",
    {
      [FRAME]: [
        ...issuedLater,
        ...frame("stands-in:", "  - { part: HT-201, for: none, verdict: must-not-be-used, why: It leaks. }"),
      ],
      [RECORD]: forAnyCar,
    },
    ["HT-201 is refused here whatever the car"],
  ],
  [
    "companion-refused-later",
    "other cars have what it is refused for",
    {
      [GASKETS]: thinAndThick,
      [FRAME]: [...issuedLater, ...frame(...leaks("HT-202", "line=H; my>=1960"))],
      [RECORD]: forAnyCar,
    },
    [],
  ],
  [
    "companion-refused-later",
    "the record of the set itself",
    {
      [GASKETS]: thinAndThick,
      [RECORD]: [
        ...forAnyCar,
        ...builtIn("place: pump gasket, part: HT-202, scope: line=B"),
        ...standsIn("part: HT-201, for: HT-202, verdict: must-not-be-used, why: Only with HT-102."),
      ],
    },
    [],
  ],
];
