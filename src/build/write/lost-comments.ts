/** Which comments of a file do not stand in its new text any more. */
import { Lexer } from "yaml";
import type { FileKindName } from "../../engine/records/file-kinds.ts";
import { factsOf } from "./facts-of.ts";

/** A field that had to be written anew, or that goes, takes with it what was noted inside: whoever wrote it is told before. */
export function lostComments(kind: FileKindName, before: string, after: string): string[] {
  const left = commentsIn(kind, after);
  return commentsIn(kind, before).filter((comment) => {
    const at = left.indexOf(comment);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** In their order. The text below the facts has none. */
export function commentsIn(kind: FileKindName, text: string): string[] {
  const comments: string[] = [];
  let value = false;
  for (const token of new Lexer().lex(factsOf(kind, text)?.yaml ?? "")) {
    if (!value && token.startsWith("#")) comments.push(token.trimEnd());
    value = token === "\u001f"; // A mark of the reader: what follows is a value, whatever it begins with.
  }
  return comments;
}
