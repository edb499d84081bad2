/** An nginx for the test of the server configuration: one that is there, or else one that is installed now. */
import { spawnSync } from "node:child_process";
import { existsSync, rmSync, writeFileSync } from "node:fs";
import { isDebian, run } from "./browser.ts";
import { onPath } from "./on-path.ts";

/** Folders that hold servers are often on the PATH of root alone. */
const WELL_KNOWN = ["/usr/sbin/nginx", "/usr/local/sbin/nginx", "/usr/local/bin/nginx", "/opt/homebrew/bin/nginx"];

/** The first nginx that runs: $NGINX, one on PATH, one at a usual place. */
export function findWebServer(env: NodeJS.ProcessEnv = process.env): string | undefined {
  const name = process.platform === "win32" ? "nginx.exe" : "nginx";
  return [env.NGINX ?? "", ...onPath([name], env), ...WELL_KNOWN].find(runs);
}

/** If there is one, take it. Else, as root on Debian, install Debian's package, without starting it. Else undefined. */
export function ensureWebServer(): string | undefined {
  const found = findWebServer();
  if (found || !isDebian() || process.getuid?.() !== 0) return found;
  console.log("No nginx is here: installing Debian's package.");
  run("apt-get", ["update", "-qq"]);
  withoutServices(() => run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "nginx-light"]));
  return findWebServer();
}

/** Debian's way to say that what is installed must not be started: a program at this place that answers 101. */
function withoutServices(install: () => void): void {
  const policy = "/usr/sbin/policy-rc.d";
  // One that is there already is a rule of this machine, and stays.
  const isOurs = !existsSync(policy);
  if (isOurs) writeFileSync(policy, "#!/bin/sh\nexit 101\n", { mode: 0o755 });
  try {
    install();
  } finally {
    if (isOurs) rmSync(policy);
  }
}

export const HOW_TO_GET_A_WEB_SERVER =
  "No nginx could be found or installed, so its configuration is not tested: install nginx, or set NGINX to the path of one.";

function runs(file: string): boolean {
  if (!file || !existsSync(file)) return false;
  const { status, stderr } = spawnSync(file, ["-v"], { encoding: "utf8", timeout: 30_000 });
  return status === 0 && stderr.includes("nginx version: ");
}
