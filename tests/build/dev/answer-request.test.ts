import { createServer } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { afterAll, beforeAll, expect, test } from "vitest";
import { answerRequest } from "../../../src/build/dev/answer-request.ts";

const TEXTS: Readonly<Record<string, string>> = {
  "/index.html": "home",
  "/records/A 1/index.html": "a record",
  "/data/a.json": "{}",
  "/feeds/all.xml": "<feed/>",
};
const server = createServer((request, response) =>
  answerRequest(
    {
      has: (file) => file in TEXTS,
      text: async (file) => TEXTS[file],
      bytes: async (file) => (file === "/pagefind/a.wasm" ? new Uint8Array([1, 2]) : undefined),
      notFound: () => "nothing here",
    },
    request,
    response,
  ),
);
let port = 0;
beforeAll(async () => {
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  port = (server.address() as AddressInfo).port;
});
afterAll(() => server.close());

/** As it is, without a client that tidies the address. */
function ask(address: string, method = "GET"): Promise<{ status: number; head: string; body: string }> {
  return new Promise((resolve, reject) => {
    let text = "";
    const socket = connect(port, "127.0.0.1", () =>
      socket.write(`${method} ${address} HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n`),
    );
    socket.on("data", (piece) => {
      text += piece;
    });
    socket.on("error", reject);
    socket.on("end", () => {
      const [head = "", body = ""] = text.split(/\r\n\r\n/s);
      resolve({ status: Number(head.split(" ")[1]), head, body });
    });
  });
}

// address, status, type or new address, text
test.each([
  ["/", 200, "Content-Type: text/html;charset=utf-8", "home"],
  ["/?q=a?b", 200, "Content-Type: text/html", "home"],
  ["/index.html", 200, "Content-Type: text/html", "home"],
  ["/records/A%201/", 200, "Content-Type: text/html", "a record"],
  ["/records/A%201?x=1", 301, "Location: /records/A%201/?x=1", ""],
  ["/data/a.json", 200, "Content-Type: application/json", "{}"],
  ["/feeds/all.xml", 200, "Content-Type: application/xml", "<feed/>"],
  ["/pagefind/a.wasm", 200, "Content-Type: application/wasm", "\u0001\u0002"],
  ["/records/", 404, "Content-Type: text/html", "nothing here"],
  ["/../secret", 404, "Content-Type: text/html", "nothing here"],
  ["/a/%2e%2e/index.html", 404, "Content-Type: text/html", "nothing here"],
  ["/%E0%A4%A", 404, "Content-Type: text/html", "nothing here"],
  ["//records/A%201", 404, "Content-Type: text/html", "nothing here"],
])("%s: %i", async (address, status, line, body) => {
  const answer = await ask(address);
  expect(answer).toMatchObject({ status, body });
  expect(answer.head).toContain(line);
});

test("nothing is kept, nothing is guessed, and only reading is possible", async () => {
  expect((await ask("/")).head).toContain("Cache-Control: no-store");
  expect((await ask("/")).head).toContain("X-Content-Type-Options: nosniff");
  expect(await ask("/", "HEAD")).toMatchObject({ status: 200, body: "" });
  expect((await ask("/", "POST")).head).toContain("Allow: GET, HEAD");
});
