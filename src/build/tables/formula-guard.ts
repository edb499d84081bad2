/**
 * A text that begins with = + - @, a tab or a line end may be run as a formula by a spreadsheet program. On the way out such a
 * text gets an apostrophe in front, on the way in it is taken off again (OWASP, "CSV Injection"). A text that itself begins with
 * apostrophes and such a sign gets one more, so that every text comes back as it was.
 */
const RISKY = "[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20]"; // also the wide forms, which some programs take for the narrow ones
const TO_GUARD = new RegExp(`^'*${RISKY}`);
const GUARDED = new RegExp(`^'+${RISKY}`);

export function guard(text: string): string {
  return TO_GUARD.test(text) ? `'${text}` : text;
}

export function unguard(text: string): string {
  return GUARDED.test(text) ? text.slice(1) : text;
}
