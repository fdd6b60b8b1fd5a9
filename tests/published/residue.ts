import { halfLastDigit } from "./halfLastDigit";
import { calculated, PERCENT, published, type Published } from "./Published";

// Pine charred in nitrogen at 60 K/min, mass in and char out in mg: micro combustion calorimetry, runs R1 to R12.
const NIST = "MaCFP materials database, NIST wood data: masses in mg as printed, yield their quotient";
const PINE: readonly (readonly [dry: number, char: number, percent: string])[] = [
  [12.037, 1.747, "14.5135831187"],
  [11.921, 1.843, "15.4601124067"],
  [12.04, 1.843, "15.3073089701"],
  [11.903, 1.846, "15.5086952869"],
  [12.024, 1.854, "15.4191616766"],
  [11.989, 1.844, "15.3807657019"],
  [12.037, 1.846, "15.3360471878"],
  [12.043, 1.847, "15.3367101221"],
  [12.019, 1.866, "15.5254180880"],
  [5.075, 0.707, "13.9310344828"],
  [5.046, 0.7, "13.8723741577"],
  [5.048, 0.7, "13.8668779715"],
];

// T. R. Miles, table of wood fuels (trmiles.com/alkali/fuelsc2.html), which prints each share both as received and dry.
const WOOD_FUELS: readonly (readonly [received: number, moisture: number, dry: string, divided?: string])[] = [
  [11.92, 11.45, "13.47", "13.4613212874"], // red oak sawdust, fixed carbon
  [76.35, 11.45, "86.22"], // red oak sawdust, volatile matter
  [44.24, 11.45, "49.96", "49.9604743083"], // red oak sawdust, carbon
  [38.76, 11.45, "43.77", "43.7718802936"], // red oak sawdust, oxygen
  [6.47, 63, "17.48", "17.4864864865"], // fir mill waste, fixed carbon
  [30.38, 63, "82.11", "82.1081081081"], // fir mill waste, volatile matter
  [9.14, 52.63, "19.31", "19.2949123918"], // alder and fir sawdust, fixed carbon
  [36.27, 52.63, "76.56", "76.5674477517"], // alder and fir sawdust, volatile matter
  [1.96, 52.63, "4.13", "4.13763985645"], // alder and fir sawdust, ash
  [24.17, 52.63, "51.02", "51.0238547604"], // alder and fir sawdust, carbon
  [12.93, 37.81, "20.80", "20.7911239749"], // Christmas trees, fixed carbon
  [46.02, 37.81, "73.99", "73.9990352147"], // Christmas trees, volatile matter
  [3.24, 37.81, "5.21", "5.20984081042"], // Christmas trees, ash
];
const toDry = (received: number, moisture: number): string =>
  `=RETORT.BASIS.CONVERT(${Number((received / 100).toFixed(6))}, "as received", "dry", ${Number((moisture / 100).toFixed(6))})`;
// What went into the printed figure was known better than the two decimals shown, so each may be half a digit off.
const woodFuelWithin = (received: number, moisture: number, dry: string): number => {
  const half = halfLastDigit("0.01");
  const kept = 1 - moisture / 100;
  return halfLastDigit(dry) + half / kept + ((received / 100) * half) / kept ** 2;
};

const FOSSEE_8_4 = "FOSSEE textbook companion 615, chapter 8, example 8.4, coal of 1.5642 g: 1.5022 g dry, 0.7628 g charred, 0.2140 g ash";
const COAL = '=RETORT.PROXIMATE("tared", 1.5642, 1.5022, 0.7628, 0.214)';
const FOSSEE_2_5 = "FOSSEE textbook companion 3050, chapter 2, example 2.5: 1 g of coal, 0.985 g at 105 degC, 0.8 g at 950 degC, 0.1 g of ash";
const ROUND_COAL = '=RETORT.PROXIMATE("tared", 1, 0.985, 0.8, 0.1)';
const ROUND = [1e-6, "round weighings, so the book's figures are exact"] as const;
const FOSSEE_8_14 = "FOSSEE textbook companion 615, chapter 8, example 8.14: 1.508 g, 1.478 g at 110 degC, 1.068 g at 950 degC";

