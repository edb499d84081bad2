/** Which part of the house may use which. An arrow of DEVELOPERS.md points at what may be imported; nothing points back. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, posix, resolve } from "node:path";
import { afterAll, describe, expect, onTestFinished, test } from "vitest";
import { codeFiles } from "../helpers/code-files.ts";

const FLOORS = ["src/engine/scope", "src/engine/records", "src/engine/graph"];
const ENGINE = [
  ...FLOORS,
  ...["interchange", "settings", "lookalikes", "ask", "answers"].map((name) => `src/engine/${name}`),
];
// layer, what it may import beside itself
const LAYERS: [layer: string, mayImport: string[]][] = [
  ["src/engine/scope", []],
  ["src/engine/records", ["src/engine/scope"]],
  ["src/engine/graph", ["src/engine/scope", "src/engine/records"]],
  ["src/engine/interchange", FLOORS],
  ["src/engine/settings", FLOORS],
  ["src/engine/lookalikes", FLOORS],
  ["src/engine/ask", FLOORS],
  ["src/engine/audit", [...FLOORS, ...["interchange", "settings", "lookalikes"].map((name) => `src/engine/${name}`)]],
  ["src/engine/answers", ENGINE],
  ["src/drawings", ENGINE],
  ["src/site", [...ENGINE, "src/drawings"]],
  ["src/browser", [...ENGINE, "src/drawings"]],
  ["src/build", [...ENGINE, "src/engine/audit", "src/drawings", "src/site"]],
  ["scripts", [...ENGINE, "src/build"]],
];

// package, where it may be used
const PACKAGES: [name: RegExp, places: RegExp, inWords: string][] = [
  [/^node:/, /^(src\/build|scripts)\//, "src/build and scripts"],
  [/^graphology/, /^src\/(engine\/graph|browser\/map)\//, "src/engine/graph and src/browser/map"],
  [/^sigma/, /^src\/browser\/map\/draw\.ts$/, "src/browser/map/draw.ts"],
];

/** Every import that is not allowed, as a sentence. */
function faultsOf(root: string): string[] {
  return codeFiles(root, ["src", "scripts"], /\.(ts|mjs)$/).flatMap(({ path, text }) => {
    const layer = layerOf(path);
    if (layer === undefined) return [`${path} lies in no layer`];
    const allowed = LAYERS.find(([name]) => name === layer)?.[1] ?? [];
    return importsOf(text).flatMap((what) => {
      if (!what.startsWith("."))
        return PACKAGES.filter(([name, places]) => name.test(what) && !places.test(path)).map(
          ([, , inWords]) => `${path} imports ${what}, which only ${inWords} may`,
        );
      const target = layerOf(posix.join(posix.dirname(path), what));
      return target === layer || (target !== undefined && allowed.includes(target))
        ? []
        : [`${path} imports ${what}: ${layer} must not use ${target}`];
    });
  });
}

