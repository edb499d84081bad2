/**
 * Loaded before a program (node --import): at one of its calls that change files in the folder CALLS_IN it gets a signal.
 *
 *   AT_CALL=N   before the call of this number, counted from 1
 *   SIGNAL=S    which
 */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";

const { CALLS_IN = "", AT_CALL, SIGNAL } = process.env;
const functions = fs as unknown as Record<string, (...args: unknown[]) => unknown>;
let calls = 0;
for (const name of ["openSync", "writeFileSync", "renameSync", "rmSync", "mkdirSync"]) {
  const call = functions[name] as (...args: unknown[]) => unknown;
  functions[name] = (...args) => {
    if (String(args[0]).startsWith(CALLS_IN) && args[1] !== "r" && ++calls === Number(AT_CALL))
      process.kill(process.pid, SIGNAL);
    return call(...args);
  };
}
syncBuiltinESMExports();
