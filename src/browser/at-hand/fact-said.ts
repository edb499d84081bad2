import type { FactView } from "../../engine/answers/shapes/look.ts";
import type { Space } from "../../engine/scope/space.ts";

/** A fact of an answer for people: "model year: 1973", "engine: 294 V8 (plate)". */
export function factSaid(space: Space, { trait: id, values, source }: FactView): string {
  const index = space.find(id);
  if (index === undefined) return id;
  const trait = space.trait(index);
  const words = values.map((value) => {
    const label = trait.kind === "list" ? trait.values.find((one) => one.id === value)?.label : undefined;
    return label ?? value.replace("..", " to ");
  });
  return `${trait.label}: ${words.join(" or ")}${source === "said" ? "" : ` (${source})`}`;
}