function importsOf(text: string): string[] {
  return [...text.matchAll(/\b(?:from|import)\s*\(?\s*["']([^"'\n]+)["']/g)].map((match) => match[1] as string);
}

function layerOf(path: string): string | undefined {
  return LAYERS.map(([layer]) => layer).find((layer) => path.startsWith(`${layer}/`));
}

describe("imports go one way", () => {
  test("in every file", () => {
    expect(faultsOf(".")).toEqual([]);
  });

  test("no layer may use one that may use it", () => {
    const both = LAYERS.flatMap(([layer, may]) =>
      may
        .filter((other) => LAYERS.find(([name]) => name === other)?.[1].includes(layer))
        .map((other) => `${layer} ${other}`),
    );
    expect(both.filter((pair) => pair.split(" ")[0] !== pair.split(" ")[1])).toEqual([]);
  });

  test("sigma is met in one file only", () => {
    const users = codeFiles(".", ["src"], /\.ts$/).filter(({ text }) =>
      importsOf(text).some((what) => /^sigma/.test(what)),
    );
    expect(users.map(({ path }) => path)).toEqual(["src/browser/map/draw.ts"]);
  });
});

describe("an import that goes the wrong way is found", () => {
  const copy = mkdtempSync(join(tmpdir(), "yearmark-layers-"));
  for (const folder of ["src", "scripts"]) cpSync(folder, join(copy, folder), { recursive: true });
  afterAll(() => rmSync(copy, { recursive: true }));

  // file, what is planted there, what is said
  const PLANTED: [file: string, line: string, said: string][] = [
    [
      "src/engine/scope/planted.ts",
      'import type { Catalog } from "../records/catalog.ts";',
      "imports ../records/catalog.ts: src/engine/scope must not use src/engine/records",
    ],
    [
      "src/engine/records/resolve/planted.ts",
      'export { say } from "../../answers/say.ts";',
      "imports ../../answers/say.ts: src/engine/records must not use src/engine/answers",
    ],
    [
      "src/engine/ask/planted.ts",
      'import {\n  inOtherUnits,\n} from "../settings/in-other-units.ts";',
      "imports ../settings/in-other-units.ts: src/engine/ask must not use src/engine/settings",
    ],
    [
      "src/engine/graph/planted.ts",
      'const later = await import("../../site/site.ts");',
      "imports ../../site/site.ts: src/engine/graph must not use src/site",
    ],
    [
      "src/browser/planted.ts",
      'import "../build/swap.ts";',
      "imports ../build/swap.ts: src/browser must not use src/build",
    ],
    [
      "src/site/planted.ts",
      'import "../../scripts/build.ts";',
      "imports ../../scripts/build.ts: src/site must not use scripts",
    ],
    [
      "src/engine/answers/planted.ts",
      'import { readFileSync } from "node:fs";',
      "imports node:fs, which only src/build and scripts may",
    ],
    [
      "src/engine/answers/planted-too.ts",
      "import Graph from 'graphology';",
      "imports graphology, which only src/engine/graph and src/browser/map may",
    ],
    [
      "src/browser/map/planted.ts",
      'import Sigma from "sigma";',
      "imports sigma, which only src/browser/map/draw.ts may",
    ],
    ["src/elsewhere/planted.ts", "", "lies in no layer"],
  ];
  // The whole tree is looked at once, with all of them planted.
  for (const [file, line] of PLANTED) plant(copy, file, line);
  const found = faultsOf(copy);

  test.each(PLANTED)("%s: %s", (file, _, said) => {
    expect(found.filter((fault) => fault.startsWith(`${file} `))).toEqual([`${file} ${said}`]);
  });

  test("and nothing else is", () => {
    expect(found).toHaveLength(PLANTED.length);
  });

  test("the engine's own types know neither a page nor Node", () => {
    const { compilerOptions } = JSON.parse(readFileSync("src/engine/tsconfig.json", "utf8"));
    expect(compilerOptions).toEqual({ lib: ["es2024"], types: [] });
    const lines = "export const a = document.title;\nexport const b = process.env;\nexport const c = fetch;\n";
    // An engine of this one file: the types of the real one are looked at before the tests.
    const engine = mkdtempSync(join(tmpdir(), "yearmark-engine-"));
    onTestFinished(() => rmSync(engine, { recursive: true }));
    for (const file of ["tsconfig.json", "src/engine/tsconfig.json"]) cpSync(file, join(engine, file));
    plant(engine, "src/engine/scope/planted.ts", lines);
    const tsc = resolve("node_modules", "typescript", "bin", "tsc");
    const said = spawnSync(process.execPath, [tsc, "-p", "src/engine/tsconfig.json"], {
      cwd: engine,
      encoding: "utf8",
    }).stdout;
    const wrong = said.split("\n").filter((line) => line.includes("error"));
    expect(wrong.map((line) => /planted\.ts\(\d.*Cannot find name '(\w+)'/.exec(line)?.[1])).toEqual([
      "document",
      "process",
      "fetch",
    ]);
  });

  function plant(root: string, file: string, text: string): void {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), text);
  }
});
