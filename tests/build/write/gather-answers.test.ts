import { describe, expect, test } from "vitest";
import { answersAsked, answersOfFlags, type Flags } from "../../../src/build/write/gather-answers.ts";
import { NEW_FIELDS, type NewKind } from "../../../src/build/write/new-fields.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const desk = { catalog: catalogOf(), today: "1960-03-01" };
const RECORD = {
  title: ["Longer"],
  kinds: ["part"],
  starts: ["start of 1960"],
  scope: ["my=1960"],
  story: ["It grew."],
};

describe("from flags alone", () => {
  const gathered = (kind: NewKind, flags: Flags) => answersOfFlags(NEW_FIELDS[kind], flags, desk);

  test("what can be suggested need not be said", () => {
    expect(gathered("record", { ...RECORD, components: ["pump"] })).toEqual({
      answers: {
        ...{ title: "Longer", kinds: ["part"], components: ["pump"], starts: "start of 1960", scope: "my=1960" },
        ...{ issued: "1960-03-01", year: "1960", id: "HY60-01", story: "It grew." },
      },
    });
  });

  test("all that is missing and all that is wrong come at once", () => {
    expect(gathered("record", { kinds: ["prat"], scope: ["mi=1"] })).toEqual({
      missing: ["title", "starts", "story"],
      faults: [
        "--kinds: there is no 'prat': did you mean 'part'?",
        "--scope: no trait is called 'mi' (did you mean 'my'?)",
      ],
    });
    expect(gathered("part", {})).toEqual({ missing: ["component", "number", "name"], faults: [] });
  });
});

describe("in a terminal", () => {
  const talk = async (kind: NewKind, flags: Flags, lines: string[]) => {
    const said: string[] = [];
    const left = [...lines];
    const terminal = {
      ask: (question: string) => {
        said.push(question);
        return Promise.resolve(left.shift());
      },
      say: (text: string) => void said.push(text),
    };
    return { gathered: await answersAsked(NEW_FIELDS[kind], flags, desk, terminal), said, left };
  };

  test("only what no flag says is asked; a wrong answer is asked again", async () => {
    const { gathered, said, left } = await talk("part", { component: ["pump"], number: ["HT-101"] }, [
      "HT-103",
      "",
      "",
      "?",
      "left",
      "",
      "ribs=two",
    ]);
    expect(gathered).toEqual({
      answers: { component: "pump", number: "HT-103", name: "hydraulic pump", hand: "left", marks: ["ribs=two"] },
    });
    expect(left).toEqual([]);
    expect(said).toEqual([
      "Enter takes what stands in [ ], or leaves out what is not needed. ? lists what may be answered.",
      "  part HT-101 is there already, under pump",
      "Part number, as printed on the box: ",
      "Name [hydraulic pump]: ",
      "What people also call it (commas between, may be left out): ",
      "Left or right, seen from the driver's seat (may be left out): ",
      "  left\n  right",
      "Left or right, seen from the driver's seat (may be left out): ",
      "Numbers cast into it (commas between, may be left out): ",
      "Marks, as feature=value (commas between, may be left out): ",
    ]);
  });

  test("a long text ends at an empty line", async () => {
    const flags = { title: ["T"], issued: ["1960-01-01"], id: ["TB-7"], about: ["A."] };
    const { gathered } = await talk("bulletin", flags, ["", "?", "See", "[[pump]].", ""]);
    expect(gathered).toMatchObject({ answers: { id: "TB-7", text: "See\n[[pump]]." } });
  });

  test("who goes away has written nothing, and what was answered is handed back", async () => {
    expect((await talk("bulletin", {}, [])).gathered).toEqual({ stopped: true, answers: {} });
    expect((await talk("bulletin", {}, ["T"])).gathered).toEqual({ stopped: true, answers: { title: "T" } });
    expect((await talk("bulletin", {}, ["T", "", "", "A.", "See"])).gathered).toMatchObject({
      stopped: true,
      answers: { title: "T", about: "A." },
    });
  });
});
