import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { commandOf, showByHand, showMissing, showNew, showWrong } from "../../../src/build/write/show-new.ts";

const FILE = { path: "parts/pump.yaml", text: "", grown: true, lost: [], byHand: "", findings: [] };

test("where it lies, and what to do next", () => {
  expect(showNew("part", FILE, "data")).toMatch(/^Added to data\/parts\/pump\.yaml\nNext: /);
  expect(showNew("record", { ...FILE, path: "changes/a.md", grown: false }, "d")).toMatch(
    /^Wrote d\/changes\/a\.md\nNext: /,
  );
});

test("what is missing is one line, what is wrong one line each", () => {
  expect(showMissing("part", { missing: ["component", "name"], faults: ["--hand: no"] })).toBe(
    "a new part also needs --component, --name; in a terminal npm run new asks for them\n--hand: no",
  );
});

test("the command can be started again as it is, whatever was typed", () => {
  const answers = { title: 'it\'s $HOME "so"', kinds: ["part", "setting"], story: "a\n\nb" };
  const command = commandOf("record", "my data", answers, { set: ["built=[]"] });
  const words = spawnSync("sh", ["-c", `npm() { printf '%s|' "$@"; }; ${command}`], { encoding: "utf8" }).stdout.split(
    "|",
  );
  expect(words.slice(0, -1)).toEqual([
    ...[
      "run",
      "new",
      "--",
      "record",
      "--data",
      "my data",
      "--title",
      answers.title,
      "--kinds",
      "part",
      "--kinds",
      "setting",
    ],
    ...["--story", answers.story, "--set", "built=[]"],
  ]);
  const finding = {
    severity: "error",
    file: "parts/pump.yaml",
    message: "no",
    hint: "mend it",
    shown: "",
    position: { line: 1, column: 1, length: 1 },
  };
  const wrong = showWrong("record", { ...FILE, findings: [finding as never] }, "my data", answers, {
    set: ["built=[]"],
  });
  expect(wrong.startsWith("Nothing was written, because this would be wrong:")).toBe(true);
  expect(wrong).toContain("my data/parts/pump.yaml:1:1: error: no");
  expect(wrong.endsWith(command)).toBe(true);
});

test("what would be lost, and what to write by hand", () => {
  expect(showByHand({ ...FILE, lost: ["# a", "# b"], byHand: "{ number: HT-9 }" }, "data")).toBe(
    "Nothing was written: data/parts/pump.yaml is written in a way that nothing can be added to without losing\n  # a\n  # b\nAdd it by hand:\n  { number: HT-9 }",
  );
});