export const residue: readonly Published[] = [
  ...calculated(
    "weighings.mjs",
    NIST,
    PINE.map(([dry, char, percent], index) => [`=RETORT.CHARYIELD("tared", ${dry}, ${char})`, percent, `yield R${index + 1}`, PERCENT]),
  ),
  ...calculated("weighings.mjs", "definition (m_char - m_ash) / (m_dry - m_ash)", [
    ['=RETORT.CHARYIELD("tared", 10, 2.5, 0.1)', "0.242424242424", "yield without ash"],
  ]),
  ...calculated(
    "weighings.mjs",
    "rice-husk char holds 6.40 % of water at 30 degC and 70 % relative humidity (Lin et al., abstract; basis not stated, taken as wet)",
    [
      [
        '=RETORT.CHARYIELD("tared", 10, 2.670940170940)',
        "26.70940170940",
        "25 % after 6.40 % of moisture regained",
        { ...PERCENT, within: [1e-9, "the weighing is given to twelve decimals"] },
      ],
    ],
  ),

  ...calculated("weighings.mjs", `ASTM E872 clause 7.1, A = 100 (Wi - Wf) / (Wi - Wc), on ${FOSSEE_8_14}`, [
    ['=RETORT.VOLATILEFRACTION("tared", 1.478, 1.068)', "0.277401894452", "volatile fraction of 1.478 g"],
    ['=RETORT.MOISTURE.WET("tared", 1.508, 1.478)', "1.98938992042", "moisture of 1.508 g", PERCENT],
  ]),
  ...published("worked by hand", "A = 100 (Wi - Wf) / (Wi - Wc), ASTM E872 clause 7.1, on round weighings: 7 g off 10 g", [
    ["=RETORT.VOLATILEFRACTION(25, 35, 28)", "0.700000000"],
  ]),

  ...calculated("weighings.mjs", FOSSEE_8_14, [
    ['=RETORT.VOLATILEMATTER("tared", 1.508, 1.068, 0.019893899204)', "27.1883289125", "volatile matter of 1.508 g", PERCENT],
  ]),
  ...published("read as printed", FOSSEE_8_4, [
    ['=RETORT.VOLATILEMATTER("tared", 1.5642, 0.7628, 0.039636875)', "47.270", PERCENT],
    ['=RETORT.ASHFRACTION("tared", 1.5642, 0.214)', "13.681", PERCENT],
    ["=RETORT.FIXEDCARBON(0.039636875, 0.4727017, 0.1368112)", "35.085", PERCENT],
    [COAL, "3.964", { ...PERCENT, at: ["Moisture", 1] }],
    [COAL, "47.270", { ...PERCENT, at: ["Volatile matter", 1] }],
    [COAL, "35.085", { ...PERCENT, at: ["Fixed carbon", 1] }],
    [COAL, "13.681", { ...PERCENT, at: ["Ash", 1] }],
  ]),
  ...published("read as printed", FOSSEE_2_5, [
    [ROUND_COAL, "1.5", { ...PERCENT, at: ["Moisture", 1], within: ROUND }],
    [ROUND_COAL, "18.5", { ...PERCENT, at: ["Volatile matter", 1], within: ROUND }],
    [ROUND_COAL, "70", { ...PERCENT, at: ["Fixed carbon", 1], within: ROUND }],
    [ROUND_COAL, "10", { ...PERCENT, at: ["Ash", 1], within: ROUND }],
    ['=RETORT.VOLATILEMATTER("tared", 1, 0.8, 0.015)', "18.5", { ...PERCENT, within: ROUND }],
    ['=RETORT.ASHFRACTION("tared", 1, 0.1)', "10", { ...PERCENT, within: ROUND }],
    ["=RETORT.FIXEDCARBON(0.015, 0.185, 0.1)", "70", { ...PERCENT, within: ROUND }],
  ]),
  ...published("worked by hand", `shares over 0.985 g dry, of ${FOSSEE_2_5}`, [
    [ROUND_COAL, "18.7817", { ...PERCENT, at: ["Volatile matter", 2] }],
    [ROUND_COAL, "71.0660", { ...PERCENT, at: ["Fixed carbon", 2] }],
    [ROUND_COAL, "10.1523", { ...PERCENT, at: ["Ash", 2] }],
    ['=RETORT.ASHFRACTION("tared", 1, 0.1, 0.015)', "10.1523", PERCENT],
  ]),
  ...published("worked by hand", "ASTM E872 clause 7.1, VM = 100 (Wi - Wf) / (Wi - Wc) - moisture, on round weighings: 80 % - 5 %", [
    ["=RETORT.VOLATILEMATTER(20, 21, 20.2, 0.05)", "75", { ...PERCENT, within: [5e-10, "round weighings"] }],
  ]),
  ...published("worked by hand", "form of ISO 18123 (from memory), [100 (m2 - m3) / (m2 - m1) - M] 100 / (100 - M) = (80 - 5) 100 / 95", [
    ['=RETORT.VOLATILEMATTER(20, 21, 20.2, 0.05, "dry")', "78.947", PERCENT],
  ]),

  ...calculated("molarMasses.mjs", "1 g of pure calcite or magnesite leaves its oxide: the share of CO2, weights of CIAAW 2021", [
    ["=RETORT.LOSSONIGNITION(20, 21, 20.560288152)", "0.439711848", "loss of CaCO3 to CaO"],
    ["=RETORT.LOSSONIGNITION(20, 21, 20.478028299)", "0.521971701", "loss of MgCO3 to MgO"],
  ]),
  ...published("from memory", "texts on limestone: pure calcite loses 43.97 % on ignition", [
    ["=RETORT.LOSSONIGNITION(20, 21, 20.560288152)", "43.97", PERCENT],
  ]),

  ...published(
    "read as printed",
    "T. R. Miles, table of wood fuels (trmiles.com/alkali/fuelsc2.html), printed as received and dry",
    WOOD_FUELS.map(([received, moisture, dry]) => [
      toDry(received, moisture),
      dry,
      { ...PERCENT, within: [woodFuelWithin(received, moisture, dry), "the table divided before it rounded: each figure may be half a digit off"] },
    ]),
  ),
  ...calculated(
    "weighings.mjs",
    "100 x / (100 - M) on the figures of T. R. Miles, table of wood fuels",
    WOOD_FUELS.flatMap(([received, moisture, , divided]) =>
      divided === undefined ? [] : [[toDry(received, moisture), divided, `${received} at ${moisture}`, PERCENT] as const],
    ),
  ),
  // Register of published roundings: printed as 17.48 dry; the table divided before it rounded.
  ...published("worked by hand", "fir mill waste, 6.47 % at 63.00 %: 647 / 37 = 17.486", [[toDry(6.47, 63), "17.49", PERCENT]]),
  ...published(
    "read as printed",
    "a commercial laboratory's page on reporting bases (alsglobal.com), examples 1 and 2: 12.0 % ash at 2.0 % moisture",
    [
      ['=RETORT.BASIS.CONVERT(0.12, "as analysed", "as received", 0.03, 0.02, , "ash")', "11.9", PERCENT],
      ['=RETORT.BASIS.CONVERT(0.12, "as analysed", "as received", 0.1, 0.02, , "ash")', "11.0", PERCENT],
    ],
  ),
  ...calculated("weighings.mjs", "x (100 - M_ar) / (100 - M_ad), ISO 16993", [
    ['=RETORT.BASIS.CONVERT(0.12, "as analysed", "as received", 0.1, 0.02)', "11.0204081633", "10 % of moisture for 2 %, 12 of ash", PERCENT],
  ]),
  ...calculated("weighings.mjs", "the form of ISO 16993 and ASTM D3180, (H - 0.1119 M) 100 / (100 - M), with 2.016 / 18.015 for 0.1119", [
    ['=RETORT.BASIS.CONVERT(0.06, "as analysed", "dry", , 0.08, , "hydrogen")', "5.54863700539", "hydrogen of 6 with 8 % of moisture", PERCENT],
    ['=RETORT.BASIS.CONVERT(0.45, "as analysed", "dry", , 0.08, , "oxygen")', "41.1904934294", "oxygen of 45 with 8 % of moisture", PERCENT],
  ]),
  ...published("worked by hand", "ASTM D3180 with its printed 0.1119: (6 - 0.1119 x 8) x 100 / 92", [
    ['=RETORT.BASIS.CONVERT(0.06, "as analysed", "dry", , 0.08, , "hydrogen")', "5.549", PERCENT],
  ]),
  ...calculated("weighings.mjs", "x / (1 - A), ISO 16993", [
    ['=RETORT.BASIS.CONVERT(0.76, "dry", "ash-free", , , 0.05)', "0.8000000000", "0.76 dry with 5 % of ash, ash-free"],
  ]),
];
