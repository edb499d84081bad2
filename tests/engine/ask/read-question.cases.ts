/** Questions, and what they are read as. The words are those of a made-up maker of tractors, years 1957 to 1962. */

// question, chips as "kind id,id", words left for a search of the text, what is asked
export const QUESTIONS: [question: string, chips: string[], rest: string, asked?: string[]][] = [
  ["60+, pump", ["year 1960,1961,1962", "component pump"], ""],
  ["60+pump", ["year 1960,1961,1962", "component pump"], ""],
  // names
  ["what changed on the brakes of the 59 Badger", ["system brakes", "year 1959", "line B"], "", ["changed"]],
  ["Badger", ["line B"], ""],
  ["BADGER badger Badgers Badger's badgers’", Array(5).fill("line B"), ""], // tractors said twice may be two
  ["PUMP pump Pumps Pump's pumps’", ["component pump"], ""], // things are one
  ["brock", ["line B"], ""],
  ["Badger and Heron", ["line B", "line H"], ""],
  ["hydraulic pump", ["component pump"], ""],
  ["Hydraulic Pumps?", ["component pump"], ""],
  ["three-point arm", ["component three-point-arm"], ""],
  ["link of the lift", ["component three-point-arm"], ""], // a name may hold words that name nothing
  ["box of gears", ["component gears"], ""],
  ["later fitting of a pump", ["component pump"], "", ["retrofit"]], // a way to ask before a kind of the same words
  ["oil seal", ["component pump-seal,hub-seal"], ""], // the same words name two
  ["brake", ["system brakes"], ""], // a system before its component
  ["glass", ["component glass"], ""], // no plural
  ["glasses", ["component glass"], ""], // but no more than a slip away
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
  ["pupm", ["component pump"], ""],

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
  ["1963", [], ""], // beyond the data
  ["74", [], "74"],
  ["159", [], "159"],
  ["5", [], "5"],
  ["59.5", [], "59.5"],
  ["219,236", [], "219 236"], // may be two numbers
  ["60+ pump", ["year 1960,1961,1962", "component pump"], ""],
  ["pump 60+", ["component pump", "year 1960,1961,1962"], ""],
  ["since the 60s", ["year 1960,1961,1962"], ""],
  ["pump 60 and up", ["component pump", "year 1960,1961,1962"], ""],
  ["pumps before the 59s", ["component pump", "year 1957,1958"], ""],
  ["pump up to 58", ["component pump", "year 1957,1958"], ""],
  ["57 to 59 pump", ["year 1957,1958,1959", "component pump"], ""],
  ["57 - 59 pump", ["year 1957,1958,1959", "component pump"], ""],
  ["1957 – 59 pump", ["year 1957,1958,1959", "component pump"], ""],
  ["between 57 and 59", ["year 1957,1958,1959"], ""], // it has done its work
  ["pump between 57-59", ["component pump", "year 1957,1958,1959"], ""],
  ["between Heron and Badger", ["line H", "line B"], "between"],

  // ids and numbers stay whole
  ["HY59-01", [], "HY59-01"],
  ["what is HY59-01?", [], "HY59-01"],
  ["59-1960", [], "59-1960"], // no years: a part number may look so
  ["59-0412 pump", ["component pump"], "59-0412"],
  ["B9 K 0412", [], "B9 K 0412"],
  ["3/8 in 0.015", [], "3/8 0.015"],
  ["TB-1/2.b", [], "TB-1/2.b"],
  ["it's a pump", ["component pump"], ""],

  // nothing, and odd things
  ["", [], ""],
  ["   \n\t", [], ""],
  ["what is the", [], "", ["setting"]],
  ["?!… --- ''' ’", [], ""],
  ["🚜🔧", [], ""],
  ["🚜pump🔧", ["component pump"], ""],
  ["ｐｕｍｐ", ["component pump"], ""], // wide letters
  ["насос 泵", [], "насос 泵"],
  ["constructor __proto__ toString", [], "constructor proto toString"],
  ["<b>pump</b>", ["component pump"], "b b"],
];

// question, and how it is asked, the first said first
export const WAYS: [question: string, asked: string[]][] = [
  ["what changed on the pump", ["changed"]],
  ["what's new for 59", ["changed"]],
  ["does an oil seal of the 59 fit a 61", ["fits"]],
  ["replacement for the pump seal", ["replaces"]],
  ["pump superseded by", ["replaces"]],
  ["latest number for the clutch", ["current"]],
  ["how often is the pump looked at", ["interval"]],
  ["clutch settings", ["setting"]], // a way to ask before a kind of the same word
  ["why did the clutch change", ["why", "changed"]],
  ["how to tell the pumps apart", ["how", "tell-apart"]],
  ["which pump is on the Heron", ["tell-apart"]], // a thing after "which"
  ["which Badger", []], // but no line
  ["difference between the pumps", ["tell-apart"]], // the longer way to ask
  ["difference of the pumps", ["changed"]],
  ["interchangeable? Does it interchange?", ["fits"]], // asked twice is asked once
  ["WHAT CHANGED, what changed!", ["changed"]],
  ["adjustment figure of the clutch", []], // a kind in more words than the way to ask
  ["pump", []],
  ["", []],
];

