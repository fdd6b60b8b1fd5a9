import { calculated, PERCENT, published, type Published } from "./Published";

// 20 and 50: the definition, ASTM D4442 (the dry basis may exceed 100 %). 11.45 and 63.00: moistures of red oak sawdust
// and fir mill waste in a published table of wood fuels; their dry-basis figures follow from the definition.
const BY_DEFINITION: readonly (readonly [wet: string, dry: string])[] = [
  ["20", "25"],
  ["50", "100"],
  ["11.45", "12.93"],
  ["63.00", "170.27"],
];
const TABULATED: readonly (readonly [wet: string, dry: string])[] = [
  ["5", "5.3"],
  ["10", "11.1"],
  ["15", "17.6"],
  ["20", "25.0"],
  ["30", "42.9"],
  ["35", "53.8"],
  ["40", "66.7"],
  ["45", "81.8"],
  ["50", "100.0"],
  ["55", "122.2"],
  ["60", "150.0"],
];
const toDry = ([wet, dry]: readonly [string, string]): [string, string, typeof PERCENT] => [
  `=RETORT.MOISTURE.CONVERT(${Number(wet) / 100}, "wet", "dry")`,
  dry,
  PERCENT,
];
// Half a digit of the printed dry basis is carried back: d(wet) = d(dry) (1 - wet)^2.
const toWet = ([wet, dry]: readonly [string, string]): [string, string, object] => {
  const half = 0.5 * 10 ** -(dry.split(".")[1]?.length ?? 0);
  const within = [1e-9 + half * (1 - Number(wet) / 100) ** 2 * 1.01, "the printed dry basis is known to half its last digit"] as const;
  return [`=RETORT.MOISTURE.CONVERT(${Number(dry) / 100}, "dry", "wet")`, wet, { ...PERCENT, within }];
};

// One worked series, net g, last pair 8.900 and 8.893: 7 mg, 0.079 % of the last mass, 0.63 % of the 1.107 g lost,
// 0.70 mg per g taken. The 60 min apart that some standards ask for are taken as granted.
const SERIES = "{10; 9.2; 8.95; 8.9; 8.893}";
const constant = (standard: string, limit: string, criterion: string, reached: 0 | 5): Published[] =>
  published("worked by hand", `limit of ${standard}, held against the last pair by hand: 7 mg in 8.893 g`, [
    [`=RETORT.CONSTANTWEIGHT(${SERIES}, ${limit}, "${criterion}")`, String(reached)],
  ]);

const PEEL_DATA = "least squares on the means of pomegranate peel, data set granada of the R package AgroReg (cran/AgroReg, data/granada.RData)";
const PEEL = "{0; 60; 210; 390; 720; 930; 1410; 1890; 2370}, {100; 81.493; 60.579; 51.99; 34.352; 30.119; 28.781; 28.655; 28.528}";
const peel = (model: string): string => `=RETORT.DRYING.FIT(${PEEL}, "${model}")`;

// Hours as they are printed, in the place of minutes; 1 g of dry sample is added to the water, which leaves its ratio as it was.
const WATER_LOSS =
  "{0; 0.083333333333333; 0.166666666666667; 0.25; 0.333333333333333; 0.416666666666667; 0.5; 0.75; 1; 1.5; 2}, " +
  "{1.13999696172; 1.05630950724; 1.04266682476; 1.03004829982; 1.0204798832; 1.01461220992; 1.00604734354; 1.00280339234; 1.00280726152; 1; 1}";
const WATER_LOSS_DATA = "least squares on the data set waterloss (arsilva87/seedwater, described there as hypothetical), hours";
const LOOSE = [0.002, "the reference fit stops within 0.002 of its minimum"] as const;
const waterLoss = (model: string): string => `=RETORT.DRYING.FIT(${WATER_LOSS}, "${model}", , 1)`;

// 8.4 + 1.6 / 2^(t / 30 min), exact in the printed digits.
const HALVING = "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , 0.001)";

const EXACT = "=RETORT.DRYING.END({0; 30; 60; 90}, {27.459123488206352; 25; 23.351600230178196; 22.24664482058611})";
const PEEL_TO_1890 =
  "=RETORT.DRYING.END({0; 60; 210; 390; 720; 930; 1410; 1890}, {100; 81.493; 60.579; 51.99; 34.352; 30.1187; 28.7809; 28.6546}, , 0.001)";
const THREE_POINT = { at: ["Three-point extrapolation", 1] } as const;

