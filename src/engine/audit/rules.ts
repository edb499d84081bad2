/** Every rule of the audit, in the order in which the documentation tells them: cars, parts, deliveries, figures, marks, words. */
import type { Rule } from "./rule.ts";
import { aimOutsideWindow } from "./rules/aim-outside-window.ts";
import { cancellationEnded } from "./rules/cancellation-ended.ts";
import { cancelsNothing } from "./rules/cancels-nothing.ts";
import { cancelsWithdrawn } from "./rules/cancels-withdrawn.ts";
import { citesWhatEnded } from "./rules/cites-what-ended.ts";
import { closedPermission } from "./rules/closed-permission.ts";
import { companionNotCurrent } from "./rules/companion-not-current.ts";
import { companionRefusedLater } from "./rules/companion-refused-later.ts";
import { conflictMarks } from "./rules/conflict-marks.ts";
import { deliveredButRefused } from "./rules/delivered-but-refused.ts";
import { deliveryCircle } from "./rules/delivery-circle.ts";
import { endedInWordsOnly } from "./rules/ended-in-words-only.ts";
import { exceptionNamedOnce } from "./rules/exception-named-once.ts";
import { figurePromised } from "./rules/figure-promised.ts";
import { handLeftOut } from "./rules/hand-left-out.ts";
import { implausibleFigure } from "./rules/implausible-figure.ts";
import { insteadWithdrawn } from "./rules/instead-withdrawn.ts";
import { issuedFarOff } from "./rules/issued-far-off.ts";
import { kitContentNotCurrent } from "./rules/kit-content-not-current.ts";
import { kitInItself } from "./rules/kit-in-itself.ts";
import { misleadingWords } from "./rules/misleading-words.ts";
import { mixedUnits } from "./rules/mixed-units.ts";
import { namesItself } from "./rules/names-itself.ts";
import { nearlyTheSame } from "./rules/nearly-the-same.ts";
import { noCarToFit } from "./rules/no-car-to-fit.ts";
import { noSuchCar } from "./rules/no-such-car.ts";
import { nothingTellsApart } from "./rules/nothing-tells-apart.ts";
import { oneHandOnly } from "./rules/one-hand-only.ts";
import { oneNameTwoConditions } from "./rules/one-name-two-conditions.ts";
import { onlyPaintTells } from "./rules/only-paint-tells.ts";
import { otherComponent } from "./rules/other-component.ts";
import { otherComponentRefused } from "./rules/other-component-refused.ts";
import { otherDirectionUnsaid } from "./rules/other-direction-unsaid.ts";
import { ownNumberNotUsed } from "./rules/own-number-not-used.ts";
import { partNowhere } from "./rules/part-nowhere.ts";
import { permittedAndRefused } from "./rules/permitted-and-refused.ts";
import { refusalWithoutEffect } from "./rules/refusal-without-effect.ts";
import { repairPartBuiltIn } from "./rules/repair-part-built-in.ts";
import { restsOnWithdrawn } from "./rules/rests-on-withdrawn.ts";
import { runningChangeGap } from "./rules/running-change-gap.ts";
import { runningChangeWithoutPlant } from "./rules/running-change-without-plant.ts";
import { splitLeavesCarsOut } from "./rules/split-leaves-cars-out.ts";
import { toldToFitRefused } from "./rules/told-to-fit-refused.ts";
import { twoDeliveries } from "./rules/two-deliveries.ts";
import { twoFiguresInForce } from "./rules/two-figures-in-force.ts";
import { twoOrderLists } from "./rules/two-order-lists.ts";
import { twoPartsInOnePlace } from "./rules/two-parts-in-one-place.ts";
import { unknownUnit } from "./rules/unknown-unit.ts";
import { withdrawnLeavesGap } from "./rules/withdrawn-leaves-gap.ts";
import { wrongHand } from "./rules/wrong-hand.ts";
import { yearLeftOut } from "./rules/year-left-out.ts";

export const RULES: readonly Rule[] = [
  noSuchCar,
  twoPartsInOnePlace,
  runningChangeWithoutPlant,
  runningChangeGap,
  yearLeftOut,
  ownNumberNotUsed,
  repairPartBuiltIn,
  wrongHand,
  handLeftOut,
  namesItself,
  otherComponent,
  otherComponentRefused,
  permittedAndRefused,
  closedPermission,
  otherDirectionUnsaid,
  noCarToFit,
  refusalWithoutEffect,
  toldToFitRefused,
  oneHandOnly,
  partNowhere,
  deliveryCircle,
  twoDeliveries,
  splitLeavesCarsOut,
  deliveredButRefused,
  twoOrderLists,
  companionNotCurrent,
  companionRefusedLater,
  kitContentNotCurrent,
  kitInItself,
  twoFiguresInForce,
  oneNameTwoConditions,
  mixedUnits,
  unknownUnit,
  aimOutsideWindow,
  implausibleFigure,
  figurePromised,
  exceptionNamedOnce,
  onlyPaintTells,
  nothingTellsApart,
  endedInWordsOnly,
  cancelsNothing,
  cancelsWithdrawn,
  cancellationEnded,
  citesWhatEnded,
  restsOnWithdrawn,
  insteadWithdrawn,
  issuedFarOff,
  withdrawnLeavesGap,
  misleadingWords,
  conflictMarks,
  nearlyTheSame,
];
