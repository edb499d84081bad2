import { nearest } from "../../scope/nearest.ts";
import type { Space } from "../../scope/space.ts";
import type { Component, System } from "../catalog.ts";
import type { Shaped } from "../read-catalog.ts";
import { Spellings } from "./capitals.ts";
import { mustKnow } from "./names.ts";

export interface Systems {
  readonly systems: readonly System[];
  readonly systemsById: ReadonlyMap<string, System>;
  readonly components: ReadonlyMap<string, Component>;
  readonly places: ReadonlyMap<string, Component>;
}

/** Systems, components and places, each name once. */
export function resolveComponents(files: readonly Shaped<"system">[]): Systems {
  const components = new Map<string, Component>();
  const places = new Map<string, Component>();
  const systems: System[] = [];
  const spellings = new Spellings();
  for (const { value, complaints, path } of files) {
    if (path !== `components/${value.id}.yaml`)
      complaints.error(
        ["id"],
        `the file of system '${value.id}' is called ${path}`,
        `call it components/${value.id}.yaml`,
      );
    spellings.check({ id: value.id, what: "system", file: path }, ["id"], complaints);
    const own: Component[] = [];
    value.components.forEach(({ under, ...fields }, i) => {
      const component: Component = { ...fields, under, system: value.id };
      const twin = components.get(component.id);
      if (twin)
        complaints.error(
          ["components", i, "id"],
          `component '${component.id}' stands already under '${twin.system}'`,
          "give one of them another id",
        );
      spellings.check({ id: component.id, what: "component", file: path }, ["components", i, "id"], complaints);
      components.set(component.id, component);
      own.push(component);
      component.places.forEach((place, j) => {
        if (places.has(place))
          complaints.error(
            ["components", i, "places", j],
            `place '${place}' belongs already to '${places.get(place)?.id}'`,
            "name a place once",
          );
        places.set(place, component);
      });
    });
    systems.push({ id: value.id, name: value.name, order: value.order, aliases: value.aliases, components: own });
  }
  for (const { value, complaints } of files) {
    value.components.forEach(({ under, id }, i) => {
      if (under === undefined) return;
      const path = ["components", i, "under"];
      const siblings = value.components.map((component) => component.id);
      if (!siblings.includes(under)) {
        const meant = nearest(under, siblings);
        complaints.error(
          path,
          `no component of this system is called '${under}'`,
          meant ? `did you mean '${meant}'?` : "name one of the same file",
        );
      } else if (isUnderItself(id, components))
        complaints.error(path, `'${id}' ends up under itself`, "a component stands under a larger one");
    });
  }
  systems.sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));
  return { systems, systemsById: new Map(systems.map((system) => [system.id, system])), components, places };
}

/** Where a component is written that no system has, with the least that its file takes. */
export function placeFor(component: string): string {
  return `components/<system>.yaml, which takes no more than id, name, order and components: [{ id: ${component}, name: … }]`;
}

/** A component goes by a trait that exists. Without traits nothing can be said. */
export function checkGoesBy(files: readonly Shaped<"system">[], space: Space): void {
  if (space.declared.length === 0) return;
  const known = new Map(space.declared.map((trait) => [trait.id, trait]));
  for (const { value, complaints } of files)
    value.components.forEach((component, i) => {
      const trait = component["goes-by"];
      if (trait !== undefined)
        mustKnow(known, trait, "trait", ["components", i, "goes-by"], complaints, "vehicles/traits.yaml");
    });
}

function isUnderItself(id: string, components: ReadonlyMap<string, Component>): boolean {
  const seen = new Set<string>();
  let at: string | undefined = id;
  while (at !== undefined && !seen.has(at)) {
    seen.add(at);
    at = components.get(at)?.under;
  }
  return at !== undefined;
}
