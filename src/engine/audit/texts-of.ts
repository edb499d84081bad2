import type { ChangeRecord } from "../records/catalog.ts";
import type { Path } from "../records/complaint.ts";

export interface PlacedText {
  readonly path: Path;
  readonly text: string;
}

/** What a record says in sentences, each with its field: what it is called and from when, its story, and the words beside its statements. */
export function textsOf({ facts }: ChangeRecord): PlacedText[] {
  const one = (path: Path, text: string | undefined): PlacedText[] => (text === undefined ? [] : [{ path, text }]);
  return [
    ...one(["title"], facts.title),
    ...one(["starts"], facts.starts),
    ...facts["stands-in"].flatMap((it, i) => [
      ...one(["stands-in", i, "do"], it.do),
      ...one(["stands-in", i, "why"], it.why),
    ]),
    ...facts.settings.flatMap((it, i) => one(["settings", i, "conditions"], it.conditions)),
    ...facts.procedures.flatMap((it, i) => [
      ...one(["procedures", i, "when"], it.when),
      ...one(["procedures", i, "steps"], it.steps),
    ]),
    ...facts.intervals.flatMap((it, i) => one(["intervals", i, "note"], it.note)),
    ...facts.tools.flatMap((it, i) => one(["tools", i, "use"], it.use)),
    ...facts["left-alone"].flatMap((text, i) => one(["left-alone", i], text)),
    ...one(["tell-apart"], facts["tell-apart"]),
    ...one(["otherwise"], facts.otherwise),
    ...one(["caution"], facts.caution),
    ...one(["customer"], facts.customer),
    ...one(["story"], facts.story),
  ];
}

/** Words with a digit: every id of a record that anybody would tell from a word has one. */
export function idsIn(text: string): string[] {
  return text.match(/[\p{L}\d](?:[\p{L}\d_.-]*[\p{L}\d_])?/gu)?.filter((word) => /\d/.test(word)) ?? [];
}
