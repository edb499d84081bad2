/** One row after the other into the tiny folder: what is written, what stands already, and what stands against it. */
import { expect, test } from "vitest";
import { Drafts } from "../../../src/build/tables/drafts.ts";
import { filesOf, rowsOf, sheetOf } from "./tiny-import.ts";

/** What becomes of each row of a sheet. */
function mergedOf(name: string, lines: string[], overwrite = false): { said: string[]; drafts: Drafts } {
  const drafts = new Drafts(filesOf(), overwrite);
  const said = rowsOf(sheetOf(name, ...lines)).map((row) => {
    const merged = drafts.merge(row);
    return merged.did === "rejected" ? merged.reason : merged.did;
  });
  return { said, drafts };
}

const BUILT = "record;place;part;scope";

test.each<[string, string[], string[], string[]]>([
  // table, rows, what becomes of them, with --overwrite
  ["built", [BUILT.replaceAll(";", "\t"), "HY59-01\tpump\tHT-101\tline=B; at=K59#0412-"], ["unchanged"], ["unchanged"]],
  [
    "built",
    [BUILT.replaceAll(";", "\t"), "HY59-01\tpump\tHT-102\tline=B; at=K59#0412-"],
    ["'part' already says 'HT-101'"],
    ["written"],
  ],
  ["built", [BUILT, "HY59-01;lift arms;HT-101;line=B"], ["written"], ["written"]],
  [
    "built",
    [BUILT, "HY60-01;pump;HT-101;line=B"],
    ["no record 'HY60-01' is in the folder or among the rows"],
    ["no record 'HY60-01' is in the folder or among the rows"],
  ],
  [
    "built",
    [BUILT, "HY59-01;lift arms;HT-101;line=B", "HY59-01;lift arms;HT-101;line=B"],
    ["written", "it says the same as row 2"],
    ["written", "it says the same as row 2"],
  ],
  [
    "records",
    ["id,title", "HY59-01,Longer hydraulic pump", "FR58-01,Another title"],
    ["unchanged", "'title' already says 'Frame drilled for a winch'"],
    ["unchanged", "written"],
  ],
  ["records", ["id,customer", "FR58-01,Nothing to do."], ["written"], ["written"]],
  [
    "records",
    ["id,customer", "FR58-01,Nothing to do.", "FR58-01,Come in."],
    ["written", "'customer' says another thing than row 2"],
    ["written", "'customer' says another thing than row 2"],
  ],
  ["records", ["id,revision", "FR58-01,1"], ["unchanged"], ["unchanged"]],
  [
    "records",
    ["id,file", "FR58-01,changes/x/FR58-01.md"],
    ["the file lies in changes/1958/FR58-01.md; a row cannot move it to changes/x/FR58-01.md"],
    ["the file lies in changes/1958/FR58-01.md; a row cannot move it to changes/x/FR58-01.md"],
  ],
  [
    "records",
    ["id,file", "N1,../N1.md"],
    ["no file of this kind can lie in ../N1.md"],
    ["no file of this kind can lie in ../N1.md"],
  ],
  [
    "records",
    ["id,file", "N1,changes/a\\..\\..\\N1.md"],
    ["no file of this kind can lie in changes/a\\..\\..\\N1.md"],
    ["no file of this kind can lie in changes/a\\..\\..\\N1.md"],
  ],
  [
    "parts",
    ["component,number,name", 'pump,HT-101,"pump, short"', "pump,HT-101,pump"],
    ["unchanged", "it says another thing than row 2"],
    ["unchanged", "it says another thing than row 2"],
  ],
  [
    "marks",
    ["component,part,mark,value", "pump,HT-101,bore,18", "pump,HT-101,bore,19", "pump,HT-999,bore,18"],
    ["unchanged", "'bore' already says '18'", "no part 'HT-999' stands in parts/pump.yaml, and no row makes one"],
    ["unchanged", "written", "no part 'HT-999' stands in parts/pump.yaml, and no row makes one"],
  ],
  ["marks", ["component,part,mark,value", "pump,HT-101,bore,"], ["'value' is empty"], ["'value' is empty"]],
  [
    "records",
    ["id,file", "N1,changes/1958/FR58-01.md"],
    ["in changes/1958/FR58-01.md lies another record"],
    ["in changes/1958/FR58-01.md lies another record"],
  ],
  [
    "marks",
    ["component,part,mark,value", "pump,HT-101,__proto__,18", "pump,HT-101,constructor,18"],
    ["nothing can be called '__proto__'", "written"],
    ["nothing can be called '__proto__'", "written"],
  ],
  [
    "left-alone",
    ["record,left-alone", "HY59-01,The reservoir was looked at and stayed.", "HY59-01,So did the cap."],
    ["unchanged", "written"],
    ["unchanged", "written"],
  ],
  [
    "kits",
    ["record,kit,part,name,count", "HY59-01,HT-290,HT-201,,2", "HY59-01,HT-291,HT-201,,1"],
    ["unchanged", "written"],
    ["unchanged", "written"],
  ],
  [
    "procedures",
    ["record,when,steps", "HY59-01,after a pump was fitted,Bleed it.", "HY59-01,after a pump was fitted,Look."],
    ["'steps' already says 'Bleed the lift twice.'", "'steps' already says 'Bleed the lift twice.'"],
    ["written", "written"],
  ],
  [
    "moved",
    ["kind,from,to,why", "record,HY-1,HY59-01,renamed", "record,HY-2,HY59-01,renamed"],
    ["unchanged", "written"],
    ["unchanged", "written"],
  ],
])("%s %j: %j", (name, lines, plain, overwritten) => {
  expect(mergedOf(name, lines).said).toEqual(plain);
  expect(mergedOf(name, lines, true).said).toEqual(overwritten);
});

test("a new record lies where others of its day lie, or where the row says", () => {
  const { drafts } = mergedOf("records", ["id,issued,file", "N1,1960-01-01,", "N2,1960-01-01,changes/winches/N2.md"]);
  expect([...drafts.drafts.keys()]).toEqual(["changes/1960/N1.md", "changes/winches/N2.md"]);
});

test("a row that fills a field is remembered with the field", () => {
  const { drafts } = mergedOf("marks", ["component,part,mark,value", "gasket,HT-201,ribs,none"]);
  const touched = [...(drafts.drafts.get("parts/gasket.yaml")?.touched.values() ?? [])];
  expect(touched.map(({ path, row }) => [path.join(" "), row.row.number])).toEqual([["parts 0 marks ribs", 2]]);
});

test("the folder itself is never touched", () => {
  const files = filesOf();
  const before = JSON.stringify([...files]);
  const drafts = new Drafts(files, true);
  for (const row of rowsOf(sheetOf("records", "id,title", "FR58-01,Another"))) drafts.merge(row);
  expect(drafts.drafts.get("changes/1958/FR58-01.md")?.value).toMatchObject({ title: "Another" });
  expect(JSON.stringify([...files])).toBe(before);
});
