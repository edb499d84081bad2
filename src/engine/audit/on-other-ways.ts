import { isPermission, type PartIndex } from "../interchange/part-index.ts";

/** Parts that may be on a car though the plant did not fit them: delivered, permitted, going along, in a kit, for repair. */
export function onOtherWays({ catalog, ordersOf, standInsOf }: PartIndex): ReadonlySet<string> {
  const parts = new Set<string>();
  for (const rules of ordersOf.values())
    for (const rule of rules) for (const it of [rule.new, ...rule.with]) parts.add(it);
  for (const [part, statements] of standInsOf)
    for (const it of statements) if (isPermission(it)) for (const one of [part, ...it.with]) parts.add(one);
  for (const { statements } of catalog.records.values())
    for (const it of statements)
      if (it.type === "service-only") parts.add(it.part);
      else if (it.type === "kit") for (const { part } of it.contents) parts.add(part ?? "");
  return parts;
}
