// biome-ignore-all lint/suspicious/noThenProperty: sigma's style rules are written with when and then.
/**
 * Draws the map. The only file that knows sigma.
 *
 * The graph handed to sigma holds what is drawn and no look; looks follow from the kind of a node, the look of a relation
 * and from flags: near (in the neighbourhood of the selected node), dim (outside it), chosen, named (has its label).
 */
import { MultiDirectedGraph } from "graphology";
import Sigma from "sigma";
import {
  extremityArrow,
  extremityBar,
  layerFill,
  layerPlain,
  pathCurved,
  pathLine,
  sdfCircle,
  sdfDiamond,
  sdfRectangle,
  sdfSquare,
  sdfTriangle,
} from "sigma/rendering";
import type { CameraState } from "sigma/types";
import { type Box, chooseLabels, type Side } from "./choose-labels.ts";
import type { Colours } from "./colours.ts";
import type { Drawing, DrawingParts } from "./drawing.ts";
import { fitCamera } from "./fit-camera.ts";
import { KIND_ORDER, KINDS } from "./kinds.ts";
import type { MapEdge, MapGraph, NodeKind } from "./map-graph.ts";
import { mix } from "./mix.ts";
import { nearestNode } from "./nearest-node.ts";
import type { Picture } from "./picture.ts";
import { RELATION_LOOK, type RelationLook } from "./relation-look.ts";
import { longLabel, shortLabel } from "./short-label.ts";
import type { Camera } from "./view.ts";
import { wordedEdges } from "./worded-edges.ts";
import { wordsAlong } from "./words-along.ts";

interface NodeLook {
  x: number;
  y: number;
  kind: NodeKind;
  short: string;
  long: string;
}
interface EdgeLook {
  look: RelationLook;
  words: string;
}
type Drawn = MultiDirectedGraph<NodeLook, EdgeLook>;

const LABEL_SIZE = 13;
/** What is moved into sight has this much room around it for names. */
const MARGIN = { x: 130, y: 44 };
const ALL: CameraState = { x: 0.5, y: 0.5, ratio: 1, angle: 0 };
/** So much larger than others are the nodes of a neighbourhood, if they are few enough to have room. */
const NEAR = 1.4;
const FEW = 40;
const CHOSEN = 2;
/** One line with words to so many pixels of the stage's width. */
const WORDS_APART = 28;
/** How far the lines of a pair stand apart in their middle, as a part of twice their length. */
const FAN = 0.2;

