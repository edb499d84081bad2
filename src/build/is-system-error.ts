/** A full disk or a folder that may not be written to is no fault of this program, and its trace tells nobody anything. */
export function isSystemError(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && "errno" in error && "syscall" in error;
}
