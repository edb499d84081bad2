/** Two tabs, map and table: a click or the arrow keys change between them. */
export function tabs<Name extends string>(
  buttons: Readonly<Record<Name, HTMLButtonElement>>,
  panels: Readonly<Record<Name, HTMLElement>>,
  onChange: (name: Name) => void,
): { show(name: Name): void } {
  const names = Object.keys(buttons) as Name[];
  for (const [i, name] of names.entries()) {
    buttons[name].addEventListener("click", () => onChange(name));
    buttons[name].addEventListener("keydown", (event) => {
      if (event.key !== "ArrowLeft" && event.key !== "ArrowRight") return;
      const next = names[(i + (event.key === "ArrowRight" ? 1 : names.length - 1)) % names.length];
      if (next === undefined) return;
      event.preventDefault();
      onChange(next);
      buttons[next].focus();
    });
  }
  return {
    show(shown) {
      for (const name of names) {
        const on = name === shown;
        buttons[name].setAttribute("aria-selected", String(on));
        buttons[name].tabIndex = on ? 0 : -1;
        panels[name].hidden = !on;
      }
    },
  };
}
