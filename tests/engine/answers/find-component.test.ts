import { expect, test } from "vitest";
import { findComponent } from "../../../src/engine/answers/find-component.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();

// typed, component
test.each([
  ["pump", "pump"],
  [" Hydraulic PUMP ", "pump"],
  ["pump gasket", "gasket"],
  ["roof", undefined],
  ["", undefined],
])("'%s' is the component '%s'", (typed, id) => {
  expect(findComponent(catalog, typed)?.id).toBe(id);
});
