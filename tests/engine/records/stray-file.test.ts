import { expect, test } from "vitest";
import { strayFile } from "../../../src/engine/records/stray-file.ts";
import { inShort } from "../../helpers/tiny-folder.ts";

const ELSEWHERE = "move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/";

// path, what stands in it, what an editor is told to do; nothing where nothing is said
const STRAYS: [string, unknown, string | undefined][] = [
  ["NOTES.md", "for ourselves", ELSEWHERE],
  ["parts/NOTES.md", "for ourselves", ELSEWHERE],
  ["makre.yaml", { name: "x" }, "did you mean maker.yaml?"],
  ["vehicles.d/traits.yaml", { x: 1 }, "did you mean vehicles/traits.yaml?"],
  ["parst/pump.yaml", { x: 1 }, "did you mean parts/pump.yaml?"],
  ["mine/pump.yaml", { component: "pump", parts: [] }, "did you mean parts/pump.yaml?"],
  ["parts/pump.csv", { component: "pump", parts: [] }, undefined],
  ["parts/pump.txt", { component: "pump", parts: [] }, undefined],
];
test.each(STRAYS)("%s, in which %j stands: %s", (path, value, hint) => {
  const said = `${path}: no kind of file lies here, so it is not read → ${hint}`;
  expect(strayFile({ path, value }).map(inShort)).toEqual(hint === undefined ? [] : [said]);
  expect(strayFile({ path, value }).every(({ severity }) => severity === "warning")).toBe(true);
});
