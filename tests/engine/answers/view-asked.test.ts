import { test } from "vitest";
import { answerAsk } from "../../../src/engine/answers/answer-ask.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

test("scratch", () => {
  const k = askedKnowledge();
  for (const q of [
    "59 Badger step fit a 60", "60 Badger step fit a 59","steps off a 60 Badger on a 59 Heron","steps from a 60 on a 59 Badger", "FR-2L on a 59 Badger", "FR-2L on the right of a 60 Badger","FR-2 on a 60 Badger", "FR-1L on a 60 Badger", "FR-2L on a 59 Heron", 
    "what replaces HT-101", "HT-101 HT-102 how to tell apart", "which step", "which step is in a 58 Badger", "retrofit step 59 Badger", "oil pressure", "oil pressure Badger", "oil pressure 125 bar Badger", "step bolt torque 45 N·m 59 Badger","lift oil pressure Heron","step bolt torque 59 Badger", "step bolt torque",
    "how often oil change", "does HY59-01 apply to a 59 Heron", "what changed 60 Badger", "what changed 60", "what changed between 58 and 60 Badger frame", "step for a 58 Badger", "left step for a 58 Badger", "step with five holes", "zeppelin", "zeppelin step", "step","pump", "HT-099", "4411", "fit a step", "fit a step on a 59 Badger", "order a step 58 Badger","does it fit", "step without a winch Heron","winch", "steps 59 60 Badger", "Badger and Heron step fit"
  ]) {
    const a: any = answerAsk(k, { text: q, car: {} });
    console.log(q, "|", a.verdict, "|", a.reading.chips.map((c: any) => c.kind + ":" + c.label + (c.donor ? "<D>" : "")).join(","), "|", a.reading.asked.map((x: any) => x.asked).join(), "| rest", a.reading.rest, "|", JSON.stringify(a.answers.map((x: any) => [x.asked, x.verdict, x.says])), a.ask ? JSON.stringify(a.ask) : "", a.words);
  }
});
