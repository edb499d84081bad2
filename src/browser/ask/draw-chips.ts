/** What was understood of the question, as chips that can be taken away and put back. */
import type { Chip } from "../../engine/ask/read-question.ts";

export function drawChips(
  place: HTMLElement,
  chips: readonly Chip[],
  ignored: readonly Chip[],
  words: string,
  toggle: (chip: Chip) => void,
): void {
  const items: Node[] = [];
  for (const chip of chips) items.push(button(chip, `${KIND[chip.kind]}: ${chip.label}`, "Take away", toggle));
  for (const chip of ignored) items.push(button(chip, `not used: ${chip.label}`, "Put back", toggle));
  if (words !== "") {
    const text = document.createElement("span");
    text.className = "words";
    text.textContent = `searched as text: ${words}`;
    items.push(text);
  }
  place.replaceChildren(...items);
}

const KIND: Readonly<Record<Chip["kind"], string>> = {
  system: "System",
  component: "Component",
  line: "Line",
  year: "Year",
  kind: "Kind",
};

function button(chip: Chip, label: string, verb: string, toggle: (chip: Chip) => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "chip";
  made.dataset.key = `chip ${chip.said}`;
  made.textContent = label;
  const sign = document.createElement("span");
  sign.setAttribute("aria-hidden", "true");
  sign.textContent = verb === "Put back" ? " +" : " ×";
  made.append(sign);
  made.setAttribute("aria-label", `${verb}: ${label}`);
  made.addEventListener("click", () => toggle(chip));
  return made;
}
