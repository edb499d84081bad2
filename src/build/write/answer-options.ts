/** What may be answered, for lists and for suggestions when an answer slips. */
import { nearest } from "../../engine/scope/nearest.ts";
import type { Answers, Desk, Option } from "./field.ts";

export const OPTIONS = {
  components: ({ catalog }: Desk): Option[] =>
    [...catalog.components.values()].map(({ id, name, system }) => ({ value: id, words: `${name} (${system})` })),
  records: ({ catalog }: Desk): Option[] =>
    [...catalog.records.values()].map(({ id, facts: { title } }) => ({ value: id, words: title })),
  traits: ({ catalog }: Desk): Option[] =>
    catalog.space.declared.map((trait) => ({
      value: trait.kind === "flag" ? `eq=${trait.id}` : `${trait.id}=`,
      words:
        trait.kind === "list"
          ? `${trait.label}: ${trait.values.map(({ id, label }) => `${id} ${label}`).join(", ")}`
          : trait.label,
    })),
  features: ({ catalog }: Desk, { component }: Answers): Option[] => {
    const features = [...catalog.parts.values()].find((other) => other.component === component)?.features ?? [];
    return features.map(({ id, name }) => ({ value: `${id}=`, words: name }));
  },
};

/** A name or an alias is as good as an id, as long as only one thing is called so. */
export function idMeant(typed: string, options: readonly Option[], { catalog }: Desk): string | undefined {
  const wanted = typed.toLowerCase();
  const exact = options.find(({ value }) => value.toLowerCase() === wanted);
  if (exact) return exact.value;
  const called = options.filter(({ value }) => {
    const component = catalog.components.get(value);
    return component && [component.name, ...component.aliases].some((name) => name.toLowerCase() === wanted);
  });
  return called.length === 1 ? called[0]?.value : undefined;
}

/** The names near what was typed: ids first, and what components are called. */
export function nearestOption(typed: string, options: readonly Option[], { catalog }: Desk): string | undefined {
  const ids = options.map(({ value }) => value);
  const names = ids.flatMap((id) => catalog.components.get(id)?.name ?? []);
  return nearest(typed, [...ids, ...names]);
}
