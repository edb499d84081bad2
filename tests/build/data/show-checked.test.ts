import { expect, test } from "vitest";
import { checkFolder } from "../../../src/build/data/check-folder.ts";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { showAccepted, showChecked } from "../../../src/build/data/show-checked.ts";
import { onDisk, spoiled } from "../../helpers/tiny-folder.ts";

const WRONG = ["part: HT-101, scope: line=B; at=K59#0412- }", "part: HT-101, scope: line=B; at=K59#0420- }"] as const;

test("a contradiction is shown with both places and a car, and by which name it can be weighed or accepted", async () => {
  const read = await readFolder(await onDisk(spoiled({ "changes/1959/HY59-01.md": WRONG })));
  expect(showChecked(checkFolder(read), read.files, "data")).toBe(
    `data/changes/1959/HY59-01.md:11:41: error: 'pump' holds HT-102 here, and HT-101 by another line of this record on the same cars
    11 |   - { place: pump, part: HT-102, scope: line=B; at=K59#0412+ }
       |                                         ^^^^^^^^^^^^^^^^^^^^
    also data/changes/1959/HY59-01.md:10:41: HT-101 in the same place
    for example: Badger of 1959, built at Kelby, numbered 0412
    → end the one scope where the other begins
    check: two-parts-in-one-place (HY59-01)

${read.files} files: 1 error`,
  );
});

test("what is accepted is counted, and listed with its reason", async () => {
  const folder = spoiled({
    "changes/1959/HY59-01.md": [
      ...WRONG,
      "links: [FR58-01]",
      "links: [FR58-01]\naccept:\n  - { check: two-parts-in-one-place, about: [pump], why: both were found }",
    ],
  });
  const read = await readFolder(await onDisk(folder));
  const checked = checkFolder(read);
  expect(showChecked(checked, read.files, "data")).toBe(
    `${read.files} files: 0 errors, 1 accepted (--accepted lists them)`,
  );
  const shown = showAccepted(checked, "data");
  expect(shown).toContain("    check: two-parts-in-one-place (HY59-01)\n    accepted: both were found\n");
  expect(shown).toMatch(/\n1 accepted$/);
});
