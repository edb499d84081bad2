import { describe, expect, test } from "vitest";
import { type Clock, progressOn, SILENT } from "../../src/build/progress.ts";

/** A clock that stands still until it is told how much time passes. */
function fakeClock(): Clock & { pass(milliseconds: number): void; readonly watched: boolean } {
  let time = 0;
  const timers = new Set<{ every: number; next: number; call: () => void }>();
  return {
    now: () => time,
    every: (every, call) => {
      const timer = { every, next: time + every, call };
      timers.add(timer);
      return () => timers.delete(timer);
    },
    pass: (milliseconds) => {
      for (const end = time + milliseconds; time < end; ) {
        time += 1;
        for (const timer of timers) {
          if (timer.next > time) continue;
          timer.next += timer.every;
          timer.call();
        }
      }
    },
    get watched() {
      return timers.size > 0;
    },
  };
}

function fakeOutput(columns = 80): { write(text: string): void; columns: number; written: string } {
  return {
    columns,
    written: "",
    write(text) {
      this.written += text;
    },
  };
}

const CLEAR = "\r\u001b[2K";

describe("in a file or a pipe", () => {
  test("a stage is one plain line, however long it takes", async () => {
    const output = fakeOutput();
    const clock = fakeClock();
    const result = await progressOn(output, clock, false).stage("pages", "written", (stage) => {
      stage.expect(500);
      for (let i = 0; i < 500; i++) {
        clock.pass(10);
        stage.advance();
      }
      return "done";
    });
    expect(result).toBe("done");
    expect(output.written).toBe("pages               500 written       5.0 s\n");
  });

  test("stages and notes come in their order", async () => {
    const output = fakeOutput();
    const report = progressOn(output, fakeClock(), false);
    await report.stage("records", "read", (stage) => stage.advance(134));
    report.note("2 warnings");
    await report.stage("styles", "bundled", () => {});
    expect(output.written.split("\n").map((line) => line.replace(/ +/g, " "))).toEqual([
      "records 134 read 0.0 s",
      "2 warnings",
      "styles bundled 0.0 s",
      "",
    ]);
  });
});

describe("in a terminal", () => {
  test("a stage of less than a second shows no bar", async () => {
    const output = fakeOutput();
    const clock = fakeClock();
    await progressOn(output, clock, true).stage("records", "read", () => clock.pass(999));
    expect(output.written).toBe("records                 read          1.0 s\n");
  });

  test("a stage of more than a second shows a bar, which its line then replaces", async () => {
    const output = fakeOutput();
    const clock = fakeClock();
    await progressOn(output, clock, true).stage("pages", "written", (stage) => {
      stage.expect(100);
      stage.advance(25);
      clock.pass(1040);
      stage.advance(75);
    });
    const [before, first, second, ...more] = output.written.split(CLEAR);
    expect(before).toBe("");
    expect(first).toContain("██████░░░░░░░░░░░░░░░░░░ 25 of 100");
    expect(second).toBe("pages               100 written       1.0 s\n");
    expect(more).toEqual([]);
  });

  test("work that never waits still moves the bar, ten times a second at most", async () => {
    const output = fakeOutput();
    let time = 0;
    const deafClock: Clock = { now: () => time, every: () => () => {} };
    await progressOn(output, deafClock, true).stage("pages", "written", (stage) => {
      for (; time < 2000; time += 1) stage.advance();
    });
    // From 1.0 s to 2.0 s, then the line.
    expect(output.written.split(CLEAR)).toHaveLength(1 + 10 + 1);
  });

  test("a bar is never as wide as the terminal", async () => {
    const output = fakeOutput(30);
    const clock = fakeClock();
    await progressOn(output, clock, true).stage("pages", "written", () => clock.pass(3000));
    for (const bar of output.written.split(CLEAR).slice(1, -1)) expect(bar.length).toBeLessThan(30);
  });
});

test("a stage that fails says so, leaves no timer behind and passes its error on", async () => {
  const output = fakeOutput();
  const clock = fakeClock();
  const fault = new Error("no space left");
  const work = progressOn(output, clock, true).stage("pages", "written", (stage) => {
    expect(clock.watched).toBe(true);
    stage.advance(3);
    throw fault;
  });
  await expect(work).rejects.toBe(fault);
  expect(clock.watched).toBe(false);
  expect(output.written).toBe("pages                 3 failed        0.0 s\n");
});

test("the silent reporter only does the work", async () => {
  SILENT.note("nobody hears this");
  await expect(SILENT.stage("pages", "written", (stage) => stage.advance())).resolves.toBeUndefined();
});
