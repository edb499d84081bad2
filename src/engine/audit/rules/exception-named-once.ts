import type { Catalog } from "../../records/catalog.ts";
import type { Setting } from "../../records/statement.ts";
import { NONE } from "../../scope/diagram.ts";
import { inForce } from "../in-force.ts";
import { placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";
import { idsIn, textsOf } from "../texts-of.ts";

/**
 * A general figure ("belt tension, new belt") and a special one of another component ("winch belt tension") meet on the same cars and say
 * otherwise. Then each of the two records names the other in its words: the general one as an exception, the special one as what
 * it is an exception from. The special name has all words of the general one (up to a comma) and more.
 */
export const exceptionNamedOnce: Rule = {
  id: "exception-named-once",
  gravity: "warning",
  about: "A special figure and the general one it departs from name each other's record in words.",
  why: "Whoever reads the general record sets the special thing by it.",
  mend: "Name the other record where the figure is told: 'not for the winch belt (record)'.",
  example: {
    wrong: {
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "components: [gasket]\nscope: my>=1958\nsettings:\n  - { name: gasket oil pressure, window: 100..110, unit: bar, scope: line=H }\n",
      ],
    },
    right: {
      "changes/1958/FR58-01.md": [
        "scope: my>=1958\n",
        "components: [gasket]\notherwise: Not as HY59-01 has it.\nscope: my>=1958\nsettings:\n  - { name: gasket oil pressure, window: 100..110, unit: bar, scope: line=H }\n",
      ],
      "changes/1959/HY59-01.md": ["The pump grew", "The gasket has a figure of its own (FR58-01). The pump grew"],
    },
  },
  *find(world) {
    const { catalog, index } = world;
    const { sets } = catalog.space;
    for (const [general, special] of generalAndSpecial(index.settings)) {
      if (general.record === special.record) continue;
      const both = sets.and(inForce(world, general, general.scope.cars), inForce(world, special, special.scope.cars));
      if (both === NONE) continue;
      for (const [one, other] of [
        [general, special],
        [special, general],
      ] as const) {
        if (names(catalog, one.record, other.record)) continue;
        yield {
          at: placeOf(catalog, one),
          message: `'${one.name}' ${one === general ? "has an exception" : "departs from a general figure"}, and ${one.record} does not say so: '${other.name}' of ${other.record}`,
          hint: `name ${other.record} in the words of ${one.record}`,
          records: [one.record, other.record],
          names: [one.name, other.name],
          also: [{ ...placeOf(catalog, other), message: `'${other.name}'` }],
          cars: both,
        };
      }
    }
  },
};

function* generalAndSpecial(settings: readonly Setting[]): Generator<readonly [Setting, Setting]> {
  const byWord = new Map<string, { it: Setting; words: readonly string[] }[]>();
  const all = settings.map((it) => ({ it, words: it.name.split(",")[0]?.toLowerCase().split(/\s+/) ?? [] }));
  for (const one of all) for (const word of new Set(one.words)) byWord.set(word, [...(byWord.get(word) ?? []), one]);
  for (const general of all) {
    // One word alone ("gap") is no name for a quantity.
    if (general.words.length < 2) continue;
    for (const special of byWord.get(general.words[0] as string) ?? [])
      if (
        special.words.length > general.words.length &&
        general.words.every((word) => special.words.includes(word)) &&
        special.it.component !== general.it.component &&
        special.it.unit === general.it.unit &&
        (special.it.low !== general.it.low || special.it.high !== general.it.high)
      )
        yield [general.it, special.it];
  }
}

function names(catalog: Catalog, record: string, other: string): boolean {
  const found = catalog.records.get(record);
  return found !== undefined && textsOf(found).some(({ text }) => idsIn(text).includes(other));
}
