/** The filters: kinds and relations to be left out, systems, lines and years to be chosen. They are the legend as well. */
import { element } from "./element.ts";
import { KIND_ORDER, KINDS } from "./kinds.ts";
import type { MapGraph, Relation } from "./map-graph.ts";
import { RELATION_LOOK } from "./relation-look.ts";
import { kindSign, relationSign } from "./signs.ts";
import { filtersInForce, NO_FILTERS, type View } from "./view.ts";

export interface FilterGroups {
  /** Sets the boxes to what a view says. */
  show(view: View): void;
}

interface Box {
  readonly input: HTMLInputElement;
  readonly checked: (view: View) => boolean;
}

export function filterGroups(
  place: HTMLElement,
  graph: MapGraph,
  { current, onChange }: { current: () => View; onChange: (change: Partial<View>) => void },
): FilterGroups {
  const boxes: Box[] = [];
  const { document: published } = graph;

  function box(
    label: string,
    count: number,
    sign: SVGElement | undefined,
    checked: (view: View) => boolean,
    change: (on: boolean) => Partial<View>,
  ): HTMLElement {
    const input = element("input", { type: "checkbox", onchange: () => onChange(change(input.checked)) });
    boxes.push({ input, checked });
    return element(
      "label",
      { class: "map-box" },
      input,
      ...(sign ? [sign] : []),
      element("span", {}, label),
      element("small", {}, String(count)),
    );
  }

  /** A box for what is hidden when it is not ticked. */
  function shownBox<T>(
    list: (view: View) => readonly T[],
    change: (hidden: readonly T[]) => Partial<View>,
    value: T,
    label: string,
    count: number,
    sign: SVGElement,
  ): HTMLElement {
    return box(
      label,
      count,
      sign,
      (view) => !list(view).includes(value),
      (on) => change(toggled(list(current()), value, !on)),
    );
  }

  /** A box for what is chosen; without any chosen, all is shown. */
  function chosenBox<T>(
    list: (view: View) => readonly T[],
    change: (chosen: readonly T[]) => Partial<View>,
    value: T,
    label: string,
    count: number,
  ): HTMLElement {
    return box(
      label,
      count,
      undefined,
      (view) => list(view).includes(value),
      (on) => change(toggled(list(current()), value, on)),
    );
  }

  const nodesOf = (test: (node: MapGraph["document"]["nodes"][number]) => boolean): number =>
    published.nodes.filter(test).length;
  const kinds = KIND_ORDER.map((kind) => ({ kind, count: nodesOf((node) => node.kind === kind) }))
    .filter(({ count }) => count > 0)
    .map(({ kind, count }) =>
      shownBox(
        (view) => view.hiddenKinds,
        (hiddenKinds) => ({ hiddenKinds }),
        kind,
        KINDS[kind].many,
        count,
        kindSign(kind),
      ),
    );
  const relations = (Object.keys(published.relations) as Relation[])
    .map((relation) => ({ relation, count: published.edges.filter((edge) => edge.relation === relation).length }))
    .filter(({ count }) => count > 0)
    .map(({ relation, count }) =>
      shownBox(
        (view) => view.hiddenRelations,
        (hiddenRelations) => ({ hiddenRelations }),
        relation,
        published.relations[relation]?.forward ?? relation,
        count,
        relationSign(RELATION_LOOK[relation]),
      ),
    );
  const records = (test: (node: MapGraph["document"]["nodes"][number]) => boolean): number =>
    nodesOf((node) => node.kind === "record" && test(node));
  const systems = Object.entries(published.names.systems).map(([id, name]) =>
    chosenBox(
      (view) => view.systems,
      (chosen) => ({ systems: chosen }),
      id,
      name,
      records((node) => node.systems.includes(id)),
    ),
  );
  const lines = Object.entries(published.names.lines).map(([id, name]) =>
    chosenBox(
      (view) => view.lines,
      (chosen) => ({ lines: chosen }),
      id,
      name,
      records((node) => node.lines.includes(id)),
    ),
  );
  const years = published.nodes
    .filter((node) => node.kind === "year")
    .map((node) => Number(node.id))
    .sort((a, b) => a - b)
    .map((year) =>
      chosenBox(
        (view) => view.years,
        (chosen) => ({ years: chosen }),
        year,
        String(year),
        records((node) => node.years.includes(year)),
      ),
    );

  const reset = element("button", { type: "button", onclick: () => onChange(NO_FILTERS) }, "Clear all filters");
  place.replaceChildren(
    group("Kinds", "shown when ticked", kinds, true),
    group("Relations", "shown when ticked", relations, false),
    group("Systems", "none ticked shows all; the figure counts change records", systems, false),
    group("Model lines", "none ticked shows all", lines, false),
    group("Model years", "none ticked shows all", years, false),
    reset,
  );

  return {
    show(view) {
      for (const { input, checked } of boxes) input.checked = checked(view);
      reset.hidden = filtersInForce(view) === 0;
    },
  };
}

function group(title: string, about: string, boxes: readonly HTMLElement[], open: boolean): HTMLElement {
  return element(
    "details",
    { class: "map-group", open },
    element("summary", {}, title),
    element(
      "div",
      { role: "group", "aria-label": `${title}, ${about}` },
      element("p", { class: "map-about" }, `${about[0]?.toUpperCase()}${about.slice(1)}.`),
      ...boxes,
    ),
  );
}

function toggled<T>(list: readonly T[], value: T, on: boolean): T[] {
  return on ? [...list.filter((other) => other !== value), value] : list.filter((other) => other !== value);
}
