/** Slips in the files of systems and their components. */
// file, what stands there, what is written instead, everything that is said: "file field: message → hint"
export const COMPONENTS_SLIPS: [file: string, old: string, replacement: string, ...said: string[]][] = [
  [
    "components/hydraulics.yaml",
    "id: hydraulics",
    "id: hydraulic",
    "components/hydraulics.yaml id: the file of system 'hydraulic' is called components/hydraulics.yaml → call it components/hydraulic.yaml",
  ],
  [
    "components/hydraulics.yaml",
    "id: gasket,",
    "id: pump,",
    "components/hydraulics.yaml components.2.id: component 'pump' stands already under 'hydraulics' → give one of them another id",
    "components/hydraulics.yaml components.1.under: 'pump' ends up under itself → a component stands under a larger one",
    "components/hydraulics.yaml components.2.under: 'pump' ends up under itself → a component stands under a larger one",
  ],
  [
    "components/hydraulics.yaml",
    "id: gasket,",
    "id: Pump,",
    "components/hydraulics.yaml components.2.id: component 'Pump' and component 'pump' in components/hydraulics.yaml differ in capitals only → give one of them another id: not every web server tells such addresses apart",
  ],
  [
    "components/hydraulics.yaml",
    "id: gasket,",
    "id: Frame,",
    "components/hydraulics.yaml components.2.id: component 'Frame' and system 'frame' in components/frame.yaml differ in capitals only → give one of them another id: not every web server tells such addresses apart",
  ],
  [
    "components/hydraulics.yaml",
    "under: lift",
    "under: lfit",
    "components/hydraulics.yaml components.1.under: no component of this system is called 'lfit' → did you mean 'lift'?",
  ],
  [
    "components/hydraulics.yaml",
    "id: lift, name: lift,",
    "id: lift, name: lift, under: pump,",
    "components/hydraulics.yaml components.0.under: 'lift' ends up under itself → a component stands under a larger one",
    "components/hydraulics.yaml components.1.under: 'pump' ends up under itself → a component stands under a larger one",
    "components/hydraulics.yaml components.2.under: 'gasket' ends up under itself → a component stands under a larger one",
  ],
  [
    "components/hydraulics.yaml",
    "places: [pump gasket]",
    "places: [pump]",
    "components/hydraulics.yaml components.2.places.0: place 'pump' belongs already to 'pump' → name a place once",
  ],
  [
    "components/frame.yaml",
    "order: 2",
    "order: 2\ncomponents: [{ id: lift, name: lift }]",
    "components/hydraulics.yaml components.0.id: component 'lift' stands already under 'frame' → give one of them another id",
  ],
];
