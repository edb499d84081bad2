/** The configuration for nginx, scripts/hosting/nginx.conf, asked of a real nginx that serves a built site. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { once } from "node:events";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { type IncomingHttpHeaders, request } from "node:http";
import { tmpdir } from "node:os";
import { dirname, extname, join } from "node:path";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findWebServer } from "../../scripts/web-server.ts";
import { readManifest } from "../../src/build/publish/read-manifest.ts";
import { SECURITY_HEADERS } from "../../src/build/serve.ts";
import { buildByCommand } from "../helpers/build-by-command.ts";
import { TINY } from "../helpers/tiny-folder.ts";

/** Without one these tests are skipped, and npm test says so. */
const nginx = process.env.YEARMARK_NGINX ?? findWebServer() ?? "";

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
}

interface Server {
  ask(path: string, options?: { method?: string; headers?: Record<string, string> }): Promise<Answer>;
  end(): Promise<unknown>;
}

const home = mkdtempSync(join(tmpdir(), "yearmark-nginx-"));
const www = join(home, "www");
let release: string;
let server: Server;

describe.skipIf(nginx === "")("nginx", () => {
  beforeAll(async () => {
    const data = join(home, "data");
    const atRoot = { ...TINY, "maker.yaml": (TINY["maker.yaml"] as string).replace("example/changes/", "example/") };
    for (const [path, text] of Object.entries(atRoot)) {
      mkdirSync(dirname(join(data, path)), { recursive: true });
      writeFileSync(join(data, path), text);
    }
    buildByCommand({ data, site: join(home, "_site") });
    release = realpathSync(join(home, "_site"));
    writeFileSync(join(home, "secret.txt"), "secret");
    mkdirSync(join(release, ".well-known"));
    writeFileSync(join(release, ".well-known/security.txt"), "contact");
    symlinkSync(release, www);
    server = await start("root", { "/srv/www": www });
  }, 120_000);
  afterAll(async () => {
    await server.end();
    rmSync(home, { recursive: true });
  });

  test("serves every file of the manifest whole, with its type, and says how long it may be kept", async () => {
    const { files } = readManifest(release);
    expect(files.length).toBeGreaterThan(100);
    const wrong: string[] = [];
    const types = new Set<string>();
    let immutable = 0;
    for (const { path, sha256 } of files) {
      const { status, headers, body } = await server.ask(`/${path}`);
      types.add(`${extname(path)} ${headers["content-type"]}`);
      const isNamedByContents = /\/chunk-|\.pf_/.test(path);
      if (isNamedByContents) immutable++;
      const kept = isNamedByContents ? "public, max-age=31536000, immutable" : "no-cache";
      if (status !== 200 || createHash("sha256").update(body).digest("hex") !== sha256)
        wrong.push(`${path}: ${status}`);
      if (headers["cache-control"] !== kept) wrong.push(`${path}: ${headers["cache-control"]}`);
      if (headers["content-encoding"] !== undefined)
        wrong.push(`${path}: ${headers["content-encoding"]} was not asked for`);
    }
    expect(wrong).toEqual([]);
    expect(immutable).toBeGreaterThan(10);
    expect([...types].sort()).toEqual([
      ".css text/css; charset=utf-8",
      ".gexf application/xml; charset=utf-8",
      ".html text/html; charset=utf-8",
      ".js application/javascript; charset=utf-8",
      ".json application/json",
      ".map application/octet-stream",
      ".pagefind application/octet-stream",
      ".pf_fragment application/octet-stream",
      ".pf_index application/octet-stream",
      ".pf_meta application/octet-stream",
      ".svg image/svg+xml",
      ".txt text/plain; charset=utf-8",
      ".xml text/xml; charset=utf-8",
    ]);
  });

  describe("compression", () => {
    // path, whether it is worth while
    test.each([
      ["/records/HY59-01/", true],
      ["/assets/site.css", true],
      ["/assets/map.js", true],
      ["/data/graph.json", true],
      ["/sitemap.xml", true],
      ["/data/graph.gexf", true],
      ["/robots.txt", false],
      ["/pagefind/wasm.en.pagefind", false],
    ])("%s: %s", async (path, compressed) => {
      const { headers, body } = await server.ask(path, { headers: { "accept-encoding": "gzip, br" } });
      const file = readFileSync(join(release, path.endsWith("/") ? `${path}index.html` : path));
      expect(headers["content-encoding"]).toBe(compressed ? "gzip" : undefined);
      expect(compressed ? gunzipSync(body) : body).toEqual(file);
      if (compressed) expect(headers.vary).toBe("Accept-Encoding");
    });
  });

  test.each([{}, { "accept-encoding": "gzip" }])("what has not changed is not sent again: %j", async (headers) => {
    const first = await server.ask("/records/", { headers });
    const again = await server.ask("/records/", {
      headers: { ...headers, "if-none-match": String(first.headers.etag) },
    });
    expect([first.status, again.status, again.body.length]).toEqual([200, 304, 0]);
    expect(again.headers["cache-control"]).toBe("no-cache");
  });

  test("only the headers are sent when only they are asked for, and nothing can be sent to it", async () => {
    const { status, body } = await server.ask("/", { method: "HEAD" });
    expect([status, body.length]).toEqual([200, 0]);
    expect((await server.ask("/", { method: "POST" })).status).toBe(405);
  });

  test("every answer has the security headers, and none tells the version of the server", async () => {
    for (const path of ["/", "/nowhere", "/records", "/records/HY-1/", "/data/graph.gexf", "/.yearmark-site"]) {
      const { headers } = await server.ask(path);
      for (const [name, value] of Object.entries(SECURITY_HEADERS))
        expect(headers[name.toLowerCase()], path).toBe(value);
      expect(headers.server).toBe("nginx");
    }
  });

  describe("leads on", () => {
    // asked, where it leads
    test.each([
      ["/records/HY-1/", "/records/HY59-01/"],
      ["/records/HY-1", "/records/HY59-01/"],
      ["/records/HY-1/?from=mail", "/records/HY59-01/?from=mail"],
      ["/ask?q=brakes", "/ask/?q=brakes"],
    ])("%s to %s", async (asked, location) => {
      const { status, headers } = await server.ask(asked);
      expect([status, headers.location]).toEqual([301, location]);
    });

    test("but not from an id in other capitals, nor from one that was withdrawn: its page says so", async () => {
      expect((await server.ask("/records/hy-1/")).status).toBe(404);
      const { status, body } = await server.ask("/parts/HT-099/");
      expect([status, body.toString()]).toEqual([200, expect.stringContaining("was withdrawn</h1>")]);
    });
  });

  describe("nothing: the site's own page, with the honest status, not to be kept", () => {
    const listed = ["/nowhere", "/nowhere/", "/index.html/", "/data/records/", "/assets/", "/assets/chunk-AAAAAAAA.js"];
    test.each([...listed, "/.yearmark-site", "/data/.git/config", "/404.html/x"])("%s", async (path) => {
      const { status, headers, body } = await server.ask(path);
      expect([status, headers["content-type"], headers["cache-control"]]).toEqual([
        404,
        "text/html; charset=utf-8",
        "no-cache",
      ]);
      expect(body).toEqual(readFileSync(join(release, "404.html")));
    });
  });

  test("what the web agreed on is served though it is hidden", async () => {
    expect((await server.ask("/.well-known/security.txt")).body.toString()).toBe("contact");
  });

  test.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/records/../../secret.txt",
    "/..\\secret.txt",
    "/.well-known/../../secret.txt",
    "/index.html%00.css",
    "//../secret.txt",
  ])("%s leads out of nothing", async (path) => {
    const { status, body } = await server.ask(path);
    expect([400, 404]).toContain(status);
    expect(body.toString()).not.toContain("secret");
  });

  test("a release that takes the place of another by one rename is served at once", async () => {
    const next = join(home, "next");
    cpSync(release, next, { recursive: true });
    writeFileSync(join(next, "index.html"), "the next release");
    symlinkSync(next, join(home, "fresh"));
    renameSync(join(home, "fresh"), www);
    expect((await server.ask("/")).body.toString()).toBe("the next release");
    symlinkSync(release, join(home, "fresh"));
    renameSync(join(home, "fresh"), www);
    expect((await server.ask("/")).body.toString()).toContain("<h1");
  });

  test("a site whose address has a folder", async () => {
    mkdirSync(join(home, "folder"));
    symlinkSync(release, join(home, "folder/changes"));
    writeFileSync(join(home, "moved.map"), '"~^/changes/records/HY-1/?$" "/changes/records/HY59-01/";\n');
    const other = await start("other", {
      "/srv/www/data/moved.map;": `${join(home, "moved.map")};`,
      "=404 /404.html": "=404 /changes/404.html",
      "root /srv/www": `root ${join(home, "folder")}`,
    });
    try {
      expect((await other.ask("/changes/records/HY-1/")).headers.location).toBe("/changes/records/HY59-01/");
      expect((await other.ask("/changes/records/")).status).toBe(200);
      const { status, body } = await other.ask("/changes/nowhere/");
      expect([status, body]).toEqual([404, readFileSync(join(release, "404.html"))]);
      expect((await other.ask("/changes/.yearmark-site")).status).toBe(404);
      expect((await other.ask("/changes/assets/chunk-AAAAAAAA.js")).headers["cache-control"]).toBe("no-cache");
    } finally {
      await other.end();
    }
  });
});

