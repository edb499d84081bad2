/**
 * What is found, weighed as checks.yaml says, less what files accept with a reason.
 *
 * An acceptance covers the findings of one check in its own file, or of these those that name all that it is about. One that
 * covers nothing is a finding itself: the fault was mended, and the excuse would cover the next one.
 */
import type { Complaint } from "../records/complaint.ts";
import type { Acceptance } from "../records/read-catalog.ts";
import type { ChecksFile } from "../records/shapes/checks.ts";
import { nearest } from "../scope/nearest.ts";
import type { RuleText } from "./rule.ts";

export interface Weighed {
  readonly complaints: readonly Complaint[];
  /** What would have been found, with the reason why it stands. */
  readonly accepted: readonly { readonly complaint: Complaint; readonly why: string }[];
}

export const ACCEPTS_NOTHING = "accepts-nothing";

/** `rules` are those that may be weighed otherwise and accepted. */
export function weigh(
  found: readonly Complaint[],
  checks: ChecksFile,
  acceptances: readonly Acceptance[],
  rules: readonly Pick<RuleText, "id" | "gravity">[],
): Weighed {
  const gravities = new Map(rules.map(({ id, gravity }) => [id, gravityOf(checks, id, gravity)]));
  const complaints: Complaint[] = [];
  const accepted: { complaint: Complaint; why: string }[] = [];
  const used = new Set<Acceptance>();
  const add = (complaint: Complaint): void => {
    const severity = gravities.get(complaint.rule) ?? complaint.severity;
    if (severity === "off") return;
    const by = gravities.has(complaint.rule) ? acceptances.find((it) => covers(it, complaint)) : undefined;
    if (by) {
      used.add(by);
      accepted.push({ complaint: { ...complaint, severity }, why: by.why });
    } else complaints.push({ ...complaint, severity });
  };
  found.forEach(add);
  for (const it of acceptances)
    if (!used.has(it) && gravities.has(it.check) && gravities.get(it.check) !== "off") add(acceptsNothing(it));
  complaints.push(
    ...unknownRules(
      checks,
      acceptances,
      rules.map(({ id }) => id),
    ),
  );
  return { complaints, accepted };
}

/** The last line about a rule counts. */
export function gravityOf(checks: ChecksFile, id: string, usual: RuleText["gravity"]): RuleText["gravity"] | "off" {
  return checks.rules.findLast((it) => it.check === id)?.as ?? usual;
}

function covers(it: Acceptance, { rule, file, records = [], names = [] }: Complaint): boolean {
  return (
    it.check === rule && it.file === file && it.about.every((name) => names.includes(name) || records.includes(name))
  );
}

function acceptsNothing({ file, path, check, about }: Acceptance): Complaint {
  return {
    severity: "warning",
    rule: ACCEPTS_NOTHING,
    file,
    path,
    message: `nothing is found here that this accepts: '${check}'${about.length > 0 ? ` about ${about.join(", ")}` : ""}`,
    hint: "take it out, so that it does not cover the next fault",
    names: [check],
  };
}

function* unknownRules(
  checks: ChecksFile,
  acceptances: readonly Acceptance[],
  ids: readonly string[],
): Generator<Complaint> {
  const named = [
    ...checks.rules.map(({ check }, i) => ({ check, file: "checks.yaml", path: ["rules", i, "check"] })),
    ...acceptances.map(({ check, file, path }) => ({ check, file, path: [...path, "check"] })),
  ];
  for (const { check, file, path } of named) {
    if (ids.includes(check)) continue;
    const meant = nearest(check, [...ids]);
    yield {
      severity: "error",
      rule: "unknown-name",
      file,
      path,
      message: `no check that can be set or accepted is called '${check}'`,
      hint: meant ? `did you mean '${meant}'?` : "npm run check -- --rules lists them",
    };
  }
}
