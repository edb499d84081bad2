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
 * Opens an address of the site in a page that is as a new one. When the test that asked for it is over, the page is emptied and kept
 * for the next one with the same options: to make a page takes three times as long as to open an address in it.
 */
export type Open = (address: string, options?: BrowserContextOptions) => Promise<OpenedPage>;

interface KeptPage {
  readonly page: Page;
  /** Those of the test that has it now. */
  complaints: string[];
}

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
  const make = async (options: BrowserContextOptions): Promise<KeptPage> => {
    const page = await (await contextWith(options)).newPage();
    await page.addInitScript(() => {
      addEventListener("securitypolicyviolation", (event) =>
        console.error(`policy: ${event.effectiveDirective} stopped ${event.blockedURI} ${event.sample}`),
      );
    });
    const kept: KeptPage = { page, complaints: [] };
    listen(page, site, (complaint) => kept.complaints.push(complaint));
    return kept;
  };
  const idle = new Map<string, KeptPage[]>();
  return {
    newPage: make,
    open: async (address, options = DESK) => {
      const key = JSON.stringify(options);
      const free = idle.get(key) ?? [];
      idle.set(key, free);
      const kept = free.pop() ?? (await make(options));
      kept.complaints = [];
      onTestFinished(async () => {
        await empty(kept.page, options, site);
        free.push(kept);
      });
      await kept.page.goto(siteAddress(address));
      return { page: kept.page, complaints: kept.complaints };
    },
  };
}

/** What the test stored, was allowed, listened to and changed is taken back. */
async function empty(page: Page, options: BrowserContextOptions, site: string): Promise<void> {
  const context = page.context();
  page.removeAllListeners("dialog");
  await page.unrouteAll();
  await page.goto("about:blank");
  const devtools = await context.newCDPSession(page);
  await devtools.send("Storage.clearDataForOrigin", {
    origin: new URL(site).origin,
    storageTypes: "cookies,local_storage,indexeddb,cache_storage,service_workers",
  });
  await devtools.send("Page.resetNavigationHistory");
  await devtools.detach();
  await context.clearPermissions();
  await page.emulateMedia({ media: "screen", colorScheme: options.colorScheme ?? "light", reducedMotion: "reduce" });
  await page.setViewportSize(options.viewport ?? DESK.viewport);
}

/** The served address of an address inside the site. */
export function siteAddress(address: string): string {
  return inject("siteUrl") + address.slice(1);
}

function listen(page: Page, site: string, complain: (complaint: string) => void): void {
  page.on("pageerror", (error) => complain(String(error)));
  page.on("console", (message) => {
    const isBad = message.type() === "error" || message.type() === "warning";
    // The browser's own remarks on drawing by software.
    if (isBad && !/GPU stall|WebGL-|WebGL: /.test(message.text())) complain(`${message.type()}: ${message.text()}`);
  });
  page.on("request", (request) => {
    const isOwn = request.url().startsWith(site) || /^(data|blob):/.test(request.url());
    if (!isOwn) complain(`leaves the site: ${request.url()}`);
  });
}
