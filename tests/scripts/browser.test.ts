import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { findBrowser } from "../../scripts/browser.ts";

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "browser-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** A program that answers the question for its version in this way. */
function program(name: string, answer: string): string {
  const file = join(folder, name);
  writeFileSync(file, `#!/bin/sh\n${answer}\n`);
  chmodSync(file, 0o755);
  return file;
}

const WORKS = "echo Chromium 150.0.1";

describe.skipIf(process.platform === "win32")("which Chromium is taken", () => {
  test("the one that was named, before any other", () => {
    const named = program("named", WORKS);
    program("chromium", WORKS);
    expect(findBrowser({ CHROMIUM: named, PATH: folder })).toBe(named);
  });

  test("else the first on PATH, by folder", () => {
    const chrome = program("google-chrome", WORKS);
    expect(findBrowser({ PATH: [join(folder, "missing"), "", folder].join(delimiter) })).toBe(chrome);
  });

  // answer to the question for the version
  test.each([["exit 1"], ["echo please install it from the shop"], ["echo Chromium 150.0.1; exit 127"]])(
    "not one that answers with: %s",
    (answer) => {
      const broken = program("named", answer);
      program("chromium", answer);
      const works = program("google-chrome", WORKS);
      expect(findBrowser({ CHROMIUM: broken, PATH: folder })).toBe(works);
    },
  );
});
