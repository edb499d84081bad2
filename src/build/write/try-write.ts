/** Writes files, and finishes what was cut off, or says in one line why that was not possible. */
import { isSystemError } from "../is-system-error.ts";
import { finishWriting, NotWritten } from "./unfinished.ts";
import { writeFiles } from "./write-files.ts";

/** Nothing when all is well. */
export function tryWrite(...all: Parameters<typeof writeFiles>): string | undefined {
  return faultOf(() => writeFiles(...all));
}

/** Before a folder is read that shall be written: half of what a killed command wrote would look like faults of the data. */
export function finishFirst(folder: string, say: (line: string) => void): "nothing" | "finished" | "fault" {
  let finished = false;
  const fault = faultOf(() => {
    finished = finishWriting(folder);
  });
  if (fault !== undefined) say(fault);
  else if (finished) say(`A command was killed while it wrote into ${folder}: what it had begun is finished now.`);
  return fault !== undefined ? "fault" : finished ? "finished" : "nothing";
}

function faultOf(write: () => void): string | undefined {
  try {
    write();
    return undefined;
  } catch (error) {
    if (!isSystemError(error) && !(error instanceof NotWritten)) throw error;
    return `${error.message}. Nothing was written.`;
  }
}
