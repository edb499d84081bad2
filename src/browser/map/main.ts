/** The map page: reads the view from the address, shows it, and writes every change back to the address. */
import type { GraphDocument } from "../../engine/graph/document.ts";
import { readAddress, writeAddress } from "./address.ts";
import { argument, argumentWords } from "./argument.ts";
import { showCard } from "./card.ts";
import { readColours } from "./colours.ts";
import type { Drawing } from "./drawing.ts";
import { element } from "./element.ts";
import { filterGroups } from "./filter-groups.ts";
import { findBox } from "./find-box.ts";
import { KINDS } from "./kinds.ts";
import { type MapGraph, mapGraph } from "./map-graph.ts";
import { notice } from "./notice.ts";
import { type PageParts, pageParts } from "./page-parts.ts";
import { passing } from "./passing.ts";
import { type Picture, picture } from "./picture.ts";
import { stageKeys } from "./stage-keys.ts";
import { table } from "./table.ts";
import { tabs } from "./tabs.ts";
import { type Camera, filtersInForce, settled, type View } from "./view.ts";

const CANNOT_DRAW = "This browser cannot draw the map (it has no WebGL 2). The table has the same content.";
const TITLE = document.title;

const parts = pageParts();
if (parts) await start(parts);

async function start(page: PageParts): Promise<void> {
  const { graph: source = "", root = "" } = page.map.dataset;
  try {
    const answer = await fetch(source);
    if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
    run(page, mapGraph((await answer.json()) as GraphDocument), (address) => root + address.slice(1));
  } catch (error) {
    // The plain lists stay: they need no script.
    page.map.hidden = true;
    page.plain.hidden = false;
    const why = error instanceof Error ? error.message : String(error);
    page.plain.prepend(
      element("p", { role: "status" }, `The map could not be loaded (${why}). Here is what is on it.`),
    );
  }
}

