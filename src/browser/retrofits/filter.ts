/** Narrows the ways to a part, a name or a component, as it is typed; the address keeps it. */
import { html, type TemplateResult } from "lit-html";
import { misread } from "../../engine/answers/part-number.ts";
import type { AtHand } from "../at-hand/page.ts";

let typed: string | undefined;

export function filterView(hand: AtHand): TemplateResult {
  return html`
    <form @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const text = wanted(hand);
      typed = undefined;
      hand.ask(text === "" ? {} : { component: text });
    }}>
      <label for="component">Only this component or part</label>
      <div class="row">
        <input id="component" type="text" autocomplete="off" spellcheck="false" .value=${wanted(hand)}
          @input=${(event: Event) => {
            typed = (event.target as HTMLInputElement).value;
            hand.draw();
          }} />
        <button type="submit">Keep</button>
      </div>
    </form>`;
}

export function wanted({ own }: AtHand): string {
  return (typed ?? own.component ?? "").trim();
}

/** Whether the words are in the name of the part, of its component or of one above it, or the number is in its number. */
export function matches(hand: AtHand, { part, name }: { readonly part: string; readonly name: string }): boolean {
  const text = wanted(hand);
  if (text === "" || !hand.line) return true;
  if (misread(part).includes(misread(text))) return true;
  const { parts, components } = hand.line.knowledge.catalog;
  const names = [name];
  for (let at = parts.get(part)?.component; at !== undefined; at = components.get(at)?.under)
    names.push(components.get(at)?.name ?? "", at);
  const all = names.join(" ").toLowerCase();
  return text
    .toLowerCase()
    .split(/\s+/)
    .every((word) => all.includes(word));
}
