/** The command as an editor starts and ends it. What it shows is tested beside src/build/dev. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";

const COMMAND = "scripts/dev.ts";

interface Started {
  readonly child: ChildProcess;
  readonly url: string;
  /** Exit code, and what it printed. */
  readonly ended: Promise<{ code: number | null; printed: string }>;
}

async function start(args: readonly string[], env: NodeJS.ProcessEnv): Promise<Started> {
  const child = spawn(process.execPath, [COMMAND, ...args], { stdio: ["ignore", "pipe", "pipe"], env });
  onTestFinished(() => void child.kill("SIGKILL"));
  let printed = "";
  const named = Promise.withResolvers<string>();
  for (const stream of [child.stdout, child.stderr])
    stream.on("data", (piece) => {
      printed += piece;
      const [, url] = /(http:\S+)\n/.exec(printed) ?? [];
      if (url) named.resolve(url);
    });
  const ended = new Promise<{ code: number | null; printed: string }>((resolve) =>
    child.once("close", (code) => {
      named.reject(new Error(printed));
      resolve({ code, printed });
    }),
  );
  return { child, url: await named.promise, ended };
}

test("it serves, publishes nothing, and ends with Ctrl-C without leaving anything behind", async () => {
  const home = await onDisk(Object.fromEntries(Object.entries(TINY).map(([path, text]) => [`data/${path}`, text])));
  const temporary = join(home, "temporary");
  await mkdir(temporary);
  const env = { ...process.env, TMPDIR: temporary, TEMP: temporary };
  const { child, url, ended } = await start(["--data", join(home, "data"), "--port", "0"], env);
  expect(readdirSync(temporary)).toHaveLength(1);
  expect(url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  expect(await (await fetch(url)).text()).toContain("Hollin model changes");
  // A page that is open does not keep it alive.
  const open = await fetch(new URL(".yearmark/events", url));
  child.kill("SIGINT");
  const { code, printed } = await ended;
  expect(code).toBe(0);
  expect(printed).toContain("Nothing is published");
  await expect(open.text()).rejects.toThrow();
  expect(readdirSync(home)).toEqual(["data", "temporary"]);
  expect(readdirSync(temporary)).toEqual([]);
});

// what is asked, what is said
test.each([
  [["--data", "no/such/folder"], "--data no/such/folder: there is no such folder"],
  [["--port", "abc"], "--port abc: a port is a whole number from 0 (any free one) to 65535"],
  [["--prot", "1"], "Unknown option '--prot'"],
])("%j is refused in one line above the usage", (args, said) => {
  const { status, stderr, stdout } = spawnSync(process.execPath, [COMMAND, ...args], { encoding: "utf8" });
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(stderr.split("\n")[0]).toBe(said);
  expect(stderr).toContain("npm run dev [-- --data DIR] [--port N]");
});
