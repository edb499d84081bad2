/**
 * The editor's server: the site of a data folder, as it is now. Nothing is built. The folder is held in memory, a page is made when
 * it is asked for, and what takes long is done aside.
 */
import { randomBytes } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundle } from "../bundle.ts";
import { HOST, listen, type Served } from "../serve.ts";
import { answerRequest } from "./answer-request.ts";
import { Aside } from "./aside.ts";
import { Bursts } from "./bursts.ts";
import { complaintBox } from "./complaint-box.ts";
import { Complaints, type Told } from "./complaints.ts";
import { dressPage, OWN } from "./dress-page.ts";
import { FolderWatch } from "./folder-watch.ts";
import { Listeners, type News } from "./listeners.ts";
import { onPageFiles } from "./on-page-files.ts";
import { sayChange, sayFindings } from "./say-change.ts";
import { SearchIndex } from "./search-index.ts";
import { SiteFiles } from "./site-files.ts";
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
  readonly #opened = Promise.withResolvers<SiteFiles>();
  readonly #boot = randomBytes(4).toString("hex");
  readonly #complaints = new Complaints();
  #bundled: Promise<unknown> = Promise.resolve();
  /** Counts the states of the data that were shown. */
  #edition = 0;
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
    const [templates, own] = await Promise.all([Templates.open(), onPageFiles()]);
    const files = new SiteFiles({
      templates,
      own,
      search: this.#search,
      site: () => this.#world.site,
      bundled: { home: this.#home, done: this.#bundled },
      layOut: () => this.#layOut(),
      dress: (page) => {
        const { edition, box } = this.#news();
        return dressPage(page, edition, box);
      },
    });
    await this.#update();
    this.#opened.resolve(files);
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
      const files = await this.#opened.promise;
      if (request.url === OWN.events) this.#listeners.add(response, this.#news());
      else await answerRequest(files, request, response);
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
    if (change?.isGood && !before?.catalog) this.#complaints.forgetCheck();
    if (change || this.#trouble !== hadTrouble) this.#listeners.tell(this.#news());
    if (!change) return;
    if (before) this.#options.say(sayChange(change, performance.now() - began));
    if (!change.isGood) return this.#say(this.#complaints.errors(this.#world.read));
    this.#checks.event();
    this.#search.changed();
  }

  async #check(): Promise<void> {
    try {
      const findings = await this.#aside.ask("check", undefined);
      if (!this.#world.read?.catalog) return;
      const told = this.#complaints.checked(findings);
      this.#listeners.tell(this.#news());
      this.#say(told);
    } catch (error) {
      if (!this.#isClosed) this.#options.say(`not checked: ${(error as Error).message}`);
    }
  }

  #say({ now, known }: Told): void {
    const said = sayFindings(now, known, this.#options.data);
    if (said) this.#options.say(said);
  }

  #news(): News {
    const { read, site, folder } = this.#world;
    const notes = [
      ...(this.#trouble ? [`The folder cannot be read or watched just now: ${this.#trouble}`] : []),
      ...(site && !read?.catalog ? ["The page shows the data as they were before these errors."] : []),
    ];
    return { edition: `${this.#boot}-${this.#edition}`, box: complaintBox(this.#complaints.of(read), folder, notes) };
  }

  async #layOut(): Promise<ReadonlyMap<string, string>> {
    const began = performance.now();
    const documents = await this.#aside.ask("graph", undefined);
    this.#options.say(`map: laid out in ${((performance.now() - began) / 1000).toFixed(1)} s`);
    return documents;
  }
}
