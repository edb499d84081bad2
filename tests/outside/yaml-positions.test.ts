import { expect, test } from "vitest";
import { readSource } from "../../src/build/data/source.ts";
import { marksOf, samples } from "../helpers/yaml-suite.ts";

test("x", () => {
  let n = 0, s = 0;
  for (const sample of samples()) {
    const source = readSource("x.yaml", sample.yaml, undefined);
    if (sample.isError || source.faults.length > 0) continue;
    try {
      const marks = marksOf(sample);
      if (sample.json !== undefined && JSON.stringify(source.value) !== JSON.stringify(JSON.parse(sample.json))) console.log("VALUE", sample.id, JSON.stringify(source.value), sample.json);
      n++;
      const starts = [0, ...[...sample.yaml.matchAll(/\n/g)].map((m) => m.index + 1)];
      for (const m of marks) {
        s++;
        const { line, column, length } = source.locate({ path: m.path, ...(m.key ? { key: true } : {}) });
        const off = (starts[line - 1] as number) + column - 1;
        const eol = (sample.yaml + "\n").slice(m.from).search(/\r?\n/) + m.from;
        if (m.isEmpty) {
          if (off < m.from || off > m.to) console.log("EMPTY", sample.id, m, off, JSON.stringify(sample.yaml));
        } else if (off !== m.from || length !== Math.min(m.to, eol) - m.from) console.log("OFF", sample.id, m, off, length, JSON.stringify(sample.yaml));
      }
    } catch (e) { console.log("THROW", sample.id, (e as Error).message, JSON.stringify(sample.yaml), sample.events.join("  ")); }
  }
  console.log(n, s);
  expect(1).toBe(1);
});
