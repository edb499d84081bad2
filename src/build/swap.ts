/**
 * Publishes a site in one step: whoever reads it sees the whole old one or the whole new one, whatever happens.
 *
 *     _site                       a link, to the live build
 *     .yearmark/
 *       _site-4711-9f2c…/         a build; 4711 is the process that made it
 *       _site-4711-9f2c….busy     stands beside it from before it is begun until after it is published
 *       _site-4711-9f2c….link     the new link, before it takes the place of the old one
 *
 * A build is written into a folder of its own. Then a new link to it is renamed over the old one, which the file
 * system does in one step. A build that fails or is killed before that has touched nothing that is published.
 */
import { randomBytes } from "node:crypto";
import { lstat, mkdir, readdir, readlink, rename, rm, stat, symlink, writeFile } from "node:fs/promises";
import { basename, dirname, join, relative, resolve } from "node:path";

/** The file that marks a folder as a site of ours, so that it may be replaced. */
export const SITE_MARK = ".yearmark-site";

/** What is at the place of the site was not built by Yearmark. The message says what to do. */
export class ForeignSite extends Error {}

const WORKSHOP = ".yearmark";
const DAY = 24 * 60 * 60 * 1000;

/** What this process is building just now: its own number alone would call every build of it unfinished. */
const underWay = new Set<string>();

/** Builds into a new folder and makes `siteLink` point at it. Returns that folder. */
export async function publishAtomically(siteLink: string, build: (folder: string) => Promise<void>): Promise<string> {
  const link = resolve(siteLink);
  await refuseForeign(link);
  const workshop = join(dirname(link), WORKSHOP);
  const folder = join(workshop, nameOfBuild(link));
  await mkdir(workshop, { recursive: true });
  underWay.add(folder);
  try {
    await removeLeftovers(link);
    await writeFile(`${folder}.busy`, "");
    await mkdir(folder);
    await build(folder);
    await writeFile(join(folder, SITE_MARK), "A site built by Yearmark. The next build may replace this folder.\n");
    await putInPlace(link, folder);
  } catch (error) {
    await removeBuild(folder).catch(() => {});
    throw error;
  } finally {
    underWay.delete(folder);
  }
  await rm(`${folder}.busy`, { force: true });
  await removeLeftovers(link);
  return folder;
}

/** Throws unless nothing would be lost by putting a link at this place. */
async function refuseForeign(link: string): Promise<void> {
  const place = await lookAt(link);
  if (place === "foreign")
    throw new ForeignSite(
      `${link} is not a site that Yearmark built (it has no file ${SITE_MARK}), so it is left alone. Move it away, or name another folder for the site.`,
    );
}

/**
 * What is at the place of the site: nothing, our link, a real folder (a copied site of ours, or an empty one), or
 * something of somebody else: a file, a folder without our mark, a link that leads out of the workshop.
 */
async function lookAt(link: string): Promise<"nothing" | "link" | "folder" | "foreign"> {
  const found = await lstat(link).catch(ignoreMissing);
  if (!found) return "nothing";
  if (found.isSymbolicLink()) return (await isOurs(link)) ? "link" : "foreign";
  if (!found.isDirectory()) return "foreign";
  if (await lstat(join(link, SITE_MARK)).catch(ignoreMissing)) return "folder";
  return (await readdir(link)).length === 0 ? "folder" : "foreign";
}

async function isOurs(link: string): Promise<boolean> {
  const target = await targetOf(link);
  return target !== undefined && dirname(target) === join(dirname(link), WORKSHOP);
}

async function targetOf(link: string): Promise<string | undefined> {
  try {
    return resolve(dirname(link), await readlink(link));
  } catch {
    return undefined; // There is nothing, or something that is not a link.
  }
}

async function putInPlace(link: string, folder: string): Promise<void> {
  const fresh = `${folder}.link`;
  // Relative, so that the whole project can be moved; Windows wants a junction, which is always absolute.
  if (process.platform === "win32") await symlink(folder, fresh, "junction");
  else await symlink(relative(dirname(link), folder), fresh);
  await refuseForeign(link);
  if ((await lookAt(link)) === "folder") await replaceFolder(fresh, link);
  else await replaceLink(fresh, link);
}

async function replaceLink(fresh: string, link: string): Promise<void> {
  try {
    await rename(fresh, link);
  } catch (error) {
    // Windows does not rename over a junction. There alone the site is away for a moment.
    if (process.platform !== "win32") throw error;
    await rm(link, { force: true });
    await rename(fresh, link);
  }
}

/** A link cannot be renamed over a real folder. This happens once at most: from then on the place is a link. */
async function replaceFolder(fresh: string, link: string): Promise<void> {
  const aside = join(dirname(fresh), nameOfBuild(link));
  await rename(link, aside);
  try {
    await rename(fresh, link);
  } catch (error) {
    await rename(aside, link);
    throw error;
  }
}

function nameOfBuild(link: string): string {
  return `${basename(link)}-${process.pid}-${randomBytes(6).toString("hex")}`;
}

/**
 * Removes builds of this site that nobody needs: published ones that another has followed, and unfinished ones whose
 * process is gone.
 *
 * Another process may be publishing at the same time, so the order matters: first see that a build is not under way,
 * then where the link leads. A build is under way until after it was published; so what is neither under way nor, a
 * moment later, live, will never be live again.
 */
async function removeLeftovers(link: string): Promise<void> {
  for (const [folder, pid] of await buildsOf(link)) {
    if (await isUnderWay(folder, pid)) continue;
    const live = folder === (await targetOf(link));
    // What cannot be removed now (a program has it open, another user owns it) is tried again by the next build.
    await (live ? rm(`${folder}.busy`, { force: true }) : removeBuild(folder)).catch(() => {});
  }
}

/** Builds in the workshop of this site (finished or not), each with the process that made it. */
async function buildsOf(link: string): Promise<Map<string, number>> {
  const workshop = join(dirname(link), WORKSHOP);
  const builds = new Map<string, number>();
  for (const entry of (await readdir(workshop).catch(ignoreMissing)) ?? []) {
    const match = /^((.*)-(\d+)-[0-9a-f]{12})(?:\.busy|\.link)?$/.exec(entry);
    if (match?.[1] && match[2] === basename(link)) builds.set(join(workshop, match[1]), Number(match[3]));
  }
  return builds;
}

async function isUnderWay(folder: string, pid: number): Promise<boolean> {
  if (pid === process.pid) return underWay.has(folder);
  if (!isAlive(pid)) return false;
  const busy = await stat(`${folder}.busy`).catch(ignoreMissing);
  // Numbers of processes are used again: after a day it is another process that has this one.
  return busy !== undefined && Date.now() - busy.mtimeMs < DAY;
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it is there, but somebody else's.
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** The mark of being under way goes last: a removal that is itself killed is then taken up by the next build. */
async function removeBuild(folder: string): Promise<void> {
  await rm(`${folder}.link`, { force: true });
  await rm(folder, { recursive: true, force: true });
  await rm(`${folder}.busy`, { force: true });
}

function ignoreMissing(error: NodeJS.ErrnoException): undefined {
  if (error.code !== "ENOENT") throw error;
  return undefined;
}
