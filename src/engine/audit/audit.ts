/**
 * The records looked at as a whole: every rule, weighed as checks.yaml says, less what files accept with a reason.
 *
 * An acceptance covers the findings of one check in its own file, or of these those that name all that it is about. One that
 * covers nothing is a finding itself: the fault was mended, and the excuse would cover the next one.
 */
import { openPartIndex } from "../interchange/part-index.ts";
import type { Catalog } from "../records/catalog.ts";
import type { Complaint } from "../records/complaint.ts";
import type { Acceptance } from "../records/read-catalog.ts";
import type { ChecksFile } from "../records/shapes/checks.ts";
import { nearest } from "../scope/nearest.ts";
import { exampleCar } from "./example-car.ts";
import type { Fault, Rule, World } from "./rule.ts";
import { RULES } from "./rules.ts";

export interface Audited {
  readonly complaints: readonly Complaint[];
  /** What would have been found, with the reason why it stands. */
  readonly accepted: readonly { readonly complaint: Complaint; readonly why: string }[];
}

export function audit(
  catalog: Catalog,
  checks: ChecksFile,
  acceptances: readonly Acceptance[],
  rules: readonly Rule[] = RULES,
): Audited {
  const world: World = { catalog, checks, index: openPartIndex(catalog) };
  const complaints: Complaint[] = [...unknownRules(checks, acceptances, rules)];
  const accepted: { complaint: Complaint; why: string }[] = [];
  const used = new Set<Acceptance>();
  for (const rule of rules) {
    const gravity = checks.rules.findLast((it) => it.check === rule.id)?.as ?? rule.gravity;
    if (gravity === "off") continue;
    for (const fault of rule.find(world)) {
      const complaint = toComplaint(world, rule, gravity, fault);
      const by = acceptances.find((it) => covers(it, complaint));
      if (by) {
        used.add(by);
        accepted.push({ complaint, why: by.why });
      } else complaints.push(complaint);
    }
  }
  const isRun = (id: string): boolean =>
    rules.some((rule) => rule.id === id && checks.rules.findLast((it) => it.check === id)?.as !== "off");
  for (const it of acceptances)
    if (!used.has(it) && isRun(it.check))
      complaints.push({
        severity: "warning",
        rule: "accepts-nothing",
        file: it.file,
        path: it.path,
        message: `nothing is found here that this accepts: '${it.check}'${it.about.length > 0 ? ` about ${it.about.join(", ")}` : ""}`,
        hint: "take it out, so that it does not cover the next fault",
      });
  return { complaints, accepted };
}

function covers({ check, file, about }: Acceptance, { rule, file: in_, records = [], names = [] }: Complaint): boolean {
  return check === rule && file === in_ && about.every((name) => names.includes(name) || records.includes(name));
}

function toComplaint({ catalog }: World, rule: Rule, severity: "error" | "warning", fault: Fault): Complaint {
  const { at, cars, message, hint, records, names, also } = fault;
  const car = cars && exampleCar({ cars, among: catalog.buildable, space: catalog.space });
  return {
    ...at,
    severity,
    rule: rule.id,
    message,
    hint,
    records: [...new Set(records)],
    names: [...new Set(names)],
    ...(also ? { also } : {}),
    ...(car ? { car } : {}),
  };
}

function* unknownRules(
  checks: ChecksFile,
  acceptances: readonly Acceptance[],
  rules: readonly Rule[],
): Generator<Complaint> {
  const ids = rules.map((rule) => rule.id);
  const named = [
    ...checks.rules.map(({ check }, i) => ({ check, file: "checks.yaml", path: ["rules", i, "check"] })),
    ...acceptances.map(({ check, file, path }) => ({ check, file, path: [...path, "check"] })),
  ];
  for (const { check, file, path } of named) {
    if (ids.includes(check)) continue;
    const meant = nearest(check, ids);
    yield {
      severity: "error",
      rule: "unknown-name",
      file,
      path,
      message: `no check is called '${check}'`,
      hint: meant ? `did you mean '${meant}'?` : "npm run check -- --rules lists them",
    };
  }
}
