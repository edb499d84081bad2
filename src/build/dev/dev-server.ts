/**
 * The editor's server: the site of a data folder, as it is now. Nothing is built. The folder is held in memory, a page is made when
 * it is asked for, and what takes long is done aside.
 */
import { randomBytes } from "node:crypto";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Site } from "../../site/site.ts";
import { bundle } from "../bundle.ts";
import type { Finding } from "../data/read-folder.ts";
import { HOST, listen, type Served } from "../serve.ts";
import { answerRequest, type Files } from "./answer-request.ts";
import { Aside } from "./aside.ts";
import { Bursts } from "./bursts.ts";
import { complaintBox } from "./complaint-box.ts";
import { Documents, LAID_OUT } from "./documents.ts";
import { alone, dressPage, OWN } from "./dress-page.ts";
import { FolderWatch } from "./folder-watch.ts";
import { Listeners, type News } from "./listeners.ts";
import { onPageFiles } from "./on-page-files.ts";
import { sayChange, sayFindings } from "./say-change.ts";
import { SearchIndex } from "./search-index.ts";
import { Templates } from "./templates.ts";
import { type Change, World } from "./world.ts";

export interface DevOptions {
  /** The data folder. */
  readonly data: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** Tells the terminal. */
  say(line: string): void;
}

/** Saving is over sooner than this; a checkout of hundreds of files is shown in steps. Milliseconds. */
const PAUSES = { quiet: 25, most: 500 };
/** A folder that cannot be read or watched may be there again. */
const RETRY = 1000;
/** Slow work begins when the pages that load themselves again have been given out. */
const AFTER_PAGES = 300;

/** Comes back when the folder has been read and the first page can be given out. */
export async function startDev(options: DevOptions): Promise<Served> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-dev-"));
  const desk = new Desk(options, home);
  const server = createServer((request, response) => void desk.answer(request, response));
  const close = async (): Promise<void> => {
    await desk.close();
    await new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
    await rm(home, { recursive: true, force: true });
  };
  try {
    const port = await listen(server, options.port);
    await desk.open();
    return { url: `http://${HOST}:${port}/`, port, close };
  } catch (error) {
    await close();
    throw error;
  }
}

class Desk {
  readonly #options: DevOptions;
  readonly #home: string;
  readonly #world: World;
  readonly #aside: Aside;
  readonly #watch: FolderWatch;
  readonly #search: SearchIndex;
  readonly #listeners = new Listeners();
  readonly #changes = new Bursts(() => this.#update(), PAUSES);
  readonly #checks = new Bursts(() => this.#check(), { quiet: AFTER_PAGES, most: RETRY });
  readonly #opened = Promise.withResolvers<void>();
  readonly #boot = randomBytes(4).toString("hex");
  #templates = new Templates(new Map());
  #bundled: Promise<unknown> = Promise.resolve();
  #own = { script: "", style: "" };
  /** Counts the states of the data that were shown. */
  #edition = 0;
  #documents: { readonly site: Site; readonly all: Documents } | undefined;
  #graph: { readonly site: Site; readonly documents: Promise<ReadonlyMap<string, string>> } | undefined;
  /** What the check said last of data without errors. */
  #checked: readonly Finding[] | undefined;
  /** What the terminal was told of last: of data without errors, and of errors since then. */
  #said: readonly Finding[] = [];
  #saidErrors: readonly Finding[] = [];
  /** Why the folder can be neither watched nor read just now. */
  #trouble = "";
  #retry: NodeJS.Timeout | undefined;
  #isClosed = false;

  constructor(options: DevOptions, home: string) {
    this.#options = options;
    this.#home = home;
    this.#world = new World(options.data);
    this.#aside = new Aside(options.data);
    this.#watch = new FolderWatch(options.data, () => this.#changes.event());
    this.#search = new SearchIndex(home, (folder) => this.#aside.ask("search", folder), options.say);
  }