export function draw(parts: DrawingParts): Drawing {
  const { stage, graph, calm } = parts;
  const whole = extentOf([...graph.nodes.values()]);
  const edgeKeys = new Map(graph.document.edges.map((edge, i) => [edge, `e${i}`]));
  const pen = document.createElement("canvas").getContext("2d");
  let colours = parts.colours;
  let shown: Picture | undefined;
  let drawn: Drawn = emptyGraph();
  /** What has places of its own is drawn as high as the stage is, so that names on it have room. */
  let stretch = 1;
  let named: ReadonlyMap<string, Side> = new Map();
  /** Whether several lines between two nodes run side by side. */
  let fanned = false;
  let renderer = open();
  /** Moves of the program's own are no wish of the person. */
  let ownMove = 0;
  /** Where the picture is moving to: keys pressed meanwhile go on from there. */
  let goal: Camera | undefined;

  /** The room of all that may be drawn, so that a place in an address means the same whatever the filters leave. */
  function extentOfPicture(picture: Picture | undefined): Extent {
    if (!picture?.places) return whole;
    return extentOf([...picture.places.values()].map(({ x, y }) => ({ x, y: y * stretch })));
  }

  function open() {
    const made = renderWith(drawn, stage, { colours, font: parts.font, fanned });
    made.setCustomBBox(extentOfPicture(shown));
    made.on("clickNode", ({ node }) => parts.onSelect(node));
    made.on("doubleClickNode", (event) => event.preventSigmaDefault());
    made.on("resize", () => nameSoon());
    made.getCamera().on("updated", () => {
      nameSoon();
      if (ownMove === 0) parts.onMoved(camera());
    });
    if (drawnBySoftware(made.getWebGLContext())) made.setSettings({ hideEdgesOnMove: true, antialiasEdges: false });
    made.getStageCanvas().addEventListener("webglcontextlost", lost);
    return made;
  }

  function lost(): void {
    end();
    parts.onLost();
  }

  function end(): void {
    resizing.disconnect();
    cancelAnimationFrame(naming);
    renderer.getStageCanvas().removeEventListener("webglcontextlost", lost);
    renderer.kill();
  }

  /** What sigma is told at its start alone, such as colours, takes another start. */
  function reopen(): void {
    const before = renderer.getCamera().getState();
    renderer.getStageCanvas().removeEventListener("webglcontextlost", lost);
    renderer.kill();
    named = new Map();
    renderer = open();
    ownMove++;
    renderer.getCamera().setState(before);
    ownMove--;
  }

  let naming = 0;
  /** Labels are chosen anew once a frame at most. */
  function nameSoon(): void {
    if (naming === 0) naming = requestAnimationFrame(nameNow);
  }

  function nameNow(): void {
    naming = 0;
    if (!shown) return;
    const near = shown.near;
    const scale = 1 / sizeRatio(renderer.getCamera().ratio);
    const size = renderer.getDimensions();
    const candidates = drawn.mapNodes((key, { kind, short }) => {
      const { x, y } = placeOf(key) ?? { x: -1, y: -1 };
      const own = key === shown?.focus;
      return {
        key,
        x,
        y,
        radius: KINDS[kind].size * scale * (own ? CHOSEN : near.has(key) && near.size <= FEW ? NEAR : 1),
        width: widthOf(short),
        height: LABEL_SIZE + 4,
        side: (shown?.places?.get(key)?.x ?? 0) < -0.01 ? ("left" as const) : ("right" as const),
        rank: own ? -2 : near.has(key) ? -1 : near.size > 0 ? 100 : KIND_ORDER.indexOf(kind) - drawn.degree(key) / 1000,
      };
    });
    // Beside a lit neighbourhood the names of the rest would only be in the way.
    const lit = near.size > 0 ? candidates.filter(({ rank }) => rank < 100) : candidates;
    const next = chooseLabels(lit, size, parts.over.map(boxOnStage));
    const off = [...named.keys()].filter((key) => !next.has(key) && drawn.hasNode(key));
    if (off.length > 0) renderer.setNodesState(off, { named: false });
    for (const side of ["left", "right"] as const) {
      const on = [...next].filter(([key, at]) => at === side && named.get(key) !== side).map(([key]) => key);
      if (on.length > 0) renderer.setNodesState(on, { named: true, west: side === "left" });
    }
    named = next;
  }

  function boxOnStage(element: HTMLElement): Box {
    const [box, own] = [element.getBoundingClientRect(), stage.getBoundingClientRect()];
    return {
      left: box.left - own.left,
      right: box.right - own.left,
      top: box.top - own.top,
      bottom: box.bottom - own.top,
    };
  }

  const widths = new Map<string, number>();
  function widthOf(text: string): number {
    let width = widths.get(text);
    if (width === undefined) {
      if (pen) pen.font = `${LABEL_SIZE}px ${parts.font}`;
      width = pen?.measureText(text).width ?? text.length * 7;
      widths.set(text, width);
    }
    return width;
  }

  /** The width that is left for nodes where names stand on both sides: half of a small stage at least. */
  function roomAcross(): number {
    return Math.max(stage.clientWidth / 2, stage.clientWidth - 2 * MARGIN.x);
  }

  /** A ring is as wide as it is high and is never flattened. An argument takes the room that there is. */
  function stretchFor(picture: Picture): number {
    const wanted = (stage.clientHeight - 2 * MARGIN.y) / roomAcross();
    if (!isFanned(picture)) return Math.min(2, Math.max(1, wanted));
    const { x, y } = extentOf([...(picture.places ?? new Map()).values()]);
    return Math.min(2, Math.max(0.5, (wanted * (x[1] - x[0])) / (y[1] - y[0])));
  }

  function flag(): void {
    if (!shown) return;
    const { focus, near, nearEdges } = shown;
    const lit = near.size > 0;
    const nodes = drawn.nodes();
    renderer.setNodesState(
      nodes.filter((key) => !near.has(key)),
      { near: false, dim: lit, chosen: false, large: false },
    );
    renderer.setNodesState(
      nodes.filter((key) => near.has(key)),
      { near: true, dim: false, chosen: false, large: near.size <= FEW },
    );
    if (focus !== undefined && drawn.hasNode(focus)) renderer.setNodeState(focus, { chosen: true });
    const drawnEdges = new Set(drawn.edges());
    const keysOf = (edges: Iterable<MapEdge>): string[] =>
      [...edges].map((edge) => edgeKeys.get(edge) ?? "").filter((key) => drawnEdges.has(key));
    const bright = [...shown.edges].filter((edge) => nearEdges.has(edge));
    const brightKeys = keysOf(bright);
    const isBright = new Set(brightKeys);
    renderer.setEdgesState(
      [...drawnEdges].filter((key) => !isBright.has(key)),
      { near: false, dim: lit, worded: false },
    );
    renderer.setEdgesState(brightKeys, { near: true, dim: false, worded: false });
    // Among all the other lines words could not be read.
    const most = stage.clientWidth / WORDS_APART;
    const all = fanned && brightKeys.length <= most;
    if (shown.places) renderer.setEdgesState(all ? brightKeys : keysOf(wordedEdges(bright, most)), { worded: true });
  }

  function camera(): Camera {
    const { x, y, ratio } = renderer.getCamera().getState();
    return { x, y, ratio };
  }

  function moveTo(to: Camera, how: "at once" | "gently"): void {
    ownMove++;
    goal = to;
    const done = (): void => {
      ownMove--;
      if (ownMove === 0) goal = undefined;
      nameSoon();
    };
    if (how === "at once" || calm()) {
      renderer.getCamera().setState({ ...to, angle: 0 });
      done();
    } else {
      renderer.getCamera().animate(to, { duration: 300 }).then(done, done);
    }
  }

  function placeOf(key: string): { x: number; y: number } | undefined {
    const data = renderer.getNodeDisplayData(key);
    return data && renderer.framedGraphToViewport(data);
  }

  const resizing = new ResizeObserver(() => {
    if (stage.clientWidth === 0 || stage.clientHeight === 0) return;
    renderer.resize();
    renderer.scheduleRender();
  });
  resizing.observe(stage);

  return {
    show(picture) {
      // Rings differ from selection to selection, even around the same nodes.
      const same =
        shown !== undefined &&
        samePlaces(shown.places, picture.places) &&
        sameSet(shown.nodes, picture.nodes) &&
        sameSet(shown.edges, picture.edges);
      shown = picture;
      if (!same) {
        stretch = stretchFor(picture);
        drawn = graphOf(graph, picture, edgeKeys, stretch);
        const wasFanned = fanned;
        fanned = isFanned(picture);
        // sigma 4.0 counts the lines of a pair in the graph of its start alone, whatever graph it is given later.
        if (fanned || wasFanned) {
          reopen();
          // The room that open() gave it counts from the next frame on; whoever fits the camera needs it now.
          renderer.refresh();
        } else {
          named = new Map([...named].filter(([key]) => drawn.hasNode(key)));
          renderer.setCustomBBox(extentOfPicture(picture));
          renderer.setGraph(drawn);
        }
      }
      flag();
      nameNow();
    },
    paint(next) {
      colours = next;
      reopen();
      flag();
      nameNow();
    },
    camera,
    moveTo,
    fit(keys, how) {
      const points = [...keys].flatMap((key) => {
        const data = renderer.getNodeDisplayData(key);
        return data ? [renderer.framedGraphToViewport(data, { cameraState: ALL })] : [];
      });
      const { width, height } = renderer.getDimensions();
      moveTo(
        fitCamera(points, { width, height, margin: { x: (width - roomAcross()) / 2, y: MARGIN.y } }, (point) =>
          renderer.viewportToFramedGraph(point, { cameraState: ALL }),
        ),
        how,
      );
    },
    zoom(factor) {
      const { x, y, ratio } = goal ?? camera();
      move({ x, y, ratio: renderer.getCamera().getBoundedRatio(ratio * factor) });
    },
    pan(x, y) {
      const from = goal ?? camera();
      const { width, height } = renderer.getDimensions();
      const middle = renderer.viewportToFramedGraph(
        { x: width * (0.5 + x), y: height * (0.5 + y) },
        { cameraState: { ...from, angle: 0 } },
      );
      move({ ...middle, ratio: from.ratio });
    },
    nodeInTheMiddle() {
      const { width, height } = renderer.getDimensions();
      const places = drawn.mapNodes((key) => ({ key, ...(placeOf(key) ?? { x: -1, y: -1 }) }));
      return nearestNode(places, { x: width / 2, y: height / 2, width, height });
    },
    placeOf,
    end,
  };

  /** A move that the person asked for by a button or a key. */
  function move(to: Camera): void {
    moveTo(to, "gently");
    parts.onMoved(to);
  }
}

