/**
 * Findings as SARIF 2.1.0, the open standard for what checks of files find (OASIS, 2020), for code review tools.
 *
 * Every rule is described once; a finding names its rule, its place, what else has to do with it, and what does not change when
 * lines move (`partialFingerprints`). What a file accepts is listed too, as suppressed in the source with its reason.
 */
import { createHash } from "node:crypto";
import type { RuleText } from "../../engine/audit/rule.ts";
import type { CheckedFolder } from "./check-folder.ts";
import type { Finding } from "./read-folder.ts";
import { RULE_TEXTS } from "./rule-texts.ts";
import type { Position } from "./source.ts";

/** `folder` is the data folder as it was named, from where the check was called. */
export function toSarif({ findings, accepted }: CheckedFolder, folder: string): object {
  return {
    $schema: "https://json.schemastore.org/sarif-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: { driver: { name: "Yearmark check", rules: RULE_TEXTS.map(descriptor) } },
        columnKind: "utf16CodeUnits",
        results: [
          ...findings.map((finding) => result(finding, folder)),
          ...accepted.map(({ finding, why }) => ({
            ...result(finding, folder),
            suppressions: [{ kind: "inSource", justification: why }],
          })),
        ],
      },
    ],
  };
}

function descriptor({ id, gravity, about, why, mend }: RuleText): object {
  return {
    id,
    shortDescription: { text: about },
    fullDescription: { text: `${about} Otherwise: ${why}` },
    help: { text: mend },
    defaultConfiguration: { level: gravity },
  };
}

function result(finding: Finding, folder: string): object {
  const { rule, severity, message, hint, file, position, shown, also = [], records, names, car } = finding;
  const text = [message, ...(car ? [`For example: ${car.words}.`] : []), `→ ${hint}`].join("\n");
  return {
    ruleId: rule,
    ruleIndex: RULE_TEXTS.findIndex(({ id }) => id === rule),
    level: severity,
    message: { text },
    locations: [{ physicalLocation: { ...place(folder, file, position, shown) } }],
    ...(also.length > 0
      ? {
          relatedLocations: also.map((it, i) => ({
            id: i,
            message: { text: it.message },
            physicalLocation: place(folder, it.file, it.position),
          })),
        }
      : {}),
    partialFingerprints: { "findingIdentity/v1": identity(finding) },
    properties: { ...(records ? { records } : {}), ...(names ? { names } : {}), ...(car ? { car: car.facts } : {}) },
  };
}

function place(folder: string, file: string, position: Position | undefined, shown?: string): object {
  const uri = [...folder.replaceAll("\\", "/").split("/"), ...file.split("/")].map(encodeURIComponent).join("/");
  const isFolder = file.endsWith("/"); // It has no lines.
  const region = position &&
    !isFolder && {
      startLine: position.line,
      startColumn: position.column,
      endColumn: position.column + Math.max(1, position.length),
      ...(shown ? { snippet: { text: shown } } : {}),
    };
  return { artifactLocation: { uri }, ...(region ? { region } : {}) };
}

/** What a finding is about, without the lines and the number of the statement, which change when others are added. */
function identity({ rule, file, path, records = [], names = [] }: Finding): string {
  const fields = path.filter((step) => typeof step === "string");
  return createHash("sha256")
    .update(JSON.stringify([rule, file, fields, records, names]))
    .digest("hex")
    .slice(0, 32);
}