export const drying: readonly Published[] = [
  ...published("worked by hand", "definition of the dry basis, w / (1 - w); ASTM D4442: it may exceed 100 %", BY_DEFINITION.map(toDry)),
  ...published("worked by hand", "definition of the wet basis, u / (1 + u), ASTM D4442", BY_DEFINITION.map(toWet)),
  ...published(
    "read as printed",
    "a printed table of equivalences of both bases (page on moisture calculation, rajeevktomy.in)",
    TABULATED.map(toDry),
  ),
  ...published("read as printed", "the same table of equivalences (rajeevktomy.in), read backwards", TABULATED.map(toWet)),

  ...published("worked by hand", "EN 322:1993, H = (mH - m0) / m0 * 100, for a panel piece of 21.80 g that dries to 20.00 g", [
    ['=RETORT.MOISTURE.DRY("tared", 21.80, 20.00)', "9.0", { ...PERCENT, within: [5e-11, "1.80 in 20.00 is 9 % exactly"] }],
  ]),
  ...published("worked by hand", "definition (ISO 18134-3; ASTM E871): 3.5 g of water in 10 g moist, on 6.5 g dry", [
    ["=RETORT.MOISTURE.WET(25, 35, 31.5)", "35", { ...PERCENT, within: [5e-11, "3.5 in 10 is 35 % exactly"] }],
    ["=RETORT.MOISTURE.DRY(25, 35, 31.5)", "53.846", PERCENT],
  ]),
  ...published("worked by hand", "the trap of the definition: the same weighings with the vessel left in, 3.5 in 35", [
    ['=RETORT.MOISTURE.WET("tared", 35, 31.5)', "10", { ...PERCENT, within: [5e-11, "3.5 in 35 is 10 % exactly"] }],
  ]),
  ...published("worked by hand", "green wood may pass 100 % (ASTM D4442): 27 g that dry to 10 g", [
    ['=RETORT.MOISTURE.DRY("tared", 27, 10)', "170", { ...PERCENT, within: [5e-11, "17 on 10 is 170 % exactly"] }],
  ]),

  ...constant("EN 13183-1 and EN 322, 0.1 % of the mass", "0.001", "of last", 5),
  ...constant("ASTM E871 (from memory), 0.2 % of the mass", "0.002", "of last", 5),
  ...constant("ISO 18134-1 (from memory), 0.2 % of the total loss", "0.002", "of total loss", 0),
  ...constant("ISO 18134-3 (from memory), 1 mg", "0.001", "absolute", 0),
  ...constant("USP, 0.50 mg per g taken", "0.0005", "per gram", 0),
  ...constant("Ph. Eur. 2.2.32, 0.5 mg", "0.0005", "absolute", 0),
  ...constant("the Chinese Pharmacopoeia (doi 10.1186/s13020-020-00357-3, table 2), 0.3 mg", "0.0003", "absolute", 0),
  ...constant("ASTM D1102 5.1, drying, 0.1 mg", "0.0001", "absolute", 0),
  ...constant("ASTM D1102 5.3, ashing, 0.2 mg", "0.0002", "absolute", 0),
  ...published("worked by hand", "limit of ASTM D3302, 0.1 % per hour, on the same series weighed each hour: 7 mg in an hour of 8.893 g", [
    [`=RETORT.CONSTANTWEIGHT(${SERIES}, 0.001, "per hour", {0; 60; 120; 180; 240})`, "5"],
  ]),
  ...published("worked by hand", "limit of ASTM D4442 method A, two display steps: 7 mg passes on a balance of 5 mg and not of 1 mg", [
    [`=RETORT.CONSTANTWEIGHT(${SERIES}, 2, "readability", , , 0.005)`, "5"],
    [`=RETORT.CONSTANTWEIGHT(${SERIES}, 2, "readability", , , 0.001)`, "0"],
  ]),
  ...published("worked by hand", "8.95 g to 8.9 g net is 0.562 %, but 0.147 % with a 25 g vessel left in; the limit is 0.2 %", [
    ["=RETORT.CONSTANTWEIGHT({33.95; 33.9}, 0.002)", "2"],
    ["=RETORT.CONSTANTWEIGHT({33.95; 33.9}, 0.002, , , 25)", "0"],
  ]),

  ...published("worked by hand", "the series 10, 9.2, 8.95, 8.9, 8.893 g: differences of neighbours, and 0.1 % of 8.893 g", [
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES})`, "-0.80000", { at: [2, 2] }],
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES})`, "-0.05000", { at: [4, 2] }],
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES})`, "-0.00700", { at: [5, 2] }],
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES})`, "0.008893", { at: [5, 3] }],
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES})`, "steady", { at: [5, 4] }],
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES})`, "not yet", { at: [4, 4] }],
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES}, 0.002, "of total loss")`, "0.002214", { at: [5, 3] }],
    [`=RETORT.CONSTANTWEIGHT.STEPS(${SERIES}, 0.0005, "per gram")`, "0.0050000", { at: [5, 3] }],
    ["=RETORT.CONSTANTWEIGHT.STEPS({33.95; 33.9}, 0.002, , , 25)", "8.900", { at: [2, 1] }],
    ["=RETORT.CONSTANTWEIGHT.STEPS({33.95; 33.9}, 0.002, , , 25)", "0.017800", { at: [2, 3] }],
  ]),

  ...published("worked by hand", "weighings made from 8.4 + 1.6 / 2^(t / 30 min): end 8.4 g, 0.1 g of water left, halving time 30 min", [
    [HALVING, "8.4000000", { at: ["Predicted final sample", 1] }],
    [HALVING, "0.1000000", { at: ["Water still in the sample", 1] }],
    [HALVING, "30.000000", { at: ["Time in which the water halves", 1] }],
    [HALVING, "8.4000000", { at: ["Three-point extrapolation", 1] }],
    // Changes over the next steps are 0.05, 0.025, 0.0125 and 0.00625 g; the limit is 0.1 % of some 8.4 g.
    [HALVING, "4", { at: ["More weighings until constant", 1] }],
  ]),
  ...calculated("dryingFits.mjs", "water that halves every 30 min: ln 2 / 30", [
    [HALVING, "0.02310490602", "halving every 30 min: k", { at: ["Rate constant", 1] }],
  ]),

  ...calculated("dryingFits.mjs", "three-point extrapolation (m1 m3 - m2^2) / (m1 - 2 m2 + m3) of 20 + 5 exp(-0.8 t / h), every half hour", [
    [EXACT, "20.0000000", "three points, exact", THREE_POINT],
  ]),
  ...published("worked by hand", "weighings made from 20 + 5 exp(-0.8 t / h), every half hour: end 20 g, 0.8 per hour", [
    [EXACT, "20.0000000", { at: ["Predicted final sample", 1] }],
    [EXACT, "0.80000000", { at: ["Rate constant", 1], times: 60 }],
  ]),
  ...calculated("dryingFits.mjs", "the same formula on the peel's means at 930, 1410 and 1890 min", [
    [PEEL_TO_1890, "28.6414331", "three points, peel", THREE_POINT],
    [
      PEEL_TO_1890,
      "28.6414079",
      "three points, peel",
      { ...THREE_POINT, within: [0.0005, "71.3585921 % lost was worked out from means that were not rounded"] },
    ],
  ]),

  ...calculated("dryingFits.mjs", `${PEEL_DATA}; 100 less the 71.368 and 72.919 % lost at the end`, [
    [peel("Newton"), "28.632", "peel, Newton: end", { at: ["Final sample, fitted", 1] }],
    [peel("Newton"), "0.003506", "peel, Newton: k", { at: ["k", 1] }],
    [peel("modified Page"), "27.081", "peel, modified Page: end", { at: ["Final sample, fitted", 1] }],
    [peel("modified Page"), "0.003384", "peel, modified Page: k", { at: ["k", 1] }],
    [peel("modified Page"), "0.822", "peel, modified Page: n", { at: ["n", 1] }],
  ]),
  ...calculated("dryingFits.mjs", WATER_LOSS_DATA, [
    [waterLoss("Newton"), "7.42282419", "water loss, Newton: k", { at: ["k", 1], within: LOOSE }],
    [waterLoss("Page"), "3.89153623", "water loss, Page: k", { at: ["k", 1], within: LOOSE }],
    [waterLoss("Page"), "0.6164079", "water loss, Page: n", { at: ["n", 1], within: LOOSE }],
    [waterLoss("Newton"), "7.422837", "water loss, Newton: k", { at: ["k", 1] }],
    [waterLoss("Page"), "3.891538", "water loss, Page: k", { at: ["k", 1] }],
    [waterLoss("Page"), "0.616408", "water loss, Page: n", { at: ["n", 1] }],
  ]),
];
