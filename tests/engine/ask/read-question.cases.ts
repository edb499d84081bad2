/** Questions, and what they are read as. The words are those of a made-up maker of tractors, years 1957 to 1962. */
import type { Vocabulary } from "../../../src/engine/ask/vocabulary.ts";

type Name = Vocabulary["names"][number];
const name = (kind: Name["kind"], id: string, label: string, ...also: string[]): Name => ({
  kind,
  id,
  label,
  say: [label, ...also],
});

export const TRACTOR_WORDS: Vocabulary = {
  names: [
    name("system", "hydraulics", "Hydraulics", "lift system"),
    name("system", "brakes", "Brakes"),
    name("component", "pump", "hydraulic pump", "pump"),
    name("component", "pump-seal", "pump seal", "oil seal"),
    name("component", "hub-seal", "hub seal", "oil seal"),
    name("component", "brake", "brake"),
    name("component", "three-point-arm", "three-point arm", "lift arm", "link of the lift"),
    name("component", "gears", "gearbox", "box of gears"),
    name("component", "glass", "glass"),
    name("component", "clutch", "clutch", "clutch of a big old thing"),
    name("line", "B", "Badger", "Brock"),
    name("line", "H", "Heron"),
    ...["1957", "1958", "1959", "1960", "1961", "1962"].map((year) => name("year", year, year)),
    name("kind", "retrofit", "retrofit", "later fitting"),
  ],
  ignore: ["what", "changed", "on", "the", "of", "a", "is", "it's"],
  mean: [
    ["breaks", "brakes"],
    ["oil pipe", "hydraulic pipe"],
    ["pump", "hydraulic pump"],
    ["slick pump", "pump"],
    ["a very very long saying", "brakes"],
    ["croûte", "glass"],
  ],
};

// question, chips as "kind id,id", words left for a search of the text
export const QUESTIONS: [question: string, chips: string[], rest: string][] = [
  // names
  ["what changed on the brakes of the 59 Badger", ["system brakes", "year 1959", "line B"], ""],
  ["Badger", ["line B"], ""],
  ["BADGER badger Badgers Badger's badgers’", ["line B"], ""],
  ["brock", ["line B"], ""],
  ["Badger and Heron", ["line B", "line H"], "and"],
  ["hydraulic pump", ["component pump"], ""],
  ["Hydraulic Pumps?", ["component pump"], ""],
  ["three-point arm", ["component three-point-arm"], ""],
  ["link of the lift", ["component three-point-arm"], ""], // a name may hold words that name nothing
  ["box of gears", ["component gears"], ""],
  ["later fitting of a pump", ["kind retrofit", "component pump"], ""],
  ["oil seal", ["component pump-seal,hub-seal"], ""], // the same words name two
  ["brake", ["system brakes"], ""], // a system before its component
  ["glass", ["component glass"], ""], // no plural
  ["glasses", [], "glasses"],
  ["clutches", ["component clutch"], ""],
  ["clutch of a big old thing", ["component clutch"], ""],
  ["clutch of a big old", ["component clutch"], "big old"],
  ["'pump'", ["component pump"], ""],
  ["“pump”, pump; (pump) pump!", ["component pump"], ""],

  // slips and slang
  ["breaks", ["system brakes"], ""],
  ["Breaks of Heron", ["system brakes", "line H"], ""],
  ["oil pipe", ["system hydraulics"], "pipe"],
  ["pump seal", ["component pump-seal"], ""], // a longer name is left as it is, though 'pump' is a saying
  ["slick pump", ["component pump"], ""], // what is exchanged is not exchanged again
  ["a very very long saying", ["system brakes"], ""],
  ["crôutes croute CROÛTES", ["component glass"], ""],
  ["pupm", [], "pupm"],

  // years
  ["1959", ["year 1959"], ""],
  ["'59", ["year 1959"], ""],
  ["’59", ["year 1959"], ""],
  ["‘59", ["year 1959"], ""],
  ["59", ["year 1959"], ""],
  ["59s", ["year 1959"], ""],
  ["1959s", ["year 1959"], ""],
  ["59's", ["year 1959"], ""],
  ["1957-59", ["year 1957,1958,1959"], ""],
  ["57-59", ["year 1957,1958,1959"], ""],
  ["1957-1959", ["year 1957,1958,1959"], ""],
  ["'57-'59", ["year 1957,1958,1959"], ""],
  ["1957–59", ["year 1957,1958,1959"], ""],
  ["57/59", ["year 1957,1958,1959"], ""],
  ["1959-59", ["year 1959"], ""],
  ["57 59", ["year 1957", "year 1959"], ""],
  ["1959-57", [], "1959-57"], // backwards
  ["1963", [], "1963"], // not in the data
  ["74", [], "74"],
  ["1957-74", [], "1957-74"],
  ["159", [], "159"],
  ["5", [], "5"],
  ["59.5", [], "59.5"],

  // ids and numbers stay whole
  ["HY59-01", [], "HY59-01"],
  ["what is HY59-01?", [], "HY59-01"],
  ["59-1960", [], "59-1960"], // no years: a part number may look so
  ["59-0412 pump", ["component pump"], "59-0412"],
  ["B9 K 0412", [], "B9 K 0412"],
  ["3/8 in 0.015", [], "3/8 in 0.015"],
  ["TB-1/2.b", [], "TB-1/2.b"],
  ["it's a pump", ["component pump"], ""],

  // nothing, and odd things
  ["", [], ""],
  ["   \n\t", [], ""],
  ["what is the", [], ""],
  ["?!… --- ''' ’", [], ""],
  ["🚜🔧", [], ""],
  ["🚜pump🔧", ["component pump"], ""],
  ["ｐｕｍｐ", ["component pump"], ""], // wide letters
  ["насос 泵", [], "насос 泵"],
  ["constructor __proto__ toString", [], "constructor proto toString"],
  ["<b>pump</b>", ["component pump"], "b b"],
];
