import { expect, test } from "vitest";
import { idMeant, nearestOption, OPTIONS } from "../../../src/build/write/answer-options.ts";
import type { Option } from "../../../src/build/write/field.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const desk = { catalog: catalogOf(), today: "1960-03-01" };
const values = (options: Option[]): string[] => options.map(({ value }) => value);

test("what may be answered is listed", () => {
  expect(OPTIONS.components(desk)[1]).toEqual({ value: "pump", words: "hydraulic pump (hydraulics)" });
  expect(values(OPTIONS.records(desk))).toEqual(["FR58-01", "HY59-01"]);
  expect(values(OPTIONS.traits(desk))).toEqual(["line=", "my=", "plant=", "number=", "eq=PT", "eq=WN"]);
  expect(OPTIONS.traits(desk)[0]?.words).toBe("model line: B Badger, H Heron");
  expect(values(OPTIONS.features(desk, { component: "pump" }))).toEqual(["ribs=", "bore="]);
  expect(OPTIONS.features(desk, { component: "lift" })).toEqual([]);
});

test("a name is as good as an id, and the nearest of both is suggested", () => {
  const options = OPTIONS.components(desk);
  expect(idMeant("Pump Gasket", options, desk)).toBe("gasket");
  expect(idMeant("nothing", options, desk)).toBeUndefined();
  expect(nearestOption("gaskett", options, desk)).toBe("gasket");
  expect(nearestOption("pump gaskit", options, desk)).toBe("pump gasket");
});
