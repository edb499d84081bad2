import type { MarksView } from "./answer-record.ts";

/** Of marks those by which some parts differ, with the values of these parts only. A value that is not stated tells nothing. */
export function differingMarks(marks: readonly MarksView[], parts: readonly string[]): MarksView[] {
  return marks.flatMap((group) => {
    const features = group.features.flatMap((feature) => {
      const values = Object.fromEntries(Object.entries(feature.values).filter(([part]) => parts.includes(part)));
      return new Set(Object.values(values)).size > 1 ? [{ ...feature, values }] : [];
    });
    return features.length > 0 ? [{ ...group, features }] : [];
  });
}
