/** Puts a list on the clipboard, and says so beside the button. The clipboard may be closed to pages: then it says that. */
export async function copyOrder(event: Event, lines: readonly string[]): Promise<void> {
  const said = (event.currentTarget as HTMLElement).parentElement?.querySelector("[role=status]");
  const tell = (text: string): void => {
    if (said) said.textContent = text;
  };
  try {
    await navigator.clipboard.writeText(lines.join("\n"));
    tell("Copied.");
  } catch {
    tell("This browser lets no page copy. Mark the list and copy it by hand.");
  }
}
