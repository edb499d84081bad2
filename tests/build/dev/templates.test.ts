import { expect, test } from "vitest";
import { type Template, Templates } from "../../../src/build/dev/templates.ts";
import { Site } from "../../../src/site/site.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

type Given = { readonly record?: { readonly id: string } };

test("one of many pages is made alone, and found again by its address", () => {
  const site = new Site(tinyKnowledge());
  const made: unknown[] = [];
  const template = {
    data: {
      pagination: { data: "site.records", size: 1, alias: "record" } as const,
      permalink: ({ record }: Given) => `/records/${record?.id}/index.html`,
    },
    render: ({ record }: Given) => {
      made.push(record?.id);
      return `<p>${record?.id}`;
    },
  };
  const templates = new Templates(
    new Map<string, Template>([
      ["home", { data: { permalink: "/index.html" }, render: () => "home" }],
      ["record", template],
    ]),
  );
  expect(templates.render(site, "/records/FR58-01/index.html")).toBe("<p>FR58-01");
  expect(templates.render(site, "/index.html")).toBe("home");
  expect(templates.has(site, "/records/HY59-01/index.html")).toBe(true);
  expect(templates.render(site, "/records/HY60-01/index.html")).toBeUndefined();
  expect(made).toEqual(["FR58-01"]);
});

test("a list that is not there is no empty list", () => {
  const site = new Site(tinyKnowledge());
  const pagination = { data: "site.plates", size: 1, alias: "plate" } as const;
  const templates = new Templates(
    new Map([["plate", { data: { pagination, permalink: "/a.html" }, render: () => "" }]]),
  );
  expect(() => templates.render(site, "/a.html")).toThrow("a template pages through site.plates, which is no list");
});

test("the templates of the site are found", async () => {
  const templates = await Templates.open();
  expect(templates.render(new Site(tinyKnowledge()), "/records/FR58-01/index.html")).toContain(
    "Frame drilled for a winch",
  );
});
