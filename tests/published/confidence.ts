import { calculated, firstNumbers, PERCENT, published, type Published } from "./Published";

const GUM = "GUM (JCGM 100:2008), equation 10, with the derivatives taken by hand";
const STUDENT = "Grubbs' formula with Student's t by numerical integration";
const ORDER_STATISTICS = "the joint density of normal order statistics, integrated numerically";
const CRITICAL = { at: ["Critical value", 1] } as const;

/** The critical value for n results; `tail` as typed after the values. */
const grubbs = (n: number, tail: string): string => `=RETORT.GRUBBS(${firstNumbers(n)}, ${tail})`;
const dixon = (n: number, tail: string): string => `=RETORT.DIXON(${firstNumbers(n)}, ${tail})`;
/** A standard deviation of 1 makes the critical range its factor f(n). */
const criticalRange = (n: number): string => `=RETORT.REPLICATES(${firstNumbers(n)}, 1)`;
const FACTOR = { at: ["Critical range, 95 %", 1] } as const;
const LIMIT = { at: ["Repeatability limit", 1] } as const;

// Char yield in % of eight 12 mg samples of one pine (MaCFP condensed-phase data, NIST micro-calorimeter, N2, 60 K/min,
// runs R2 to R9), from the printed masses in mg.
const YIELDS = [
  [1.843, 11.921],
  [1.843, 12.04],
  [1.846, 11.903],
  [1.854, 12.024],
  [1.844, 11.989],
  [1.846, 12.037],
  [1.847, 12.043],
  [1.866, 12.019],
].map(([char = NaN, charge = NaN]) => (100 * char) / charge);
const EIGHT = `{${YIELDS.join("; ")}}`;
const NINE = `{${[(100 * 1.747) / 12.037, ...YIELDS].join("; ")}}`;
const NIST = "eight char yields of one pine, MaCFP condensed-phase data, NIST micro-calorimeter, from the printed masses";

const ASSAY = "=RETORT.GRUBBS({100.3; 100.2; 100.1; 100.0; 100.0; 100.0; 99.9; 99.7; 99.5; 95.7})";
const ASSAY_VALUES = "=RETORT.REPLICATES({100.3; 100.2; 100.1; 100.0; 100.0; 100.0; 99.9; 99.7; 99.5; 95.7})";
const COINS = "{3.067; 3.049; 3.039; 2.514; 3.048; 3.079; 3.094; 3.109; 3.102}";
const HARVEY = "Harvey, Modern Analytical Chemistry, example 4.22: masses of nine coins";

const twice = (printed: string): number => 10 ** -(printed.split(".")[1]?.length ?? 0);

