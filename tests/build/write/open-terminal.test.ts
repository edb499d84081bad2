import { PassThrough } from "node:stream";
import { expect, test } from "vitest";
import { openTerminal } from "../../../src/build/write/open-terminal.ts";

const opened = () => {
  const input = new PassThrough();
  const output = new PassThrough();
  return { input, output, terminal: openTerminal(input, output) };
};

test("each question gets its line, also when all lines come at once", async () => {
  const { input, output, terminal } = opened();
  input.write("one\ntwo\n");
  expect(await terminal.ask("A? ")).toBe("one");
  expect(await terminal.ask("B? ")).toBe("two");
  const third = terminal.ask("C? ");
  input.write("three\n");
  expect(await third).toBe("three");
  terminal.say("thanks");
  terminal.close();
  expect(String(output.read())).toMatch(/A\? [\s\S]*B\? [\s\S]*C\? [\s\S]*thanks\n/);
});

test("whoever goes away leaves the question, and all later ones, without an answer", async () => {
  const { input, terminal } = opened();
  const asked = terminal.ask("A? ");
  input.end();
  expect(await asked).toBeUndefined();
  expect(await terminal.ask("B? ")).toBeUndefined();
});
