import type { Catalog } from "../records/catalog.ts";
import type { MarksView } from "./answer-record.ts";

/** The marks that these parts show, component by component. */
export function viewMarks(catalog: Catalog, numbers: readonly string[]): MarksView[] {
  const components = new Map<string, string[]>();
  for (const number of numbers) {
    const component = catalog.parts.get(number)?.component;
    if (component !== undefined) components.set(component, [...(components.get(component) ?? []), number]);
  }
  return [...components].flatMap(([component, parts]) => {
    const features = (catalog.parts.get(parts[0] as string)?.features ?? []).flatMap((feature) => {
      const shown = parts.flatMap((number): [string, string | number][] => {
        const mark = catalog.parts.get(number)?.marks[feature.id];
        return mark === undefined ? [] : [[number, mark]];
      });
      if (shown.length === 0) return [];
      return {
        name: feature.name,
        where: feature.where,
        wearsOff: feature.made === "painted" || feature.made === "printed",
        ...(feature.unit === undefined ? {} : { unit: feature.unit }),
        ...(feature.note === undefined ? {} : { note: feature.note }),
        values: Object.fromEntries(shown),
      };
    });
    return features.length > 0 ? { component: catalog.components.get(component)?.name ?? component, features } : [];
  });
}
