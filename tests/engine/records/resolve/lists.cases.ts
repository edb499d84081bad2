/** Slips in cautions, plates and moved ids. */
// file, what stands there, what is written instead, everything that is said: "file field: message → hint"
export const LISTS_SLIPS: [file: string, old: string, replacement: string, ...said: string[]][] = [
  [
    "vehicles/plates.yaml",
    "trait: line",
    "trait: lien",
    "vehicles/plates.yaml plates.0.positions.0.trait: no trait is called 'lien' → did you mean 'line'?",
  ],
  [
    "vehicles/plates.yaml",
    '"7": 1957',
    '"7": 1956',
    "vehicles/plates.yaml plates.0.positions.1.codes.7: model year has no value '1956' → name a value of the trait",
  ],
  [
    "vehicles/plates.yaml",
    '"7": 1957',
    '"57": 1957',
    "vehicles/plates.yaml plates.0.positions.1.codes.57: code '57' has 2 characters, not 1 → mend the code or the length",
  ],
  [
    "cautions.yaml",
    "systems: [hydraulics]",
    "systems: [hydraulic]",
    "cautions.yaml cautions.0.systems.0: no system is called 'hydraulic' → did you mean 'hydraulics'?",
  ],
  [
    "cautions.yaml",
    "components: [pump]",
    "components: [pumps, winch]",
    "cautions.yaml cautions.0.components.0: no component is called 'pumps' → did you mean 'pump'?",
    "cautions.yaml cautions.0.components.1: no component is called 'winch' → add it to components/<system>.yaml, which takes no more than id, name, order and components: [{ id: winch, name: … }], or mend the name",
  ],
  [
    "moved.yaml",
    "{ kind: part, from: HT-099, why: never delivered }",
    "{ kind: part, from: HT-099, why: never delivered }\n  - { kind: part, from: HT-099, to: HT-101, why: renamed }",
    "moved.yaml moved.2.from: part 'HT-099' stands above already → an id leads to one place: keep one of the two lines",
  ],
  [
    "moved.yaml",
    "from: HY-1, to: HY59-01",
    "from: FR58-01, to: HY59-01",
    "moved.yaml moved.0.from: record 'FR58-01' still exists → an id that moved is no longer used",
  ],
  [
    "moved.yaml",
    "from: HY-1, to: HY59-01",
    "from: HY-1, to: HY59-09",
    "moved.yaml moved.0.to: no record is called 'HY59-09' → did you mean 'HY59-01'?",
  ],
  [
    "moved.yaml",
    "from: HY-1, to: HY59-01",
    "from: HY-1, to: HY-1",
    "moved.yaml moved.0.to: the moves from 'HY-1' run in a circle → end them at an id that exists",
  ],
  [
    "moved.yaml",
    "moved:",
    "moved:\n  - { kind: part, from: A-1, to: A-2, why: x }\n  - { kind: part, from: A-2, to: A-3, why: x }\n  - { kind: part, from: A-3, to: A-2, why: x }",
    "moved.yaml moved.0.to: the moves from 'A-1' run in a circle → end them at an id that exists",
    "moved.yaml moved.1.to: the moves from 'A-2' run in a circle → end them at an id that exists",
    "moved.yaml moved.2.to: the moves from 'A-3' run in a circle → end them at an id that exists",
  ],
  [
    "moved.yaml",
    "moved:",
    "moved:\n  - { kind: part, from: A-1, to: A-2, why: x }\n  - { kind: part, from: A-2, to: HT-101, why: x }\n  - { kind: system, from: oil, to: hydraulics, why: x }\n  - { kind: component, from: oilpump, to: pump, why: x }\n  - { kind: bulletin, from: TB-0, to: TB-1, why: x }",
  ],
];
