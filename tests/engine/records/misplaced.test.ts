import { expect, test } from "vitest";
import type { DataFile } from "../../../src/engine/records/file-kinds.ts";
import { kindOf } from "../../../src/engine/records/file-kinds.ts";
import type { UnreadFile } from "../../../src/engine/records/meant-place.ts";
import { misplacedFiles } from "../../../src/engine/records/misplaced.ts";
import { readCatalog } from "../../../src/engine/records/read-catalog.ts";
import { sourceOf, TINY } from "../../helpers/tiny-folder.ts";

/** The tiny folder, in which one file lies elsewhere, and what stands in it. */
function misplaced(from: string, to: string): string[] {
  const files: DataFile[] = [];
  const unread: UnreadFile[] = [];
  for (const [path, text] of Object.entries(TINY)) {
    const place = path === from ? to : path;
    const kind = kindOf(place);
    if (kind) files.push({ path: place, kind, value: sourceOf(place, text).value });
    else {
      const { story, text: below, ...facts } = sourceOf(path, text).value as Record<string, unknown>;
      unread.push({ path: place, value: facts, body: (story ?? below) as string | undefined });
    }
  }
  return misplacedFiles(readCatalog(files).complaints, files, unread).map(
    ({ path, meant, readAs }) => `${path}, read as ${readAs}: ${meant.kind} at ${meant.path}`,
  );
}

// a file of the tiny folder, where it lies instead, what is misplaced, if anything
const CASES: [string, string, ...string[]][] = [
  ["maker.yaml", "maker.yaml"],
  ["parts/pump.yaml", "parts/pump.yml", "parts/pump.yml, read as undefined: parts at parts/pump.yaml"],
  ["parts/pump.yaml", "vehicles/pump.yaml", "vehicles/pump.yaml, read as vehicles: parts at parts/pump.yaml"],
  ["parts/pump.yaml", "mine/pump.yaml", "mine/pump.yaml, read as undefined: parts at parts/pump.yaml"],
  ["maker.yaml", "mine/maker.yaml", "mine/maker.yaml, read as undefined: maker at maker.yaml"],
  ["maker.yaml", "mine/old.yaml"],
  ["vehicles/heron.yaml", "heron.yaml", "heron.yaml, read as undefined: vehicles at vehicles/heron.yaml"],
  ["bulletins/TB-1.md", "drafts/TB-1.md"],
  ["bulletins/TB-1.md", "bulletin/TB-1.md", "bulletin/TB-1.md, read as undefined: bulletin at bulletins/TB-1.md"],
];
test.each(CASES)("%s at %s", (from, to, ...found) => {
  expect(misplaced(from, to)).toEqual(found);
});