function emptyGraph(): Drawn {
  return new MultiDirectedGraph<NodeLook, EdgeLook>();
}

/**
 * Of an argument every statement has a line of its own: "may" hidden behind "must not", or the other way round, would be
 * another argument. Elsewhere the lines of a pair lie on each other, and the card tells them apart.
 */
function isFanned({ argued, places }: Picture): boolean {
  return argued && places !== undefined;
}

function graphOf(graph: MapGraph, picture: Picture, edgeKeys: ReadonlyMap<MapEdge, string>, stretch: number): Drawn {
  const drawn = emptyGraph();
  for (const key of picture.nodes) {
    const node = graph.nodes.get(key);
    if (!node) continue;
    const ring = picture.places?.get(key);
    const { x, y } = ring ? { x: ring.x, y: ring.y * stretch } : node;
    drawn.addNode(key, { x, y, kind: node.kind, short: shortLabel(node), long: longLabel(node) });
  }
  const said = new Set<string>();
  for (const edge of picture.edges) {
    // What two records say of the same pair is one line; the card names both.
    const what = `${edge.source} ${edge.relation} ${edge.target}`;
    if (said.has(what)) continue;
    said.add(what);
    drawn.addDirectedEdgeWithKey(edgeKeys.get(edge), edge.source, edge.target, {
      look: RELATION_LOOK[edge.relation],
      words: wordsAlong(
        graph.document.relations[edge.relation]?.forward ?? edge.relation,
        drawn.getNodeAttributes(edge.source),
        drawn.getNodeAttributes(edge.target),
      ),
    });
  }
  return drawn;
}

