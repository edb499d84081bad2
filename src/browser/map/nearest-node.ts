/** The node nearest to a point of the picture; nothing if none lies inside it. */
export interface Place {
  readonly key: string;
  readonly x: number;
  readonly y: number;
}

export function nearestNode(
  places: readonly Place[],
  { x, y, width, height }: { x: number; y: number; width: number; height: number },
): string | undefined {
  let best: { key: string; distance: number } | undefined;
  for (const place of places) {
    if (place.x < 0 || place.y < 0 || place.x > width || place.y > height) continue;
    const distance = (place.x - x) ** 2 + (place.y - y) ** 2;
    if (!best || distance < best.distance) best = { key: place.key, distance };
  }
  return best?.key;
}
