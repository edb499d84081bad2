import type { RuleText } from "../../engine/audit/rule.ts";
import { RULES } from "../../engine/audit/rules.ts";
import { READING_RULES } from "./reading-rules.ts";

/** Every rule of the check: those of the records as a whole first, then those of single files. */
export const RULE_TEXTS: readonly RuleText[] = [...RULES, ...READING_RULES];

/** Whether it can be weighed otherwise in checks.yaml, and accepted in a file. */
export function canBeSet({ id, gravity }: RuleText): boolean {
  return gravity === "warning" || RULES.some((rule) => rule.id === id);
}
