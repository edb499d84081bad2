/** Writes files, or says in one line why that was not possible. */
import { isSystemError } from "../is-system-error.ts";
import { writeFiles } from "./write-files.ts";

/** Nothing when all is well. */
export function tryWrite(...all: Parameters<typeof writeFiles>): string | undefined {
  try {
    writeFiles(...all);
    return undefined;
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return `${error.message}. Nothing was written.`;
  }
}
