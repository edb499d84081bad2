/**
 * Loaded before a program (node --import), it kills that program with SIGKILL at a chosen point of its work. Points are the calls that
 * change files and the messages to child processes (esbuild and Pagefind write files of their own), each named by function, file
 * and how often it was met so far. The build's own folder is called "build", others "another build":
 *
 *     promises.writeFile build/data/graph.json 1
 *     after publishing: promises.rm another build 1
 *
 *   KILL_AT=POINT      dies there, before the call; of a file that is to be written, half is written
 *   POINTS_INTO=FILE   lives, and writes down every point that it came by
 */
import childProcess, { type ChildProcess } from "node:child_process";
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";

const CHANGES = "writeFile mkdir rm rename symlink cp copyFile unlink rmdir utimes appendFile".split(" ");
const { KILL_AT, POINTS_INTO } = process.env;
const original = { ...fs };
const met = new Map<string, number>();
/** What this file itself writes is no point. */
let ownWork = false;
let isPublished = false;

type Call = (...args: unknown[]) => unknown;

function watch(of: object, prefix: string, name: string): void {
  const functions = of as Record<string, Call | undefined>;
  const call = functions[name];
  if (!call) return;
  functions[name] = function (this: unknown, ...args: unknown[]): unknown {
    pass(`${prefix}${name} ${placeOf(name, args)}`, () => writeHalf(name, args));
    return call.apply(this, args);
  };
}

function pass(what: string, half: () => void): void {
  if (ownWork) return;
  ownWork = true;
  const named = `${isPublished ? "after publishing: " : ""}${what}`;
  const count = (met.get(named) ?? 0) + 1;
  met.set(named, count);
  const point = `${named} ${count}`;
  if (/^promises.rename build.link/.test(point)) isPublished = true;
  if (POINTS_INTO) original.appendFileSync(POINTS_INTO, `${point}\n`);
  if (point === KILL_AT) {
    half();
    process.kill(process.pid, "SIGKILL");
  }
  ownWork = false;
}

/** The file inside the build, or both where something is put in another place; builds have names of chance. */
function placeOf(name: string, args: unknown[]): string {
  return args
    .slice(0, /^(rename|symlink|cp|copyFile)/.test(name) ? 2 : 1)
    .map((path) => String(path).replace(/^.*?\.yearmark([\\/]|$)/, ""))
    .map((path) =>
      path.replace(/^[^\\/]*-(\d+)-[0-9a-f]{12}/, (_, pid) =>
        Number(pid) === process.pid ? "build" : "another build",
      ),
    )
    .join(" to ");
}

function writeHalf(name: string, [path, value]: unknown[]): void {
  if (/^writeFile/.test(name) && (typeof value === "string" || value instanceof Uint8Array))
    original.writeFileSync(String(path), value.slice(0, value.length >> 1));
}

function watchMessages(program: unknown, child: ChildProcess): ChildProcess {
  const pipe = child.stdin;
  const write = pipe?.write.bind(pipe) as Call | undefined;
  const name = /pagefind|esbuild/.exec(String(program))?.[0] ?? "a program";
  if (pipe && write)
    Object.assign(pipe, {
      write: (...args: unknown[]) => {
        pass(`message to ${name}`, () => write(...args));
        return write(...args);
      },
    });
  return child;
}

for (const name of CHANGES) {
  watch(fs, "", `${name}Sync`);
  watch(fs, "", name);
  watch(fs.promises, "promises.", name);
}
const { spawn } = childProcess;
childProcess.spawn = ((...args: Parameters<typeof spawn>) => watchMessages(args[0], spawn(...args))) as typeof spawn;
syncBuiltinESMExports();
