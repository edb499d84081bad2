/** The workflow for a CI host: it is YAML as that host reads it, and every command in it is one that there is. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";

interface Step {
  readonly uses?: string;
  readonly run?: string;
  readonly if?: string;
}
interface Job {
  readonly needs?: string;
  readonly if?: string;
  readonly steps: readonly Step[];
}

// In YAML 1.1 'on' would be a truth value; the host reads it as a word.
const workflow = parse(readFileSync(".github/workflows/publish.yml", "utf8")) as {
  on: Record<string, unknown>;
  permissions: Record<string, string>;
  jobs: Record<string, Job>;
};
const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as { scripts: Record<string, string> };
const steps = Object.values(workflow.jobs).flatMap((job) => job.steps);
const lines = steps.flatMap(({ run }) => run?.split("\n").filter(Boolean) ?? []);
/** [script, its words] of every npm command. */
const commands = lines.flatMap((line) =>
  [...line.matchAll(/npm (?:run (?:-s )?([\w-]+)|(test|start))(?: -- ([^>|&;]*))?/g)].map(
    ([, named, short, words = ""]): [string, string] => [named ?? short ?? "", words],
  ),
);

test("every npm script that it runs exists", () => {
  const named = commands.map(([name]) => name);
  expect(named).toEqual(expect.arrayContaining(["check", "test", "build"]));
  expect(named.filter((name) => !(name in scripts))).toEqual([]);
});

test("every option that it gives exists", () => {
  const given = commands.flatMap(([name, words]) =>
    [...words.matchAll(/--([\w-]+)/g)].map(([, option]) => [name, option]),
  );
  // The option that is given only where something is published already.
  given.push(["check", /AGAINST=--([\w-]+)/.exec(lines.join("\n"))?.[1]]);
  expect(given).toContainEqual(["check", "sarif"]);
  const unknown = given.filter(([name = "", option = ""]) => {
    const [, file = ""] = /node (scripts\/[\w-]+\.ts)/.exec(scripts[name] ?? "") ?? [];
    return !new RegExp(`^ +"?${option}"?: \\{ type:`, "m").test(readFileSync(file, "utf8"));
  });
  expect(unknown).toEqual([]);
});

test.skipIf(process.platform === "win32")("what a shell runs is a shell's language", () => {
  for (const { run } of steps.filter((step) => step.run !== undefined))
    expect(spawnSync("bash", ["-n"], { input: run, encoding: "utf8" }).stderr).toBe("");
});

test("it may write only what it has to, and publishes only from the main branch, after everything else", () => {
  expect(workflow.permissions).toEqual({ contents: "read" });
  expect(Object.keys(workflow.on)).toEqual(["push", "pull_request", "workflow_dispatch"]);
  expect(workflow.jobs.publish).toMatchObject({ needs: "build" });
  expect(workflow.jobs.publish?.if).toContain("github.ref == 'refs/heads/main'");
  expect(workflow.jobs.publish?.if).toContain("github.event_name != 'pull_request'");
});

test("it uses only what the host itself keeps", () => {
  const owners = steps.flatMap(({ uses }) => uses ?? []).map((name) => name.split("/")[0]);
  expect([...new Set(owners)].sort()).toEqual(["actions", "github"]);
});
