import { expect, test } from "vitest";
import { answerPlate } from "../../../src/engine/answers/answer-plate.ts";
import { linesIndexOf, openLinesIndex } from "../../../src/engine/records/lines-index.ts";
import { packSet } from "../../../src/engine/scope/pack.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf();
const index = linesIndexOf(catalog);
const opened = openLinesIndex(JSON.parse(JSON.stringify(index)));

test("it names each line with its years", () => {
  expect(index.lines.map(({ id, name, years }) => [id, name, years])).toEqual([
    ["B", "Badger", [1957, 1958, 1959, 1960]],
    ["H", "Heron", [1959, 1960, 1961]],
  ]);
});

test("opened again, the cars are the same, and plates are read with it", () => {
  expect(packSet(opened.buildable)).toEqual(packSet(catalog.buildable));
  for (const [i, line] of catalog.lines.entries())
    expect(packSet(opened.lines[i]?.cars ?? opened.buildable)).toEqual(packSet(line.cars));
  for (const plate of ["B9K0412", "B8D0412", "X9K0412"])
    expect(answerPlate({ catalog: opened }, plate)).toEqual(answerPlate({ catalog }, plate));
});