function run(page: PageParts, graph: MapGraph, href: (address: string) => string): void {
  let view: View = readAddress(location.search, graph);
  let drawing: Drawing | undefined;
  let cannotDraw = false;
  let through = passing(graph, view);
  const motion = matchMedia("(prefers-reduced-motion: reduce)");
  const wide = matchMedia("(min-width: 60em)");

  page.plain.hidden = true;
  page.map.hidden = false;
  page.filters.open = wide.matches;

  const tabbed = tabs(page.tabs, page.panels, (as) => go({ as }));
  const filters = filterGroups(page.filterGroups, graph, {
    current: () => view,
    onChange: (change) => go({ ...change, page: 1 }),
  });
  const rows = table(page.table, { graph, href, onPick: (key) => pick(key, "card"), onPage: turn });
  findBox({ input: page.find, list: page.found, graph }, { onPick: (key) => pick(key, "stay"), say });
  stageKeys(page.stage, {
    drawing: () => drawing,
    onEnter: (key) => select(key, { follow: false, to: "card" }),
    onEscape: () => select(undefined, { follow: false, to: "stay" }),
    onWhole: whole,
  });
  page.nearer.addEventListener("click", () => drawing?.zoom(1 / 1.5));
  page.farther.addEventListener("click", () => drawing?.zoom(1.5));
  page.whole.addEventListener("click", whole);
  page.copy.addEventListener("click", copyLink);
  page.argumentLeave.addEventListener("click", () => {
    go({ proof: [], page: 1 });
    // The button is gone; what it led to is told by the card.
    document.getElementById("map-card-title")?.focus();
  });
  page.card.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || view.focus === undefined) return;
    select(undefined, { follow: false, to: "stay" });
    (view.as === "map" && !cannotDraw ? page.stage : page.tabs.table).focus();
  });
  addEventListener("popstate", () => {
    view = readAddress(location.search, graph);
    show("gently");
  });
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => drawing?.paint(readColours(page.map)));

  const asked = new URLSearchParams(location.search).get("focus");
  show("at once");
  if (asked !== null && view.focus !== asked) say(`There is no node ${asked}.`);

  /** A change that a person can take back with the browser's button. `follow`: the picture moves to the selection. */
  function go(change: Partial<View>, follow = false): void {
    writeNow();
    const drawnBefore = picture(graph, view, through);
    const before = drawnBefore.places !== undefined;
    const next = settled({ ...view, ...change });
    through = passing(graph, next);
    const drawnAfter = picture(graph, next, through);
    const after = drawnAfter.places !== undefined;
    // Whichever of its nodes is selected, an argument stands where it stood.
    const same = before && after && next.proof === view.proof && drawnAfter.argued;
    // Where nodes change their places the picture cannot stay as it was.
    const moves = follow || before !== after || (after && !same && !("as" in change) && !("page" in change));
    const stays = "focus" in change && !same ? (next.camera ?? drawing?.camera()) : next.camera;
    view = { ...next, camera: moves ? undefined : stays };
    history.pushState(null, "", location.pathname + writeAddress(view));
    if (view.camera === undefined) show(before || after || change.as === "map" ? "at once" : "gently");
    else show(change.as === "map" ? "at once" : undefined);
  }

  function pick(key: string | undefined, to: "card" | "stay"): void {
    select(key, { follow: true, to });
  }

  function select(key: string | undefined, { follow, to }: { follow: boolean; to: "card" | "stay" }): void {
    if (key === view.focus && !follow) return;
    go({ focus: key }, follow);
    if (to === "card") document.getElementById("map-card-title")?.focus();
  }

  function turn(page: number): void {
    go({ page });
    parts?.table.querySelector<HTMLElement>("nav button:enabled")?.focus();
    parts?.panels.table.scrollIntoView({ block: "start" });
  }

  function whole(): void {
    if (!drawing) return;
    drawing.fit(new Set(), "gently");
    moved({ x: 0.5, y: 0.5, ratio: 1 });
  }

  /** Shows the view. `move` says whether the picture goes to where the view wants it, or stays. */
  function show(move: "at once" | "gently" | undefined): void {
    through = passing(graph, view);
    const drawn = picture(graph, view, through);
    // The address keeps what was asked for: whoever gets the link may be able to draw.
    const as = cannotDraw ? "table" : view.as;
    tabbed.show(as);
    filters.show(view);
    const inForce = filtersInForce(view);
    page.filterCount.textContent = inForce === 0 ? "" : `(${inForce})`;
    showCard(page.card, view, { graph, href, onPick: (key) => pick(key, "card"), onChange: (change) => go(change) });
    const argued = argument(graph, view.proof);
    page.argument.hidden = !drawn.argued;
    page.argumentWords.textContent = argumentWords(argued);
    const words = cannotDraw ? CANNOT_DRAW : notice(drawn, through.nodes.size);
    page.notice.textContent = words;
    page.notice.hidden = words === "";
    if (as === "table")
      rows.show({
        nodes: view.only && view.focus !== undefined ? drawn.near : through.nodes,
        edges: view.only && drawn.argued ? drawn.nearEdges : through.edges,
        focus: view.focus,
        page: view.page,
      });
    else void drawIt(drawn, move);
    const node = view.focus === undefined ? undefined : graph.nodes.get(view.focus);
    say(
      node
        ? `Selected: ${node.label}, ${KINDS[node.kind].one}. ${drawn.argued ? argumentWords(argued) : `${around(drawn.near.size - 1)}.`}${drawn.places ? " The rest is left out." : ""}`
        : `${through.nodes.size} nodes and ${through.edges.size} relations.`,
    );
    document.title = titleFor(node?.label);
  }

  async function drawIt(drawn: Picture, move: "at once" | "gently" | undefined): Promise<void> {
    const first = drawing === undefined;
    if (first) {
      try {
        if (!document.createElement("canvas").getContext("webgl2")) throw new Error("no WebGL 2");
        const { draw } = await import("./draw.ts");
        if (drawing === undefined)
          drawing = draw({
            stage: page.canvas,
            over: [page.nearer, page.farther, page.whole],
            graph,
            colours: readColours(page.map),
            font: getComputedStyle(page.map).fontFamily,
            calm: () => motion.matches,
            onSelect: (key) => select(key, { follow: false, to: "stay" }),
            onMoved: moved,
            onLost: giveUp,
          });
      } catch {
        giveUp();
        return;
      }
      // The person may have gone on while the program was loading.
      drawn = picture(graph, view, through);
    }
    drawing?.show(drawn);
    const how = first ? "at once" : move;
    if (how === undefined) return;
    if (view.camera) drawing?.moveTo(view.camera, how);
    else drawing?.fit(drawn.near.size > 0 ? drawn.near : filtersInForce(view) > 0 ? drawn.nodes : new Set(), how);
  }

  /** Without a drawing the table says it all. */
  function giveUp(): void {
    cannotDraw = true;
    drawing = undefined;
    page.tabs.map.disabled = true;
    page.panels.table.prepend(page.notice);
    show(undefined);
  }

  let waiting: ReturnType<typeof setTimeout> | undefined;
  /** While the picture moves the address waits: browsers allow few changes a second. */
  function moved(camera: Camera): void {
    view = { ...view, camera };
    clearTimeout(waiting);
    waiting = setTimeout(writeNow, 300);
  }

  function writeNow(): void {
    clearTimeout(waiting);
    history.replaceState(null, "", location.pathname + writeAddress(view));
  }

  async function copyLink(): Promise<void> {
    writeNow();
    try {
      await navigator.clipboard.writeText(location.href);
      say("The link to this view is copied.");
      page.copy.textContent = "Copied";
      setTimeout(() => {
        page.copy.textContent = "Copy link to this view";
      }, 2000);
    } catch {
      say("This browser does not let a page copy. The address of the page is the link to this view.");
    }
  }

  function say(text: string): void {
    page.status.textContent = text;
  }
}

function around(count: number): string {
  return count === 1 ? "1 node stands around it" : `${count} nodes stand around it`;
}

function titleFor(label: string | undefined): string {
  return label === undefined ? TITLE : `${label} · ${TITLE}`;
}