interface Extent {
  x: [number, number];
  y: [number, number];
}

function extentOf(places: readonly { x: number; y: number }[]): Extent {
  const extent: Extent = { x: [Infinity, -Infinity], y: [Infinity, -Infinity] };
  for (const place of places)
    for (const axis of ["x", "y"] as const) {
      extent[axis][0] = Math.min(extent[axis][0], place[axis]);
      extent[axis][1] = Math.max(extent[axis][1], place[axis]);
    }
  // Without width there is nothing to scale by: an empty graph, a single node, nodes in a row.
  for (const axis of ["x", "y"] as const)
    if (!(extent[axis][1] > extent[axis][0])) {
      const middle = Number.isFinite(extent[axis][0]) ? extent[axis][0] : 0;
      extent[axis] = [middle - 1, middle + 1];
    }
  return extent;
}

function samePlaces(a: Picture["places"], b: Picture["places"]): boolean {
  if (!a || !b) return a === b;
  return a.size === b.size && [...a].every(([key, { x, y }]) => b.get(key)?.x === x && b.get(key)?.y === y);
}

function sameSet<T>(a: ReadonlySet<T>, b: ReadonlySet<T>): boolean {
  return a.size === b.size && [...a].every((member) => b.has(member));
}

/** Without a graphics card lines are most of the cost of a frame. */
function drawnBySoftware(context: WebGL2RenderingContext): boolean {
  const info = context.getExtension("WEBGL_debug_renderer_info");
  const name = String(context.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : context.RENDERER));
  return /swiftshader|llvmpipe|software|basic render/i.test(name);
}

/** Nodes grow slowly as one comes nearer, and never shrink below what can be seen and hit. */
function sizeRatio(ratio: number): number {
  return Math.min(1, Math.sqrt(ratio));
}

/** A regular hexagon on its flat side, and a triangle on its point: the two shapes that sigma does not bring. */
const HEXAGON = {
  name: "hexagon",
  glsl: "float sdf_hexagon(vec2 uv, float size) { vec2 p = abs(uv); return max(p.x * 0.8660254 + p.y * 0.5, p.y) - size * 0.8660254; }",
  uniforms: [],
  inradiusFactor: 0.866,
};
const WEDGE = {
  name: "wedge",
  glsl: "float sdf_wedge(vec2 uv, float size) { return max(abs(uv.x) * 0.8660254 - uv.y * 0.5, uv.y) - size * 0.5; }",
  uniforms: [],
  inradiusFactor: 0.5,
};