export const confidence: readonly Published[] = [
  ...calculated("uncertainties.mjs", GUM, [
    ["=RETORT.LOSSFRACTION.U(20, 25, 21.5, 0.001)", "0.000251396102", "5 g losing 3.5 g, u 0.001"],
    ["=RETORT.LOSSFRACTION.U(25, 35, 32, 0.01)", "0.00125698050900", "10 g losing 3 g, u 0.01"],
    ['=RETORT.LOSSFRACTION.U("tared", 10, 7, 0.01)', "0.00122065556157", "10 g net losing 3 g, u 0.01"],
  ]),
  ...calculated("uncertainties.mjs", "a seeded simulation of 2,000,000 runs with normal weighings", [
    [
      "=RETORT.LOSSFRACTION.U(25, 35, 32, 0.01)",
      "0.0012578",
      "10 g losing 3 g, u 0.01, simulated",
      { within: [2.2e-6, "four standard errors of the simulated spread, 1 / sqrt(2 x 2,000,000) each"] },
    ],
  ]),

  ...published("read as printed", "USP <41>: the 0.41 of a step is two roundings of a tared mass", [["=RETORT.READING.U(1, , , TRUE)", "0.41"]]),
  ...calculated("uncertainties.mjs", "one step d rounds a reading to within d / 2: variance d^2 / 12 (GUM 4.3.7), each weighing its own", [
    ["=RETORT.READING.U(0.01)", "0.00288675134595", "one rounding of 0.01 g"],
    ["=RETORT.READING.U(1, , , TRUE)", "0.408248290464", "two roundings of 1 step"],
    ["=RETORT.READING.U(0.01, 0.01)", "0.0104083299973", "rounding 0.01, repeatability 0.01"],
  ]),
  ...calculated("uncertainties.mjs", "Eurachem/CITAC CG 4, example A2: linearity +/-0.15 mg, counted twice, unrounded", [
    [
      "=RETORT.READING.U(1e-9, , 0.15, TRUE)",
      "0.122474487139",
      "linearity 0.15 counted twice",
      { within: [1e-12, "a display step of 1e-9, which a cell cannot leave at 0, adds nothing in these digits"] },
    ],
  ]),
  ...published("worked by hand", "Eurachem/CITAC CG 4, example A2, 0.15 sqrt(2/3), not the 0.13 that early rounding makes", [
    ["=RETORT.READING.U(1e-9, , 0.15, TRUE)", "0.1225"],
  ]),

  ...calculated("uncertainties.mjs", "m = k u sqrt(1 + x^2 + (1 - x)^2) / U for a loss x, from the GUM propagation; any loss: x = 0, sqrt(2)", [
    ["=RETORT.SAMPLE.MINIMUM(0.01, 0.005, 0.3)", "5.02792203599", "smallest sample, u 0.01, wanted 0.005, loss 0.3, k 2"],
    ["=RETORT.SAMPLE.MINIMUM(0.01, 0.005, 0.3, 1)", "2.51396101800", "smallest sample, u 0.01, wanted 0.005, loss 0.3, k 1"],
    ["=RETORT.SAMPLE.MINIMUM(0.01, 0.005)", "5.65685424949", "smallest sample, u 0.01, wanted 0.005, any loss, k 2"],
    ["=RETORT.SAMPLE.MINIMUM(0.01, 0.005, , 1)", "2.82842712475", "smallest sample, u 0.01, wanted 0.005, any loss, k 1"],
  ]),

  ...published(
    "worked by hand",
    "GUM, |change| > k sqrt(2) u, with a step of 1e-7 g: 2 x 1.41421 x 0.01 g = 0.0282843 g, and 0.0424264 g for k = 3",
    [
      ["=RETORT.CHANGE.SIGNIFICANT(35, 34.97171, 0.01, , 1e-7)", "loss"],
      ["=RETORT.CHANGE.SIGNIFICANT(35, 34.97172, 0.01, , 1e-7)", "not significant"],
      ["=RETORT.CHANGE.SIGNIFICANT(35, 35.02829, 0.01, , 1e-7)", "gain"],
      ["=RETORT.CHANGE.SIGNIFICANT(35, 35.02828, 0.01, , 1e-7)", "not significant"],
      ["=RETORT.CHANGE.SIGNIFICANT(35, 34.95757, 0.01, 3, 1e-7)", "loss"],
      ["=RETORT.CHANGE.SIGNIFICANT(35, 34.95758, 0.01, 3, 1e-7)", "not significant"],
    ],
  ),
  ...published("worked by hand", "step not known: sqrt(24) x 0.01 g = 0.0489898 g at k = 2, sqrt(2 x 9 + 12) x 0.01 g = 0.0547723 g at k = 3", [
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.95101, 0.01)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.95102, 0.01)", "not significant"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 35.04899, 0.01)", "gain"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 35.04898, 0.01)", "not significant"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.94522, 0.01, 3)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.94523, 0.01, 3)", "not significant"],
  ]),
  // s^2 = 0.01^2 - 0.01^2 / 12: s = 0.00957427 g; 2 x 1.41421 x 0.00957427 + 0.01 = 0.0370801 g, so three steps are not enough.
  ...published("worked by hand", "u = 0.01 g on a step of 0.01 g: 2 sqrt(2) s + d = 0.03708 g", [
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.96, 0.01, , 0.01)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.97, 0.01, , 0.01)", "not significant"],
  ]),
  // Two displays, each on a border between two steps, differ by -1, 0, 0 or 1 step; of two such differences one pair in eight is
  // two steps apart. A single display is at most one step off.
  ...published("worked by hand", "rounding alone: two steps of 1 g mean nothing for the 0.408248 d of USP <41>, one step for 0.288675 d", [
    ["=RETORT.CHANGE.SIGNIFICANT(1000, 997, 0.408248290464)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(1000, 998, 0.408248290464)", "not significant"],
    ["=RETORT.CHANGE.SIGNIFICANT(1000, 998, 0.408248290464, , 1)", "not significant"],
    ["=RETORT.CHANGE.SIGNIFICANT(1000, 998, 0.288675134595)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(1000, 999, 0.288675134595)", "not significant"],
    ["=RETORT.CHANGE.SIGNIFICANT(1000, 999, 0.288675134595, , 1)", "not significant"],
  ]),

  ...published(
    "from memory",
    "ISO 5725-6, table 1, critical-range factors to one decimal",
    (
      [
        [2, "2.8"],
        [3, "3.3"],
        [4, "3.6"],
        [5, "3.9"],
        [6, "4.0"],
        [7, "4.2"],
        [8, "4.3"],
        [9, "4.4"],
        [10, "4.5"],
        [20, "5.0"],
      ] as const
    ).map(([n, printed]) => [criticalRange(n), printed, FACTOR]),
  ),
  // SciPy's studentized_range.ppf(0.95, n, inf) gives the same ten digits.
  ...calculated(
    "outliers.mjs",
    "studentized range of n normal values, 95 %, integrated numerically",
    (
      [
        [2, "2.7718076487"],
        [3, "3.3144931554"],
        [4, "3.6331595749"],
        [5, "3.8576555104"],
        [6, "4.0300920532"],
        [7, "4.1695541550"],
        [8, "4.2863094093"],
        [9, "4.3865091155"],
        [10, "4.4741242217"],
        [20, "5.0116887941"],
      ] as const
    ).map(([n, digits]) => [criticalRange(n), digits, `critical range, n = ${n}`, { ...FACTOR, within: [5e-10, "nine decimals are integrated"] }]),
  ),
  // s_r is printed to three decimals, so r may lie where that rounding allows.
  ...published(
    "read as printed",
    "BRE aggregates trial, total sulfur: repeatability standard deviation and r",
    (
      [
        [0.021, "0.059"],
        [0.042, "0.118"],
        [0.047, "0.131"],
      ] as const
    ).map(([deviation, printed]) => [
      `=RETORT.REPLICATES({1; 2}, ${deviation})`,
      printed,
      { ...LIMIT, within: [2.8 * 0.0005 + 0.0005, "the standard deviation is printed to three decimals"] },
    ]),
  ),
  ...calculated("outliers.mjs", NIST, [
    [`=RETORT.REPLICATES(${EIGHT})`, "15.40927743", "mean yield", { at: ["Mean", 1] }],
    [`=RETORT.REPLICATES(${EIGHT})`, "0.08271605813", "s of the yields", { at: ["Standard deviation", 1] }],
    [`=RETORT.REPLICATES(${EIGHT})`, "0.5367938796", "RSD of the yields in %", { ...PERCENT, at: ["Relative standard deviation", 1] }],
    [`=RETORT.REPLICATES(${EIGHT})`, "0.2316049628", "r of the yields", LIMIT],
  ]),
  ...published("worked by hand", `${NIST}, before this program existed`, [
    [`=RETORT.REPLICATES(${EIGHT})`, "15.409", { at: ["Mean", 1] }],
    [`=RETORT.REPLICATES(${EIGHT})`, "0.0827", { at: ["Standard deviation", 1] }],
    [`=RETORT.REPLICATES(${EIGHT})`, "0.54", { ...PERCENT, at: ["Relative standard deviation", 1] }],
    [`=RETORT.REPLICATES(${EIGHT})`, "0.23", LIMIT],
  ]),
  ...published("read as printed", "USP <1010>, ten assay values: mean 99.54, s 1.369", [
    [ASSAY_VALUES, "99.54", { at: ["Mean", 1] }],
    [ASSAY_VALUES, "1.369", { at: ["Standard deviation", 1] }],
  ]),

  ...published("read as printed", "USP <1010>, ten assay values: the smallest lies 2.805 standard deviations off", [
    [ASSAY, "2.805", { at: ["G = ", 1] }],
    [ASSAY, "95.7", { at: ["Suspect", 1] }],
    [ASSAY, "10", { at: ["Row of the suspect", 1] }],
  ]),
  ...calculated("outliers.mjs", `${NIST}, with the first run, at another temperature, put before them`, [
    [`=RETORT.GRUBBS(${NINE})`, "2.581392038", "G of the first run", { at: ["G = ", 1] }],
  ]),
  ...published("worked by hand", `${NIST}, with the first run: G 2.58 above 2.215`, [
    [`=RETORT.GRUBBS(${NINE})`, "2.58", { at: ["G = ", 1] }],
    [`=RETORT.GRUBBS(${NINE})`, "2.215", CRITICAL],
    [`=RETORT.GRUBBS(${NINE})`, "1", { at: ["Row of the suspect", 1] }],
    [`=RETORT.GRUBBS(${NINE})`, "outlier: ", { at: ["Verdict", 1] }],
  ]),
  ...published(
    "read as printed",
    "LibreTexts, Analytical Chemistry 2.x, appendix 7, critical values of G, two-sided",
    (
      [
        [8, "2.126"],
        [9, "2.215"],
        [10, "2.290"],
        [12, "2.412"],
        [15, "2.549"],
      ] as const
    ).map(([n, printed]) => [grubbs(n, "0.05"), printed, { ...CRITICAL, within: [twice(printed), "the table's third decimal strays by one"] }]),
  ),
  ...calculated(
    "outliers.mjs",
    STUDENT,
    (
      [
        [3, "0.05", "1.15430485134"],
        [4, "0.05", "1.48125000000"],
        [5, "0.05", "1.71503731234"],
        [6, "0.05", "1.88714511778"],
        // LibreTexts, appendix 7, prints 2.202: two digits changed places.
        [7, "0.05", "2.01996850768"],
        [8, "0.05", "2.12664508720"],
        [9, "0.05", "2.21500422333"],
        [10, "0.05", "2.28995408448"],
        [12, "0.05", "2.41155951843"],
        [15, "0.05", "2.54830777174"],
        [10, "0.01", "2.48208324972"],
        [14, "0.01", "2.75537240494"],
        // The same table prints 2.755, the line for n = 14 repeated.
        [15, "0.01", "2.80610529122"],
      ] as const
    ).map(([n, alpha, digits]) => [
      grubbs(n, alpha),
      digits,
      `G two-sided ${alpha}, n = ${n}`,
      { ...CRITICAL, within: [1e-8, "eight decimals are integrated"] },
    ]),
  ),
  // Its two decimals were rounded from three (1.715 to 1.71, 2.285 to 2.29), so half a unit of the third may come on top.
  ...published(
    "read as printed",
    '"Grubbs test: finding outliers", scribd document 76685424, one-sided columns 0.05, 0.025 and 0.01',
    (
      [
        [4, "1.46", "1.48", "1.49"],
        [5, "1.67", "1.71", "1.75"],
        [6, "1.82", "1.89", "1.94"],
        [7, "1.94", "2.02", "2.10"],
        [8, "2.03", "2.13", "2.22"],
        [9, "2.11", "2.21", "2.32"],
        [10, "2.18", "2.29", "2.41"],
        [12, "2.29", "2.41", "2.55"],
        [15, "2.41", "2.55", "2.71"],
        [20, "2.56", "2.71", "2.88"],
      ] as const
    ).flatMap(([n, ...printed]) =>
      ["0.05", "0.025", "0.01"].map((alpha, index) => {
        const within = [0.0055000001, "its two decimals were rounded from three"] as const;
        return [grubbs(n, `${alpha}, "largest"`), printed[index] ?? "", { ...CRITICAL, within }] as const;
      }),
    ),
  ),
  ...calculated("outliers.mjs", `${HARVEY}; G from the definition`, [
    [`=RETORT.GRUBBS(${COINS})`, "2.64298836149", "G of nine coins", { at: ["G = ", 1] }],
  ]),
  ...published("worked by hand", `${HARVEY}; G = (3.0112 - 2.514) / 0.18812`, [[`=RETORT.GRUBBS(${COINS})`, "2.643", { at: ["G = ", 1] }]]),

  ...published("read as printed", `${HARVEY}: Q = 0.882, above 0.493, so the light one is an outlier`, [
    [`=RETORT.DIXON(${COINS})`, "0.882", { at: ["Q = ", 1] }],
    [`=RETORT.DIXON(${COINS})`, "0.493", { ...CRITICAL, within: [0.001, "old tables stray by up to 0.003; this one by 0.0008"] }],
    [`=RETORT.DIXON(${COINS})`, "2.514", { at: ["Suspect", 1] }],
    [`=RETORT.DIXON(${COINS})`, "outlier: ", { at: ["Verdict", 1] }],
  ]),
  ...calculated("outliers.mjs", `${HARVEY}; (3.039 - 2.514) / (3.109 - 2.514)`, [
    [`=RETORT.DIXON(${COINS})`, "0.882352941176", "Q of nine coins", { at: ["Q = ", 1] }],
  ]),
  // It turns to r11 at n = 8. Its third decimals stray by up to two units.
  ...published(
    "read as printed",
    "the state laboratory's copy of Dean and Dixon's table (\"Q90\"), which is one-sided at 5 %",
    (
      [
        [3, "0.941"],
        [4, "0.765"],
        [5, "0.642"],
        [7, "0.507"],
      ] as const
    ).map(([n, printed]) => [
      dixon(n, '0.05, "largest"'),
      printed,
      { ...CRITICAL, within: [twice(printed), "the table's third decimals stray by up to two units"] },
    ]),
  ),
  ...published(
    "from memory",
    "Rorabacher, Anal. Chem. 63 (1991) 139, two-sided 0.05; n = 9 in Harvey's example 4.22, n = 10 in its solutions manual",
    (
      [
        [3, "0.970"],
        [4, "0.829"],
        [5, "0.710"],
        [6, "0.625"],
        [7, "0.568"],
        [8, "0.526"],
        [9, "0.493"],
        [10, "0.466"],
      ] as const
    ).map(([n, printed]) => [dixon(n, "0.05"), printed, { ...CRITICAL, within: [0.003, "old tables stray by up to 0.003"] }]),
  ),
  ...calculated(
    "outliers.mjs",
    ORDER_STATISTICS,
    (
      [
        [3, "0.9702", "0.9413"],
        [4, "0.8298", "0.7655"],
        [5, "0.7102", "0.6424"],
        // The old table has 0.560 one-sided.
        [6, "0.6275", "0.5624"],
        [7, "0.5690", "0.5073"],
        [8, "0.5256", "0.4671"],
        [9, "0.4922", "0.4363"],
        [10, "0.4656", "0.4119"],
      ] as const
    ).flatMap(([n, two, one]) => [
      [dixon(n, "0.05"), two, `Q two-sided 0.05, n = ${n}`, CRITICAL] as const,
      [dixon(n, '0.05, "largest"'), one, `Q one-sided 0.05, n = ${n}`, CRITICAL] as const,
    ]),
  ),
];