// question, chips, words left, slips as "typed: read as, or as"
export const SLIPS: [question: string, chips: string[], rest: string, corrected: string[]][] = [
  ["hydrualic pump", ["component pump"], "", ["hydrualic: hydraulic"]],
  ["badgre clucth", ["line B", "component clutch"], "", ["badgre: badger", "clucth: clutch"]],
  ["kaliper", ["component caliper"], "", ["kaliper: caliper"]], // sounds the same
  ["gerabox", ["component gears"], "", ["gerabox: gearbox"]],
  ["ajuster", [], "adjuster", ["ajuster: adjuster"]], // a word of the texts is searched for
  ["oil peal", ["component pump-seal,hub-seal"], "", ["peal: seal"]],
  ["leaking", [], "leaking", []], // a form of a known word
  ["tightened noises", [], "tightened noises", []],
  ["thermostatic", [], "thermostatic", []], // a plain word
  ["pmp", [], "pmp", []], // three letters
  ["badg3r", [], "badg3r", []], // a digit
  ["pto", ["trait PT=yes"], "", []],
  ["caliiper, Caliiper", ["component caliper"], "", ["caliiper: caliper", "Caliiper: caliper"]],
  ["thermestat", ["component thermostat"], "", ["thermestat: thermostat"]],
  ["termastadt", ["component thermostat"], "", ["termastadt: thermostat"]], // three of a long word
];

// question, chips, words left: words that people run together, or do not
export const JOINED: [question: string, chips: string[], rest: string][] = [
  ["gear box", ["component gears"], ""],
  ["gear-box", ["component gears"], ""],
  ["gearbox", ["component gears"], ""],
  ["Gear Boxes", ["component gears"], ""],
  ["threepoint arm", ["component three-point-arm"], ""],
  ["three point arm", ["component three-point-arm"], ""],
  ["3-point arm", [], "3-point arm"],
  ["pumpseal", ["component pump-seal"], ""],
  ["oil-seal", ["component pump-seal,hub-seal"], ""],
  ["power takeoff", ["trait PT=yes"], ""],
  ["power take off", ["trait PT=yes"], ""],
  ["oilpipe", ["system hydraulics"], "pipe"], // a saying, too
  ["dyna mo", ["component dynamo"], ""],
];

// question, chips, words left, figures
export const FIGURES: [question: string, chips: string[], rest: string, figures: string[]][] = [
  ["pump at 59 psi", ["component pump"], "59 psi", ["59 psi"]], // no year
  ["pump at 59psi", ["component pump"], "59psi", ["59psi"]],
  ["59 pump", ["year 1959", "component pump"], "", []],
  ["59s", ["year 1959"], "", []],
  ["57-59 bar", [], "57-59 bar", ["57-59 bar"]],
  ["3/8 mm 0.015 mm", [], "3/8 mm 0.015 mm", ["3/8 mm", "0.015 mm"]],
  ["60 ft-lbs", [], "60 ft-lbs", ["60 ft-lbs"]],
  ["60 Bars", [], "60 Bars", ["60 Bars"]],
  ["30 V dynamo", ["component dynamo"], "", []], // a name may hold a figure
  ["30 V of the dynamo", ["component dynamo"], "30 V", ["30 V"]],
  ["1 1/2 mm", [], "1 1/2 mm", ["1 1/2 mm"]],
  [".005 mm", [], ".005 mm", [".005 mm"]],
  ["1,200 psi", [], "1200 psi", ["1200 psi"]],
  ["24,000 psi", [], "24000 psi", ["24000 psi"]],
  ["1,000,000 psi", [], "1000000 psi", ["1000000 psi"]],
  ["psi", [], "psi", []],
];

// question, chips as "kind id,id" and what was typed for each, words left: with TRACTOR_NUMBERS
export const WRITTEN_NUMBERS: [question: string, chips: string[], rest: string][] = [
  ["HY59-01", ["record HY59-01 <HY59-01>"], ""],
  ["what is hy59.01?", ["record HY59-01 <hy59.01>"], ""],
  ["hy 59 01", ["record HY59-01 <hy 59 01>"], ""],
  ["HY59O1", ["record HY59-01 <HY59O1>"], ""], // O for 0
  ["HY59-0l", ["record HY59-01 <HY59-0l>"], ""], // l for 1
  ["HT-101 pump", ["part HT-101 <HT-101>", "component pump <pump>"], ""],
  ["HT-10O", ["part HT-10O <HT-10O>"], ""], // what is written so comes first
  ["HT-100", ["part HT-10O <HT-100>"], ""],
  ["3110 552 L", ["part 3110 552 L <3110 552 L>"], ""],
  ["3110552r caliper", ["part 3110 552 R <3110552r>", "component caliper <caliper>"], ""],
  ["3110-552", ["part 3110 552 L,3110 552 R <3110-552>"], ""], // either hand
  ["3110 552 L of a 59", ["part 3110 552 L <3110 552 L>", "year 1959 <59>"], ""],
  ["casting 4411", ["part HT-102 <4411>"], "casting"],
  ["TB 17", ["bulletin TB-17 <TB 17>"], ""],
  ["HT-999", [], "HT-999"],
  ["HY59-01 and hy5901", ["record HY59-01 <HY59-01>"], ""], // once
];

