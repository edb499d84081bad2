/**
 * What is needed to tell parts apart on the bench, where no car is known: every component with its parts and their marks. In the
 * shape of a line's records, so that a page opens it as it opens those; of the records only the titles and what is in kits are in it.
 */
import type { Catalog, Component, Part } from "../../engine/records/catalog.ts";
import type { Slice } from "../../engine/records/slice.ts";

/** The components of which at least two parts have marks on record, in the order of the data. */
export function comparedComponents(catalog: Catalog): { component: Component; parts: Part[] }[] {
  const byComponent = Map.groupBy(catalog.parts.values(), (part) => part.component);
  return [...catalog.components.values()].flatMap((component) => {
    const parts = byComponent.get(component.id) ?? [];
    return parts.filter((part) => Object.keys(part.marks).length > 0).length > 1 ? { component, parts } : [];
  });
}

export function benchOf(catalog: Catalog): Slice {
  const parts = [...catalog.parts.values()];
  const held = new Set(parts.map((part) => part.component));
  const named = new Set(parts.flatMap((part) => part.features.map((feature) => feature.record)));
  const records = [...catalog.records.values()].filter(({ id, facts }) => named.has(id) || facts.kits.length > 0);
  return {
    format: "yearmark-line/1",
    line: "",
    systems: catalog.systems.map(({ id, name, order, components }) => ({
      ...{ id, name, order },
      components: components.filter((component) => held.has(component.id)),
    })),
    cautions: [],
    moved: catalog.moved.filter((move) => move.kind === "part"),
    records: records.map(({ facts }) => ({
      ...facts,
      ...{ story: "", words: [], links: [], built: [], mixed: [], supersedes: [], "stands-in": [], "service-only": [] },
      ...{ settings: [], procedures: [], intervals: [], tools: [], "left-alone": [], cancels: [] },
      ...{ "tell-apart": undefined, otherwise: undefined, caution: undefined, customer: undefined },
    })),
    parts: Object.fromEntries(
      parts.map(({ number, name, component, hand, castings, marks }) => [
        number,
        { name, component, ...(hand ? { hand } : {}), castings, marks },
      ]),
    ),
    features: Object.fromEntries(
      parts.filter((part) => part.features.length > 0).map((part) => [part.component, part.features]),
    ),
  };
}
