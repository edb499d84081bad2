/** Which nodes get their label, and on which side: as many as can be read, the important first, none over another. */

export interface LabelCandidate {
  readonly key: string;
  /** Middle of the node, in pixels of the picture. */
  readonly x: number;
  readonly y: number;
  /** Half the size of the node. */
  readonly radius: number;
  readonly width: number;
  readonly height: number;
  /** The lowest comes first. */
  readonly rank: number;
  /** Where the label would rather stand. */
  readonly side: Side;
}

export type Side = "left" | "right";

/** One label to so many square pixels, so that a small screen is not full of words. */
const AREA_OF_A_LABEL = 8000;
const GAP = 4;

/**
 * In the order of rank (and of the list among equals) each label is placed on its own side of its node or else on the
 * other, if it lies inside the picture, under nothing that covers it, and on no label placed before. It ends when the picture
 * has its fill.
 */
export function chooseLabels(
  candidates: readonly LabelCandidate[],
  size: { readonly width: number; readonly height: number },
  covers: readonly Box[] = [],
): Map<string, Side> {
  const most = Math.max(8, Math.floor((size.width * size.height) / AREA_OF_A_LABEL));
  const chosen = new Map<string, Side>();
  const placed: Box[] = [...covers];
  const ordered = candidates
    .filter(({ x, y }) => x >= 0 && y >= 0 && x <= size.width && y <= size.height)
    .toSorted((a, b) => a.rank - b.rank);
  for (const candidate of ordered) {
    if (chosen.size >= most) break;
    const sides: Side[] = candidate.side === "left" ? ["left", "right"] : ["right", "left"];
    for (const side of sides) {
      const box = boxOf(candidate, side);
      if (box.left < 0 || box.right > size.width || placed.some((other) => overlap(box, other))) continue;
      placed.push(box);
      chosen.set(candidate.key, side);
      break;
    }
  }
  return chosen;
}

/** In pixels of the picture. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The room of a node and its label together. */
function boxOf({ x, y, radius, width, height }: LabelCandidate, side: Side): Box {
  const near = radius + GAP;
  const far = near + width;
  return {
    left: x - (side === "left" ? far : near),
    right: x + (side === "left" ? near : far),
    top: y - Math.max(height / 2, radius) - GAP / 2,
    bottom: y + Math.max(height / 2, radius) + GAP / 2,
  };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
