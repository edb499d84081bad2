/** The kinds of change in words, and the words by which people ask for them. */
import type { Kind } from "./catalog.ts";

export const KIND_WORDS: Readonly<Record<Kind, { readonly label: string; readonly aliases: readonly string[] }>> = {
  part: { label: "part changed", aliases: ["part changes", "parts changed"] },
  setting: {
    label: "setting",
    aliases: ["settings", "figure", "figures", "specification", "specifications", "spec", "specs"],
  },
  procedure: { label: "procedure", aliases: ["procedures"] },
  interval: { label: "service interval", aliases: ["interval", "intervals", "service intervals"] },
  tool: { label: "tool", aliases: ["tools"] },
  caution: { label: "caution", aliases: ["cautions", "precaution", "precautions"] },
  identification: { label: "identification", aliases: [] },
  running: { label: "running change", aliases: ["running changes", "mid year", "mid-year"] },
  retrofit: { label: "retrofit", aliases: ["retrofits", "later fitting"] },
  market: { label: "by market", aliases: [] },
  equipment: { label: "by equipment", aliases: [] },
  "service-only": {
    label: "repair part only",
    aliases: ["service only", "service-only", "repair only", "repair part", "repair parts"],
  },
  cancellation: { label: "cancellation", aliases: ["cancelled", "cancellations", "withdrawn"] },
  "left-alone": {
    label: "left alone on purpose",
    aliases: ["left alone", "stayed the same", "unchanged", "same on purpose"],
  },
};
