/** The keys of the drawn map: arrows move it, + and - zoom, 0 shows all, Enter selects what is nearest to the cross. */
import type { Drawing } from "./drawing.ts";

const STEP = 0.2;

export function stageKeys(
  stage: HTMLElement,
  parts: {
    readonly drawing: () => Drawing | undefined;
    readonly onEnter: (key: string) => void;
    readonly onEscape: () => void;
    readonly onWhole: () => void;
  },
): void {
  const keys: Readonly<Record<string, (drawing: Drawing) => void>> = {
    ArrowLeft: (drawing) => drawing.pan(-STEP, 0),
    ArrowRight: (drawing) => drawing.pan(STEP, 0),
    ArrowUp: (drawing) => drawing.pan(0, -STEP),
    ArrowDown: (drawing) => drawing.pan(0, STEP),
    "+": (drawing) => drawing.zoom(1 / 1.5),
    "=": (drawing) => drawing.zoom(1 / 1.5),
    "-": (drawing) => drawing.zoom(1.5),
    "0": parts.onWhole,
    Escape: parts.onEscape,
    Enter: (drawing) => {
      const key = drawing.nodeInTheMiddle();
      if (key !== undefined) parts.onEnter(key);
    },
  };
  stage.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const drawing = parts.drawing();
    const act = keys[event.key];
    if (!drawing || !act) return;
    event.preventDefault();
    act(drawing);
  });
}
