import { spawn } from "node:child_process";
import { once } from "node:events";
import {
  cp,
  lstat,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  readlink,
  realpath,
  rename,
  rm,
  symlink,
  writeFile,
} from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { ForeignSite, publishAtomically, SITE_MARK } from "../../src/build/swap.ts";

let home: string;
let site: string;

beforeEach(async () => {
  home = await realpath(await mkdtemp(join(tmpdir(), "swap-")));
  site = join(home, "_site");
});
afterEach(() => rm(home, { recursive: true }));

/** A build of two pages that say the same. */
const pages =
  (text: string) =>
  async (folder: string): Promise<void> => {
    await writeFile(join(folder, "index.html"), text);
    await writeFile(join(folder, "second.html"), text);
  };

async function published(): Promise<string> {
  const [first, second] = await Promise.all(
    ["index.html", "second.html"].map((name) => readFile(join(site, name), "utf8")),
  );
  expect(second).toBe(first);
  return first as string;
}

const workshop = (): Promise<string[]> => readdir(join(home, ".yearmark"));

describe("publishing", () => {
  test("the site is a link to the new build, relative, so that the project can be moved", async () => {
    const folder = await publishAtomically(site, pages("one"));
    expect(await published()).toBe("one");
    expect(await realpath(site)).toBe(folder);
    if (process.platform !== "win32") expect(await readlink(site)).toMatch(/^\.yearmark[/]_site-/);
  });

  test("a second build replaces the first, which is removed", async () => {
    await publishAtomically(site, pages("one"));
    const folder = await publishAtomically(site, pages("two"));
    expect(await published()).toBe("two");
    expect(await workshop()).toEqual([folder.split(/[\\/]/).at(-1)]);
  });

  test("until the build is done, the old site is the one that is seen", async () => {
    await publishAtomically(site, pages("one"));
    await publishAtomically(site, async (folder) => {
      await pages("two")(folder);
      expect(await published()).toBe("one");
    });
    expect(await published()).toBe("two");
  });

  test("sites side by side leave each other's builds alone, whatever their names have in common", async () => {
    const other = join(home, "_site-1");
    await publishAtomically(other, pages("other"));
    await publishAtomically(site, pages("one"));
    await publishAtomically(site, pages("two"));
    expect(await readFile(join(other, "index.html"), "utf8")).toBe("other");
    expect(await published()).toBe("two");
    expect(await workshop()).toHaveLength(2);
  });

  test("two builds at the same time: the one that ends last is published, and it alone is kept", async () => {
    const gate = Promise.withResolvers<void>();
    const slow = publishAtomically(site, async (folder) => {
      await gate.promise;
      await pages("slow")(folder);
    });
    await publishAtomically(site, pages("quick"));
    expect(await published()).toBe("quick");
    gate.resolve();
    await slow;
    expect(await published()).toBe("slow");
    expect(await workshop()).toHaveLength(1);
  });
});

describe("a build that fails", () => {
  test("leaves the old site as it was and nothing of its own, and its error is passed on", async () => {
    await publishAtomically(site, pages("one"));
    const fault = new Error("a template is broken");
    const failing = publishAtomically(site, async (folder) => {
      await pages("two")(folder);
      throw fault;
    });
    await expect(failing).rejects.toBe(fault);
    expect(await published()).toBe("one");
    expect(await workshop()).toHaveLength(1);
  });

  test("leaves nothing where there was nothing", async () => {
    await expect(publishAtomically(site, () => Promise.reject(new Error("no")))).rejects.toThrow("no");
    await expect(lstat(site)).rejects.toThrow("ENOENT");
    expect(await workshop()).toEqual([]);
  });
});

describe("a build that is killed", () => {
  // where, what is published afterwards
  test.each([
    ["before the first file", "one"],
    ["between two files", "one"],
    ["after the last file", "one"],
    ["before the new link is put in place", "one"],
    ["after the new link is put in place", "the killed build"],
    ["while the old build is removed", "the killed build"],
  ])("%s", async (point, expected) => {
    await publishAtomically(site, pages("one"));
    const child = spawn(process.execPath, [join(import.meta.dirname, "killed-build.ts"), site, point], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    await once(child.stdout, "data");
    child.kill("SIGKILL");
    await once(child, "exit");
    expect(await published()).toBe(expected);
    expect((await workshop()).length).toBeGreaterThan(1);

    const folder = await publishAtomically(site, pages("next"));
    expect(await published()).toBe("next");
    expect(await workshop()).toEqual([folder.split(/[\\/]/).at(-1)]);
  });

  test("while it still runs, another build leaves its folder alone", async () => {
    await publishAtomically(site, pages("one"));
    const program = [join(import.meta.dirname, "killed-build.ts"), site, "between two files"];
    const child = spawn(process.execPath, program, { stdio: ["ignore", "pipe", "inherit"] });
    await once(child.stdout, "data");
    await publishAtomically(site, pages("two"));
    const left = await workshop();
    child.kill("SIGKILL");
    await once(child, "exit");
    expect(await published()).toBe("two");
    expect(left.filter((name) => name.includes(`-${child.pid}-`))).toHaveLength(2);
  });
});

describe("what is at the place already", () => {
  test("a folder of somebody else is refused before anything is built", async () => {
    await mkdir(site);
    await writeFile(join(site, "thesis.txt"), "irreplaceable");
    const build = publishAtomically(site, () => Promise.reject(new Error("must not be called")));
    await expect(build).rejects.toThrow(/is not a site that Yearmark built.*left alone/);
    expect(await readFile(join(site, "thesis.txt"), "utf8")).toBe("irreplaceable");
  });

  test("a file is refused", async () => {
    await writeFile(site, "a file");
    await expect(publishAtomically(site, pages("one"))).rejects.toBeInstanceOf(ForeignSite);
  });

  test("a link of somebody else is refused, also when it leads nowhere", async () => {
    await symlink(join(home, "elsewhere"), site);
    await expect(publishAtomically(site, pages("one"))).rejects.toThrow("is not a site that Yearmark built");
    await mkdir(join(home, "elsewhere"));
    await expect(publishAtomically(site, pages("one"))).rejects.toThrow("is not a site that Yearmark built");
  });

  test("a folder that appears during the build is refused, too", async () => {
    const build = publishAtomically(site, async (folder) => {
      await pages("one")(folder);
      await mkdir(site);
      await writeFile(join(site, "thesis.txt"), "irreplaceable");
    });
    await expect(build).rejects.toThrow("is not a site that Yearmark built");
    expect(await readdir(site)).toEqual(["thesis.txt"]);
    expect(await workshop()).toEqual([]);
  });

  test("a copied site of ours is replaced", async () => {
    await publishAtomically(site, pages("one"));
    await cp(await realpath(site), join(home, "copy"), { recursive: true });
    await rm(site);
    await rename(join(home, "copy"), site);
    expect(await readdir(site)).toContain(SITE_MARK);
    await publishAtomically(site, pages("two"));
    expect(await published()).toBe("two");
    expect(await workshop()).toHaveLength(1);
  });

  test("an empty folder is replaced", async () => {
    await mkdir(site);
    await publishAtomically(site, pages("one"));
    expect(await published()).toBe("one");
    expect(await workshop()).toHaveLength(1);
  });

  test("a link of ours whose build is gone is replaced", async () => {
    await rm(await publishAtomically(site, pages("one")), { recursive: true });
    await publishAtomically(site, pages("two"));
    expect(await published()).toBe("two");
  });
});
