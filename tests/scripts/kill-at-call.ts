/**
 * Loaded before a program (node --import): at one of its calls that read or change files in the folder CALLS_IN something happens.
 *
 *   AT_CALL=N   before the call of this number, counted from 1
 *   SIGNAL=S    the program gets this signal
 *   SAVE=FILE   somebody adds a line to this file
 */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";

const { CALLS_IN = "", AT_CALL, SIGNAL, SAVE } = process.env;
const functions = fs as unknown as Record<string, (...args: unknown[]) => unknown>;
let calls = 0;
for (const name of ["readFileSync", "openSync", "writeFileSync", "renameSync", "rmSync", "mkdirSync"]) {
  const call = functions[name] as (...args: unknown[]) => unknown;
  functions[name] = (...args) => {
    if (String(args[0]).startsWith(CALLS_IN) && ++calls === Number(AT_CALL)) {
      if (SAVE) fs.appendFileSync(SAVE, "# his\n");
      if (SIGNAL) process.kill(process.pid, SIGNAL);
    }
    return call(...args);
  };
}
syncBuiltinESMExports();
