import { nearest } from "../../scope/nearest.ts";
import type { Bulletin, ChangeRecord, Component, Part } from "../catalog.ts";
import { citations } from "../citations.ts";
import type { Shaped } from "../read-catalog.ts";
import { Spellings } from "./capitals.ts";

/** Bulletins with their citations. A citation may name a record, a part or a component. */
export function resolveBulletins(
  files: readonly Shaped<"bulletin">[],
  records: ReadonlyMap<string, ChangeRecord>,
  parts: ReadonlyMap<string, Part>,
  components: ReadonlyMap<string, Component>,
): Map<string, Bulletin> {
  const bulletins = new Map<string, Bulletin>();
  const spellings = new Spellings();
  for (const { value, complaints, path } of files) {
    if (path !== `bulletins/${value.id}.md`)
      complaints.error(["id"], `bulletin '${value.id}' lies in ${path}`, `call the file bulletins/${value.id}.md`);
    spellings.check({ id: value.id, what: "bulletin", file: path }, ["id"], complaints);
    const cited = citations(value.text);
    for (const citation of cited) {
      if (records.has(citation.id) || parts.has(citation.id) || components.has(citation.id)) continue;
      const meant = nearest(citation.id, [...records.keys(), ...parts.keys(), ...components.keys()]);
      complaints.error(
        ["text"],
        `it cites '${citation.id}', which is no record, part or component`,
        meant ? `did you mean '${meant}'?` : "mend the id, or add the record",
        {
          within: [citation.from, citation.to],
          unknown: { name: citation.id, as: ["record", "part", "component"], ...(meant ? { meant } : {}) },
        },
      );
    }
    bulletins.set(value.id, { id: value.id, file: path, facts: value, citations: cited });
  }
  return new Map([...bulletins].sort(([a], [b]) => (a < b ? -1 : 1)));
}