/** Throws where the browser cannot draw (no WebGL 2). */
function renderWith(
  drawn: Drawn,
  stage: HTMLElement,
  { colours, font, fanned }: { colours: Colours; font: string; fanned: boolean },
) {
  const byKind = <T>(value: (kind: NodeKind) => T) => ({
    attribute: "kind" as const,
    dict: Object.fromEntries(KIND_ORDER.map((kind) => [kind, value(kind)])),
  });
  // Hundreds of lines in full colour would hide what they join.
  const faded = Object.fromEntries(
    Object.entries(colours.relations).map(([look, colour]) => [look, mix(colour, colours.paper, 0.45)]),
  );
  return new Sigma(drawn, stage, {
    primitives: {
      nodes: {
        shapes: [
          sdfCircle(),
          sdfSquare(),
          sdfDiamond(),
          sdfRectangle({ aspectRatio: 2 }),
          sdfTriangle(),
          HEXAGON,
          WEDGE,
        ],
        layers: [layerFill()],
        label: { margin: 4, font: { family: font, size: LABEL_SIZE } },
      },
      edges: {
        // With curves every line has the many corners of a curve, and thousands of lines would be slow.
        paths: fanned ? [pathLine(), pathCurved()] : [pathLine()],
        extremities: [
          extremityArrow({ lengthRatio: 5, widthRatio: 4 }),
          extremityBar({ lengthRatio: 1.5, widthRatio: 7 }),
        ],
        layers: [layerPlain()],
      },
    },
    styles: {
      nodes: [
        {
          x: { attribute: "x" },
          y: { attribute: "y" },
          size: byKind((kind) => KINDS[kind].size),
          color: byKind((kind) => colours.kinds[kind]),
          shape: byKind((kind) => KINDS[kind].shape),
          label: { attribute: "short" },
          labelColor: colours.ink,
          labelSize: LABEL_SIZE,
          labelFont: font,
          labelVisibility: "hidden",
          labelBackgroundColor: colours.paper,
          labelBackgroundPadding: 1,
          cursor: "pointer",
        },
        { whenState: "dim", then: { color: colours.dimNode } },
        {
          whenState: "near",
          then: { depth: "topNodes", labelDepth: "topNodes" },
        },
        { whenState: "large", then: { size: byKind((kind) => KINDS[kind].size * NEAR) } },
        { whenState: "named", then: { labelVisibility: "visible" } },
        { whenState: "west", then: { labelPosition: "left" } },
        {
          whenState: "chosen",
          then: {
            size: byKind((kind) => KINDS[kind].size * CHOSEN),
            labelVisibility: "visible",
            backdropVisibility: "visible",
            // Round the node itself a frame would cover the heads of the lines that lead to it.
            backdropArea: "label",
            backdropColor: colours.paper,
            backdropBorderColor: colours.accent,
            backdropBorderWidth: 2,
            backdropPadding: 4,
            backdropCornerRadius: 4,
          },
        },
        {
          whenState: "isHovered",
          then: {
            depth: "topNodes",
            labelDepth: "topNodes",
            label: { attribute: "long" },
            labelVisibility: "visible",
            backdropVisibility: "visible",
            backdropArea: "both",
            backdropColor: colours.paper,
            backdropBorderColor: colours.ink,
            backdropBorderWidth: 1,
            backdropPadding: 4,
            backdropCornerRadius: 4,
          },
        },
      ],
      edges: [
        {
          size: 1,
          ...(fanned ? { parallelPath: "curved" as const, parallelSpread: FAN } : {}),
          color: { attribute: "look", dict: faded },
          head: { attribute: "look", dict: { say: "arrow", may: "arrow", "must-not": "bar" }, defaultValue: "none" },
          label: { attribute: "words" },
          labelVisibility: "hidden",
          labelColor: colours.ink,
          labelSize: 11,
          labelFont: font,
          labelBackgroundColor: colours.paper,
          labelBackgroundPadding: 1,
        },
        { whenState: "dim", then: { color: colours.dimEdge } },
        {
          whenState: "near",
          then: {
            color: { attribute: "look", dict: colours.relations },
            size: 2,
            depth: "topEdges",
            labelDepth: "topEdges",
          },
        },
        { whenState: "worded", then: { labelVisibility: "visible" } },
      ],
    },
    customNodeState: { near: false, dim: false, chosen: false, named: false, west: false, large: false },
    customEdgeState: { near: false, dim: false, worded: false },
    settings: {
      itemSizesReference: "screen",
      zoomToSizeRatioFunction: sizeRatio,
      gestureTarget: "graph",
      renderEdgeLabels: true,
      nodePickingPadding: 5,
      nodeLabelEvents: "extend",
      enableCameraRotation: false,
      stagePadding: 28,
      minCameraRatio: 0.02,
      maxCameraRatio: 3,
      hideEdgesOnMove: false,
      antialiasEdges: true,
      labelDensity: Infinity,
      labelRenderedSizeThreshold: 0,
      allowInvalidContainer: true,
    },
  });
}
