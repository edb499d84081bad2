import fc from "fast-check";
import { expect, test } from "vitest";
import { chooseLabels, type LabelCandidate } from "../../../src/browser/map/choose-labels.ts";

const SCREEN = { width: 1000, height: 600 };

function candidate(key: string, x: number, y: number, more: Partial<LabelCandidate> = {}): LabelCandidate {
  return { key, x, y, radius: 5, width: 60, height: 16, rank: 0, side: "right", ...more };
}

test("of two that are in each other's way the important one is named", () => {
  const chosen = chooseLabels([candidate("a", 100, 100, { rank: 1 }), candidate("b", 100, 104)], SCREEN);
  expect(chosen.has("b")).toBe(true);
  expect(chosen.get("a")).not.toBe("right");
});

test("a label that would leave the picture stands on the other side", () => {
  expect(chooseLabels([candidate("a", 980, 100)], SCREEN).get("a")).toBe("left");
  expect(chooseLabels([candidate("a", 20, 100, { side: "left" })], SCREEN).get("a")).toBe("right");
});

test("no label stands under what covers a part of the picture", () => {
  const buttons = { left: 940, right: 990, top: 400, bottom: 590 };
  expect(chooseLabels([candidate("a", 900, 500)], SCREEN, [buttons]).get("a")).toBe("left");
  expect(chooseLabels([candidate("a", 960, 500)], SCREEN, [buttons]).size).toBe(0);
  expect(chooseLabels([candidate("a", 900, 300)], SCREEN, [buttons]).get("a")).toBe("right");
});

test("a node outside the picture has no label", () => {
  expect(chooseLabels([candidate("a", -10, 100), candidate("b", 10, 700)], SCREEN).size).toBe(0);
});

test("a small screen has fewer labels than a large one", () => {
  const many = Array.from({ length: 200 }, (_, i) => candidate(`${i}`, (i % 4) * 80, Math.floor(i / 4) * 22));
  const phone = chooseLabels(many, { width: 330, height: 400 });
  const desk = chooseLabels(many, { width: 1000, height: 1200 });
  expect(phone.size).toBeGreaterThan(0);
  expect(phone.size).toBeLessThan(desk.size);
});

test("no label lies on another, and all lie inside", () => {
  const one = fc.record({
    x: fc.integer({ min: -50, max: 1050 }),
    y: fc.integer({ min: -50, max: 650 }),
    width: fc.integer({ min: 5, max: 250 }),
    rank: fc.integer({ min: -2, max: 9 }),
    side: fc.constantFrom("left" as const, "right" as const),
  });
  fc.assert(
    fc.property(fc.array(one, { maxLength: 60 }), (made) => {
      const candidates = made.map(({ x, y, ...more }, i) => candidate(String(i), x, y, more));
      const boxes = [...chooseLabels(candidates, SCREEN)].map(([key, side]) => {
        const { x, y, width, radius, height } = candidates[Number(key)] as LabelCandidate;
        return { left: side === "left" ? x - radius - width : x + radius, width, top: y - height / 2, height };
      });
      for (const [i, a] of boxes.entries()) {
        expect(a.left >= 0 && a.left + a.width <= SCREEN.width).toBe(true);
        for (const b of boxes.slice(i + 1)) {
          const apart =
            a.left + a.width <= b.left ||
            b.left + b.width <= a.left ||
            a.top + a.height <= b.top ||
            b.top + b.height <= a.top;
          expect(apart).toBe(true);
        }
      }
    }),
  );
});
