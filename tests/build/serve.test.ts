import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Served, serve } from "../../src/build/serve.ts";
import { publishAtomically } from "../../src/build/swap.ts";

let home: string;
let served: Served;

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), "serve-"));
  await writeFile(join(home, "secret.txt"), "secret");
  await mkdir(join(home, "_site-secret"));
  await writeFile(join(home, "_site-secret", "index.html"), "secret");
  await publishAtomically(join(home, "_site"), (folder) => writeSite(folder, "one"));
  served = await serve({ folder: join(home, "_site"), port: 0 });
});
afterAll(async () => {
  await served.close();
  await rm(home, { recursive: true });
});

async function writeSite(folder: string, text: string): Promise<void> {
  const files: Record<string, string> = {
    "index.html": text,
    "404.html": "the helping page",
    "styles/site.css": "body {}",
    "browser/map.js": "map()",
    "graph.json": "{}",
    "feed.xml": "<feed/>",
    "images/mark.svg": "<svg/>",
    "search/index.html": "the search",
    "search.html": "not the search",
    "empty/only.txt": "text",
    "ö/index.html": "umlaut",
    ".well-known/security.txt": "contact",
  };
  for (const [name, content] of Object.entries(files)) {
    await mkdir(join(folder, name, ".."), { recursive: true });
    await writeFile(join(folder, name), content);
  }
}

interface Answer {
  status: number | undefined;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}

/** Asks with the path as it stands: fetch would tidy it up first. */
function ask(path: string, options: { method?: string; headers?: Record<string, string> } = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: "127.0.0.1", port: served.port, path, ...options }, (response) => {
      let body = "";
      response.setEncoding("utf8");
      response.on("data", (piece: string) => {
        body += piece;
      });
      response.on("end", () => resolve({ status: response.statusCode, headers: response.headers, body }));
    });
    asked.on("error", reject);
    asked.end();
  });
}

describe("files", () => {
  // path, type, body
  test.each([
    ["/", "text/html;charset=utf-8", "one"],
    ["/?utm=1", "text/html;charset=utf-8", "one"],
    ["/index.html", "text/html;charset=utf-8", "one"],
    ["/search/", "text/html;charset=utf-8", "the search"],
    ["/search.html", "text/html;charset=utf-8", "not the search"],
    ["/%C3%B6/", "text/html;charset=utf-8", "umlaut"],
    ["/styles/site.css", "text/css", "body {}"],
    ["/browser/map.js", "text/javascript", "map()"],
    ["/graph.json", "application/json", "{}"],
    ["/feed.xml", "text/xml", "<feed/>"],
    ["/images/mark.svg", "image/svg+xml", "<svg/>"],
    ["/.well-known/security.txt", "text/plain", "contact"],
  ])("%s is %s", async (path, type, body) => {
    const answer = await ask(path);
    expect([answer.status, answer.headers["content-type"], answer.body]).toEqual([200, type, body]);
  });

  test("every answer has the headers a host should send", async () => {
    for (const path of ["/", "/nowhere", "/search"]) {
      const { headers } = await ask(path);
      expect(headers).toMatchObject({ "x-content-type-options": "nosniff", "referrer-policy": "no-referrer" });
    }
  });

  test("what has not changed is not sent again", async () => {
    const { headers } = await ask("/graph.json");
    const again = await ask("/graph.json", { headers: { "if-none-match": String(headers.etag) } });
    expect([again.status, again.body]).toEqual([304, ""]);
  });

  test("only the headers are sent when only they are asked for", async () => {
    const answer = await ask("/", { method: "HEAD" });
    expect([answer.status, answer.headers["content-length"], answer.body]).toEqual([200, "3", ""]);
  });

  test("nothing can be sent to it", async () => {
    expect(await ask("/", { method: "POST" })).toMatchObject({ status: 405, headers: { allow: "GET, HEAD" } });
  });

  test.each(["bytes=5-2", "bytes=-1", "bytes=x", "bytes=0-0"])("a range (%s) gets the whole file", async (range) => {
    expect(await ask("/", { headers: { range } })).toMatchObject({ status: 200, body: "one" });
  });
});

describe("addresses", () => {
  test("a folder without its slash is sent there, question included", async () => {
    const answer = await ask("/search?q=brakes");
    expect([answer.status, answer.headers.location]).toEqual([301, "/search/?q=brakes"]);
  });

  test.each(["/nowhere", "/nowhere/", "/search/nowhere.html", "/graph", "/graph.json/", "/empty", "/empty/"])(
    "%s is nothing: the helping page, with the honest status",
    async (path) => {
      const answer = await ask(path);
      expect([answer.status, answer.headers["content-type"], answer.body]).toEqual([
        404,
        "text/html;charset=utf-8",
        "the helping page",
      ]);
    },
  );

  test.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/search/../../secret.txt",
    "/..\\secret.txt",
    "/%5c..%5csecret.txt",
    "/../_site-secret/index.html",
    "/../_site-secret/",
    "//secret.txt",
    "//example.org/search",
    "/./index.html",
    "/.yearmark-site",
    "/.well-known/../.yearmark-site",
    "/index.html%00.css",
    "/%E0%A4%A",
    "*",
  ])("%s leads nowhere", async (path) => {
    const answer = await ask(path);
    expect(answer.status).toBe(404);
    expect(answer.body).toBe("the helping page");
  });
});

test("a new build shows at once", async () => {
  await publishAtomically(join(home, "_site"), (folder) => writeSite(folder, "two"));
  expect((await ask("/")).body).toBe("two");
  await publishAtomically(join(home, "_site"), (folder) => writeSite(folder, "one"));
  expect((await ask("/")).body).toBe("one");
});

test("a port in use: the next free one is taken", async () => {
  const holder = createServer();
  // A port that is taken, with a neighbour that exists.
  const taken = await new Promise<number>((resolve) => {
    holder.listen(0, "127.0.0.1", () => resolve((holder.address() as { port: number }).port));
  });
  const second = await serve({ folder: join(home, "_site"), port: taken });
  expect(second.port).toBeGreaterThan(taken);
  expect(second.url).toBe(`http://127.0.0.1:${second.port}/`);
  expect(await (await fetch(second.url)).text()).toBe("one");
  await second.close();
  await expect(fetch(second.url)).rejects.toThrow();
  holder.close();
});

test("without a page for it, what is missing is still told", async () => {
  const bare = await serve({ folder: join(home, "_site-secret"), port: 0 });
  const answer = await fetch(`${bare.url}nowhere`);
  expect([answer.status, await answer.text()]).toEqual([404, "There is no such page.\n"]);
  await bare.close();
});
