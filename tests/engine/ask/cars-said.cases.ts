/**
 * Questions, and what they say of tractors. A fact is written as it is read: "B" a line, "57" a year, "PT" what is there; "not" before
 * what is denied, "or" between what may be either. Words and names: tests/helpers/tractor-words.ts.
 */

// question, said of the tractor at hand, said of the one that a part comes from
export const ONE_CAR: [question: string, car: string[]][] = [
  ["Badger without pto but with winch", ["B", "not PT", "WN"]],
  ["", []],
  ["pump", []],
  ["57 Badger pump", ["57", "B"]],
  ["pump of a 57 Badger", ["57", "B"]],
  ["57-59 Badger with pto", ["57 or 58 or 59", "B", "PT"]],
  ["diesel Heron with a winch", ["diesel", "H", "WN"]],

  // denied: a denying word before it, with little words between, or joined to one that is denied
  ["Badger without pto", ["B", "not PT"]],
  ["Badger without the power take-off", ["B", "not PT"]],
  ["Badger with no pto", ["B", "not PT"]],
  ["Badger, no factory pto", ["B", "not PT"]],
  ["Badger w/o pto", ["B", "not PT"]],
  ["Badger minus its winch", ["B", "not WN"]],
  ["Badger that has no pto", ["B", "not PT"]],
  ["Badger that doesn't have pto", ["B", "not PT"]],
  ["Badger sans pto", ["B", "not PT"]],
  ["Badger without this pto", ["B", "not PT"]],
  ["Badger without pto or diesel oil", ["B", "not PT", "not diesel"]],
  ["Badger without pto nor diesel oil", ["B", "not PT", "not diesel"]],
  ["Badger without pto and without winch", ["B", "not PT", "not WN"]],
  ["Badger with neither pto nor winch", ["B", "not PT", "not WN"]],
  ["Badger with winch without pto", ["B", "WN", "not PT"]],
  ["Badger without pto with winch", ["B", "not PT", "WN"]],
  ["Badger without pto or winch", ["B", "not PT", "not WN"]],
  ["Badger without winch, pto", ["B", "not WN", "not PT"]], // a list goes on
  ["Badger with pto and winch", ["B", "PT", "WN"]],
  ["pump for a Heron, not a 59", ["H", "not 59"]],
  ["shaftless Badger", ["not PT", "B"]],
  ["my 61 Heron, 57 Badger pump", ["61", "H", "57", "B"]], // nothing between: either
];

// question, the tractor at hand, the one that the part comes from
export const TWO_CARS: [question: string, car: string[], donor: string[]][] = [
  ["pump off a 57 Badger on a 61 Heron", ["61", "H"], ["57", "B"]],
  ["pump off of the 57 on my 61", ["61"], ["57"]],
  ["will a pump from a 57 fit a 61", ["61"], ["57"]],
  ["pump out of the Badger into the Heron", ["H"], ["B"]],
  ["pump for a 61 Heron off a 57", ["61", "H"], ["57"]],
  ["57 pump on a 61", ["61"], ["57"]],
  ["does a 61 take a 57 pump", ["61"], ["57"]],
  ["57 front pump for a 61", ["61"], ["57"]],
  ["pump off a 57 on a Heron 61", ["H", "61"], ["57"]], // "on" begins the other
  ["does the pump of a 57 fit a 61", ["61"], ["57"]], // what the part is of
  ["pump of the 57 Badger in my 61", ["61"], ["57", "B"]],
  ["57 or 58 pump on a 61", ["61"], ["57", "58"]], // alternatives
  ["pump with pto off a Badger without pto", ["PT"], ["B", "not PT"]], // one with, one without the same
  ["57 pto Badger pump on a non pto 57 Badger", ["not PT", "57", "B"], ["57", "PT", "B"]],
  ["pump for a 57 or 58", ["57", "58"], []], // no two tractors, but either
];

// question, what may be said of either
export const UNCLEAR: [question: string, either: string[]][] = [
  ["57 Badger, and what of the 61 Heron", ["57", "B", "61", "H"]],
  ["my 61 with grease and a 57 spring", ["61", "57"]],
  ["57 for 61 pump", ["57", "61"]], // the one in place of the other, or for it
  ["on my 57, pump of a 59, off a 61", ["57", "59", "61"]],
  ["57 pump off a 61", ["57", "61"]], // both are where a part comes from
  ["pump on a 57 on a 59 on a 61", ["57", "59", "61"]],
];

// question, facts that are left, because all others are in doubt
export const IN_DOUBT: [question: string, left: string[], why: string][] = [
  ["Badger pump removed", [], "what is denied stands before"],
  ["Badger winch removed with pto", [], "what is denied stands before"],
  ["Badger pump missing, diesel oil", [], "what is denied stands before"],
  ["57 pump with the winch deleted", [], "what is denied stands before"],
  ["pump of a Badger, pto gone", [], "what is denied stands before"],
  ["pump of any Badger, 57 excepted", [], "what is denied stands before"],
  ["not a diesel Heron, pump", [], "neither all diesels nor all Herons"],
  ["57 Badger, missing grease", [], "it may stand after, too"],
  ["57 Badger, not noise", [], "a denying word that denies no fact"],
  ["pump, except 57 Herons", [], "neither all of the 57s nor all Herons"],
  ["pump of 57 Badger until grease", ["B"], "a range that no year was read with"],
  ["Badger registered 1959", ["B"], "a date is no model year"],
  ["Badger sold in July 1959", ["B"], "a date is no model year"],
  ["Badger pump by 59", ["B"], "the end of a range without its beginning"],
  ["Badger pump to 59", ["B"], "the end of a range without its beginning"],
  ["Badger pump, axle no A214900", ["B"], "it is short for number, or denies it"],
  ["Badger pump from A214900", ["B"], "a number that ends a range tells no single tractor"],
  ["Badger without winch, pump and pto", ["B", "not WN"], "it may be denied, too"],
  ["does the 57 need a pto", ["57"], "it is asked whether it is needed"],
  ["badgre pump grease", [], "a misspelt line by itself"],
  ["Badger without pto or diesel", ["B", "not PT"], "a common word by itself"],
  ["57 pump of a diesel with grease", ["57"], "a common word by itself"],
];

// question that holds a denying word, of a way to ask
export const NO_DOUBT: [question: string, car: string[]][] = [
  ["57 Badger pump does not fit", ["57", "B"]],
  ["why is the pump not interchangeable on a 57", ["57"]],
];

// question, what it says of the tractor, and what is wrong with that so far
export const NOT_YET: [question: string, car: string[], wrong: string][] = [
  ["pto less Badger", ["not PT", "B"], "what is less stands before, not after"],
  ["Badger, chassis no K0412", ["B", "K", "412"], "'no' is short for number, and denies the plant"],
];
