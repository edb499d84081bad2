/** Slips in vehicles/traits.yaml. */
// file, what stands there, what is written instead, everything that is said: "file field: message → hint"
export const TRAITS_SLIPS: [file: string, old: string, replacement: string, ...said: string[]][] = [
  [
    "vehicles/traits.yaml",
    "id: PT,",
    "id: at,",
    "vehicles/traits.yaml traits.4.id: 'at' is a word of the scope language → use a name other than eq, no, at, fitted, all",
  ],
  [
    "vehicles/traits.yaml",
    "id: PT,",
    "id: WN,",
    "vehicles/traits.yaml traits.5.id: two traits are called 'WN' → rename one of them",
  ],
  [
    "vehicles/traits.yaml",
    "label: chassis number, role: sequence",
    "label: chassis number, role: plant",
    "vehicles/traits.yaml traits.3.role: two traits have the role 'plant' → keep it with one of them",
  ],
  [
    "vehicles/traits.yaml",
    "label: model line\n    role: line",
    "label: model line",
    "vehicles/traits.yaml traits: no trait has the role 'line' → add 'role: line' to the trait that is the model line",
  ],
  [
    "vehicles/traits.yaml",
    "label: model year, role: year",
    "label: model year",
    "vehicles/traits.yaml traits: no trait has the role 'year' → add 'role: year' to the trait that is the model year",
  ],
  [
    "vehicles/traits.yaml",
    "from: 1957, to: 1961",
    "from: 1961, to: 1957",
    "vehicles/traits.yaml traits.1.to: the last value comes before the first → swap from and to",
  ],
  [
    "vehicles/traits.yaml",
    "from: 1957, to: 1961",
    "from: -9007199254740991, to: 9007199254740991",
    "vehicles/traits.yaml traits.1.to: the model years run from -9007199254740991 to 9007199254740991 → keep them within 500 years",
  ],
  [
    "vehicles/traits.yaml",
    'kind: whole, label: model year, role: year, find: the plate, effort: 1, phrase: "of {}", otherwise: "not of {}", from: 1957, to: 1961',
    'kind: date, label: model year, role: year, find: the plate, effort: 1, phrase: "of {}", otherwise: "not of {}", from: 1957-01-01, to: 1961-12-31',
    "vehicles/traits.yaml traits.1.kind: the model year must be a whole number → write kind: whole with from and to",
  ],
  [
    "vehicles/traits.yaml",
    "id: H, label: Heron",
    "id: B, label: Heron",
    "vehicles/traits.yaml traits.0.values.1.id: two values are called 'B' → rename one of them",
  ],
  [
    "vehicles/traits.yaml",
    'phrase: "{}"',
    "phrase: named",
    "vehicles/traits.yaml traits.0.phrase: the phrase has no place for the value → put {} where the value goes",
  ],
];
