/** All sums, in the order in which a page lists them. */
import type { SumId } from "../../records/shapes/sums.ts";
import { adjusterNotches } from "./adjuster-notches.ts";
import { brakeHydraulics } from "./brake-hydraulics.ts";
import { compressionRatio } from "./compression-ratio.ts";
import { displacement } from "./displacement.ts";
import { dwellAngle } from "./dwell-angle.ts";
import { endPlay } from "./end-play.ts";
import { gaugeDrill } from "./gauge-drill.ts";
import { pulley } from "./pulley.ts";
import { speedometer } from "./speedometer.ts";
import type { Sum } from "./sum.ts";
import { torqueAdapter } from "./torque-adapter.ts";

export const SUMS: Readonly<Record<SumId, Sum>> = {
  "adjuster-notches": adjusterNotches,
  "torque-adapter": torqueAdapter,
  pulley,
  speedometer,
  "brake-hydraulics": brakeHydraulics,
  displacement,
  "compression-ratio": compressionRatio,
  "gauge-drill": gaugeDrill,
  "end-play": endPlay,
  "dwell-angle": dwellAngle,
};
