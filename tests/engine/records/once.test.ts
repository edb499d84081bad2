import { expect, test } from "vitest";
import { once } from "../../../src/engine/records/once.ts";

test("it is made when it is first asked for, and only then", () => {
  let made = 0;
  const list = once(() => [++made]);
  expect(made).toBe(0);
  expect(list()).toEqual([1]);
  expect(list()).toBe(list());
  expect(made).toBe(1);
});
