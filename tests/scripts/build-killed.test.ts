/**
 * npm run build is killed (SIGKILL) 50 times over a published site: what is published stands, byte for byte.
 *
 * Where it dies is no matter of time, so nothing here waits or depends on the speed of the machine. The calls by which a build changes
 * files, and its messages to esbuild and Pagefind, are written down once (kill-at.ts). Of those before publishing 42 are taken, one at
 * random from each of 42 equal stretches, and the last ones of all: half of the manifest, half of the mark, before the new link and before it
 * is put in place. Of those after publishing four are taken in the same way. So the points are spread over what is done to the disk, not over
 * the time that it takes: while data are read and pages are worked out, the disk is as it was at the point before.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addressesOf } from "../../src/build/publish/addresses-of.ts";
import { readManifest } from "../../src/build/publish/read-manifest.ts";
import { verifySite } from "../../src/build/publish/verify-site.ts";
import { SEED } from "../helpers/seed.ts";
import { sitePages } from "../helpers/site-pages.ts";
import { catalogOf, TINY } from "../helpers/tiny-folder.ts";

const home = mkdtempSync(join(tmpdir(), "yearmark-killed-"));
const [data, site] = ["data", "_site"].map((name) => join(home, name)) as [string, string];
const HERE = import.meta.dirname;
afterAll(() => rmSync(home, { recursive: true }));

interface Ran {
  readonly signal: string | null;
  readonly status: number | null;
  readonly said: string;
}

/** Each build is of other data, so that no two sites are the same. */
let edition = 0;

function build(env: Record<string, string> = {}): Ran {
  edition++;
  const maker = (TINY["maker.yaml"] as string).replace("Hollin model changes", `Edition ${edition}`);
  writeFileSync(join(data, "maker.yaml"), maker);
  const args = ["--import", join(HERE, "kill-at.ts"), resolve("scripts/build.ts"), "--data", data, "--site", site];
  // It returns when esbuild and Pagefind are gone, too: these hold the same pipe, and outlive a build that is killed by a moment.
  const { signal, status, stdout, stderr } = spawnSync(process.execPath, args, {
    encoding: "utf8",
    // What the first one compiled saves the others half of their start.
    env: { ...process.env, NODE_COMPILE_CACHE: join(home, "compiled"), ...env },
  });
  return { signal, status, said: stdout + stderr };
}

/** All that is published, hidden files too. */
function published(): ReadonlyMap<string, string> {
  const folder = realpathSync(site);
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    files.map((entry) => {
      const file = join(entry.parentPath, entry.name);
      return [relative(folder, file), createHash("sha256").update(readFileSync(file)).digest("hex")];
    }),
  );
}

/** From 0 to 1, the same for the same seed. */
function chance(name: string): number {
  return createHash("sha256").update(`${SEED} ${name}`).digest().readUInt32BE() / 2 ** 32;
}

/** One at random from each of as many equal stretches. */
function spread(from: readonly string[], count: number): string[] {
  return Array.from(
    { length: count },
    (_, i) => from[Math.floor(((i + chance(`${count} ${i}`)) * from.length) / count)] as string,
  );
}

const LAST = [
  "writeFileSync build/data/manifest.json 1",
  "promises.writeFile build/.yearmark-site 1",
  "promises.symlink build to build.link 1",
  /^promises\.rename build\.link to .* 1$/,
];
const BEFORE = 42;
const AFTER = 4;
const KILLS = BEFORE + LAST.length + AFTER;

/** Where they die. */
let points: readonly string[];

/** What is published, and by which link, as it was left by the build that published it. */
let standing: { link: string; files: ReadonlyMap<string, string> };
const look = (): typeof standing => ({ link: readlinkSync(site), files: published() });

beforeAll(() => {
  for (const [path, text] of Object.entries(TINY)) {
    mkdirSync(dirname(join(data, path)), { recursive: true });
    writeFileSync(join(data, path), text);
  }
  succeed();
  points = pointsOf();
  standing = look();
}, 120_000);

function succeed(env: Record<string, string> = {}): string {
  const { status, said } = build(env);
  if (status !== 0) throw new Error(said);
  return said;
}

function pointsOf(): string[] {
  const file = join(home, "points");
  rmSync(file, { force: true });
  succeed({ POINTS_INTO: file });
  // Of what is met several times only the first: how often a folder is asked for, or esbuild spoken to, depends on how fast others answer.
  const met = readFileSync(file, "utf8")
    .trim()
    .split("\n")
    .filter((point) => / 1$|message to pagefind/.test(point));
  const last = LAST.map(
    (point) => met.find((it) => (typeof point === "string" ? it === point : point.test(it))) as string,
  );
  const before = met.filter((point) => !point.startsWith("after publishing: ") && !last.includes(point));
  const after = met.filter((point) => point.startsWith("after publishing: "));
  return [...spread(before, BEFORE), ...last, ...spread(after, AFTER)];
}

test("the points are 50 different ones, from before the first file to the removal of the old site", () => {
  expect(KILLS).toBe(50);
  expect(new Set(points).size).toBe(KILLS);
  expect(points).not.toContain(undefined);
});

describe("killed", () => {
  test.each(Array.from({ length: KILLS }, (_, i) => i))("at point %i, the site stands whole", (i) => {
    const point = points[i] as string;
    const { signal, said } = build({ KILL_AT: point });
    expect(signal, `${point} ${said}`).toBe("SIGKILL");
    const now = look();
    if (point.startsWith("after publishing: ")) {
      expect(now.link, point).not.toBe(standing.link);
      expect(verifySite(site), point).toMatchObject({ missing: [], changed: [], foreign: [] });
      expect(now.files.size).toBeGreaterThan(100);
      standing = now;
    } else {
      expect(now.link, point).toBe(standing.link);
      expect(now.files, point).toEqual(standing.files);
    }
  });
});

test("the next build publishes, and leaves nothing of all those", () => {
  expect(succeed()).toContain("Built ");
  expect(readFileSync(join(site, "index.html"), "utf8")).toContain(`<title>Edition ${edition}</title>`);
  expect(verifySite(site)).toMatchObject({ missing: [], changed: [], foreign: [] });
  expect(readdirSync(home).sort()).toEqual([".yearmark", "_site", "compiled", "data", "points"]);
  expect(readdirSync(join(home, ".yearmark"))).toEqual([readlinkSync(site).split(/[\\/]/).at(-1)]);
});

test("the manifest of what was built lists just the pages that were written", () => {
  const { pages } = readManifest(site);
  expect(pages).toEqual(addressesOf(catalogOf()));
  const written = sitePages(realpathSync(site)).map(({ address }) => address);
  expect(pages.map(({ address }) => address)).toEqual(written.filter((address) => address !== "/404.html").sort());
});
