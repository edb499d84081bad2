import { z } from "zod";
import { id, partNumber, words } from "./common.ts";

/**
 * The sums that the house can do, with the names of what goes in. They stand here so that an editor's file is checked like any
 * other; the sums themselves stand in settings/sums/, and a test holds the two together.
 */
export const SUM_INPUTS = {
  "adjuster-notches": ["teeth", "threads", "notches", "turn", "newTeeth", "newThreads"],
  "torque-adapter": ["torque", "setting", "wrench", "adapter", "angle"],
  pulley: ["engine", "crank", "driven", "newDriven"],
  speedometer: ["driveTeeth", "ratio", "ringTeeth", "pinionTeeth", "turns", "radius", "diameter", "fitted", "cable"],
  "brake-hydraulics": ["force", "lever", "booster", "master", "newMaster", "wheel", "newWheel"],
  displacement: ["bore", "stroke", "cylinders"],
  "compression-ratio": [
    ...["swept", "bore", "stroke", "chamber", "gasketBore", "gasket", "deck", "dish"],
    ...["newChamber", "newGasket"],
  ],
  "gauge-drill": ["low", "high", "goes", "stays", "series"],
  "end-play": ["play", "groove", "part", "washers", "washer", "was", "becomes", "pieces", "wanted"],
  "dwell-angle": ["cylinders", "dwell", "newDwell"],
} as const satisfies Record<string, readonly string[]>;
export type SumId = keyof typeof SUM_INPUTS;

const given = z
  .union([
    words.describe("As a person would type it: '20', '9 in', '0.022 in'."),
    z.strictObject({
      mark: id.describe("A feature of the part …"),
      part: partNumber.describe("… of this number, whatever the car."),
    }),
    z.strictObject({
      mark: id.describe("A feature of whichever part is on the car …"),
      component: id.describe("… for this component: as found, or else as built."),
    }),
    z.strictObject({
      setting: words.describe("The name of a setting, the one in force for the car."),
      side: z.enum(["low", "high", "nominal"]).describe("Which of its values."),
    }),
  ])
  .describe("Where a figure comes from.");

export const sums = z
  .strictObject({
    sums: z.array(
      z.strictObject({
        sum: z.enum(Object.keys(SUM_INPUTS) as SumId[]).describe("Which of the house's sums it is."),
        title: words.describe("What it is done for, in a few words. Each title once."),
        record: id.describe("The change record that brings it about and gives the figures that are typed in here."),
        component: id.describe("The component it is about; it is shown there."),
        inputs: z.record(z.string(), given).describe("By the name of an input: its figure."),
      }),
    ),
  })
  .describe("sums.yaml: shop sums with figures that the records give, ready to be done.");
export type SumsFile = z.infer<typeof sums>;
/** A sum that a change brings about, with the figures on record. */
export type SumJob = SumsFile["sums"][number];
