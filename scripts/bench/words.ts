/** The words of the generated maker: all of it is invented, and large enough for many thousand records. */

export const YEARS = { first: 1961, last: 1970 } as const;

export const LINES = [
  { id: "D", label: "Dunlin", class: "compact" },
  { id: "W", label: "Whinchat", class: "compact" },
  { id: "F", label: "Fieldfare", class: "mid-size" },
  { id: "R", label: "Redpoll", class: "mid-size" },
  { id: "K", label: "Kestrel Wagon", class: "wagon" },
  { id: "G", label: "Garganey", class: "full-size" },
] as const;

/** Lines that mostly share their parts. */
export const FAMILIES: readonly (readonly string[])[] = [["D", "W"], ["F", "R", "K"], ["G"]];

export const PLANTS = ["N", "E"] as const;

/** Each system with the word that its components begin with. */
export const SYSTEMS: readonly (readonly [id: string, name: string, word: string])[] = [
  ["brakes", "Brakes", "brake"],
  ["steering", "Steering", "steering"],
  ["front-suspension", "Front suspension", "front suspension"],
  ["rear-suspension", "Rear suspension", "rear suspension"],
  ["engine", "Engine", "engine"],
  ["lubrication", "Lubrication", "oil pump"],
  ["fuel", "Fuel system", "fuel pump"],
  ["carburettor", "Carburettor", "carburettor"],
  ["ignition", "Ignition", "distributor"],
  ["cooling", "Cooling", "water pump"],
  ["charging", "Charging", "generator"],
  ["starting", "Starting", "starter"],
  ["clutch", "Clutch", "clutch"],
  ["gearbox", "Gearbox", "gearbox"],
  ["propeller-shaft", "Propeller shaft", "propeller shaft"],
  ["rear-axle", "Rear axle", "rear axle"],
  ["instruments", "Instruments", "instrument"],
  ["body", "Body", "door"],
  ["heating", "Heating", "heater"],
  ["wipers", "Wipers", "wiper"],
];

/** Pieces that a component may be. Twenty systems of seven or eight of them make 150 components. */
export const PIECES: readonly (readonly [name: string, alias: string])[] = [
  ["housing", "casing"],
  ["shaft", "spindle"],
  ["seal", "packing"],
  ["bearing", "bush"],
  ["bracket", "mount"],
  ["lever", "arm"],
  ["spring", "coil"],
  ["valve", "flap"],
];

export const REASONS = [
  "The old one worked loose on rough roads before the first service was due",
  "The supplier moved to another alloy, and the wall had to become thicker for it",
  "Workshops in the cold districts reported cracks after the second winter",
  "Noise at town speed was the most frequent complaint of the year before",
  "Water found its way in along the thread and the part stuck when it was needed",
  "The heavier tools of the new press leave a longer flange",
  "The clearance closed up when the neighbouring part grew hot",
  "Cars that tow wore it out in half the distance",
];

export const REMEDIES = [
  "Look at the mark before anything is ordered, and note the number on the order",
  "Take it off in one piece, clean the seat and fit a fresh washer",
  "Turn it home by hand, then a quarter of a turn with the wrench",
  "Grease the lip lightly; too much of it runs onto the lining",
  "Measure twice, cold, and write both figures on the job card",
  "Drive a mile at walking pace and look at it again",
  "Keep the old part with the car until the customer has seen it",
  "Do both sides of the car, however good the other one looks",
];

export const RESULTS = [
  "It rattles over kerbs and nobody finds it.",
  "The pedal drops a little further every week.",
  "The light stays on, although everything reads well.",
  "It fits, holds for a thousand miles, and then lets go.",
  "The thread pulls out of the housing.",
  "The car pulls to one side on a wet road.",
];

export const CAUTIONS = [
  "The spring is under load: hold it with the clamp before the last bolt comes out.",
  "Hot water stands in the hose long after the engine was stopped.",
  "Support the car on stands; a jack alone lets it down without a sound.",
  "Take the lead off the battery first.",
];

export const CUSTOMER = [
  "Two cars that look the same can differ here; we read the plate before we order.",
  "It costs a little more now and saves the same job next year.",
  "Nothing is wrong with the old one as long as it is left in its place.",
];

export const FEATURES = [
  { id: "ribs", name: "ribs on the outside", made: "cast", where: "on the car", effort: 2 },
  { id: "dot", name: "dot of paint on the rim", made: "painted", where: "on the car", effort: 1 },
  {
    id: "length",
    name: "length over all",
    made: "measured",
    where: "on the bench",
    effort: 4,
    unit: "mm",
    tolerance: 0.2,
  },
] as const;

export const QUANTITIES = [
  { name: "end play", unit: "mm", low: 0.1, step: 0.05 },
  { name: "clearance", unit: "in", low: 0.01, step: 0.002 },
  { name: "tightening torque", unit: "ft-lb", low: 20, step: 5 },
  { name: "pressure", unit: "psi", low: 30, step: 5 },
] as const;
