import { nearest } from "../../scope/nearest.ts";
import type { ChangeRecord, Component, Part } from "../catalog.ts";
import type { Shaped } from "../read-catalog.ts";
import { statementsOf } from "../statement.ts";
import { NOTHING } from "../terms.ts";
import { Spellings } from "./capitals.ts";
import { mustKnow } from "./names.ts";

export interface Parts {
  readonly parts: ReadonlyMap<string, Part>;
  /** Marks cite records and settings of records, which are read later than parts. */
  checkRecords(records: ReadonlyMap<string, ChangeRecord>): void;
}

export function resolveParts(files: readonly Shaped<"parts">[], components: ReadonlyMap<string, Component>): Parts {
  const parts = new Map<string, Part>();
  const spellings = new Spellings();
  for (const { id } of components.values()) spellings.add({ id, what: "component", file: "components/" });
  for (const { value, complaints, path } of files) {
    const known = mustKnow(components, value.component, "component", ["component"], complaints, "components/");
    if (known && path !== `parts/${value.component}.yaml`)
      complaints.error(
        ["component"],
        `the parts of '${value.component}' lie in ${path}`,
        `call the file parts/${value.component}.yaml`,
      );
    const features = new Map(value.features.map((feature) => [feature.id, feature]));
    value.parts.forEach((part, i) => {
      if (part.number === NOTHING)
        complaints.error(
          ["parts", i, "number"],
          `'${NOTHING}' stands for no part, so no part can be called so`,
          "give the part another number",
        );
      if (parts.has(part.number))
        complaints.error(
          ["parts", i, "number"],
          `part '${part.number}' stands already under '${parts.get(part.number)?.component}'`,
          "list a part once",
        );
      spellings.check({ id: part.number, what: "part", file: path }, ["parts", i, "number"], complaints);
      for (const [id, mark] of Object.entries(part.marks)) {
        const at = ["parts", i, "marks", id];
        if (!mustKnow(features, id, "feature", at, complaints, "'features' of this file")) continue;
        if (features.get(id)?.made === "measured" && typeof mark !== "number" && mark !== "none")
          complaints.error(
            at,
            `'${id}' is measured, so its mark must be a number`,
            "write the number alone; the unit stands at the feature",
          );
      }
      parts.set(part.number, { ...part, component: value.component, features: value.features });
    });
    value.features.forEach((feature, i) => {
      if (feature.made === "measured" && feature.unit === undefined)
        complaints.error(["features", i, "made"], `'${feature.id}' is measured in no unit`, "add unit:");
      const { absent } = feature;
      if (absent !== undefined && value.parts.every((part) => part.marks[feature.id] !== absent))
        complaints.error(
          ["features", i, "absent"],
          `no part shows '${absent}'`,
          "write the value that stands for 'nothing there' as it stands at the parts",
        );
    });
  }
  return {
    parts,
    checkRecords: (records) => {
      const settings = new Set(
        [...records.values()].flatMap((record) => statementsOf(record.statements, "setting").map((it) => it.name)),
      );
      for (const { value, complaints } of files)
        value.features.forEach((feature, i) => {
          mustKnow(records, feature.record, "change record", ["features", i, "record"], complaints, "changes/");
          feature.moves?.forEach(({ setting }, j) => {
            if (settings.has(setting)) return;
            const meant = nearest(setting, [...settings]);
            complaints.error(
              ["features", i, "moves", j, "setting"],
              `no setting is called '${setting}'`,
              meant ? `did you mean '${meant}'?` : "mend the name",
              { unknown: { name: setting, as: ["setting"], ...(meant ? { meant } : {}) } },
            );
          });
        });
    },
  };
}
