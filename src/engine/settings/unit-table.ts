/**
 * The units a workshop reads and writes, each with its exact size and where that is defined.
 *
 * Sizes are fractions of whole numbers, so a limit is decided exactly. Floating point decides by luck where a converted limit
 * falls on a whole step: 0.60 in are 15.24 mm, but 0.6 * 25.4 is 15.239999999999998.
 *
 * Sources: SP: NIST SP 811 (2008), appendix B, which gives the legal definitions; BIPM: the SI brochure, 9th edition (2019);
 * "counted" units are only ever compared with themselves.
 */
import Fraction from "fraction.js";

export interface Unit {
  /** As the records write it: "in", "ft-lb", "deg F". */
  readonly id: string;
  readonly name: string;
  /** What it measures. Only units of one dimension can be converted. */
  readonly dimension: string;
  /** How many of the dimension's base one of it is: SI units without prefix, degrees of angle, revolutions per minute. */
  readonly size: Fraction;
  /** What is added to a reading before it is counted from zero; for temperatures. */
  readonly zero?: Fraction;
  /** Further spellings, as people type them; capitals do not count. */
  readonly says: readonly string[];
  /** The unit of the other system that stands beside it. */
  readonly beside?: string;
  /** The definition in words. */
  readonly factor: string;
  readonly source: string;
}

const SP = "NIST SP 811 (2008), appendix B";
const BIPM = "SI brochure, 9th edition (2019)";

const of = (text: string): Fraction => new Fraction(text);
const INCH = of("0.0254");
const FOOT = INCH.mul(12);
const MILE = FOOT.mul(5280);
const POUND = of("0.45359237");
const GRAVITY = of("9.80665");
const POUND_FORCE = POUND.mul(GRAVITY);
const KILOGRAM_FORCE = GRAVITY;
const GALLON = INCH.pow(3).mul(231);
const IMPERIAL_GALLON = of("0.00454609");
const MERCURY = of("13595.1").mul(GRAVITY);
const WATER = of("1000").mul(GRAVITY);
const HOUR = of("3600");
const RANKINE = new Fraction(5, 9);

type Row = readonly [
  id: string,
  name: string,
  size: Fraction | string,
  factor: string,
  says: string,
  more?: { readonly beside?: string; readonly zero?: Fraction; readonly source?: string },
];

