/** Puts a copy button beside every form of a page's link. Without this script the text is there to be selected. */
for (const code of document.querySelectorAll<HTMLElement>("[data-copy]")) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = "Copy";
  const name = code.closest("div")?.querySelector("dt")?.textContent ?? "";
  button.setAttribute("aria-label", `Copy as ${name}`);
  const said = document.createElement("span");
  said.setAttribute("role", "status");
  button.addEventListener("click", async () => {
    said.textContent = (await copied(code)) ? "Copied." : "Selected; copy it with your keyboard.";
  });
  code.after(button, said);
}

/** The clipboard may be closed to pages; then the text is at least selected. */
async function copied(code: HTMLElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(code.textContent ?? "");
    return true;
  } catch {
    getSelection()?.selectAllChildren(code);
    return false;
  }
}
