import { describe, expect, test } from "vitest";
import { validateXML } from "xmllint-wasm";
import { buildGraph } from "../../../src/engine/graph/build-graph.ts";
import { layOut } from "../../../src/engine/graph/lay-out.ts";
import { toGexf } from "../../../src/engine/graph/to-gexf.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

/** What xmllint complains about; nothing when the text is well-formed. */
async function faultsOf(xml: string): Promise<string[]> {
  const result = await validateXML({
    xml: { fileName: "graph.gexf", contents: xml },
    normalization: "c14n",
    initialMemoryPages: 1024,
    maxMemoryPages: 4096,
  });
  return result.errors.map((error) => error.message);
}

const counts = (xml: string): [nodes: number, edges: number] => [
  xml.match(/<node /g)?.length ?? 0,
  xml.match(/<edge /g)?.length ?? 0,
];

describe("the graph in GEXF", () => {
  const graph = buildGraph(catalogOf());
  layOut(graph);

  test("is well-formed, has every node and relation, and no date", async () => {
    const xml = toGexf(graph, "Changes");
    expect(await faultsOf(xml)).toEqual([]);
    expect(counts(xml)).toEqual([graph.order, graph.size]);
    expect(xml).toContain("<meta><description>Changes</description></meta>");
    expect(xml).not.toMatch(/lastmodifieddate|20\d\d-\d\d/i);
    expect(xml).toContain(
      '<gexf version="1.2" xmlns="http://www.gexf.net/1.2draft" xmlns:viz="http://www.gexf.net/1.2draft/viz">',
    );
    expect(xml).toContain('defaultedgetype="directed"');
  });

  test("keeps direction, record, scope and verdict of a relation, and the place of a node", () => {
    const xml = toGexf(graph, "Changes");
    const [edge] = /<edge [^>]*label="not-interchangeable-with"[\s\S]*?<\/edge>/.exec(xml) ?? [];
    expect(edge).toContain('source="part:HT-101" target="part:HT-102"');
    for (const value of ["HY59-01", "must-not-be-used"]) expect(edge).toContain(`value="${value}"`);
    const { x, y } = graph.getNodeAttributes("part:HT-102");
    const [node] = /<node id="part:HT-102"[\s\S]*?<\/node>/.exec(xml) ?? [];
    expect(node).toMatch(new RegExp(`<viz:position x="${x}" y="${y}"`));
  });

  test("signs that mean something in XML are only text", async () => {
    const odd = buildGraph(
      catalogOf(spoiled({ "parts/pump.yaml": ["name: pump, short", `name: 'pump <b>"&amp;" ]]> ½ 🚜'`] })),
    );
    const xml = toGexf(odd, `A & B <"C"> ]]>`);
    expect(await faultsOf(xml)).toEqual([]);
    expect(counts(xml)).toEqual([odd.order, odd.size]);
    expect(xml).toContain("<description>A &amp; B &lt;");
  });

  test("a title with dollar signs comes out as it is", () => {
    expect(toGexf(graph, "$& and $1 and $'")).toContain("<description>$&amp; and $1 and $'</description>");
  });

  test("of the data folder: well-formed, complete, and the same twice", async () => {
    const { graph: demo, catalog } = await demoKnowledge();
    const xml = toGexf(demo, catalog.maker.title);
    expect(await faultsOf(xml)).toEqual([]);
    expect(counts(xml)).toEqual([demo.order, demo.size]);
    expect(toGexf(buildGraph(catalog), catalog.maker.title)).toBe(xml);
  });
});
