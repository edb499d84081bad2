import { readFileSync } from "node:fs";

export const data = {
  pagination: { data: "pages", size: 1, alias: "it" },
  layout: "plain.11ty.js",
  permalink: ({ it }) => it.path,
};

export function render({ it }) {
  return readFileSync(it.body, "utf8");
}
