/** Questions and answers, line by line. Lines that are pasted all at once wait for their questions. */
import { createInterface } from "node:readline/promises";
import type { Terminal } from "./gather-answers.ts";

export function openTerminal(
  input: NodeJS.ReadableStream,
  output: NodeJS.WritableStream,
): Terminal & { close(): void } {
  const lines: string[] = [];
  let waiting: ((line: string | undefined) => void) | undefined;
  let closed = false;
  const reader = createInterface({ input, output });
  reader.on("line", (line) => {
    if (waiting) waiting(line);
    else lines.push(line);
  });
  // At Ctrl-C, Ctrl-D, or the end of a file.
  reader.on("close", () => {
    closed = true;
    waiting?.(undefined);
  });
  return {
    ask: (question) =>
      new Promise((resolve) => {
        const answer = (line: string | undefined): void => {
          waiting = undefined;
          resolve(line);
        };
        if (lines.length > 0) output.write(`${question}${lines[0]}\n`);
        if (lines.length > 0 || closed) return answer(lines.shift());
        waiting = answer;
        reader.setPrompt(question);
        reader.prompt();
      }),
    say: (text) => void output.write(`${text}\n`),
    close: () => reader.close(),
  };
}
