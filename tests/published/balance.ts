import { calculated, published, type Published } from "./Published";

const MILLIGRAMS = { times: 1000 } as const;

export const balance: readonly Published[] = [
  ...published("read as printed", "a balance maker's manual, page 84, which prints 2000.589 mg for 2 g of aluminium", [
    ["=RETORT.BUOYANCY(2, 2700)", "2.000589"],
    ["=RETORT.BUOYANCY(2, 2700)", "2000.589", MILLIGRAMS],
  ]),
  ...published("from memory", "Skoog, West and Holler, example of a liquid", [["=RETORT.BUOYANCY(2.32, 920)", "2.3227"]]),
  ...published("from memory", "Harris, Quantitative Chemical Analysis, tris", [["=RETORT.BUOYANCY(100, 1330)", "100.08"]]),
  ...published("from memory", "handbook correction for water at 20 degC", [["=RETORT.BUOYANCY(100, 998.2)", "100.105"]]),
  ...calculated("weighings.mjs", "m = R (1 - 1.2 / 8000) / (1 - 1.2 / density), OIML D 28", [
    ["=RETORT.BUOYANCY(2, 2700)", "2.00058915073", "2 g of 2700 kg/m3"],
    ["=RETORT.BUOYANCY(2.32, 920)", "2.32268158468", "2.32 g of 920 kg/m3"],
    ["=RETORT.BUOYANCY(100, 1330)", "100.075293498", "100 g of 1330 kg/m3"],
    ["=RETORT.BUOYANCY(1, 2700)", "1.00029457537", "1 g of conventional mass, 2700 kg/m3"],
    ["=RETORT.BUOYANCY(1, 21450)", "0.999905938794", "1 g of conventional mass, 21450 kg/m3"],
  ]),

  ...calculated("airDensity.mjs", "constants of Picard, Davis, Glaeser, Fujii, Metrologia 45 (2008) 149, with 400 ppm CO2", [
    ["=RETORT.AIRDENSITY(20, 101325, 0.5)", "1.19931389547", "CIPM-2007 at 20, 101325, 0.5"],
    ["=RETORT.AIRDENSITY(25, 101325, 0.5)", "1.17731537365", "CIPM-2007 at 25, 101325, 0.5"],
    ["=RETORT.AIRDENSITY(23, 95000, 0.4)", "1.11287836248", "CIPM-2007 at 23, 95000, 0.4"],
    ["=RETORT.AIRDENSITY(20, 101325, 0)", "1.204557", "CIPM-2007 at 20, 101325, 0"],
  ]),
  ...calculated("airDensity.mjs", "OIML R 111-1, equation E.3-1, formula from memory", [
    ['=RETORT.AIRDENSITY(20, 101325, 0.5, "OIML")', "1.19929430503", "OIML at 20, 1013.25, 50"],
    ['=RETORT.AIRDENSITY(28, 101325, 0.5, "OIML")', "1.16425136453", "OIML at 28, 1013.25, 50"],
  ]),
  ...calculated("airDensity.mjs", "NPL guidance note on buoyancy correction, [0.348444 P - h (0.00252 t - 0.020582)] / (273.15 + t)", [
    [
      "=RETORT.AIRDENSITY(20, 101325, 0.5)",
      "1.1992835852",
      "NPL at 20, 1013.25, 50",
      { within: [3.6e-5, "another formula, which agrees within 3 parts in 100 000 here"] },
    ],
  ]),

  ...published("worked by hand", "A-B-A weighing, B - (A1 + A2) / 2, as in the weighing designs of NIST", [
    ["=RETORT.ZERODRIFT(10.0051, 10.0002, 10.0006)", "0.0047", { within: [5e-10, "a difference of readings that are exact in these digits"] }],
  ]),
  ...calculated("weighings.mjs", "zero 0.002 g at 0 min and 0.006 g at 5 min is 0.0036 g at 2 min", [
    ["=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0, 2, 5)", "31.4964", "drift 2 min into 5 of 0.002 to 0.006 g"],
  ]),
  ...published("worked by hand", "definition of a blank: the loss less that of the empty vessel; a gain of the blank adds", [
    ["=RETORT.BLANKCORRECTED(0.85, 0.004)", "0.846", { within: [5e-10, "a difference of readings that are exact in these digits"] }],
    ["=RETORT.BLANKCORRECTED(0.85, -0.004)", "0.854", { within: [5e-10, "a difference of readings that are exact in these digits"] }],
  ]),
  ...published(
    "worked by hand",
    'Blade, "Differential Temperature Error in Weighing", Analytical Chemistry: 0.19 mg/degC for a 17 g porcelain crucible, 0.05 mg/degC for a 17 g steel plummet, times 30 degC',
    [
      ["=RETORT.HOTWEIGHING(30)", "5.7", { ...MILLIGRAMS, within: [5e-10, "30 times a printed rate"] }],
      ["=RETORT.HOTWEIGHING(30, 0.00005)", "1.5", { ...MILLIGRAMS, within: [5e-10, "30 times a printed rate"] }],
    ],
  ),
  ...published("read as printed", 'Blade, "Differential Temperature Error in Weighing", Analytical Chemistry, mg for 1 degC', [
    ["=RETORT.HOTWEIGHING(1)", "0.19", MILLIGRAMS],
  ]),
];
