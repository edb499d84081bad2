/**
 * A small, faultless data folder of a made-up maker of tractors: path inside the folder, and text. The examples of the rules are
 * changes of it, and most tests begin with it.
 */
export const EXAMPLE_FOLDER: Readonly<Record<string, string>> = {
  "maker.yaml": `name: Hollin Tractor Works
title: Hollin model changes
about: What changed on Hollin tractors.
site: https://hollin.example/changes/
`,
  "words.yaml": `ignore: [what, changed]
mean:
  - { say: [lift, hitch], mean: hydraulics }
`,
  "cautions.yaml": `cautions:
  - id: pressure
    title: Oil under pressure
    text: Lower the arms before a pipe is opened.
    systems: [hydraulics]
    components: [pump]
    source: common practice, no source
`,
  "sums.yaml": `sums:
  - sum: pulley
    title: speed of the pump
    record: HY59-01
    component: pump
    inputs: { engine: 900 rpm, crank: 150 mm, driven: 75 mm }
`,
  "moved.yaml": `moved:
  - { kind: record, from: HY-1, to: HY59-01, why: renamed }
  - { kind: part, from: HT-099, why: never delivered }
`,
  "checks.yaml": `rules:
  - { check: nearly-the-same, as: error, why: here a thing has one name }
plausible:
  - { setting: oil pressure, unit: bar, least: 20, most: 300 }
never-say:
  - { say: near side, because: say left or right }
`,
  "vehicles/traits.yaml": `traits:
  - id: line
    kind: list
    label: model line
    role: line
    find: the name on the hood
    effort: 1
    phrase: "{}"
    otherwise: not {}
    values:
      - { id: B, label: Badger }
      - { id: H, label: Heron }
  - { id: my, kind: whole, label: model year, role: year, find: the plate, effort: 1, phrase: "of {}", otherwise: "not of {}", from: 1957, to: 1961 }
  - id: plant
    kind: list
    label: plant
    role: plant
    find: the plate
    effort: 1
    phrase: built at {}
    otherwise: not built at {}
    values: [{ id: K, label: Kelby }, { id: D, label: Dunmoor }]
  - { id: number, kind: serial, label: chassis number, role: sequence, find: the frame, effort: 3, phrase: "numbered {}", otherwise: "not numbered {}", prefixes: [""], digits: 4 }
  - { id: PT, kind: flag, label: power take-off, find: the rear, effort: 1, phrase: with power take-off, otherwise: without power take-off }
  - { id: WN, kind: flag, label: winch, find: the rear, effort: 1, phrase: with a winch, otherwise: without a winch }
`,
  "vehicles/plates.yaml": `plates:
  - name: frame plate
    where: left of the seat
    example: B9 K 0412
    positions:
      - { trait: line, length: 1 }
      - { trait: my, length: 1, codes: { "7": 1957, "8": 1958, "9": 1959 } }
      - { trait: plant, length: 1 }
      - { trait: number, length: 4 }
`,
  "vehicles/all.yaml": `rules:
  - { if: plant=D, must: my>=1959, because: Dunmoor opened in 1959 }
`,
  "vehicles/badger.yaml": `line: B
class: orchard tractor
about: Narrow, for orchards.
built:
  - my=1957-1960
rules:
  - { if: my=1957, must: plant=K }
equipment:
  PT: { standard: my>=1960, optional: my=1958-1959 }
`,
  "vehicles/heron.yaml": `line: H
built: [my>=1959]
equipment:
  PT: { standard: all }
  WN: { optional: plant=D }
`,
  "components/hydraulics.yaml": `id: hydraulics
name: Hydraulics
order: 1
components:
  - { id: lift, name: lift, places: [lift arms] }
  - { id: pump, name: hydraulic pump, under: lift, places: [pump] }
  - { id: gasket, name: pump gasket, under: pump, places: [pump gasket] }
`,
  "components/frame.yaml": `id: frame
name: Frame
order: 2
`,
  "parts/pump.yaml": `component: pump
features:
  - { id: ribs, name: ribs on the body, made: cast, where: on the car, effort: 2, record: HY59-01 }
  - { id: bore, name: bore of the inlet, made: measured, unit: mm, tolerance: 0.5, where: in the hand, effort: 4, record: HY59-01 }
parts:
  - number: HT-101
    name: pump, short
    marks: { ribs: none, bore: 18 }
  - number: HT-102
    name: pump, long
    castings: ["4411"]
    marks: { ribs: two, bore: none }
`,
  "parts/gasket.yaml": `component: gasket
parts:
  - { number: HT-201, name: round gasket }
  - { number: HT-290, name: gasket kit }
`,
  "changes/1959/HY59-01.md": `---
id: HY59-01
title: Longer hydraulic pump
issued: 1959-02-01
kinds: [part, running]
components: [pump, gasket]
starts: during 1959
scope: line=B; at=K59#0412+
built:
  - { place: pump, part: HT-101, scope: line=B; at=K59#0412- }
  - { place: pump, part: HT-102, scope: line=B; at=K59#0412+ }
  - { place: lift arms, part: none, scope: line=H }
mixed:
  - { place: pump, parts: [HT-101, HT-102], scope: line=H; my=1959 }
supersedes:
  - { old: HT-101, new: HT-102, with: [HT-201] }
stands-in:
  - { part: HT-102, for: HT-101, verdict: on-conditions, with: [HT-201], do: Bleed the lift., scope: fitted=HT-201 }
  - { part: HT-101, for: HT-102, verdict: must-not-be-used, why: It runs dry. }
  - { part: HT-102, for: none, verdict: "yes", scope: line=H }
kits:
  - { kit: HT-290, contents: [{ part: HT-201, count: 2 }, { name: tube of grease }] }
service-only: [HT-201]
settings:
  - { name: oil pressure, window: 120..135, nominal: 130, unit: bar, conditions: hot, scope: line=B }
  - { name: oil pressure, window: ..90, unit: bar, component: lift, scope: line=H }
intervals:
  - { name: oil change, months: 12, scope: all }
procedures:
  - { when: after a pump was fitted, steps: Bleed the lift twice. }
tools:
  - { tool: T-7, use: to draw the shaft, scope: line=B }
left-alone: [The reservoir was looked at and stayed.]
links: [FR58-01]
cancels:
  - { record: FR58-01, scope: line=B }
---

The pump grew **longer**.
`,
  "changes/1958/FR58-01.md": `---
id: FR58-01
title: Frame drilled for a winch
issued: 1958-03-01
kinds: [equipment]
starts: start of 1958
scope: my>=1958
---

Four holes.
`,
  "bulletins/TB-1.md": `---
id: TB-1
title: Pumps
issued: 1959-05-01
about: Which pump goes where.
---

See [[HY59-01]], [[HT-102|the long pump]] and [[pump]].
`,
};
