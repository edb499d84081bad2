/** Slips in the files of parts. */
// file, what stands there, what is written instead, everything that is said: "file field: message → hint"
export const PARTS_SLIPS: [file: string, old: string, replacement: string, ...said: string[]][] = [
  [
    "parts/gasket.yaml",
    "component: gasket",
    "component: gaskte",
    "parts/gasket.yaml component: no component is called 'gaskte' → did you mean 'gasket'?",
  ],
  [
    "parts/gasket.yaml",
    "component: gasket",
    "component: lift",
    "parts/gasket.yaml component: the parts of 'lift' lie in parts/gasket.yaml → call the file parts/lift.yaml",
  ],
  [
    "parts/gasket.yaml",
    "number: HT-290",
    "number: HT-201",
    "parts/gasket.yaml parts.1.number: part 'HT-201' stands already under 'gasket' → list a part once",
    "changes/1959/HY59-01.md kits.0.kit: no part is called 'HT-290' → add it to parts/, or mend the name",
  ],
  [
    "parts/gasket.yaml",
    "number: HT-290",
    "number: HT-102",
    "parts/pump.yaml parts.1.number: part 'HT-102' stands already under 'gasket' → list a part once",
    "changes/1959/HY59-01.md kits.0.kit: no part is called 'HT-290' → add it to parts/, or mend the name",
  ],
  [
    "parts/gasket.yaml",
    "number: HT-290",
    "number: none",
    "parts/gasket.yaml parts.1.number: 'none' stands for no part, so no part can be called so → give the part another number",
    "changes/1959/HY59-01.md kits.0.kit: no part is called 'HT-290' → add it to parts/, or mend the name",
  ],
  [
    "parts/pump.yaml",
    "ribs: none,",
    "rips: none,",
    "parts/pump.yaml parts.0.marks.rips: no feature is called 'rips' → did you mean 'ribs'?",
  ],
  [
    "parts/pump.yaml",
    "bore: 18 }",
    "bore: 18 mm }",
    "parts/pump.yaml parts.0.marks.bore: 'bore' is measured, so its mark must be a number → write the number alone; the unit stands at the feature",
  ],
  ["parts/pump.yaml", "unit: mm, ", "", "parts/pump.yaml features.1.made: 'bore' is measured in no unit → add unit:"],
  [
    "parts/pump.yaml",
    "effort: 2, record: HY59-01",
    "effort: 2, record: HY59-02",
    "parts/pump.yaml features.0.record: no change record is called 'HY59-02' → did you mean 'HY59-01'?",
  ],
  [
    "parts/pump.yaml",
    "made: cast, where",
    "made: cast, absent: bare, where",
    "parts/pump.yaml features.0.absent: no part shows 'bare' → write the value that stands for 'nothing there' as it stands at the parts",
  ],
  ["parts/pump.yaml", "made: cast, where", "made: cast, absent: none, where"],
  [
    "parts/pump.yaml",
    "tolerance: 0.5, where",
    "tolerance: 0.5, moves: [{ setting: oil presure, by: -1 }], where",
    "parts/pump.yaml features.1.moves.0.setting: no setting is called 'oil presure' → did you mean 'oil pressure'?",
  ],
  [
    "parts/pump.yaml",
    "tolerance: 0.5, where",
    "tolerance: 0.5, moves: [{ setting: play, by: 1, count: 2 }], where",
    "parts/pump.yaml features.1.moves.0.setting: no setting is called 'play' → mend the name",
  ],
  ["parts/pump.yaml", "tolerance: 0.5, where", "tolerance: 0.5, moves: [{ setting: oil pressure, by: 1 }], where"],
];
