import { describe, expect, test } from "vitest";
import { catalogOf, saidOf, spoiled } from "../../../helpers/tiny-folder.ts";
import { COMPONENTS_SLIPS } from "./components.cases.ts";

describe("a slip is said once, where it was made", () => {
  test.each(COMPONENTS_SLIPS)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

test("systems come in their order, components under them, and a place leads to its component", () => {
  const { systems, components, places } = catalogOf();
  expect(systems.map((system) => [system.id, system.components.map((component) => component.id)])).toEqual([
    ["hydraulics", ["lift", "pump", "gasket"]],
    ["frame", []],
  ]);
  expect(components.get("pump")).toEqual({
    id: "pump",
    name: "hydraulic pump",
    aliases: [],
    under: "lift",
    system: "hydraulics",
    places: ["pump"],
  });
  expect(places.get("lift arms")).toBe(components.get("lift"));
});

test("systems with the same order come by id", () => {
  const { systems } = catalogOf(spoiled({ "components/frame.yaml": ["order: 2", "order: 1"] }));
  expect(systems.map((system) => system.id)).toEqual(["frame", "hydraulics"]);
});
