/** Pages in the Chromium that all tests share; each file has its own contexts. They write down everything that should not happen. */
import { type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, inject, onTestFinished } from "vitest";

export const DESK = { viewport: { width: 1280, height: 800 } };
export const PHONE = { viewport: { width: 360, height: 740 } };

export interface OpenedPage {
  readonly page: Page;
  /** Errors of scripts, messages of the console, what the policy stopped, and requests that left the site. */
  readonly complaints: string[];
}

/**
 * Opens an address of the site in a page of its own, which is closed when the test that asked for it is over. What it stored and
 * was allowed is taken back then. The files of the site that it loaded are kept for the next page with the same options.
 */
export type Open = (address: string, options?: BrowserContextOptions) => Promise<OpenedPage>;

/** To be called at the top of a test file. The site is that of the data folder, if no other is named. */
export async function openBrowser(site: string = inject("siteUrl")): Promise<{
  open: Open;
  newPage: (options: BrowserContextOptions) => Promise<OpenedPage>;
}> {
  const browser = await chromium.connect(inject("browserAddress"));
  afterAll(() => browser.close());
  const contexts = new Map<string, Promise<BrowserContext>>();
  const contextWith = (options: BrowserContextOptions): Promise<BrowserContext> => {
    const name = JSON.stringify(options);
    const context = contexts.get(name) ?? browser.newContext({ reducedMotion: "reduce", ...options });
    contexts.set(name, context);
    return context;
  };
  const newPage = async (options: BrowserContextOptions): Promise<OpenedPage> => {
    const page = await (await contextWith(options)).newPage();
    await page.addInitScript(() => {
      addEventListener("securitypolicyviolation", (event) =>
        console.error(`policy: ${event.effectiveDirective} stopped ${event.blockedURI} ${event.sample}`),
      );
    });
    return { page, complaints: listen(page, site) };
  };
  return {
    newPage,
    open: async (address, options = DESK) => {
      const opened = await newPage(options);
      onTestFinished(() => close(opened.page, site));
      await opened.page.goto(siteAddress(address));
      return opened;
    },
  };
}

async function close(page: Page, site: string): Promise<void> {
  const context = page.context();
  const devtools = await context.newCDPSession(page);
  await devtools.send("Storage.clearDataForOrigin", {
    origin: new URL(site).origin,
    storageTypes: "cookies,local_storage,indexeddb,cache_storage,service_workers",
  });
  await context.clearPermissions();
  await page.close();
}

/** The served address of an address inside the site. */
export function siteAddress(address: string): string {
  return inject("siteUrl") + address.slice(1);
}

function listen(page: Page, site: string): string[] {
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    const isBad = message.type() === "error" || message.type() === "warning";
    // The browser's own remarks on drawing by software.
    if (isBad && !/GPU stall|WebGL-|WebGL: /.test(message.text()))
      complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on("request", (request) => {
    const isOwn = request.url().startsWith(site) || /^(data|blob):/.test(request.url());
    if (!isOwn) complaints.push(`leaves the site: ${request.url()}`);
  });
  return complaints;
}
