/** Slips in the files of the model lines. */
// file, what stands there, what is written instead, everything that is said: "file field: message → hint"
export const VEHICLES_SLIPS: [file: string, old: string, replacement: string, ...said: string[]][] = [
  [
    "vehicles/badger.yaml",
    "line: B",
    "line: Q",
    "vehicles/badger.yaml line: no model line is called 'Q' → lines are B, H",
  ],
  [
    "vehicles/badger.yaml",
    "line: B",
    "line: H",
    "vehicles/heron.yaml line: two files are about line 'H' → put them into one file",
  ],
  [
    "vehicles/badger.yaml",
    "my=1957-1960",
    "my=1956-1960; lin=B",
    "vehicles/badger.yaml built.0: model year has no value '1956-1960' → values run from 1957 to 1961",
    "vehicles/badger.yaml built.0: no trait is called 'lin' → did you mean 'line'?",
  ],
  [
    "vehicles/badger.yaml",
    "if: my=1957",
    "if: my=1956",
    "vehicles/badger.yaml rules.0.if: model year has no value '1956' → values run from 1957 to 1961",
  ],
  [
    "vehicles/badger.yaml",
    "must: plant=K",
    "must: plant=X",
    "vehicles/badger.yaml rules.0.must: plant has no value 'X' → values are K, D",
  ],
  [
    "vehicles/badger.yaml",
    "standard: my>=1960",
    "standard: my>=60",
    "vehicles/badger.yaml equipment.PT.standard: model year has no value '60' → write my>=1960",
  ],
  [
    "vehicles/badger.yaml",
    "PT: {",
    "PTO: {",
    "vehicles/badger.yaml equipment.PTO: no equipment is called 'PTO' → declare it in vehicles/traits.yaml as a trait of kind flag",
  ],
  [
    "vehicles/badger.yaml",
    "PT: {",
    "my: {",
    "vehicles/badger.yaml equipment.my: no equipment is called 'my' → declare it in vehicles/traits.yaml as a trait of kind flag",
  ],
  [
    "vehicles/all.yaml",
    "rules:",
    "built: [all]\nrules:",
    "vehicles/all.yaml: rows and equipment need a line → name the line, or move them to the line's own file",
  ],
];
