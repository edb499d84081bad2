import type { Catalog, Component } from "../records/catalog.ts";

/** The component with this id, name or alias, whatever the case. */
export function findComponent({ components }: Pick<Catalog, "components">, typed: string): Component | undefined {
  const id = typed.trim();
  const wanted = id.toLowerCase();
  return (
    components.get(id) ??
    [...components.values()].find((one) =>
      [one.id, one.name, ...one.aliases].some((name) => name.toLowerCase() === wanted),
    )
  );
}
