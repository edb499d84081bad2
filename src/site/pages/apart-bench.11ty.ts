/** apart/bench.json: the marks of all parts, which the page "tell apart" asks where no car is known. */
import { benchOf } from "../includes/bench.ts";
import type { Site } from "../site.ts";

export const data = { permalink: "/apart/bench.json" };

export function render({ site }: { site: Site }): string {
  return `${JSON.stringify(benchOf(site.catalog))}\n`;
}
