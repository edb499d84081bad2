/** The pages that are open, and what they are told: by server-sent events, so that nothing is told twice or asked for in vain. */
import type { ServerResponse } from "node:http";

export interface News {
  /** Which state of the data is shown now. A page of another one loads itself again. */
  readonly edition: string;
  /** The complaints, as markup. */
  readonly box: string;
}

export class Listeners {
  readonly #open = new Set<ServerResponse>();

  get count(): number {
    return this.#open.size;
  }

  add(response: ServerResponse, news: News): void {
    response.writeHead(200, { "Content-Type": "text/event-stream", "Cache-Control": "no-store" });
    // A page whose server ended asks again after this many milliseconds.
    response.write(`retry: 500\n${event(news)}`);
    this.#open.add(response);
    response.on("close", () => this.#open.delete(response));
  }

  tell(news: News): void {
    for (const response of this.#open) response.write(event(news));
  }
}

/** A line break in the data would end it; JSON has none. */
function event(news: News): string {
  return `data: ${JSON.stringify(news)}\n\n`;
}
