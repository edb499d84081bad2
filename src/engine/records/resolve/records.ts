import { contradictions } from "../../scope/read-scope-either.ts";
import type { Scope } from "../../scope/scope.ts";
import type { Space } from "../../scope/space.ts";
import type { ChangeRecord, Component, Part } from "../catalog.ts";
import type { Path } from "../complaint.ts";
import type { Shaped } from "../read-catalog.ts";
import type { ChangeFile } from "../shapes/change.ts";
import { NOTHING } from "../terms.ts";
import { Spellings } from "./capitals.ts";
import { placeFor, type Systems } from "./components.ts";
import { mustKnow } from "./names.ts";
import { resolveScope } from "./scope.ts";
import { readStatements } from "./statements.ts";

type File = Shaped<"change">;

/** `before` are records of an earlier reading of the same space, systems and parts, without fault: those whose file is the same are taken over. */
export function resolveRecords(
  files: readonly File[],
  space: Space,
  systems: Systems,
  parts: ReadonlyMap<string, Part>,
  before?: ReadonlyMap<string, ChangeRecord>,
): Map<string, ChangeRecord> {
  const records = new Map<string, ChangeRecord>();
  const spellings = spellingsOf(systems, parts);
  for (const file of files) {
    const { value, complaints, path } = file;
    if (path.slice(path.lastIndexOf("/") + 1) !== `${value.id}.md`)
      complaints.error(["id"], `record '${value.id}' lies in ${path}`, `call the file ${value.id}.md`);
    const twin = records.get(value.id);
    if (twin)
      complaints.error(["id"], `record '${value.id}' lies already in ${twin.file}`, "give one of them another id");
    spellings.check({ id: value.id, what: "record", file: path }, ["id"], complaints);
    const known = before?.get(value.id);
    if (known?.facts === value) {
      records.set(value.id, known);
      continue;
    }
    const components = value.components.flatMap((id, i): Component[] => {
      mustKnow(systems.components, id, "component", ["components", i], complaints, placeFor(id));
      const component = systems.components.get(id);
      return component ? [component] : [];
    });
    const scopeIn = (text: string, at: Path): Scope => {
      const scope = resolveScope(space, text, at, complaints, parts);
      for (const { from, to, message, hint } of contradictions(scope))
        complaints.error(at, message, hint, { within: [from, to], rule: "scope" });
      return scope;
    };
    const stated = readStatements(value, scopeIn);
    checkNames(file, systems, parts);
    records.set(value.id, {
      id: value.id,
      file: path,
      facts: value,
      scope: scopeIn(value.scope, ["scope"]),
      components,
      systems: [...new Set(components.map((component) => component.system))],
      statements: value.withdrawn === undefined ? stated : [],
      stated,
    });
  }
  for (const { value, complaints } of files) {
    value.links.forEach((id, i) => {
      if (id === value.id)
        complaints.error(["links", i], `record '${id}' is listed as one to read along with itself`, "take it out");
      mustKnow(records, id, "change record", ["links", i], complaints, "changes/");
    });
    value.instead.forEach((id, i) => {
      mustKnow(records, id, "change record", ["instead", i], complaints, "changes/");
    });
    value.cancels.forEach((cancel, i) => {
      mustKnow(records, cancel.record, "change record", ["cancels", i, "record"], complaints, "changes/");
    });
  }
  return new Map([...records].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function spellingsOf(systems: Systems, parts: ReadonlyMap<string, Part>): Spellings {
  const spellings = new Spellings();
  for (const { id, system } of systems.components.values())
    spellings.add({ id, what: "component", file: `components/${system}.yaml` });
  for (const { number, component } of parts.values())
    spellings.add({ id: number, what: "part", file: `parts/${component}.yaml` });
  return spellings;
}

/** Every part, place and component that a statement names must be known. */
function checkNames({ value, complaints }: File, systems: Systems, parts: ReadonlyMap<string, Part>): void {
  const part = (number: string, path: (string | number)[]): void => {
    mustKnow(parts, number, "part", path, complaints, "parts/");
  };
  const partOrNone = (number: string, path: (string | number)[]): void => {
    if (number !== NOTHING) part(number, path);
  };
  const place = (name: string, path: (string | number)[]): void => {
    mustKnow(systems.places, name, "place", path, complaints, "the places of its component in components/");
  };
  const eachPart = (field: keyof ChangeFile, i: number, key: string, numbers: readonly string[]): void => {
    numbers.forEach((number, j) => {
      part(number, [field, i, key, j]);
    });
  };
  value.built.forEach((built, i) => {
    place(built.place, ["built", i, "place"]);
    partOrNone(built.part, ["built", i, "part"]);
  });
  value.mixed.forEach((mixed, i) => {
    place(mixed.place, ["mixed", i, "place"]);
    eachPart("mixed", i, "parts", mixed.parts);
  });
  value.supersedes.forEach((order, i) => {
    part(order.old, ["supersedes", i, "old"]);
    part(order.new, ["supersedes", i, "new"]);
    eachPart("supersedes", i, "with", order.with);
  });
  value["stands-in"].forEach((use, i) => {
    part(use.part, ["stands-in", i, "part"]);
    partOrNone(use.for, ["stands-in", i, "for"]);
    if (use.place !== undefined) place(use.place, ["stands-in", i, "place"]);
    eachPart("stands-in", i, "with", use.with);
  });
  value.kits.forEach((kit, i) => {
    part(kit.kit, ["kits", i, "kit"]);
    kit.contents.forEach((content, j) => {
      if (content.part !== undefined) part(content.part, ["kits", i, "contents", j, "part"]);
    });
  });
  value["service-only"].forEach((number, i) => {
    part(number, ["service-only", i]);
  });
  value.settings.forEach((setting, i) => {
    if (setting.component !== undefined)
      mustKnow(
        systems.components,
        setting.component,
        "component",
        ["settings", i, "component"],
        complaints,
        placeFor(setting.component),
      );
    const [low, high] = setting.window.split("..").map((limit) => limit.trim());
    if (low && high && Number(low) > Number(high))
      complaints.error(["settings", i, "window"], `the window ${setting.window} runs backwards`, "write low..high");
  });
}
