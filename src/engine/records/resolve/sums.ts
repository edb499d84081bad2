/** Shop sums with the figures of the records, every name in them followed. */
import { nearest } from "../../scope/nearest.ts";
import type { ChangeRecord, Component, Part } from "../catalog.ts";
import type { Complaints, Path } from "../complaint.ts";
import { SUM_INPUTS, type SumJob, type SumsFile } from "../shapes/sums.ts";
import { statementsOf } from "../statement.ts";
import { mustKnow } from "./names.ts";

interface Known {
  readonly records: ReadonlyMap<string, ChangeRecord>;
  readonly components: ReadonlyMap<string, Component>;
  readonly parts: ReadonlyMap<string, Part>;
}

type Given = SumJob["inputs"][string];

/** Complains about what no other file has: a record, a component, a part and its mark, a setting; and about an input that the sum does not take. */
export function resolveSums(
  file: { readonly value: SumsFile; readonly complaints: Complaints } | undefined,
  known: Known,
): readonly SumJob[] {
  if (!file) return [];
  const { complaints } = file;
  const titles = new Set<string>();
  file.value.sums.forEach((job, i) => {
    const at = ["sums", i];
    if (titles.has(job.title))
      complaints.error([...at, "title"], `two sums are called '${job.title}'`, "give one of them another title");
    titles.add(job.title);
    mustKnow(known.records, job.record, "change record", [...at, "record"], complaints, "changes/");
    mustKnow(known.components, job.component, "component", [...at, "component"], complaints, "components/");
    const takes: readonly string[] = SUM_INPUTS[job.sum];
    for (const [input, given] of Object.entries(job.inputs)) {
      const path = [...at, "inputs", input];
      if (!takes.includes(input)) {
        const meant = nearest(input, takes);
        complaints.error(
          path,
          `the sum '${job.sum}' takes no '${input}'`,
          meant ? `did you mean '${meant}'?` : `it takes ${takes.join(", ")}`,
          { key: true },
        );
      }
      checkGiven(given, known, path, complaints);
    }
  });
  return file.value.sums;
}

function checkGiven(given: Given, known: Known, path: Path, complaints: Complaints): void {
  if (typeof given === "string") return;
  if ("setting" in given) {
    const names = new Set(
      [...known.records.values()].flatMap((record) => statementsOf(record.statements, "setting").map((it) => it.name)),
    );
    if (names.has(given.setting)) return;
    const meant = nearest(given.setting, [...names]);
    complaints.error(
      [...path, "setting"],
      `no setting is called '${given.setting}'`,
      meant ? `did you mean '${meant}'?` : "mend the name",
      { unknown: { name: given.setting, as: ["setting"], ...(meant ? { meant } : {}) } },
    );
    return;
  }
  if ("part" in given) {
    if (!mustKnow(known.parts, given.part, "part", [...path, "part"], complaints, "parts/")) return;
    const part = known.parts.get(given.part);
    if (part?.marks[given.mark] === undefined)
      mustKnow(
        new Map(Object.entries(part?.marks ?? {})),
        given.mark,
        "feature",
        [...path, "mark"],
        complaints,
        `the marks of part ${given.part}`,
      );
    return;
  }
  if (!mustKnow(known.components, given.component, "component", [...path, "component"], complaints, "components/"))
    return;
  const parts = [...known.parts.values()].filter((part) => part.component === given.component);
  const features = new Map(parts.flatMap((part) => part.features.map((feature) => [feature.id, feature])));
  const where = `parts/${given.component}.yaml`;
  mustKnow(features, given.mark, "feature", [...path, "mark"], complaints, where, parts.length === 0);
}
