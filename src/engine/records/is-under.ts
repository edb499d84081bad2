import type { Component } from "./catalog.ts";

/** Whether a component is another one, or part of it. */
export function isUnder(
  components: ReadonlyMap<string, Pick<Component, "under">>,
  component: string | undefined,
  other: string | undefined,
): boolean {
  if (component === undefined || other === undefined) return false;
  return component === other || isUnder(components, components.get(component)?.under, other);
}