  async open(): Promise<void> {
    // esbuild is a process of its own: it works while the folder is read.
    this.#bundled = bundle(this.#home);
    this.#bundled.catch((error: Error) => this.#options.say(`scripts and styles: ${error.message}`));
    [this.#templates, this.#own] = await Promise.all([Templates.open(), onPageFiles()]);
    await this.#update();
    this.#opened.resolve();
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    this.#changes.close();
    this.#checks.close();
    this.#watch.close();
    this.#search.close();
    clearTimeout(this.#retry);
    await this.#bundled.catch(() => {});
    await this.#aside.close();
  }

  async answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    try {
      await this.#opened.promise;
      if (request.url === OWN.events) this.#listeners.add(response, this.#news());
      else await answerRequest(this.#files, request, response);
    } catch (error) {
      const { message, stack } = error as Error;
      this.#options.say(`${request.url}: ${stack ?? message}`);
      if (!response.headersSent) response.writeHead(500, { "Content-Type": "text/plain;charset=utf-8" });
      response.end(`This could not be made: ${message}\n`);
    }
  }

  /** The folder as it is now becomes what is shown. */
  async #update(): Promise<void> {
    const began = performance.now();
    const before = this.#world.read;
    const hadTrouble = this.#trouble;
    let change: Change | undefined;
    this.#trouble = "";
    try {
      this.#watch.renew();
    } catch (error) {
      this.#trouble = (error as Error).message;
    }
    try {
      change = await this.#world.refresh();
    } catch (error) {
      this.#trouble = (error as Error).message;
    }
    // What cannot be watched is looked at again and again.
    if (this.#trouble && !this.#isClosed) this.#retry = setTimeout(() => this.#changes.event(), RETRY).unref();
    if (this.#trouble && this.#trouble !== hadTrouble)
      this.#options.say(`${this.#options.data} cannot be read or watched just now: ${this.#trouble}`);
    if (change?.isGood) this.#edition++;
    // What was checked before there were errors may have changed more than once since.
    if (change?.isGood && !before?.catalog) this.#checked = undefined;
    if (change || this.#trouble !== hadTrouble) this.#listeners.tell(this.#news());
    if (!change) return;
    if (before) this.#options.say(sayChange(change, performance.now() - began));
    if (!change.isGood) return this.#sayErrors();
    this.#checks.event();
    this.#search.changed();
  }

  async #check(): Promise<void> {
    try {
      const findings = await this.#aside.ask("check", undefined);
      if (!this.#world.read?.catalog) return;
      this.#checked = findings;
      this.#listeners.tell(this.#news());
      this.#say(findings, [...this.#said, ...this.#saidErrors]);
      this.#said = findings;
      this.#saidErrors = [];
    } catch (error) {
      if (!this.#isClosed) this.#options.say(`not checked: ${(error as Error).message}`);
    }
  }

  #sayErrors(): void {
    const findings = this.#findings();
    this.#say(findings, this.#saidErrors);
    this.#saidErrors = findings;
  }

  #say(findings: readonly Finding[], before: readonly Finding[]): void {
    const said = sayFindings(findings, before, this.#options.data);
    if (said) this.#options.say(said);
  }

  #findings(): readonly Finding[] {
    const { catalog, findings = [] } = this.#world.read ?? {};
    return (catalog && this.#checked) ?? findings;
  }

  #news(): News {
    const { read, site, folder } = this.#world;
    const notes = [
      ...(this.#trouble ? [`The folder cannot be read or watched just now: ${this.#trouble}`] : []),
      ...(site && !read?.catalog ? ["The page shows the data as they were before these errors."] : []),
    ];
    return { edition: `${this.#boot}-${this.#edition}`, box: complaintBox(this.#findings(), folder, notes) };
  }

  readonly #files: Files = {
    has: (file) => {
      const { site } = this.#world;
      return site !== undefined && this.#templates.has(site, file);
    },
    text: async (file) => {
      if (file === OWN.script) return this.#own.script;
      if (file === OWN.style) return this.#own.style;
      // No template is asked for these: to know that it has no such page, each would make its lists.
      if (/^\/(assets|pagefind)\//.test(file)) return undefined;
      const { site } = this.#world;
      if (!site) return file.endsWith(".html") ? this.#dressed(NO_SITE) : undefined;
      if (file.startsWith("/data/") && !file.endsWith(".html"))
        return this.#document(site, file.slice("/data/".length));
      const text = this.#templates.render(site, file);
      return text !== undefined && file.endsWith(".html") ? this.#dressed(text) : text;
    },
    bytes: async (file) => {
      if (file.startsWith("/assets/")) {
        await this.#bundled;
        return readFile(join(this.#home, file)).catch(ignoreMissing);
      }
      if (!file.startsWith("/pagefind/")) return undefined;
      const index = await this.#search.ready();
      return index && readFile(join(index.folder, file)).catch(ignoreMissing);
    },
    notFound: () => {
      const { site } = this.#world;
      return this.#dressed((site && this.#templates.render(site, "/404.html")) ?? NO_SITE);
    },
  };

  #dressed(page: string): string {
    const { edition, box } = this.#news();
    return dressPage(page, edition, box);
  }

  async #document(site: Site, name: string): Promise<string | undefined> {
    if (LAID_OUT.includes(name)) {
      if (this.#graph?.site !== site) this.#graph = { site, documents: this.#layOut() };
      return (await this.#graph.documents).get(name);
    }
    if (this.#documents?.site !== site) this.#documents = { site, all: new Documents(site) };
    // What the text search calls each card is known when there is an index; questions wait for the first one.
    if (name.startsWith("ask/systems/")) await this.#search.ready();
    return this.#documents.all.find(name, this.#search.names);
  }

  async #layOut(): Promise<ReadonlyMap<string, string>> {
    const began = performance.now();
    const documents = await this.#aside.ask("graph", undefined);
    this.#options.say(`map: laid out in ${((performance.now() - began) / 1000).toFixed(1)} s`);
    return documents;
  }
}

const NO_SITE = alone("There is no site yet", "The data has errors. When they are mended, the page comes by itself.");

function ignoreMissing(error: NodeJS.ErrnoException): undefined {
  if (error.code !== "ENOENT" && error.code !== "EISDIR") throw error;
  return undefined;
}
