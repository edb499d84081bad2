import type { Catalog, Component } from "../records/catalog.ts";
import type { CarSet } from "../scope/diagram.ts";
import type { Scope } from "../scope/scope.ts";
import { FITTED } from "../scope/space.ts";

/**
 * Cars that have on them a part that the one scope asks for, and another part of its component that the other scope asks for: each
 * statement then speaks of its own part, such as the left one and the right one. Where the component has one place, there is no such car.
 */
export function bothFitted(
  catalog: Catalog,
  one: Scope | undefined,
  other: Scope | undefined,
  isAbout: (component: Component) => boolean = () => true,
): CarSet {
  const { space } = catalog;
  const others = partsAsked(catalog, other);
  return space.any(
    partsAsked(catalog, one).flatMap(({ trait, component }) =>
      others
        .filter((it) => it.component === component && it.trait !== trait && isAbout(component))
        .map((it) => space.sets.and(space.where(trait, [[1, 1]]), space.where(it.trait, [[1, 1]]))),
    ),
  );
}

function partsAsked({ space, parts, components }: Catalog, scope: Scope | undefined) {
  return [...(scope ? space.sets.traitsOf(scope.cars) : [])].flatMap((trait) => {
    const part = space.isFitted(trait) ? parts.get(space.trait(trait).id.slice(FITTED.length + 1)) : undefined;
    const component = part && components.get(part.component);
    return component ? [{ trait, component }] : [];
  });
}
