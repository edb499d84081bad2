import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { findWebServer } from "../../scripts/web-server.ts";

const folder = mkdtempSync(join(tmpdir(), "web-server-"));
afterAll(() => rmSync(folder, { recursive: true }));

function program(name: string, answer: string): string {
  const file = join(folder, name);
  writeFileSync(file, `#!/bin/sh\n${answer}\n`);
  chmodSync(file, 0o755);
  return file;
}

const WORKS = "echo nginx version: nginx/1.22.1 >&2";

describe.skipIf(process.platform === "win32")("which nginx is taken", () => {
  const named = program("named", WORKS);
  const onPath = program("nginx", WORKS);
  const PATH = [join(folder, "missing"), "", folder].join(delimiter);

  test("the one that was named, before any other", () => {
    expect(findWebServer({ NGINX: named, PATH })).toBe(named);
  });

  test("else the first on PATH", () => {
    expect(findWebServer({ PATH })).toBe(onPath);
  });

  test.each([["exit 1"], ["echo please install it"], [`${WORKS}; exit 127`]])(
    "not one that answers with: %s",
    (answer) => {
      expect(findWebServer({ NGINX: program("broken", answer), PATH })).toBe(onPath);
    },
  );
});
