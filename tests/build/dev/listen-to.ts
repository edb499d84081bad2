/** What an open page is told by the editor's server. */
import { onTestFinished } from "vitest";
import type { News } from "../../../src/build/dev/listeners.ts";

export interface Heard {
  readonly last: News;
  next(): Promise<News>;
  /** Waits for news of which this is true; it may have come already. */
  until(isSo: (news: News) => boolean | Promise<boolean>): Promise<News>;
}

export async function listenTo(url: string): Promise<Heard> {
  const ended = new AbortController();
  onTestFinished(() => ended.abort());
  const { body } = await fetch(new URL(".yearmark/events", url), { signal: ended.signal });
  const reader = (body as ReadableStream<Uint8Array>).getReader();
  const decoder = new TextDecoder();
  let text = "";
  const next = async (): Promise<News> => {
    for (;;) {
      const [, data] = /^data: (.*)\n\n/m.exec(text) ?? [];
      if (data !== undefined) {
        text = text.slice(text.indexOf("\n\n") + 2);
        heard.last = JSON.parse(data) as News;
        return heard.last;
      }
      const { value, done } = await reader.read();
      if (done) throw new Error("the server ended");
      text += decoder.decode(value, { stream: true });
    }
  };
  const heard = {
    last: { edition: "", box: "" },
    next,
    until: async (isSo: (news: News) => boolean | Promise<boolean>) => {
      while (!(await isSo(heard.last))) await next();
      return heard.last;
    },
  };
  await next();
  return heard;
}
