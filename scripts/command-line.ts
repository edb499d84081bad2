/**
 * The words after a command. What cannot be understood is said in one line, with the usage below it, and nothing is done:
 *
 *     const { values, positionals } = readOptions(USAGE, { options: { data: { type: "string", default: "data" } } });
 *     if (positionals.length === 0) misuse(USAGE, "a file is missing");
 *
 * --help prints the usage, and needs no entry among the options.
 */
import { statSync } from "node:fs";
import { type ParseArgsConfig, parseArgs } from "node:util";
import { isSystemError } from "../src/build/is-system-error.ts";

/** Exit code of a command that was called wrongly. */
export const MISUSE = 2;

export function readOptions<const T extends ParseArgsConfig>(
  usage: string,
  config: T,
): ReturnType<typeof parseArgs<T>> {
  process.on("uncaughtException", endWithMessage);
  const asked = process.argv.slice(2);
  const kept = Object.keys(config.options ?? {}).find((name) => isKeptByNpm(name));
  if (kept !== undefined) return misuse(usage, `npm kept --${kept} for itself: write '--' in front of the options`);
  if (askedForHelp(asked)) {
    console.log(usage);
    process.exit(0);
  }
  try {
    return parseArgs<T>({ ...config, args: asked });
  } catch (error) {
    if (!isOfParseArgs(error)) throw error;
    return misuse(usage, inOneSentence(error.message));
  }
}

function endWithMessage(error: unknown): never {
  console.error(isSystemError(error) ? error.message : error);
  process.exit(1);
}

/** Ends the command. `why` names what was wrong, without a full stop. */
export function misuse(usage: string, why: string): never {
  console.error(`${why}\n\n${usage}`);
  process.exit(MISUSE);
}

/** For a folder that has to be there: a name mistyped is said before anything is done. */
export function mustBeFolder(usage: string, option: string, folder: string): string {
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return folder;
  return misuse(usage, `${option} ${folder}: there is no such folder`);
}

/** What stands before '--' goes to npm, which says nothing and does nothing with it: a check that was not made would look well. */
function isKeptByNpm(option: string): boolean {
  // npm itself has options of these names with values of its own.
  if (["json", "write", "force"].includes(option)) return process.env[`npm_config_${option}`] === "true";
  return process.env[`npm_config_${option.replaceAll("-", "_")}`] !== undefined;
}

/** After '--' stands no option: there it may be the name of a file. */
function askedForHelp(asked: readonly string[]): boolean {
  const end = asked.indexOf("--");
  return asked.slice(0, end < 0 ? undefined : end).some((word) => word === "--help" || word === "-h");
}

function isOfParseArgs(error: unknown): error is Error {
  return error instanceof Error && String((error as NodeJS.ErrnoException).code).startsWith("ERR_PARSE_ARGS");
}

/** Node goes on to explain how one would write a file name that begins with '-': nobody meant that. */
function inOneSentence(message: string): string {
  return message.split(/\.\s|\n/)[0] as string;
}
