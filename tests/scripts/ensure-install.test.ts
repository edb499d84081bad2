import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { decide, installCommand, look } from "../../scripts/ensure-install.mjs";

describe("when something is installed", () => {
  // the last installation, the lock file, major version of our Node; why, or undefined for "it is not"
  test.each([
    [undefined, 100, undefined, "nothing is installed yet"],
    [undefined, 100, 24, "nothing is installed yet"], // interrupted
    [200, 100, 24, undefined],
    [100, 100, 24, undefined],
    [99, 100, 24, "package-lock.json is newer than what is installed"],
    [200, 100, undefined, "the project's own Node is missing or does not run"],
    [200, 100, 20, "the project's own Node is version 20, 24 is needed"],
    [200, 100, 26, undefined],
    [200, undefined, 24, undefined],
  ])("installed %s, lock file %s, Node %s: %s", (installed, wanted, node, reason) => {
    expect(decide({ installed, wanted, node })).toBe(reason);
  });
});

let root: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "ensure install ")); // spaces in paths are common
});
afterEach(() => rmSync(root, { recursive: true }));

function write(path: string, text: string, changed = 100): void {
  const file = join(root, path);
  mkdirSync(join(file, ".."), { recursive: true });
  writeFileSync(file, text);
  chmodSync(file, 0o755);
  utimesSync(file, changed, changed);
}

function ownNode(text: string): void {
  write("node_modules/.bin/node", text);
}

describe.skipIf(process.platform === "win32")("what is seen in a folder", () => {
  test("a fresh clone", () => {
    write("package-lock.json", "{}");
    expect(look(root)).toEqual({ installed: undefined, wanted: 100_000, node: undefined });
  });

  test("a finished installation", () => {
    write("package-lock.json", "{}");
    write("node_modules/.package-lock.json", "{}", 200);
    ownNode("#!/bin/sh\necho v24.21.0\n");
    expect(look(root)).toEqual({ installed: 200_000, wanted: 100_000, node: 24 });
  });

  // our Node, what is made of it
  test.each([
    ["#!/bin/sh\necho v18.0.0\n", 18],
    ["#!/bin/sh\nexit 1\n", undefined],
    ["#!/bin/sh\necho v24.0.0\nexit 1\n", undefined],
    ["#!/no/such/shell\n", undefined],
    ["\u007fELF of another machine", undefined],
    ["", undefined],
  ])("a Node that is %j", (text, node) => {
    ownNode(text);
    expect(look(root).node).toBe(node);
  });
});

describe("the command", () => {
  const inNpm = { npm_execpath: "/lib/npm/bin/npm-cli.js", npm_node_execpath: "/bin/node20" };

  test("is the npm that is running, on the Node it runs on, and takes the versions of the lock file", () => {
    write("package-lock.json", "{}");
    const { file, args } = installCommand(root, inNpm, "linux");
    expect([file, ...args.slice(0, 3)]).toEqual(["/bin/node20", "/lib/npm/bin/npm-cli.js", "ci", "--include=dev"]);
  });

  test("without a lock file is an ordinary installation", () => {
    expect(installCommand(root, inNpm, "linux").args[1]).toBe("install");
  });

  test("outside npm is the npm on PATH, which on Windows only a shell can start", () => {
    expect(installCommand(root, {}, "linux")).toMatchObject({ file: "npm", shell: false });
    expect(installCommand(root, {}, "win32")).toMatchObject({ file: "npm", shell: true });
  });
});

describe.skipIf(process.platform === "win32")("as a program", () => {
  /** A stand-in for npm that writes what it was asked for and then does what the test says. */
  function run(npm: string): { status: number | null; stdout: string; stderr: string; asked: string } {
    write("package-lock.json", "{}");
    write("npm-cli.js", `require("fs").writeFileSync("asked", process.argv.slice(2).join(" "));\n${npm}`);
    mkdirSync(join(root, "scripts"), { recursive: true });
    cpSync("scripts/ensure-install.mjs", join(root, "scripts/ensure-install.mjs"));
    const env = { ...process.env, npm_execpath: join(root, "npm-cli.js"), npm_node_execpath: process.execPath };
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, "scripts/ensure-install.mjs")], {
      encoding: "utf8",
      env,
      cwd: tmpdir(),
    });
    let asked = "";
    try {
      asked = readFileSync(join(root, "asked"), "utf8");
    } catch {}
    return { status, stdout, stderr, asked };
  }

  const INSTALL = `
    const fs = require("fs");
    fs.mkdirSync("node_modules/.bin", { recursive: true });
    fs.writeFileSync("node_modules/.bin/node", "#!/bin/sh\\necho v24.21.0\\n", { mode: 0o755 });
    fs.writeFileSync("node_modules/.package-lock.json", "{}");
    console.log("added 228 packages");`;

  test("installs what is missing, says so in one line, and keeps stdout for the command that follows", () => {
    const { status, stdout, stderr, asked } = run(INSTALL);
    expect(asked).toBe("ci --include=dev --loglevel=error --no-audit --no-fund");
    expect(stderr.split("\n")).toEqual([
      "Installing the packages of this project (nothing is installed yet); the first time takes about half a minute.",
      "added 228 packages",
      "",
    ]);
    expect([status, stdout]).toEqual([0, ""]);
  });

  test("says and does nothing when all is there", () => {
    write("node_modules/.package-lock.json", "{}", 200);
    ownNode("#!/bin/sh\necho v24.21.0\n");
    expect(run("")).toEqual({ status: 0, stdout: "", stderr: "", asked: "" });
  });

  test("a failed installation is one clear message and stops the command", () => {
    const { status, stderr } = run(`console.error("npm error network"); process.exit(7);`);
    expect(status).toBe(1);
    expect(stderr.split("\n").slice(1)).toEqual([
      "npm error network",
      "The installation failed: npm says why above. Nothing else was done; run the same command again when that is mended.",
      "",
    ]);
  });

  test("an installation that leaves the project without its Node is a failure, too", () => {
    const { status, stderr } = run(`${INSTALL}\nfs.rmSync("node_modules/.bin/node");`);
    expect(status).toBe(1);
    expect(stderr).toContain("the project's own Node is missing or does not run");
    expect(stderr).toContain("ignore-scripts");
  });
});
