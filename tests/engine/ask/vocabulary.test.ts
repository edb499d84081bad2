import { describe, expect, test } from "vitest";
import { vocabularyOf, vocabularyShape } from "../../../src/engine/ask/vocabulary.ts";
import { KINDS } from "../../../src/engine/records/terms.ts";
import { catalogOf, spoiled, TINY } from "../../helpers/tiny-folder.ts";

describe("the names that a question may use", () => {
  const vocabulary = vocabularyOf(catalogOf());
  const of = (kind: string): [string, string[]][] =>
    vocabulary.names.filter((name) => name.kind === kind).map(({ id, say }) => [id, say]);

  test("are those of systems, components, lines, years and kinds of change", () => {
    expect(of("system")).toEqual([
      ["hydraulics", ["Hydraulics"]],
      ["frame", ["Frame"]],
    ]);
    expect(of("component")).toEqual([
      ["lift", ["lift"]],
      ["pump", ["hydraulic pump"]],
      ["gasket", ["pump gasket"]],
    ]);
    expect(of("line")).toEqual([
      ["B", ["Badger"]],
      ["H", ["Heron"]],
    ]);
    expect(of("year").map(([year]) => year)).toEqual(["1957", "1958", "1959", "1960", "1961"]);
    expect(of("kind").map(([kind]) => kind)).toEqual([...KINDS]);
  });

  test("come with every alias", () => {
    const { names } = vocabularyOf(
      catalogOf(
        spoiled({
          "components/frame.yaml": ["name: Frame", "name: Frame\naliases: [chassis, frmae]"],
          "components/hydraulics.yaml": ["name: hydraulic pump", "name: hydraulic pump, aliases: [pmup]"],
          "vehicles/traits.yaml": ["label: Badger", "label: Badger, aliases: [brock]"],
        }),
      ),
    );
    const said = (id: string): string[] | undefined => names.find((name) => name.id === id)?.say;
    expect([said("frame"), said("pump"), said("B")]).toEqual([
      ["Frame", "chassis", "frmae"],
      ["hydraulic pump", "pmup"],
      ["Badger", "brock"],
    ]);
  });

  test("stand beside what people say instead, pair by pair, and the words that name nothing", () => {
    expect(vocabulary.mean).toEqual([
      ["lift", "hydraulics"],
      ["hitch", "hydraulics"],
    ]);
    expect(vocabulary.ignore).toEqual(["what", "changed"]);
    const { "words.yaml": _, ...wordless } = TINY;
    expect(vocabularyOf(catalogOf(wordless))).toMatchObject({ mean: [], ignore: [] });
  });

  test("keep their published shape", () => {
    expect(vocabularyShape.parse(JSON.parse(JSON.stringify(vocabulary)))).toEqual(vocabulary);
  });
});
