/** Tells how far a build is: one line per finished stage; in a terminal also a bar while a stage takes long. */
import { barLine, type StageState, stageLine } from "./progress-lines.ts";

export interface Progress {
  /** Runs one stage and reports it when it ends. A stage that fails is reported as failed, and its error passed on. */
  stage<T>(name: string, verb: string, work: (stage: Stage) => T | Promise<T>): Promise<T>;
  /** One plain line between the stages. */
  note(line: string): void;
}

/** What the work of a stage can tell. All of it may be left out. */
export interface Stage {
  /** How many there will be in all. */
  expect(total: number): void;
  /** So many more are done. */
  advance(by?: number): void;
}

/** As much of an output stream as is needed here. */
export interface Output {
  write(text: string): unknown;
  readonly isTTY?: boolean;
  readonly columns?: number;
}

export interface Clock {
  now(): number;
  /** Calls again and again; what it returns ends that. */
  every(milliseconds: number, call: () => void): () => void;
}

const BAR_AFTER = 1000;
const REDRAW = 100;
const CLEAR_LINE = "\r\u001b[2K";

export function progressOn(output: Output, clock: Clock = REAL_CLOCK, terminal = isTerminal(output)): Progress {
  return {
    note: (line) => {
      output.write(`${line}\n`);
    },
    stage: async (name, verb, work) => {
      const started = clock.now();
      let count: number | undefined;
      let total: number | undefined;
      let drawings = 0;
      let drawn = started;
      const state = (): StageState => ({ name, verb, count, total, milliseconds: clock.now() - started });
      const draw = (): void => {
        if (clock.now() - started < BAR_AFTER || clock.now() - drawn < REDRAW) return;
        drawn = clock.now();
        output.write(CLEAR_LINE + barLine(state(), drawings++, output.columns ?? 80));
      };
      // Work that never waits lets no timer through: then the bar is drawn as things get done.
      const stop = terminal ? clock.every(REDRAW, draw) : () => {};
      const end = (words: string): void => {
        stop();
        output.write(`${drawings > 0 ? CLEAR_LINE : ""}${stageLine({ ...state(), verb: words })}\n`);
      };
      try {
        const result = await work({
          expect: (all) => {
            total = all;
          },
          advance: (by = 1) => {
            count = (count ?? 0) + by;
            if (terminal) draw();
          },
        });
        end(verb);
        return result;
      } catch (error) {
        end("failed");
        throw error;
      }
    },
  };
}

/** A reporter that says nothing: for tests and for commands whose output is read by programs. */
export const SILENT: Progress = {
  note: () => {},
  stage: async (_name, _verb, work) => work({ expect: () => {}, advance: () => {} }),
};

const REAL_CLOCK: Clock = {
  now: () => performance.now(),
  every: (milliseconds, call) => {
    const timer = setInterval(call, milliseconds);
    return () => clearInterval(timer);
  },
};

function isTerminal(output: Output): boolean {
  return output.isTTY === true && process.env.TERM !== "dumb";
}
