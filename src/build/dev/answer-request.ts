/** What the editor's server answers: the site's files, each made when it is asked for. */
import type { IncomingMessage, ServerResponse } from "node:http";
import { extname } from "node:path";
import { SECURITY_HEADERS } from "../serve.ts";

/** Finds a file of the site, "/records/index.html", or says where it lies on the disk. */
export interface Files {
  /** Whether there is such a page, without making it. */
  has(file: string): boolean;
  text(file: string): Promise<string | undefined>;
  bytes(file: string): Promise<Uint8Array | undefined>;
  /** The site's own page for what is not there. */
  notFound(): string;
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html;charset=utf-8",
  ".css": "text/css;charset=utf-8",
  ".js": "text/javascript;charset=utf-8",
  ".json": "application/json;charset=utf-8",
  ".xml": "application/xml;charset=utf-8",
  ".gexf": "application/xml;charset=utf-8",
  ".txt": "text/plain;charset=utf-8",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
};

/**
 * As a host of static files does it: a file under its own name, a folder with a slash by its index.html, and a folder without one
 * is sent there. Nothing is kept by the browser.
 */
export async function answerRequest(files: Files, request: IncomingMessage, response: ServerResponse): Promise<void> {
  for (const [name, value] of Object.entries({ ...SECURITY_HEADERS, "Cache-Control": "no-store" }))
    response.setHeader(name, value);
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.writeHead(405, { Allow: "GET, HEAD" }).end();
    return;
  }
  const [encoded = "/", query = ""] = (request.url ?? "/").split(/(?=\?)/s);
  const path = decoded(encoded);
  const file = path?.endsWith("/") ? `${path}index.html` : path;
  const send = (status: number, type: string, body: string | Uint8Array): void => {
    const bytes = typeof body === "string" ? Buffer.from(body) : body;
    response.writeHead(status, { "Content-Type": type, "Content-Length": bytes.length });
    response.end(request.method === "HEAD" ? undefined : bytes);
  };
  const found = file === undefined ? undefined : ((await files.text(file)) ?? (await files.bytes(file)));
  if (file !== undefined && found !== undefined) send(200, TYPES[extname(file)] ?? "application/octet-stream", found);
  else if (file !== undefined && files.has(`${file}/index.html`))
    response.writeHead(301, { Location: `${encoded}/${query}`, "Content-Length": 0 }).end();
  else send(404, TYPES[".html"] as string, files.notFound());
}

/** Nothing for an address that is cut off in the middle of a letter, or that leads out of the site. */
function decoded(encoded: string): string | undefined {
  try {
    const path = decodeURI(encoded);
    return path.startsWith("/") && !/[\\\0]|\/\.\.?(\/|$)/.test(path) ? path : undefined;
  } catch {
    return undefined;
  }
}
