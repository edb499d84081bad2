/** The records looked at as a whole, by every rule that is not off. */
import { openPartIndex } from "../interchange/part-index.ts";
import type { Catalog } from "../records/catalog.ts";
import type { Complaint } from "../records/complaint.ts";
import type { ChecksFile } from "../records/shapes/checks.ts";
import { exampleCar } from "./example-car.ts";
import type { Fault, Rule, World } from "./rule.ts";
import { RULES } from "./rules.ts";
import { gravityOf } from "./weigh.ts";

/** In the order of the rules; each with the gravity that its rule has by itself. */
export function audit(catalog: Catalog, checks: ChecksFile, rules: readonly Rule[] = RULES): Complaint[] {
  const world: World = { catalog, checks, index: openPartIndex(catalog) };
  return rules
    .filter(({ id, gravity }) => gravityOf(checks, id, gravity) !== "off")
    .flatMap((rule) => [...rule.find(world)].map((fault) => toComplaint(world, rule, fault)));
}

function toComplaint({ catalog }: World, { id, gravity }: Rule, fault: Fault): Complaint {
  const { at, cars, message, hint, records, names, also } = fault;
  const car = cars && exampleCar({ cars, among: catalog.buildable, space: catalog.space });
  return {
    ...at,
    severity: gravity,
    rule: id,
    message,
    hint,
    records: [...new Set(records)],
    names: [...new Set(names)],
    ...(also ? { also } : {}),
    ...(car ? { car } : {}),
  };
}
