/**
 * Installs what is missing before an npm script runs (prestart, pretest, ...).
 *
 * This file runs before anything is installed and on whatever Node npm itself has, from 18 on: plain JavaScript, no
 * dependencies. Everything it says goes to stderr, because stdout belongs to the command that follows.
 */
import { spawnSync } from "node:child_process";
import { existsSync, realpathSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const WANTED_NODE = 24;

/**
 * Why an installation is needed; undefined when none is.
 *
 * npm writes node_modules/.package-lock.json last, so that file marks a finished installation: without it there was
 * none, or one was interrupted. Is it older than package-lock.json, then other versions are wanted by now. And the
 * Node of the project itself has to run.
 */
export function decide({ installed, wanted, node }) {
  if (installed === undefined) return "nothing is installed yet";
  if (wanted !== undefined && installed < wanted) return "package-lock.json is newer than what is installed";
  if (node === undefined) return "the project's own Node is missing or does not run";
  if (node < WANTED_NODE) return `the project's own Node is version ${node}, ${WANTED_NODE} is needed`;
  return undefined;
}

/** What decide() needs to know about a folder. */
export function look(root) {
  return {
    installed: changedAt(join(root, "node_modules", ".package-lock.json")),
    wanted: changedAt(join(root, "package-lock.json")),
    node: nodeVersion(root),
  };
}

/** The command that installs. Development packages are always wanted: the project's own Node is one of them. */
export function installCommand(root, env, platform = process.platform) {
  // Windows cannot delete a program that runs, and `npm ci` deletes node_modules with the Node that runs this file.
  const exact = existsSync(join(root, "package-lock.json")) && !(platform === "win32" && runsFromInside(root));
  const options = [exact ? "ci" : "install", "--include=dev", "--loglevel=error", "--no-audit", "--no-fund"];
  // Inside an npm script npm tells where it is and which Node it runs on: take these, not what PATH happens to name.
  if (env.npm_execpath?.endsWith(".js"))
    return { file: env.npm_node_execpath || process.execPath, args: [env.npm_execpath, ...options], shell: false };
  return { file: "npm", args: options, shell: platform === "win32" };
}

function changedAt(file) {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs;
}

function nodeVersion(root) {
  const file =
    process.platform === "win32"
      ? join(root, "node_modules", "node", "bin", "node.exe")
      : join(root, "node_modules", ".bin", "node");
  if (!existsSync(file)) return undefined;
  const { status, stdout } = spawnSync(file, ["--version"], { encoding: "utf8" });
  const major = Number(/^v(\d+)\./.exec(stdout ?? "")?.[1]);
  return status === 0 && major > 0 ? major : undefined;
}

function runsFromInside(root) {
  return process.execPath.toLowerCase().startsWith(join(root, "node_modules").toLowerCase());
}

function main() {
  const root = dirname(dirname(fileURLToPath(import.meta.url)));
  const reason = decide(look(root));
  if (reason === undefined) return 0;
  const { file, args, shell } = installCommand(root, process.env);
  console.error(`Installing the packages of this project (${reason}); the first time takes about half a minute.`);
  const { status, signal, error } = spawnSync(file, args, { cwd: root, shell, stdio: ["ignore", 2, 2] });
  if (signal) return 130;
  if (status !== 0) {
    console.error(
      `The installation failed: npm ${error ? `could not be started (${error.message})` : "says why above"}. Nothing else was done; run the same command again when that is mended.`,
    );
    return 1;
  }
  const still = decide(look(root));
  if (still === undefined) return 0;
  console.error(
    `npm installed the packages, but ${still}. If npm is told to skip install scripts (npm config get ignore-scripts), allow them for this folder and run the same command again.`,
  );
  return 1;
}

// Only when run as a program: tests import the functions.
if (process.argv[1] && realpathSync(process.argv[1]) === realpathSync(fileURLToPath(import.meta.url)))
  process.exitCode = main();
