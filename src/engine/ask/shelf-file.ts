/** The file of the numbers that begin alike, whatever letters they begin with. */
export function shelfFile(shelf: string): string {
  return `${[...shelf].map((sign) => (/[A-Z0-9]/.test(sign) ? sign : `u${sign.codePointAt(0)?.toString(16)}`)).join("")}.json`;
}
