import type { Catalog, Caution } from "../records/catalog.ts";

/** The usual cautions of some systems and components, each once. */
export function cautionsFor(catalog: Catalog, systems: readonly string[], components: readonly string[]): Caution[] {
  return catalog.cautions.filter(
    (caution) =>
      caution.systems.some((id) => systems.includes(id)) || caution.components.some((id) => components.includes(id)),
  );
}

/** The same as answers show them. */
export function cautionViews(
  catalog: Catalog,
  systems: readonly string[],
  components: readonly string[],
): Pick<Caution, "title" | "text" | "source">[] {
  return cautionsFor(catalog, systems, components).map(({ title, text, source }) => ({ title, text, source }));
}
