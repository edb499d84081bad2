/** One part on one car, and all retrofits of one car, in Chromium slowed down, for growing numbers of parts in chains. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { type Browser, chromium } from "playwright-core";
import { readFolder } from "../../src/build/data/read-folder.ts";
import type { CarInput } from "../../src/engine/answers/shapes/car.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { linesIndexOf } from "../../src/engine/records/lines-index.ts";
import type { Slice } from "../../src/engine/records/slice.ts";
import { NONE } from "../../src/engine/scope/diagram.ts";
import { pick, sayCar } from "../../src/engine/scope/pick.ts";
import type { askChains, ChainQuestions, ChainTimes } from "./ask-chains.ts";
import { makeChains } from "./make-chains.ts";
import { makeFolder } from "./make-folder.ts";
import { type Random, random } from "./random.ts";
import { writeFolder } from "./write-folder.ts";

export interface InterchangeSizes {
  readonly parts: readonly number[];
  readonly questions: number;
  readonly cars: number;
  readonly slowdown: number;
  /** With more parts nobody waits for all ways of a car. */
  readonly allRetrofitsUpTo: number;
}
export const INTERCHANGE_SIZES: InterchangeSizes = {
  parts: [1_000, 10_000, 100_000],
  questions: 200,
  cars: 3,
  slowdown: 4,
  allRetrofitsUpTo: 10_000,
};

export interface InterchangeResult {
  readonly sizes: InterchangeSizes;
  readonly bySize: readonly { readonly parts: number; readonly times: ChainTimes }[];
}

declare const chains: { askChains: typeof askChains };

export async function benchInterchange(
  sizes: InterchangeSizes,
  browserPath: string,
  say: (line: string) => void,
): Promise<InterchangeResult> {
  const catalog = await madeUpCars();
  const script = await bundled();
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  try {
    const bySize: { parts: number; times: ChainTimes }[] = [];
    for (const parts of sizes.parts) {
      say(`${parts} parts`);
      const slice = makeChains(catalog, parts);
      bySize.push({ parts, times: await askIn(browser, script, catalog, slice, sizes) });
    }
    return { sizes, bySize };
  } finally {
    await browser.close();
  }
}

/** The lines of the generated maker; its records are not needed. */
export async function madeUpCars(): Promise<Catalog> {
  const folder = await mkdtemp(join(tmpdir(), "yearmark-chains-"));
  try {
    await writeFolder(makeFolder(50), folder);
    const { catalog } = await readFolder(folder);
    if (!catalog) throw new Error("the generated folder has errors");
    return catalog;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function bundled(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(import.meta.dirname, "ask-chains.ts")],
    bundle: true,
    format: "iife",
    globalName: "chains",
    minify: true,
    write: false,
  });
  return outputFiles[0]?.text ?? "";
}

async function askIn(
  browser: Browser,
  script: string,
  catalog: Catalog,
  slice: Slice,
  sizes: InterchangeSizes,
): Promise<ChainTimes> {
  const page = await browser.newPage();
  await page.addScriptTag({ content: script });
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: sizes.slowdown });
  const lines = linesIndexOf(catalog);
  const asked = questions(catalog, slice, sizes);
  const times = await page.evaluate(({ lines, slice, asked }) => chains.askChains(lines, slice, asked), {
    lines,
    slice,
    asked,
  });
  await page.close();
  return times;
}

/** Cars of which line and year are known, and half of the rest. */
export function questions(catalog: Catalog, slice: Slice, sizes: InterchangeSizes): ChainQuestions {
  const chance = random(1);
  const parts = Object.keys(slice.parts);
  return {
    mayFit: Array.from({ length: sizes.questions }, () => ({ part: chance.pick(parts), car: car(catalog, chance) })),
    retrofits: Array.from({ length: parts.length > sizes.allRetrofitsUpTo ? 0 : sizes.cars }, () =>
      car(catalog, chance),
    ),
  };
}

function car({ space, years, lines }: Catalog, chance: Random): CarInput {
  const year = chance.pick(years);
  const ofYear = space.sets.and(lines[0]?.cars ?? NONE, space.where(space.role("year") as number, [[year, year]]));
  const told = [...(pick(ofYear) ?? [])].filter(([index]) => {
    const { role, kind } = space.trait(index);
    return role === "line" || role === "year" || (kind === "flag" && chance.percent(50));
  });
  return { facts: { ...sayCar(space, new Map(told)), [space.trait(space.role("year") as number).id]: year } };
}
