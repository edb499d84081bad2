/** Who says the other of two things, as the first one's record tells it. */
export function whose(record: string, other: string): string {
  return record === other ? "another line of this record" : other;
}
