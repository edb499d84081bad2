import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { SCHEMAS, schemaAddress, schemaComment } from "../../../src/build/write/schema-address.ts";
import type { FileKindName } from "../../../src/engine/records/file-kinds.ts";

// data folder, file in it, kind, address; the project lies in /elsewhere/project, the site at https://hollin.example/changes/
const ADDRESSES: [folder: string, path: string, kind: FileKindName, address: string][] = [
  ["/elsewhere/project/data", "changes/1959/HY59-02.md", "change", "../../../schemas/change.json"],
  ["/elsewhere/project/data", "maker.yaml", "maker", "../schemas/maker.json"],
  ["/elsewhere/project/data/tractors", "parts/pump.yaml", "parts", "../../../schemas/parts.json"],
  ["/elsewhere/projects/data", "parts/pump.yaml", "parts", "https://hollin.example/changes/data/schemas/parts.json"],
  ["/srv", "changes/1959/HY59-02.md", "change", "https://hollin.example/changes/data/schemas/change.json"],
];

test.each(ADDRESSES)("%s/%s", (folder, path, kind, address) => {
  const schemas = resolve("/elsewhere/project/schemas");
  for (const site of ["https://hollin.example/changes/", "https://hollin.example/changes"])
    expect(schemaAddress(folder, path, kind, site, schemas)).toBe(address);
});

test("the schemas of this project are where the address leads", () => {
  const address = schemaAddress("data", "parts/pump.yaml", "parts", "https://hollin.example/") ?? "";
  expect(resolve("data/parts", address)).toBe(resolve(SCHEMAS, "parts.json"));
  expect(existsSync(resolve("data/../schemas/parts.json"))).toBe(true);
});

test("where nobody said where the site is, a folder elsewhere has no address", () => {
  expect(schemaAddress("/srv/elsewhere", "parts/pump.yaml", "parts", "http://127.0.0.1/")).toBeUndefined();
});

test("the comment is one that YAML language servers know", () => {
  expect(schemaComment("../schemas/maker.json")).toBe("# yaml-language-server: $schema=../schemas/maker.json");
});
