/** Slips in change records. */
// file, what stands there, what is written instead, everything that is said: "file field: message → hint"
export const RECORDS_SLIPS: [file: string, old: string, replacement: string, ...said: string[]][] = [
  [
    "changes/1959/HY59-01.md",
    "id: HY59-01",
    "id: HY59-02",
    "changes/1959/HY59-01.md id: record 'HY59-02' lies in changes/1959/HY59-01.md → call the file HY59-02.md",
  ],
  [
    "changes/1958/FR58-01.md",
    "id: FR58-01",
    "id: HY59-01",
    "changes/1958/FR58-01.md id: record 'HY59-01' lies in changes/1958/FR58-01.md → call the file HY59-01.md",
    "changes/1959/HY59-01.md id: record 'HY59-01' lies already in changes/1958/FR58-01.md → give one of them another id",
  ],
  // ids that differ from another in capitals only
  ...(
    [
      ["hy59-01", "record 'HY59-01' in changes/1959/HY59-01.md", false],
      ["ht-101", "part 'HT-101' in parts/pump.yaml", true],
      ["Lift", "component 'lift' in components/hydraulics.yaml", true],
    ] as const
  ).flatMap(([id, twin, isFirst]): [string, string, string, ...string[]][] => {
    const [file, spelt, other] = isFirst
      ? ["changes/1958/FR58-01.md", id, twin]
      : ["changes/1959/HY59-01.md", "HY59-01", `record '${id}' in changes/1958/FR58-01.md`];
    return [
      [
        "changes/1958/FR58-01.md",
        "id: FR58-01",
        `id: ${id}`,
        `changes/1958/FR58-01.md id: record '${id}' lies in changes/1958/FR58-01.md → call the file ${id}.md`,
        `${file} id: record '${spelt}' and ${other} differ in capitals only → give one of them another id: not every web server tells such addresses apart`,
      ],
    ];
  }),
  [
    "changes/1959/HY59-01.md",
    "scope: line=B; at=K59#0412+\nbuilt",
    "scope: line=B; at=K59#0412+; line=H\nbuilt",
    "changes/1959/HY59-01.md scope: no car has 'line=B' and 'line=H' at once → write line=B,H for cars of either",
  ],
  [
    "changes/1959/HY59-01.md",
    "links: [FR58-01]",
    "links: [FR58-01, HY59-01]",
    "changes/1959/HY59-01.md links.1: record 'HY59-01' is listed as one to read along with itself → take it out",
  ],
  [
    "changes/1959/HY59-01.md",
    "components: [pump, gasket]",
    "components: [pump, steering]",
    "changes/1959/HY59-01.md components.1: no component is called 'steering' → add it to components/<system>.yaml, which takes no more than id, name, order and components: [{ id: steering, name: … }], or mend the name",
  ],
  [
    "changes/1959/HY59-01.md",
    "components: [pump, gasket]",
    "components: [pump, gaskets]",
    "changes/1959/HY59-01.md components.1: no component is called 'gaskets' → did you mean 'gasket'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "scope: line=B; at=K59#0412+\nbuilt",
    "scope: line=Q; at=K59#0412+\nbuilt",
    "changes/1959/HY59-01.md scope: model line has no value 'Q' → values are B, H",
  ],
  [
    "changes/1959/HY59-01.md",
    "place: lift arms",
    "place: lift arm",
    "changes/1959/HY59-01.md built.2.place: no place is called 'lift arm' → did you mean 'lift arms'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "place: pump, part: HT-101",
    "place: pump, part: HT-l01",
    "changes/1959/HY59-01.md built.0.part: no part is called 'HT-l01' → did you mean 'HT-201'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "parts: [HT-101, HT-102], scope",
    "parts: [HT-101, XX-999], scope",
    "changes/1959/HY59-01.md mixed.0.parts.1: no part is called 'XX-999' → add it to parts/, or mend the name",
  ],
  [
    "changes/1959/HY59-01.md",
    "old: HT-101",
    "old: none",
    "changes/1959/HY59-01.md supersedes.0.old: no part is called 'none' → add it to parts/, or mend the name",
  ],
  [
    "changes/1959/HY59-01.md",
    "new: HT-102, with: [HT-201]",
    "new: HT-102, with: [HT-201, none]",
    "changes/1959/HY59-01.md supersedes.0.with.1: no part is called 'none' → add it to parts/, or mend the name",
  ],
  [
    "changes/1959/HY59-01.md",
    "part: HT-102, for: none",
    "part: none, for: none",
    "changes/1959/HY59-01.md stands-in.2.part: no part is called 'none' → add it to parts/, or mend the name",
  ],
  [
    "changes/1959/HY59-01.md",
    "for: HT-102, verdict",
    "for: HT-112, verdict",
    "changes/1959/HY59-01.md stands-in.1.for: no part is called 'HT-112' → did you mean 'HT-102'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "kit: HT-290",
    "kit: HT-29O",
    "changes/1959/HY59-01.md kits.0.kit: no part is called 'HT-29O' → did you mean 'HT-290'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "{ part: HT-201, count: 2 }",
    "{ part: HT-211, count: 2 }",
    "changes/1959/HY59-01.md kits.0.contents.0.part: no part is called 'HT-211' → did you mean 'HT-201'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "service-only: [HT-201]",
    "service-only: [HT-2O1]",
    "changes/1959/HY59-01.md service-only.0: no part is called 'HT-2O1' → did you mean 'HT-201'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "component: lift, scope",
    "component: lifd, scope",
    "changes/1959/HY59-01.md settings.1.component: no component is called 'lifd' → did you mean 'lift'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "window: 120..135",
    "window: 135..120",
    "changes/1959/HY59-01.md settings.0.window: the window 135..120 runs backwards → write low..high",
  ],
  [
    "changes/1959/HY59-01.md",
    "window: 120..135",
    "window: -1..-2.5",
    "changes/1959/HY59-01.md settings.0.window: the window -1..-2.5 runs backwards → write low..high",
  ],
  [
    "changes/1959/HY59-01.md",
    "links: [FR58-01]",
    "links: [FR58-02]",
    "changes/1959/HY59-01.md links.0: no change record is called 'FR58-02' → did you mean 'FR58-01'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "record: FR58-01",
    "record: FR58-0l",
    "changes/1959/HY59-01.md cancels.0.record: no change record is called 'FR58-0l' → did you mean 'FR58-01'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "scope: fitted=HT-201",
    "scope: fitted=HT-21",
    "changes/1959/HY59-01.md stands-in.0.scope: no part is called 'HT-21' → did you mean 'HT-201'?",
  ],
  [
    "changes/1959/HY59-01.md",
    "use: to draw the shaft, scope: line=B",
    "use: to draw the shaft, scope: line=X",
    "changes/1959/HY59-01.md tools.0.scope: model line has no value 'X' → values are B, H",
  ],
];
