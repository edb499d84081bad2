import { html, nothing, type TemplateResult } from "lit-html";
import type { FactView } from "../../engine/answers/shapes/look.ts";
import { factSaid } from "./fact-said.ts";
import type { AtHand } from "./page.ts";

interface Facts {
  readonly facts: readonly FactView[];
  readonly notNeeded: readonly FactView[];
}

/** What was needed of the car, and what was not. The records asked are those of its line, so the line is always needed. */
export function factsLine({ lines: { space, lines }, reading }: AtHand, { facts, notNeeded }: Facts): TemplateResult {
  const trait = space.trait(space.role("line") as number);
  const isLine = (fact: FactView): boolean => fact.trait === trait.id;
  const say = (some: readonly FactView[]): string[] => some.map((fact) => factSaid(space, fact));
  const line = lines.find(({ id }) => id === reading.lines[0]);
  const ofLine = [...facts, ...notNeeded].filter(isLine);
  const needed = [
    ...(ofLine.length > 0 ? say(ofLine) : [`${trait.label}: ${line?.name ?? ""}`]),
    ...say(facts.filter((fact) => !isLine(fact))),
  ];
  const others = say(notNeeded.filter((fact) => !isLine(fact)));
  return html`<p class="note">It rests on: ${needed.join("; ")}.
    ${others.length > 0 ? html`Not needed: ${others.join("; ")}.` : nothing}</p>`;
}
