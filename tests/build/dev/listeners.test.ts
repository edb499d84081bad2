import { createServer, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { expect, onTestFinished, test } from "vitest";
import { Listeners } from "../../../src/build/dev/listeners.ts";
import { listenTo } from "./listen-to.ts";

test("an open page is told how things stand, and everything new; one that was closed is forgotten", async () => {
  const listeners = new Listeners();
  const gone = Promise.withResolvers<void>();
  const server = createServer((_, response: ServerResponse) => {
    listeners.add(response, { edition: "1", box: "" });
    response.on("close", () => gone.resolve());
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => {
    server.closeAllConnections();
    server.close();
  });
  const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const heard = await listenTo(url);
  expect(heard.last).toEqual({ edition: "1", box: "" });
  const news = { edition: "2", box: "<p>two\nlines</p>\n\ndata: {}" };
  listeners.tell(news);
  expect(await heard.next()).toEqual(news);

  const short = new AbortController();
  await fetch(url, { signal: short.signal });
  expect(listeners.count).toBe(2);
  short.abort();
  await gone.promise;
  expect(listeners.count).toBe(1);
});
