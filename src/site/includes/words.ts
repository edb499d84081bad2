export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What an editor wrote as a remark, as a sentence of its own. */
export function sentence(text: string): string {
  const words = upperFirst(text.trim());
  return /[.!?]["'”’)]*$/.test(words) ? words : `${words}.`;
}

/** "1 record", "2 records", "no records". */
export function counted(count: number, word: string): string {
  return `${count === 0 ? "no" : count.toLocaleString("en-US")} ${word}${count === 1 ? "" : "s"}`;
}
