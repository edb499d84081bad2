import { expect, test } from "vitest";
import { nothingReported } from "../../../src/engine/interchange/reported.ts";

test("nothing was seen; anew each time, as what is worked out for a question is kept with it", () => {
  const seen = nothingReported();
  expect([seen.parts.size, seen.at.size, seen.perhapsAt.size, seen.misfits, seen.doubtful.size]).toEqual([
    0,
    0,
    0,
    [],
    0,
  ]);
  expect(nothingReported()).not.toBe(seen);
});
