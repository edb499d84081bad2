/** The places on the page that the script fills. The page's template brings them. */
export interface PageParts {
  readonly map: HTMLElement;
  readonly plain: HTMLElement;
  readonly find: HTMLInputElement;
  readonly found: HTMLElement;
  readonly tabs: Readonly<Record<"map" | "table", HTMLButtonElement>>;
  readonly panels: Readonly<Record<"map" | "table", HTMLElement>>;
  readonly copy: HTMLButtonElement;
  readonly status: HTMLElement;
  readonly argument: HTMLElement;
  readonly argumentWords: HTMLElement;
  readonly argumentLeave: HTMLButtonElement;
  readonly filters: HTMLDetailsElement;
  readonly filterCount: HTMLElement;
  readonly filterGroups: HTMLElement;
  readonly frame: HTMLElement;
  readonly stage: HTMLElement;
  readonly canvas: HTMLElement;
  readonly nearer: HTMLButtonElement;
  readonly farther: HTMLButtonElement;
  readonly whole: HTMLButtonElement;
  readonly notice: HTMLElement;
  readonly table: HTMLElement;
  readonly card: HTMLElement;
}

export function pageParts(): PageParts | undefined {
  const map = document.getElementById("map");
  if (!map) return undefined;
  const part = <T extends HTMLElement>(name: string): T => {
    const found = document.getElementById(`map-${name}`);
    if (!found) throw new Error(`The page of the map has no element 'map-${name}'.`);
    return found as T;
  };
  return {
    map,
    plain: part("plain"),
    find: part("find"),
    found: part("found"),
    tabs: { map: part("tab-map"), table: part("tab-table") },
    panels: { map: part("panel-map"), table: part("panel-table") },
    copy: part("copy"),
    status: part("status"),
    argument: part("argument"),
    argumentWords: part("argument-words"),
    argumentLeave: part("argument-leave"),
    filters: part("filters"),
    filterCount: part("filter-count"),
    filterGroups: part("filter-groups"),
    frame: part("frame"),
    stage: part("stage"),
    canvas: part("canvas"),
    nearer: part("nearer"),
    farther: part("farther"),
    whole: part("whole"),
    notice: part("notice"),
    table: part("table"),
    card: part("card"),
  };
}
