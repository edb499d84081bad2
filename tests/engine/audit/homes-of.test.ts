import { describe, expect, test } from "vitest";
import { homesOf, sayKind, shareHome } from "../../../src/engine/audit/homes-of.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { catalogOf, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

const indexOf = (spoil: Spoil = {}) => openPartIndex(catalogOf(spoiled(spoil)));
const RECORD = "changes/1959/HY59-01.md";

describe("a part is at home in", () => {
  test("its own component", () => {
    expect([...homesOf(indexOf(), "HT-101")]).toEqual(["pump"]);
  });

  test("the component of a place where a plant put it", () => {
    const spoil = { [RECORD]: ["built:\n", "built:\n  - { place: pump gasket, part: HT-101, scope: line=B }\n"] };
    expect([...homesOf(indexOf(spoil), "HT-101")]).toEqual(["pump", "gasket"]);
    expect(shareHome(indexOf(spoil), "HT-101", "HT-201")).toBe(true);
    expect(shareHome(indexOf(), "HT-101", "HT-201")).toBe(false);
  });

  test("as a kit, the components of what is in it and in kits in it, though one of these holds it back", () => {
    const spoil = {
      "parts/gasket.yaml": ["name: gasket kit }", "name: gasket kit }\n  - { number: HT-291, name: set }"],
      [RECORD]: [
        "contents: [{ part: HT-201, count: 2 }",
        "contents: [{ part: HT-291, count: 1 }",
        "kits:\n",
        "kits:\n  - { kit: HT-291, contents: [{ part: HT-101, count: 1 }, { part: HT-290, count: 1 }] }\n",
      ],
    };
    expect([...homesOf(indexOf(spoil), "HT-290")].sort()).toEqual(["gasket", "pump"]);
    expect([...homesOf(indexOf(), "HT-290")]).toEqual(["gasket"]);
  });
});

test("a part is told with what it is", () => {
  expect(sayKind(indexOf(), "HT-101")).toBe("HT-101 (hydraulic pump)");
  expect(sayKind(indexOf(), "HT-999")).toBe("HT-999");
});
