/** Fields that are not asked for, as they stand after --set: FIELD=YAML. */
import { parse } from "yaml";

export function moreFields(
  given: readonly string[],
): { readonly fields: Record<string, unknown> } | { readonly fault: string } {
  const fields: Record<string, unknown> = {};
  for (const one of given) {
    const cut = one.indexOf("=");
    if (cut < 1) return { fault: `--set ${one}: write FIELD=YAML` };
    try {
      fields[one.slice(0, cut)] = parse(one.slice(cut + 1));
    } catch (error) {
      return { fault: `--set ${one}: this is not YAML: ${String((error as Error).message).split("\n")[0]}` };
    }
  }
  return { fields };
}
