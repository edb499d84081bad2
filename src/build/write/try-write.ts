/** Writes files, or says in one line why that was not possible: a full disk is no fault of this program, and a trace tells nobody anything. */
import { writeFiles } from "./write-files.ts";

/** Nothing when all is well. */
export function tryWrite(...all: Parameters<typeof writeFiles>): string | undefined {
  try {
    writeFiles(...all);
    return undefined;
  } catch (error) {
    if (!(error instanceof Error && "syscall" in error)) throw error;
    return `${error.message}. Nothing was written.`;
  }
}
