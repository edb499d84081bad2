/** What the page says about the cars of a scope. */
// scope as written, words
export const DESCRIPTIONS: [scope: string, words: string][] = [
  ["all", "every car"],

  // lines
  ["line=B", "Badger"],
  ["line=B,H", "Badger and Heron"],
  ["line=B,H,M", "Badger, Heron and Marten"],
  ["line=M,B", "Badger and Marten"], // in the order of the traits, not of the editor
  ["line!=B", "all except Badger"],
  ["line!=B,H", "all except Badger and Heron"],

  // years
  ["my=1958", "cars of 1958"],
  ["my=1958-1959", "cars of 1958 and 1959"],
  ["my=1958-1960", "cars of 1958 to 1960"],
  ["my=1957,1959", "cars of 1957 and 1959"],
  ["my=1957,1959,1961-1962", "cars of 1957, 1959, 1961 and 1962"],
  ["my!=1959", "cars of 1957, 1958 and 1960 to 1962"],
  ["my>=1959", "cars from 1959"],
  ["my>1958", "cars from 1959"],
  ["my<=1960", "cars up to 1960"],
  ["my<1961", "cars up to 1960"],
  ["my>=1958; my<=1960", "cars from 1958 up to 1960"],
  ["line=B; my>=1959", "Badger from 1959"],
  ["my>=1959; line=B", "Badger from 1959"],

  // points in a plant's production
  ["at=K59#0412+", "cars built at Kelby from number 0412 of 1959 on"],
  ["at=K59#0412-", "cars built at Kelby before number 0412 of 1959"],
  ["at=D260@1960-02-29+", "cars built at Dunmoor from 1960-02-29 (model year 1960) on"],
  ["at=K59@1959-02-01-", "cars built at Kelby before 1959-02-01 (model year 1959)"],
  ["line=B; at=K59#0412+", "Badger, built at Kelby from number 0412 of 1959 on"],

  // lists
  ["fuel=diesel", "cars with the diesel oil engine"],
  ["fuel=tvo,diesel", "cars with the diesel oil or vaporising oil engine"],
  ["fuel!=petrol", "cars without the petrol engine"],
  ["fuel!=petrol,tvo", "cars without the petrol or vaporising oil engine"],

  // numbers, days, serials
  ["tilt=-1", "cars with a seat at -1"],
  ["tilt=-1-2", "cars with a seat at -1 to 2"],
  ["tilt=-3,0-1", "cars with a seat at -3 or 0 to 1"],
  ["tilt!=-2-2", "cars with no seat at -2 to 2"],
  ["tilt>=1", "cars with a seat at 1 or later"],
  ["tilt>1", "cars with a seat at after 1"],
  ["tilt<=1", "cars with a seat at 1 or earlier"],
  ["tilt<1", "cars with a seat at before 1"],
  ["built>=1959-02-01", "cars built on 1959-02-01 or later"],
  ["axle=A010-A020", "cars with axle A010 to A020"],
  ["axle>=B412", "cars with axle B412 or later"], // of its letter
  ["axle<B412", "cars with axle before B412"],

  // equipment
  ["PT=yes", "cars with power take-off"],
  ["PT=no", "cars without power take-off"],
  ["PT!=yes", "cars without power take-off"],
  ["PT=yes,no", "cars with power take-off or without power take-off"],
  ["eq=PT", "cars with power take-off"],
  ["eq=PT,WN", "cars with power take-off or with a winch"],
  ["no=PT", "cars without power take-off"],
  ["no=PT,WN", "cars without power take-off and without a winch"],
  ["line=H; no=WN; eq=PT", "Heron, with power take-off, without a winch"], // in the order of the traits

  // what is on the car today
  ["fitted=HT-101", "cars with HT-101 fitted"],
  ["fitted=HT-101,HT-102", "cars with HT-101 fitted or with HT-102 fitted"],
  ["fitted!=HT-101", "cars without HT-101 fitted"],
  ["repainted=yes", "cars repainted since"],

  // everything at once
  [
    "eq=WN; fuel=diesel; at=K59#0412+; my<=1960; line=B,H",
    "Badger and Heron up to 1960, built at Kelby from number 0412 of 1959 on, with the diesel oil engine, with a winch",
  ],
  ["line=B; my=1959 || line=H", "Badger of 1959; or Heron"],
  ["line=B || my=1960 || eq=WN", "Badger; or cars of 1960; or cars with a winch"],

  // nobody: there is no value to name
  ["my>1962", "no car"],
  ["my<1957", "no car"],
  ["my!=1957-1962", "no car"],
  ["line!=B,H,M", "no car"],
  ["axle>A999", "no car"],
  ["line=B || my>1962", "Badger; or no car"],
];
