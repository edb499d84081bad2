/** What an editor is told about a sum whose names nobody knows. */
import { expect, test } from "vitest";
import { checkShape } from "../../../../src/engine/records/check-shape.ts";
import { Complaints } from "../../../../src/engine/records/complaint.ts";
import { resolveSums } from "../../../../src/engine/records/resolve/sums.ts";
import { type SumJob, type SumsFile, sums } from "../../../../src/engine/records/shapes/sums.ts";
import { catalogOf, inShort } from "../../../helpers/tiny-folder.ts";

const catalog = catalogOf();
const JOB = { sum: "pulley", title: "pump speed", record: "HY59-01", component: "pump", inputs: { engine: "900 rpm" } };

function said(...jobs: object[]): { jobs: readonly SumJob[]; complaints: string[] } {
  const complaints = new Complaints("sums.yaml");
  const value = checkShape<SumsFile>(sums, { sums: jobs }, complaints);
  const read = value ? resolveSums({ value, complaints }, catalog) : [];
  return { jobs: read, complaints: complaints.list.map(inShort) };
}

test("a sum whose names are all known is taken as it is", () => {
  const inputs = {
    engine: { setting: "oil pressure", side: "low" },
    crank: { mark: "bore", part: "HT-101" },
    driven: { mark: "bore", component: "pump" },
  };
  expect(said({ ...JOB, inputs })).toEqual({ jobs: [{ ...JOB, inputs }], complaints: [] });
  expect(resolveSums(undefined, catalog)).toEqual([]);
});

// what differs, what is said
const WRONG: [object, RegExp][] = [
  [
    { record: "HY59-02" },
    /^sums.yaml sums\.0\.record: no change record is called 'HY59-02' → did you mean 'HY59-01'\?$/,
  ],
  [{ component: "pomp" }, /sums\.0\.component: no component is called 'pomp' → did you mean 'pump'\?$/],
  [
    { inputs: { engin: "900 rpm" } },
    /sums\.0\.inputs\.engin: the sum 'pulley' takes no 'engin' → did you mean 'engine'\?$/,
  ],
  [{ inputs: { crank: { mark: "bore", part: "HT-109" } } }, /inputs\.crank\.part: no part is called 'HT-109'/],
  [
    { inputs: { crank: { mark: "bare", part: "HT-101" } } },
    /inputs\.crank\.mark: no feature is called 'bare' → did you mean 'bore'\?$/,
  ],
  [{ inputs: { crank: { mark: "bare", component: "pump" } } }, /inputs\.crank\.mark: no feature is called 'bare'/],
  [
    { inputs: { crank: { mark: "bore", component: "pomp" } } },
    /inputs\.crank\.component: no component is called 'pomp'/,
  ],
  [
    { inputs: { engine: { setting: "oil presure", side: "low" } } },
    /inputs\.engine\.setting: no setting is called 'oil presure' → did you mean 'oil pressure'\?$/,
  ],
  [{ sum: "pully" }, /sums\.0\.sum/],
  [{ inputs: { engine: { setting: "oil pressure", side: "middle" } } }, /inputs\.engine/],
];
test.each(WRONG.map(([differs, message]) => ({ differs, message })))("$differs", ({ differs, message }) => {
  const { complaints } = said({ ...JOB, ...differs });
  expect(complaints).toHaveLength(1);
  expect(complaints[0]).toMatch(message);
});

test("two sums of one title are told apart by nobody", () => {
  expect(said(JOB, JOB).complaints).toEqual([
    "sums.yaml sums.1.title: two sums are called 'pump speed' → give one of them another title",
  ]);
});
