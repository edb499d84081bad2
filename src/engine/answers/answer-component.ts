/** "What is on record about this component?" Its places, its parts, and every change to it. */
import { z } from "zod";
import { address, nodeKey } from "../graph/node.ts";
import type { Component } from "../records/catalog.ts";
import { nearest } from "../scope/nearest.ts";
import { answerBase } from "./answer.ts";
import { marksView } from "./answer-record.ts";
import { cautionViews } from "./cautions-for.ts";
import { findComponent } from "./find-component.ts";
import type { Knowledge } from "./knowledge.ts";
import { askOfMoved } from "./moved.ts";
import { reasonForRecord } from "./say.ts";
import { viewMarks } from "./view-marks.ts";

const other = z.strictObject({ id: z.string(), title: z.string(), address: z.string() });

const componentView = z.strictObject({
  id: z.string(),
  name: z.string(),
  address: z.string(),
  aliases: z.array(z.string()),
  system: z.strictObject({ id: z.string(), name: z.string() }),
  under: other.optional().describe("The component this one is part of."),
  includes: z.array(other).describe("Components that are part of this one."),
  places: z.array(z.string()),
  parts: z.array(other),
  marks: z.array(marksView),
  records: z.array(other),
  cautions: z.array(z.strictObject({ title: z.string(), text: z.string(), source: z.string() })),
  citedBy: z.array(other),
});

export const componentAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("component"),
    verdict: z.enum(["on record", "not on record"]),
    component: componentView.optional(),
  })
  .describe("answer component ID");
export type ComponentAnswer = z.infer<typeof componentAnswer>;
export type ComponentView = z.infer<typeof componentView>;

export function answerComponent(knowledge: Knowledge, typed: string): ComponentAnswer {
  const { catalog } = knowledge;
  const id = typed.trim();
  const wanted = id.toLowerCase();
  const found = findComponent(catalog, typed);
  if (!found) {
    const near = nearest(
      wanted,
      [...catalog.components.values()].flatMap((one) => [one.id, one.name]),
    );
    const ask = { what: `Which component is meant? None is called '${id}'.`, options: near ? [near] : [] };
    return {
      question: "component",
      verdict: "not on record",
      because: [],
      ask: askOfMoved(catalog, "component", id) ?? ask,
    };
  }
  const component = viewComponent(knowledge, found);
  return {
    question: "component",
    verdict: "on record",
    because: component.records.map((record) => reasonForRecord(catalog, record.id)),
    component,
  };
}

export function viewComponent(knowledge: Knowledge, component: Component): ComponentView {
  const { catalog } = knowledge;
  const asOther = (one: Component): z.infer<typeof other> => ({
    id: one.id,
    title: one.name,
    address: address("component", one.id),
  });
  const system = catalog.systems.find((one) => one.id === component.system);
  const parts = knowledge.partsByComponent.get(component.id) ?? [];
  const above = component.under === undefined ? undefined : catalog.components.get(component.under);
  return {
    id: component.id,
    name: component.name,
    address: address("component", component.id),
    aliases: [...component.aliases],
    system: { id: component.system, name: system?.name ?? component.system },
    ...(above ? { under: asOther(above) } : {}),
    includes: (system?.components ?? []).filter((one) => one.under === component.id).map(asOther),
    places: [...component.places],
    parts: parts.map((id) => ({ id, title: catalog.parts.get(id)?.name ?? id, address: address("part", id) })),
    marks: viewMarks(catalog, parts),
    records: (knowledge.recordsByComponent.get(component.id) ?? []).map((record) => ({
      id: record.id,
      title: record.facts.title,
      address: address("record", record.id),
    })),
    cautions: cautionViews(catalog, [component.system], [component.id]),
    citedBy: (knowledge.citationsOf.get(nodeKey("component", component.id)) ?? []).map(({ id, facts }) => ({
      id,
      title: facts.title,
      address: address("bulletin", id),
    })),
  };
}