// question, chips, words left
export const PLATE_NUMBERS: [question: string, chips: string[], rest: string][] = [
  ["K0412", ["trait plant=K", "trait number=412"], ""],
  ["k0412", ["trait plant=K", "trait number=412"], ""],
  ["chassis number D8999", ["trait plant=D", "trait number=8999"], ""], // words that named it are done
  ["axle D8999", ["trait plant=D", "trait number=8999"], "axle"], // but not those of another
  ["D9000", [], "D9000"], // more than any has
  ["X0412", [], "X0412"], // no plant
  ["K412", [], "K412"], // too few digits
  ["A214900", ["trait axle=A214900"], ""],
  ["axle A014900", ["trait axle=A014900"], ""],
  ["serial 47199", ["trait box=47199"], ""],
  ["gearbox serial 47199", ["component gears", "trait box=47199"], ""],
  ["serial of the 47199", ["trait box=47199"], ""], // three words before
  ["serial of the old 47199", [], "serial old 47199"], // four
  ["47199", [], "47199"], // not named
  ["serial 9999", [], "serial 9999"],
];

// question, chips, words left: things that a tractor may have. Whether it has them is told by how they stand (cars-said.ts).
export const EQUIPMENT: [question: string, chips: string[], rest: string][] = [
  ["power take-off", ["trait PT=yes"], ""],
  ["with pto", ["trait PT=yes"], ""],
  ["without pto", ["trait PT=yes"], ""],
  ["Without Power Take-Off", ["trait PT=yes"], ""],
  ["winch", ["component winch"], ""], // a thing first
  ["the winch", ["component winch"], ""],
  ["with winch", ["trait WN=yes"], ""],
  ["with a winch", ["trait WN=yes"], ""],
  ["with pto and winch", ["trait PT=yes", "trait WN=yes"], ""], // "with" is said of both
  ["without pto or the winch", ["trait PT=yes", "trait WN=yes"], ""],
  ["pto and winch", ["trait PT=yes", "component winch"], ""],
  ["without the winch", ["trait WN=yes"], ""],
  ["no winch", ["trait WN=yes"], ""],
  ["with pump and winch", ["component pump", "component winch"], ""],
  ["diesel", ["trait fuel=diesel"], ""],
  ["oil burner", ["trait fuel=diesel,fuel=tvo"], ""],
  ["torque drive", ["trait drive=torque", "system torque-drive"], ""], // which tractor, and what of it
  ["shaftless", ["trait PT=yes"], ""],
  ["with", [], ""],
  ["without", [], ""],
  ["no grease", [], "grease"],
];

// question, years that the records do not cover, chips, words left
export const BEYOND: [question: string, beyond: string[], chips: string[], rest: string][] = [
  ["1963 pump", ["1963"], ["component pump"], ""],
  ["'63 pump", ["63"], ["component pump"], ""],
  ["63 Badger", ["63"], ["line B"], ""],
  ["63 pump", [], ["component pump"], "63"], // two figures may be anything
  ["63 mm", [], [], "63 mm"],
  ["1962 pump", [], ["year 1962", "component pump"], ""],
  ["1963 or 1964", ["1963", "1964"], [], ""],
  ["1863", [], [], "1863"],
  ["1957-74", ["1957-74"], [], ""], // a run that reaches past the data
  ["1957-1963 pump", ["1957-1963"], ["component pump"], ""],
  ["1957 - 1963 pump", ["1957-1963"], ["component pump"], ""],
  ["1956-58", ["1956-58"], [], ""], // or begins before it
  ["57-63", [], [], "57-63"], // two figures may be anything
  ["1959-57", [], [], "1959-57"],
  ["pump after 62", ["after 62"], ["component pump"], ""], // no year is later
  ["after the 62s", ["after the 62s"], [], ""],
  ["pump before 57", ["before 57"], ["component pump"], ""], // nor earlier
  ["pump after 61", [], ["component pump", "year 1962"], ""],
];

// question, pairs of words that stand side by side and were read as nothing else
export const PHRASES: [question: string, phrases: string[]][] = [
  ["spring noise", ["spring noise"]],
  ["spring noise of the Badger", ["spring noise", "noise of"]], // of the: neither speaks
  ["spring Badger noise", []],
  ["the noise", ["the noise"]],
  ["what is", []],
  ["grease", []],
  ["noise under 59 psi", ["noise under", "under 59", "59 psi"]],
  ["no noise", ["no noise"]],
];

// question, chips, words left that are right by the rule, and what is wrong with them so far
export const NOT_YET: [question: string, chips: string[], rest: string, wrong: string][] = [
  ["59+ psi", [], "59 psi", "a plus sign parts a number from its unit"],
];