// dimension, rows: id, name, size, definition, further spellings divided by "|"
const TABLE: readonly [dimension: string, rows: readonly Row[]][] = [
  [
    "length",
    [
      ["in", "inch", INCH, "1 in = 25.4 mm exactly", `"|inch|inches|ins`, { beside: "mm" }],
      [
        "thou",
        "thousandth of an inch",
        INCH.div(1000),
        "1 thou = 0.001 in",
        "thousandth|thousandths|thousandths of an inch|thousand|thousands|mil|mils",
        { beside: "mm" },
      ],
      ["ft", "foot", FOOT, "1 ft = 12 in", "'|foot|feet", { beside: "m" }],
      ["mile", "mile", MILE, "1 mile = 5280 ft = 1.609344 km exactly", "mi", { beside: "km" }],
      ["miles", "miles", MILE, "1 mile = 5280 ft = 1.609344 km exactly", "", { beside: "km" }],
      [
        "mm",
        "millimetre",
        "0.001",
        "1 mm = 0.001 m",
        "millimetre|millimetres|millimeter|millimeters|mil|mils",
        { beside: "in", source: BIPM },
      ],
      [
        "cm",
        "centimetre",
        "0.01",
        "1 cm = 0.01 m",
        "centimetre|centimetres|centimeter|centimeters",
        { beside: "in", source: BIPM },
      ],
      ["m", "metre", "1", "base unit", "metre|metres|meter|meters", { beside: "ft", source: BIPM }],
      [
        "km",
        "kilometre",
        "1000",
        "1 km = 1000 m",
        "kilometre|kilometres|kilometer|kilometers",
        { beside: "miles", source: BIPM },
      ],
    ],
  ],
  [
    "torque",
    [
      [
        "ft-lb",
        "foot-pound",
        FOOT.mul(POUND_FORCE),
        "1 ft-lb = 12 in × 1 lbf = 1.3558179483314004 N·m exactly",
        "lb-ft|lbf-ft|ft-lbf|lbs-ft|ft-lbs|foot-pound|foot-pounds|pound-feet|pound-foot|ftlb|lbft|ft/lb|lb|lbs|pounds",
        { beside: "N·m" },
      ],
      [
        "in-lb",
        "inch-pound",
        INCH.mul(POUND_FORCE),
        "1 in-lb = 1 in × 1 lbf; 12 in-lb = 1 ft-lb",
        "lb-in|lbf-in|in-lbf|lbs-in|in-lbs|inch-pound|inch-pounds|pound-inch|pound-inches|inlb|in/lb|lb|lbs|pounds",
        { beside: "N·m" },
      ],
      [
        "N·m",
        "newton metre",
        "1",
        "derived unit",
        "nm|n m|n-m|n.m|newton metre|newton metres|newton meter|newton meters",
        { beside: "ft-lb", source: BIPM },
      ],
      [
        "kgf·m",
        "kilogram-force metre",
        KILOGRAM_FORCE,
        "1 kgf·m = 9.80665 N·m exactly",
        "kgf-m|kgm|kg-m|kg·m|kpm|mkg|mkp",
        { beside: "ft-lb" },
      ],
      [
        "kgf·cm",
        "kilogram-force centimetre",
        KILOGRAM_FORCE.div(100),
        "1 kgf·cm = 0.01 kgf·m",
        "kgf-cm|kgcm|kg-cm|kg·cm",
        { beside: "in-lb" },
      ],
      [
        "in-oz",
        "inch-ounce",
        INCH.mul(POUND_FORCE).div(16),
        "1 in-oz = 1 in × 1/16 lbf",
        "oz-in|ozf-in|in-ozf|inch-ounces",
        { beside: "N·m" },
      ],
    ],
  ],
  [
    "force",
    [
      [
        "lbf",
        "pound-force",
        POUND_FORCE,
        "1 lbf = 0.45359237 kg × 9.80665 m/s² = 4.4482216152605 N exactly",
        "lb|lbs|pound|pounds|pounds force|lb f",
        { beside: "N" },
      ],
      ["N", "newton", "1", "derived unit", "newton|newtons", { beside: "lbf", source: BIPM }],
      ["kN", "kilonewton", "1000", "1 kN = 1000 N", "kilonewton|kilonewtons", { beside: "lbf", source: BIPM }],
      [
        "kgf",
        "kilogram-force",
        KILOGRAM_FORCE,
        "1 kgf = 9.80665 N exactly",
        "kp|kilopond|kiloponds",
        { beside: "lbf" },
      ],
      ["ozf", "ounce-force", POUND_FORCE.div(16), "1 ozf = 1/16 lbf", "", { beside: "N" }],
    ],
  ],
  [
    "mass",
    [
      ["lb", "pound", POUND, "1 lb = 0.45359237 kg exactly", "lb mass|lbs|pound|pounds|lbm", { beside: "kg" }],
      ["oz", "ounce", POUND.div(16), "1 oz = 1/16 lb", "oz weight|ounces weight|ounce|ounces", { beside: "g" }],
      ["kg", "kilogram", "1", "base unit", "kilo|kilos|kilogram|kilograms", { beside: "lb", source: BIPM }],
      ["g", "gram", "0.001", "1 g = 0.001 kg", "gram|grams|gramme|grammes", { beside: "oz", source: BIPM }],
    ],
  ],
  [
    "pressure",
    [
      [
        "psi",
        "pound per square inch",
        POUND_FORCE.div(INCH.mul(INCH)),
        "1 psi = 1 lbf / 1 in² = 6.894757… kPa",
        "lb/in²|lb/in2|lbf/in²|lbf/in2|lb per sq in|pounds per square inch|lb|lbs|pound|pounds",
        { beside: "kPa" },
      ],
      ["kPa", "kilopascal", "1000", "1 kPa = 1000 Pa", "kilopascal|kilopascals", { beside: "psi", source: BIPM }],
      ["Pa", "pascal", "1", "derived unit", "pascal|pascals", { beside: "psi", source: BIPM }],
      ["MPa", "megapascal", "1000000", "1 MPa = 1000 kPa", "megapascal|megapascals", { beside: "psi", source: BIPM }],
      ["bar", "bar", "100000", "1 bar = 100 kPa", "bars", { beside: "psi" }],
      ["mbar", "millibar", "100", "1 mbar = 0.1 kPa", "millibar|millibars", { beside: "inHg" }],
      [
        "kgf/cm²",
        "kilogram-force per square centimetre",
        KILOGRAM_FORCE.mul(10000),
        "1 kgf/cm² = 98.0665 kPa exactly",
        "kgf/cm2|kg/cm²|kg/cm2|kp/cm2|kp/cm²",
        { beside: "psi" },
      ],
      [
        "atm",
        "standard atmosphere",
        "101325",
        "1 atm = 101.325 kPa exactly",
        "atmosphere|atmospheres",
        { beside: "psi" },
      ],
      [
        "inHg",
        "inch of mercury, conventional",
        MERCURY.mul(INCH),
        "1 inHg = 13595.1 kg/m³ × 9.80665 m/s² × 25.4 mm",
        'in hg|in. hg|in-hg|inches of mercury|inches mercury|"hg|" hg',
        { beside: "kPa" },
      ],
      [
        "mmHg",
        "millimetre of mercury, conventional",
        MERCURY.div(1000),
        "1 mmHg = 13595.1 kg/m³ × 9.80665 m/s² × 1 mm",
        "mm hg|mm-hg|millimetres of mercury",
        { beside: "kPa" },
      ],
      [
        "cmHg",
        "centimetre of mercury, conventional",
        MERCURY.div(100),
        "1 cmHg = 10 mmHg",
        "cm hg|cm-hg",
        { beside: "kPa" },
      ],
      [
        "inH2O",
        "inch of water, conventional",
        WATER.mul(INCH),
        "1 inH2O = 1000 kg/m³ × 9.80665 m/s² × 25.4 mm",
        "in h2o|inches of water|in water",
        { beside: "kPa" },
      ],
    ],
  ],
  [
    "volume",
    [
      [
        "US gal",
        "US gallon",
        GALLON,
        "1 US gal = 231 in³ = 3.785411784 L exactly",
        "gal|gals|gallon|gallons|us gallon|us gallons",
        { beside: "L" },
      ],
      [
        "US qt",
        "US quart",
        GALLON.div(4),
        "1 US qt = 1/4 US gal",
        "qt|qts|quart|quarts|us quart|us quarts|us qts",
        { beside: "L" },
      ],
      [
        "US pt",
        "US pint",
        GALLON.div(8),
        "1 US pt = 1/8 US gal",
        "pt|pts|pint|pints|us pint|us pints|us pts",
        { beside: "L" },
      ],
      [
        "fl oz",
        "US fluid ounce",
        GALLON.div(128),
        "1 US fl oz = 1/128 US gal",
        "US fl oz|fl oz|floz|fluid ounce|fluid ounces|us fluid ounces|oz|ounce|ounces",
        { beside: "mL" },
      ],
      [
        "imp gal",
        "imperial gallon",
        IMPERIAL_GALLON,
        "1 imp gal = 4.54609 L exactly",
        "gal|gals|gallon|gallons|imperial gallon|imperial gallons|uk gal",
        { beside: "L" },
      ],
      [
        "imp qt",
        "imperial quart",
        IMPERIAL_GALLON.div(4),
        "1 imp qt = 1/4 imp gal",
        "qt|qts|quart|quarts|imperial quart|imperial quarts|uk qt",
        { beside: "L" },
      ],
      [
        "imp pt",
        "imperial pint",
        IMPERIAL_GALLON.div(8),
        "1 imp pt = 1/8 imp gal",
        "pt|pts|pint|pints|imperial pint|imperial pints|uk pt",
        { beside: "L" },
      ],
      [
        "imp fl oz",
        "imperial fluid ounce",
        IMPERIAL_GALLON.div(160),
        "1 imp fl oz = 1/160 imp gal",
        "uk fl oz|fl oz|imperial fluid ounces|fluid ounce|fluid ounces|oz|ounce|ounces",
        { beside: "mL" },
      ],
      [
        "cu in",
        "cubic inch",
        INCH.pow(3),
        "1 cu in = 16.387064 cc exactly",
        "cubic inch|cubic inches|cid|in³|in3|cu. in.|ci",
        { beside: "cc" },
      ],
      ["L", "litre", "0.001", "1 L = 0.001 m³", "litre|litres|liter|liters|ltr", { beside: "US qt" }],
      [
        "mL",
        "millilitre",
        "0.000001",
        "1 mL = 0.001 L",
        "millilitre|millilitres|milliliter|milliliters",
        { beside: "fl oz" },
      ],
      [
        "cc",
        "cubic centimetre",
        "0.000001",
        "1 cc = 1 cm³ = 1 mL",
        "ccm|cm³|cm3|cubic centimetres|cubic centimeters",
        { beside: "cu in", source: BIPM },
      ],
    ],
  ],
  [
    "temperature",
    [
      [
        "deg F",
        "degree Fahrenheit",
        RANKINE,
        "°C = (°F − 32) / 1.8",
        "°f|ºf|degf|deg. f|degrees f|degree f|fahrenheit|degrees fahrenheit|f|deg|°|degrees",
        { beside: "°C", zero: of("459.67") },
      ],
      [
        "°C",
        "degree Celsius",
        "1",
        "°F = °C × 1.8 + 32",
        "ºc|deg c|degc|deg. c|degrees c|degree c|celsius|centigrade|degrees celsius|c|deg|°|degrees",
        { beside: "deg F", zero: of("273.15") },
      ],
      ["K", "kelvin", "1", "base unit; K = °C + 273.15", "kelvin", { beside: "deg F", zero: of("0"), source: BIPM }],
    ],
  ],
  [
    "temperature difference",
    [
      [
        "F° difference",
        "degree Fahrenheit of difference",
        RANKINE,
        "a difference of 1.8 °F is one of 1 °C; nothing is added",
        "f°|f degrees|deg f difference|°f difference|f difference|degrees f difference",
        { beside: "C° difference" },
      ],
      [
        "C° difference",
        "degree Celsius of difference",
        "1",
        "a difference of 1 °C is one of 1.8 °F; nothing is added",
        "c°|c degrees|deg c difference|°c difference|c difference|degrees c difference|k difference",
        { beside: "F° difference" },
      ],
    ],
  ],
  [
    "speed",
    [
      [
        "mph",
        "mile per hour",
        MILE.div(HOUR),
        "1 mph = 1.609344 km/h exactly",
        "mi/h|miles per hour|miles/h|m.p.h",
        { beside: "km/h" },
      ],
      [
        "km/h",
        "kilometre per hour",
        of("1000").div(HOUR),
        "1 km/h = 1000 m / 3600 s",
        "kmh|kph|km per hour|kilometres per hour|kilometers per hour",
        { beside: "mph" },
      ],
      [
        "ft/s",
        "foot per second",
        FOOT,
        "1 ft/s = 0.3048 m/s exactly",
        "ft per s|feet per second|fps",
        { beside: "m/s" },
      ],
      [
        "m/s",
        "metre per second",
        "1",
        "derived unit",
        "metres per second|meters per second",
        { beside: "ft/s", source: BIPM },
      ],
    ],
  ],
  [
    "angle",
    [
      ["deg", "degree", "1", "1/360 of a turn", "deg of angle|degrees of angle|°|degree|degrees", { source: BIPM }],
      [
        "arcmin",
        "minute of angle",
        new Fraction(1, 60),
        "60 arcmin = 1 deg",
        "minutes of angle|minute of angle|′",
        { source: BIPM },
      ],
      ["turns", "turn", "360", "1 turn = 360 deg", "turn|revolution|revolutions|revs|rev", { source: BIPM }],
    ],
  ],
  [
    "crank position",
    [
      [
        "deg BTDC",
        "degree before top dead centre",
        "1",
        "before top dead centre counts up",
        "btdc|° btdc|°btdc|degrees btdc|degree btdc|before|before top dead centre|before tdc|deg|°|degrees|degree",
        { source: "common practice, no source" },
      ],
      [
        "deg ATDC",
        "degree after top dead centre",
        "-1",
        "1 deg ATDC = −1 deg BTDC",
        "atdc|° atdc|°atdc|degrees atdc|degree atdc|after|after top dead centre|after tdc",
        { source: "common practice, no source" },
      ],
    ],
  ],
  [
    "speed of turning",
    [
      [
        "rpm",
        "revolution per minute",
        "1",
        "turns in one minute",
        "rev/min|r/min|revs|revolutions per minute|1/min",
        { source: BIPM },
      ],
    ],
  ],
  [
    "voltage",
    [
      ["V", "volt", "1", "derived unit", "volt|volts|vdc|v dc", { source: BIPM }],
      ["mV", "millivolt", "0.001", "1 mV = 0.001 V", "millivolt|millivolts", { source: BIPM }],
      ["kV", "kilovolt", "1000", "1 kV = 1000 V", "kilovolt|kilovolts", { source: BIPM }],
    ],
  ],
  [
    "current",
    [
      ["A", "ampere", "1", "base unit", "amp|amps|ampere|amperes", { source: BIPM }],
      ["mA", "milliampere", "0.001", "1 mA = 0.001 A", "milliamp|milliamps", { source: BIPM }],
    ],
  ],
  [
    "resistance",
    [
      ["ohm", "ohm", "1", "derived unit", "ohms|Ω|Ω", { source: BIPM }],
      ["kohm", "kilohm", "1000", "1 kohm = 1000 ohm", "kilohm|kilohms|kω|k ohm|kohms", { source: BIPM }],
    ],
  ],
  [
    "power",
    [
      ["W", "watt", "1", "derived unit", "watt|watts", { source: BIPM }],
      ["kW", "kilowatt", "1000", "1 kW = 1000 W", "kilowatt|kilowatts", { beside: "hp", source: BIPM }],
      ["hp", "horsepower", FOOT.mul(POUND_FORCE).mul(550), "1 hp = 550 ft·lbf/s", "bhp|horsepower", { beside: "kW" }],
      [
        "metric hp",
        "metric horsepower",
        KILOGRAM_FORCE.mul(75),
        "1 metric hp = 75 kgf·m/s",
        "ps|cv|ch",
        { beside: "kW" },
      ],
    ],
  ],
  [
    "time",
    [
      ["s", "second", "1", "base unit", "sec|secs|second|seconds", { source: BIPM }],
      ["min", "minute", "60", "1 min = 60 s", "mins|minute|minutes", { source: BIPM }],
      ["h", "hour", "3600", "1 h = 60 min", "hr|hrs|hour|hours", { source: BIPM }],
    ],
  ],
  ["count of notches", [["notches", "notch", "1", "counted", "notch|click|clicks", { source: "counted" }]]],
  ["count of teeth", [["teeth", "tooth", "1", "counted", "tooth|t", { source: "counted" }]]],
];

export const UNITS: readonly Unit[] = TABLE.flatMap(([dimension, rows]) =>
  rows.map(
    ([id, name, size, factor, says, more = {}]): Unit => ({
      id,
      name,
      dimension,
      size: new Fraction(size),
      ...(more.zero ? { zero: more.zero } : {}),
      says: says === "" ? [] : says.split("|"),
      ...(more.beside ? { beside: more.beside } : {}),
      factor,
      source: more.source ?? SP,
    }),
  ),
);

/** A word that the table does not hold: counted by itself, only the same word fits it. */
export function counted(word: string): Unit {
  return {
    id: word,
    name: word,
    dimension: `count of ${word}`,
    size: new Fraction(1),
    says: [],
    factor: "counted",
    source: "counted",
  };
}
