import { expect, onTestFinished, test, vi } from "vitest";
import { Bursts } from "../../../src/build/dev/bursts.ts";

const PAUSES = { quiet: 20, most: 100 };

function begin(work: () => Promise<void> = async () => {}): {
  bursts: Bursts;
  done: number[];
  pass: (ms: number) => Promise<void>;
} {
  vi.useFakeTimers();
  onTestFinished(() => void vi.useRealTimers());
  const done: number[] = [];
  const start = Date.now();
  const bursts = new Bursts(async () => {
    done.push(Date.now() - start);
    await work();
  }, PAUSES);
  return { bursts, done, pass: async (ms) => void (await vi.advanceTimersByTimeAsync(ms)) };
}

test("many events at once are answered once, when it is quiet", async () => {
  const { bursts, done, pass } = begin();
  for (let i = 0; i < 3; i++) {
    bursts.event();
    await pass(10);
  }
  await pass(1000);
  expect(done).toEqual([40]);
});

test("events without end are answered in between", async () => {
  const { bursts, done, pass } = begin();
  for (let i = 0; i < 25; i++) {
    bursts.event();
    await pass(10);
  }
  expect(done).toEqual([100, 200]);
});

test("what comes during the work is answered after it, never at the same time", async () => {
  let finish = (): void => {};
  const { bursts, done, pass } = begin(
    () =>
      new Promise((resolve) => {
        finish = resolve;
      }),
  );
  bursts.event();
  await pass(20);
  bursts.event();
  bursts.event();
  await pass(500);
  expect(done).toEqual([20]);
  finish();
  await pass(500);
  expect(done).toEqual([20, 520]);
});

test("nothing is answered after the end", async () => {
  const { bursts, done, pass } = begin();
  bursts.event();
  bursts.close();
  bursts.event();
  await pass(500);
  expect(done).toEqual([]);
});
