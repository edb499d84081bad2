/** The marks of parts stand in the documents of the parts, which are loaded when an answer needs them. */
import type { MarksView } from "../../engine/answers/answer-record.ts";
import { differingMarks } from "../../engine/answers/differing-marks.ts";
import type { MayFitAnswer } from "../../engine/answers/shapes/may-fit.ts";
import type { AtHand } from "../at-hand/page.ts";

/** By part; an empty list where the document cannot be had. */
const loaded = new Map<string, readonly MarksView[]>();
const coming = new Set<string>();

/** How to tell the part asked from those that belong in its places; nothing while that is not there yet. */
export function marksOf(hand: AtHand, { part, places }: MayFitAnswer): readonly MarksView[] {
  const others = places.flatMap((it) => it.fits.map((fit) => fit.belongs)).filter((it) => it !== part.number);
  if (others.length === 0) return [];
  const own = loaded.get(part.number);
  if (own) return differingMarks(own, [part.number, ...others]);
  if (!coming.has(part.number)) {
    coming.add(part.number);
    load(hand.href(`data/parts/${encodeURIComponent(part.number)}.json`)).then((marks) => {
      loaded.set(part.number, marks);
      hand.draw();
    });
  }
  return [];
}

async function load(url: string): Promise<readonly MarksView[]> {
  try {
    const answer = await fetch(url);
    const document: { part?: { marks: readonly MarksView[] } } = answer.ok ? await answer.json() : {};
    return document.part?.marks ?? [];
  } catch {
    // Without them the answer still stands; the page of the part has them.
    return [];
  }
}
