/** Loaded before a measured script: when it ends, what it took of memory and processor goes to file descriptor 3. */
import { writeSync } from "node:fs";

process.once("exit", () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  writeSync(3, JSON.stringify({ kilobytes: maxRSS, seconds: (userCPUTime + systemCPUTime) / 1e6 }));
});
