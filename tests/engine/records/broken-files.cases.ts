import type { Spoil } from "../../helpers/tiny-folder.ts";

// a fault, how the folder is spoiled, everything that is said: the fault, and nothing that only echoes it
export const ECHOES: [string, Spoil, ...said: string[]][] = [
  [
    "a record without a title is still the record that others name",
    { "changes/1959/HY59-01.md": ["title: Longer hydraulic pump\n", ""] },
    "changes/1959/HY59-01.md title: 'title' is missing → What changed, in a few words.",
  ],
  [
    "a record whose facts are no YAML is known by its file's name",
    { "changes/1959/HY59-01.md": ["title: Longer", "title: [Longer"] },
    "changes/1959/HY59-01.md: this is not YAML: Flow sequence in block collection must be sufficiently indented and end with a ] → check quotes and indentation",
  ],
  [
    "a record without facts is known by its file's name",
    { "changes/1959/HY59-01.md": "The pump grew longer." },
    "changes/1959/HY59-01.md: the file does not begin with facts → write the facts between two lines of '---', the story below them",
  ],
  [
    "a record in a file of another name is known by both names",
    {
      "changes/1959/HY59-01.md": ["id: HY59-01", "id: HY59-02"],
      "moved.yaml": ["to: HY59-01", "to: HY59-02"],
    },
    "changes/1959/HY59-01.md id: record 'HY59-02' lies in changes/1959/HY59-01.md → call the file HY59-02.md",
  ],
  [
    "a broken record is no other record",
    {
      "changes/1959/HY59-01.md": ["title: Longer hydraulic pump\n", ""],
      "moved.yaml": ["to: HY59-01", "to: HY59-0"],
    },
    "changes/1959/HY59-01.md title: 'title' is missing → What changed, in a few words.",
    "moved.yaml moved.0.to: no record is called 'HY59-0' → add it to the data, or leave 'to' out, or mend the name",
  ],
  [
    "the numbers in a file of parts with a wrong mark are not unknown",
    { "parts/gasket.yaml": ["name: round gasket", "nmae: round gasket"] },
    "parts/gasket.yaml parts.0.name: 'name' is missing → Plain words, one line.",
    "parts/gasket.yaml parts.0.nmae: no field is called 'nmae' here → did you mean 'name'?",
  ],
  [
    "the numbers in a file of parts that is no YAML are not unknown",
    { "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit"] },
    "parts/gasket.yaml: this is not YAML: Flow map in block collection must be sufficiently indented and end with a } → check quotes and indentation",
  ],
  [
    "a number that only begins like one in a broken file is unknown",
    {
      "parts/gasket.yaml": ["name: round gasket", "nmae: round gasket"],
      "changes/1959/HY59-01.md": ["service-only: [HT-201]", "service-only: [HT-20]"],
    },
    "parts/gasket.yaml parts.0.name: 'name' is missing → Plain words, one line.",
    "parts/gasket.yaml parts.0.nmae: no field is called 'nmae' here → did you mean 'name'?",
    "changes/1959/HY59-01.md service-only.0: no part is called 'HT-20' → add it to parts/, or mend the name",
  ],
  [
    "the system, components and places of a broken file are not unknown",
    { "components/hydraulics.yaml": ["order: 1", "order: first"] },
    "components/hydraulics.yaml order: 'order' must be a number → Where pages list it: 1 first.",
  ],
  [
    "a system in a file of another name is known by both names",
    { "components/hydraulics.yaml": ["id: hydraulics", "id: hydraulic"] },
    "components/hydraulics.yaml id: the file of system 'hydraulic' is called components/hydraulics.yaml → call it components/hydraulic.yaml",
  ],
  [
    "a broken system does not excuse a slip in a component's name",
    {
      "components/hydraulics.yaml": ["order: 1", "order: first"],
      "parts/gasket.yaml": ["component: gasket", "component: gaskte"],
    },
    "components/hydraulics.yaml order: 'order' must be a number → Where pages list it: 1 first.",
    "parts/gasket.yaml component: no component is called 'gaskte' → add it to components/, or mend the name",
  ],
  [
    "a broken bulletin is still the bulletin that an old id leads to",
    {
      "bulletins/TB-1.md": ["title: Pumps\n", ""],
      "moved.yaml": ["moved:", "moved:\n  - { kind: bulletin, from: TB-0, to: TB-1, why: renamed }"],
    },
    "bulletins/TB-1.md title: 'title' is missing → Plain words, one line.",
  ],
  [
    "the settings of a broken record are not unknown to the sums and marks that ask for them",
    {
      "changes/1959/HY59-01.md": ["title: Longer", "title: [Longer"],
      "sums.yaml": ["engine: 900 rpm", "engine: { setting: oil pressure, side: low }"],
      "parts/pump.yaml": ["effort: 2, record", "effort: 2, moves: [{ setting: oil pressure, by: 1 }], record"],
    },
    "changes/1959/HY59-01.md: this is not YAML: Flow sequence in block collection must be sufficiently indented and end with a ] → check quotes and indentation",
  ],
  [
    "the features of a broken file of parts are not unknown to the sums that ask for them; others are",
    {
      "parts/pump.yaml": ["name: pump, short", "name: [pump, short"],
      "sums.yaml": [
        "crank: 150 mm, driven: 75 mm",
        "crank: { mark: bore, component: pump }, driven: { mark: bare, component: pump }",
      ],
    },
    "parts/pump.yaml: this is not YAML: Flow sequence in block collection must be sufficiently indented and end with a ] → check quotes and indentation",
    "sums.yaml sums.0.inputs.driven.mark: no feature is called 'bare' → add it to parts/pump.yaml, or mend the name",
  ],
  [
    "scopes and plates are not judged while the traits are no YAML",
    { "vehicles/traits.yaml": ["traits:", "traits: ["] },
    "vehicles/traits.yaml: this is not YAML: Nested mappings are not allowed in compact mappings → text with ': ' or a sign in front needs quotes",
  ],
  [
    "scopes and plates are not judged while the traits do not keep their shape",
    { "vehicles/traits.yaml": ["from: 1957, to: 1961", "from: 1957"] },
    "vehicles/traits.yaml traits.1.to: 'to' is missing → give it a number",
  ],
  [
    "scopes and plates are not judged while the years run backwards",
    { "vehicles/traits.yaml": ["from: 1957, to: 1961", "from: 1961, to: 1957"] },
    "vehicles/traits.yaml traits.1.to: the last value comes before the first → swap from and to",
  ],
  [
    "all faults are said, each once",
    {
      "changes/1959/HY59-01.md": ["title: Longer hydraulic pump\n", ""],
      "parts/gasket.yaml": ["name: round gasket", "nmae: round gasket"],
      "bulletins/TB-1.md": ["[[pump]]", "[[pump]] and [[HT-201]] and [[HT-999]]"],
    },
    "parts/gasket.yaml parts.0.name: 'name' is missing → Plain words, one line.",
    "parts/gasket.yaml parts.0.nmae: no field is called 'nmae' here → did you mean 'name'?",
    "changes/1959/HY59-01.md title: 'title' is missing → What changed, in a few words.",
    "bulletins/TB-1.md text: it cites 'HT-999', which is no record, part or component → mend the id, or add the record",
  ],
];
