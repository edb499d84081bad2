/**
 * Several values in one cell, with ' | ' between them. A bar or a backslash of a value itself has a backslash before it, and so
 * has a blank at its ends, so that every list comes back as it was.
 */
export const LIST_SIGN = "|";

export function joinList(values: readonly string[]): string {
  return values.map((value) => value.replaceAll(/[\\|]|^\s|\s$/g, "\\$&")).join(` ${LIST_SIGN} `);
}

/** Another sign may stand between the values of somebody else's sheet; then nothing is escaped. */
export function splitList(text: string, sign: string = LIST_SIGN): string[] {
  const pieces = sign === LIST_SIGN ? unescaped(text) : text.split(sign).map((piece) => piece.trim());
  return pieces.filter((piece) => piece !== "");
}

/** The pieces between bars, with their backslashes taken off and the blanks round them, but not those behind a backslash. */
function unescaped(text: string): string[] {
  const pieces: string[] = [];
  let piece = "";
  let kept = 0; // so many signs of the piece stay, blanks or not
  const end = (): void => {
    pieces.push(piece.slice(0, kept) + piece.slice(kept).trimEnd());
    [piece, kept] = ["", 0];
  };
  for (let at = 0; at < text.length; at++) {
    const sign = text[at] as string;
    if (sign === LIST_SIGN) end();
    else if (sign === "\\" && at + 1 < text.length) {
      piece += text[++at];
      kept = piece.length;
    } else if (piece !== "" || !/\s/.test(sign)) piece += sign;
  }
  end();
  return pieces;
}