/** The configuration with the changes that it asks for: other places, and a socket in place of a port, which may be taken. */
async function start(name: string, changes: Record<string, string>): Promise<Server> {
  const socket = join(home, `${name}.sock`);
  const site = join(home, `${name}.site.conf`);
  const all = { "listen 80;": `listen unix:${socket};`, "listen [::]:80;": "", ...changes };
  let text = readFileSync("scripts/hosting/nginx.conf", "utf8");
  for (const [old, fresh] of Object.entries(all)) {
    if (!text.includes(old)) throw new Error(`nginx.conf has no '${old}'`);
    text = text.replaceAll(old, fresh);
  }
  writeFileSync(site, text);
  const types = join(
    dirname(/--conf-path=(\S+)/.exec(spawnSync(nginx, ["-V"], { encoding: "utf8" }).stderr)?.[1] ?? ""),
    "mime.types",
  );
  const temporary = ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"];
  const main = join(home, `${name}.conf`);
  writeFileSync(
    main,
    `daemon off; master_process off; pid ${join(home, name)}.pid; error_log stderr notice; events { }
http { include ${types}; default_type application/octet-stream; access_log off;
${temporary.map((it) => `${it}_temp_path ${join(home, it)};`).join(" ")} include ${site}; }\n`,
  );
  const child = spawn(nginx, ["-p", home, "-e", "stderr", "-c", main], { stdio: ["ignore", "ignore", "pipe"] });
  await ready(child);
  return {
    ask: (path, options = {}) => ask(socket, path, options),
    end: () => {
      const ended = once(child, "exit");
      child.kill("SIGTERM");
      return ended;
    },
  };
}

/** It says in which way it waits for requests, and then it does. */
function ready(child: ChildProcess): Promise<void> {
  let said = "";
  return new Promise((resolve, reject) => {
    child.stderr?.on("data", (piece) => {
      said += piece;
      if (said.includes("event method")) resolve();
    });
    child.once("error", reject);
    child.once("exit", () => reject(new Error(`nginx did not start:\n${said}`)));
  });
}

/** Asks with the path as it stands: fetch would tidy it up first. */
function ask(socketPath: string, path: string, options: object): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request({ socketPath, path, headers: {}, ...options }, (response) => {
      const pieces: Buffer[] = [];
      response.on("data", (piece: Buffer) => pieces.push(piece));
      response.on("end", () =>
        resolve({ status: response.statusCode, headers: response.headers, body: Buffer.concat(pieces) }),
      );
    });
    asked.on("error", reject);
    asked.end();
  });
}
