/** Every relation of the tiny folder, in the order in which the records state them. */
// from, relation, to, record or bulletin that says so, scope, verdict
export type Edge = [source: string, relation: string, target: string, from: string, scope: string, verdict: string];

export const RELATED: Edge[] = [
  ["component:lift", "belongs-to", "system:hydraulics", "", "", ""],
  ["component:pump", "belongs-to", "component:lift", "", "", ""],
  ["component:gasket", "belongs-to", "component:pump", "", "", ""],
  ["part:HT-201", "belongs-to", "component:gasket", "", "", ""],
  ["part:HT-290", "belongs-to", "component:gasket", "", "", ""],
  ["part:HT-101", "belongs-to", "component:pump", "", "", ""],
  ["part:HT-102", "belongs-to", "component:pump", "", "", ""],
  ["record:FR58-01", "concerns", "line:B", "FR58-01", "my>=1958", ""],
  ["record:FR58-01", "concerns", "line:H", "FR58-01", "my>=1958", ""],
  ["record:FR58-01", "concerns", "year:1958", "FR58-01", "my>=1958", ""],
  ["record:FR58-01", "concerns", "year:1959", "FR58-01", "my>=1958", ""],
  ["record:FR58-01", "concerns", "year:1960", "FR58-01", "my>=1958", ""],
  ["record:FR58-01", "concerns", "year:1961", "FR58-01", "my>=1958", ""],
  ["record:HY59-01", "changes", "component:pump", "HY59-01", "", ""],
  ["record:HY59-01", "changes", "component:gasket", "HY59-01", "", ""],
  ["record:HY59-01", "concerns", "line:B", "HY59-01", "line=B; at=K59#0412+", ""],
  ["record:HY59-01", "concerns", "year:1959", "HY59-01", "line=B; at=K59#0412+", ""],
  ["record:HY59-01", "concerns", "year:1960", "HY59-01", "line=B; at=K59#0412+", ""],
  ["record:HY59-01", "brings", "part:HT-101", "HY59-01", "line=B; at=K59#0412-", ""],
  ["record:HY59-01", "brings", "part:HT-102", "HY59-01", "line=B; at=K59#0412+", ""],
  ["record:HY59-01", "brings", "part:HT-101", "HY59-01", "line=H; my=1959", ""], // the mixed stretch
  ["record:HY59-01", "brings", "part:HT-102", "HY59-01", "line=H; my=1959", ""],
  ["part:HT-102", "supersedes", "part:HT-101", "HY59-01", "", ""], // the new one supersedes
  ["part:HT-102", "goes-with", "part:HT-201", "HY59-01", "", ""],
  ["part:HT-102", "stands-in-for", "part:HT-101", "HY59-01", "fitted=HT-201", "on-conditions"],
  ["part:HT-102", "goes-with", "part:HT-201", "HY59-01", "fitted=HT-201", "on-conditions"],
  ["part:HT-101", "not-interchangeable-with", "part:HT-102", "HY59-01", "", "must-not-be-used"],
  ["part:HT-102", "retrofittable-to", "line:H", "HY59-01", "line=H", "yes"],
  ["part:HT-290", "contains", "part:HT-201", "HY59-01", "", ""], // what has only a name is no node
  ["record:HY59-01", "brings", "part:HT-201", "HY59-01", "", ""], // for repair only
  ["record:HY59-01", "cancels", "record:FR58-01", "HY59-01", "line=B", ""],
  ["record:HY59-01", "links-to", "record:FR58-01", "HY59-01", "", ""],
  ["bulletin:TB-1", "cites", "record:HY59-01", "TB-1", "", ""],
  ["bulletin:TB-1", "cites", "part:HT-102", "TB-1", "", ""],
  ["bulletin:TB-1", "cites", "component:pump", "TB-1", "", ""],
];

// what is written of the long pump instead, every relation of a part to a line then
export const RETROFITS: [written: string, kinds: string, retrofits: string[]][] = [
  // Where the car has nothing, the scope names the lines.
  ['part: HT-102, for: none, verdict: "yes", scope: line=B', "part", ["HT-102 B"]],
  ['part: HT-102, for: none, verdict: "yes", scope: all', "part", ["HT-102 B", "HT-102 H"]],
  ['part: HT-102, for: none, verdict: "yes", scope: line=B; my=1961', "part", []],
  ["part: HT-102, for: none, verdict: on-conditions, scope: line=H", "part", ["HT-102 H"]],
  // Without a scope, the lines that were built with nothing in a place of its component; the lift arms are another's.
  ['part: HT-102, for: none, verdict: "yes"', "part", []],
  [
    'part: HT-102, for: none, verdict: "yes"',
    "part]\nbuilt: [{ place: pump, part: none, scope: line=B }",
    ["HT-102 B"],
  ],
  // Where it belongs in another's place it is a retrofit only when the record says so.
  ['part: HT-102, for: HT-101, verdict: "yes", scope: line=B', "part", []],
  ['part: HT-102, for: HT-101, verdict: "yes", scope: line=B', "part, retrofit", ["HT-102 B"]],
  // Without a scope, the lines that were built with the other one, in a mixed stretch too.
  ['part: HT-102, for: HT-101, verdict: "yes"', "retrofit", ["HT-102 B", "HT-102 H"]],
  ['part: HT-201, for: HT-290, verdict: "yes"', "retrofit", []],
  // A refusal is none.
  ["part: HT-102, for: none, verdict: does-not-go-on, why: too long, scope: line=H", "retrofit", []],
  ["part: HT-102, for: HT-101, verdict: must-not-be-used, why: too long, scope: line=H", "retrofit", []],
];
