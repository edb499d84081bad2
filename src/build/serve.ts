/** Serves a built site on this machine only, the way a host of static files does. */
import { readFile, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import sirv from "sirv";

export interface Served {
  /** The address of the home page, with a slash at the end. */
  readonly url: string;
  /** The port taken: the one asked for or, when that was in use, the next free one. */
  readonly port: number;
  /** Ends it, open connections included. */
  close(): Promise<void>;
}

export const HOST = "127.0.0.1";
const PORTS_TRIED = 100;

/** What a host should send with every answer. */
export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
};

/**
 * Looks every file up anew, through the link that `folder` may be: a new build shows at once.
 * Port 0 takes any free port.
 */
export async function serve(options: { folder: string; port: number }): Promise<Served> {
  const files = sirv(options.folder, { dev: true, etag: true });
  const server = createServer((request, response) => {
    answer(options.folder, files, request, response).catch(() => {
      // A file that vanished between two looks at it, say. One answer is lost, not the server.
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });
  const port = await listen(server, options.port);
  return {
    url: `http://${HOST}:${port}/`,
    port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function answer(
  folder: string,
  files: ReturnType<typeof sirv>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  for (const [name, value] of Object.entries(SECURITY_HEADERS)) response.setHeader(name, value);
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.writeHead(405, { Allow: "GET, HEAD" }).end();
    return;
  }
  const asked = splitAddress(request.url ?? "/");
  const found = asked ? await lookUp(folder, asked.path) : "nothing";
  if (!asked || found === "nothing") return notFound(folder, request, response);
  if (found === "folder without slash") {
    response.writeHead(301, { Location: `${asked.encoded}/${asked.query}` }).end();
    return;
  }
  // sirv sends a part of a file without looking whether the range makes sense; whole files are always allowed.
  delete request.headers.range;
  // sirv opens the file after the headers are sent and does not listen for errors of that stream.
  response.on("pipe", (file) => file.on("error", () => response.destroy()));
  request.url = asked.encoded.endsWith("/") ? `${asked.encoded}index.html` : asked.encoded;
  files(request, response, () => void notFound(folder, request, response));
}

interface Address {
  /** As it is in the folder: decoded, each part a plain name. */
  readonly path: string;
  readonly encoded: string;
  readonly query: string;
}

/** Refuses (undefined) addresses that lead out of the folder or to hidden files, however they are written. */
function splitAddress(url: string): Address | undefined {
  const [, encoded = "", query = ""] = /^(\/[^?#]*)(\?[^#]*)?/.exec(url) ?? [];
  let path: string;
  try {
    path = decodeURI(encoded);
  } catch {
    return undefined;
  }
  if (!path.startsWith("/") || /[\\\0]/.test(path)) return undefined;
  const parts = path.slice(1).split("/");
  const isPlain = (part: string, at: number): boolean =>
    part === "" ? at === parts.length - 1 : !part.startsWith(".") || part === ".well-known";
  return parts.every(isPlain) ? { path, encoded, query } : undefined;
}

/**
 * Hosts differ in how much they guess, so nothing is guessed here: a file under its own name, a folder with a slash
 * by its index.html, and a folder without one is sent there. What works here works on all of them.
 */
async function lookUp(folder: string, path: string): Promise<"file" | "folder without slash" | "nothing"> {
  const isFile = async (file: string): Promise<boolean> => (await stat(file).catch(() => undefined))?.isFile() === true;
  if (path.endsWith("/")) return (await isFile(join(folder, path, "index.html"))) ? "file" : "nothing";
  if (await isFile(join(folder, path))) return "file";
  return (await isFile(join(folder, path, "index.html"))) ? "folder without slash" : "nothing";
}

/** The site's own page for this, with the honest status. */
async function notFound(folder: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const page = await readFile(join(folder, "404.html")).catch(() => undefined);
  const type = page ? "text/html;charset=utf-8" : "text/plain;charset=utf-8";
  const body = page ?? Buffer.from("There is no such page.\n");
  response.writeHead(404, { "Content-Type": type, "Content-Length": body.length, "Cache-Control": "no-store" });
  response.end(request.method === "HEAD" ? undefined : body);
}

/** Takes the wished port or, when that is in use, the next free one. Returns it. */
export async function listen(server: Server, wished: number): Promise<number> {
  for (let port = wished; ; port++) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once("error", reject);
        server.listen(port, HOST, () => {
          server.off("error", reject);
          resolve();
        });
      });
      return (server.address() as AddressInfo).port;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
      if (port - wished >= PORTS_TRIED || port >= 65535)
        throw new Error(`no port from ${wished} to ${port} is free; name another one with --port`, { cause: error });
    }
  }
}
