import { seededUniform } from "../numerics/seededUniform";

/** What stands in an argument's cell; null leaves the argument out. */
export type Given = number | string | boolean | null | readonly (readonly (number | string | null)[])[];
type Draw = (least: number, most: number) => number;
type Case = (draw: Draw, index: number) => readonly Given[];

export const CASES = 24;
const SEED = 20_270_115;

const nth = <T>(choices: readonly T[], index: number): T => choices[index % choices.length] as T;
/** Every other case gives the argument. */
const everyOther = (index: number, value: Given): Given => (index % 2 === 0 ? value : null);
/** An empty vessel, or one zeroed away, and weighings above it that fall by the shares given. */
const weighings = (draw: Draw, index: number, ...shares: readonly number[]): [vessel: Given, ...grams: number[]] => {
  const tare = index % 4 === 3 ? 0 : draw(5, 60);
  const sample = draw(1, 25);
  return [tare === 0 ? "tared" : tare, tare + sample, ...shares.map((share) => tare + sample * share)];
};

const column = (values: readonly (number | null)[]): Given => values.map((value) => [value]);

/** Weighings of a drying run in a column, blank cells below those not yet made, and the vessel that stands in them. */
function dryingRun(draw: Draw, index: number): { readonly weights: Given; readonly times: Given; readonly vessel: Given } {
  const [tare, sample, water] = [index % 3 === 0 ? 0 : draw(5, 60), draw(2, 20), draw(0.1, 0.6)];
  const made = 2 + (index % 6);
  const net = Array.from({ length: 8 }, (_, row) => sample * (1 - water * (1 - 0.3 ** row)) + (index % 5 === 4 && row === 4 ? draw(0, 0.02) : 0));
  const weighed = net.map((grams, row) => (row < made ? Number((tare + grams).toFixed(4)) : null));
  const start = index % 4 === 0 ? 0 : draw(0, 600);
  const times = net.map((_, row) => Number((start + row * 30 + draw(0, 3)).toFixed(2)));
  return { weights: column(weighed), times: column(times), vessel: tare === 0 ? (index % 2 === 0 ? null : "tared") : tare };
}

const CRITERIA = [
  ["of last", 0.002],
  ["absolute", 0.005],
  ["of initial", 0.002],
  ["of total loss", 0.004],
  ["per gram", 0.001],
  ["per hour", 0.002],
  ["readability", 2],
] as const;

const constancy: Case = (draw, index) => {
  const { weights, times, vessel } = dryingRun(draw, index);
  const [criterion, limit] = nth(CRITERIA, index);
  const needsTimes = criterion === "per hour" || index % 2 === 0;
  const readability = criterion === "readability" || index % 3 === 1 ? nth([0.0001, 0.001, 0.01], index) : null;
  return [
    weights,
    index % 7 === 0 ? null : limit,
    criterion,
    needsTimes ? times : null,
    vessel,
    readability,
    needsTimes && index % 4 === 0 ? 45 : null,
  ];
};

const outlier: Case = (draw, index) => {
  const stray = nth([0, 0.3, 1.2, -4, 9], index);
  const values = Array.from({ length: 9 }, (_, row) =>
    row < 3 + (index % 7) ? Number((10 + draw(-0.1, 0.1) + (row === 1 ? stray : 0)).toFixed(2)) : null,
  );
  return [
    ...[column(values), nth([null, 0.01, 0.1], index), nth([null, "two", "largest", "smallest"], index)],
    ...[nth([null, "count", "skip"], index), nth([0.01, null, 0.05, 0.002, 0.1, null], Math.floor(index / 3))],
  ];
};

const FORMULAS = ["C6H10O5", "CuSO4·5H2O", "C2H5NO2", "CH1.44O0.66", "CH3SH", "C10H16", "CHCl3", "Mg"] as const;

/** Arguments within the bounds of each function that has a form in built-in functions. */
const ARGUMENTS: Readonly<Record<string, Case>> = {
  "OXYGENDEMAND.ULTIMATE": (draw, index) => [
    ...[draw(0.3, 0.6), draw(0.02, 0.08), draw(0.1, 0.28), everyOther(index, draw(0, 0.01))],
    ...[index % 3 === 0 ? null : draw(0, 0.01), index % 4 === 0 ? null : draw(0, 0.015)],
  ],
  "HEATINGVALUE.HIGHER": (draw, index) => {
    const [carbon, hydrogen, oxygen] = [draw(0.35, 0.95), draw(0.001, 0.07), draw(0, 0.5)];
    const left = Math.max(0, 1 + draw(-0.06, 0.06) - carbon - hydrogen - oxygen);
    return [
      ...[carbon, hydrogen, oxygen, everyOther(index, draw(0, 0.01)), index % 3 === 0 ? draw(0, 0.01) : null, Math.max(0, left)],
      nth([null, "Boie", "milne", " Dulong", "Sheng-Azevedo", "Channiwala-Parikh"], index),
    ];
  },
  "HEATINGVALUE.PROXIMATE": (draw, index) => {
    const [fixed, ash] = [draw(0.05, 0.95), index % 4 === 3 ? "none" : draw(0.001, 0.05)];
    return [fixed, Math.max(0.001, 1 + draw(-0.03, 0.03) - fixed - (typeof ash === "number" ? ash : 0)), ash];
  },
  "HEATINGVALUE.NET": (draw, index) => [
    ...[draw(10, 30), draw(0.01, 0.07), draw(0, 0.5), everyOther(index, draw(0, 0.01)), index % 3 === 0 ? null : draw(0, 0.95)],
  ],
  ATOMICRATIO: (draw, index) => [
    ...[draw(0.4, 0.95), draw(0.01, 0.07), draw(0.05, 0.45), everyOther(index, draw(0, 0.2)), index % 3 === 0 ? null : draw(0, 0.1)],
  ],
  "ROOM.PPM": (draw, index) => [
    ...[draw(0.01, 20), nth([28.01, 44.009, 32.04], index), draw(10, 200), index % 5 === 4 ? "closed" : nth([0.5, 2, 0.00001, 30], index)],
    index % 3 === 0 ? null : draw(1, 300),
  ],
  "PRODUCT.LEDGER": (draw, index) => {
    const [feed, moisture] = [draw(50, 500), nth([0, 0.125, 0.3], index)];
    const [char, liquids] = [feed * draw(0.2, 0.35), index % 6 === 5 ? "none" : feed * draw(0.2, 0.4)];
    const gas = feed - char - (typeof liquids === "number" ? liquids : 0) - draw(-0.05, 3);
    return [
      ...[feed, moisture, char, liquids, everyOther(index, Math.max(0.1, gas)), index % 3 === 0 ? null : draw(0.005, 2)],
      index % 4 === 0 ? null : draw(0.2, 0.9),
    ];
  },
  "VAPOUR.COMPOSITION": (draw) => [
    ...[draw(0.45, 0.52), draw(0.055, 0.065), draw(0.38, 0.44)],
    ...[draw(0.6, 0.95), draw(0.005, 0.05), draw(0.02, 0.3), draw(0.15, 0.5)],
  ],
  REPORTED: (draw, index) => [
    nth([draw(0, 1), -draw(0, 50), draw(1000, 90_000), 0.345, draw(1e-6, 1e-4)], index),
    nth([draw(1e-4, 0.01), draw(0.001, 2), draw(10, 2000), 0.00995, draw(1e-8, 1e-6)], index),
    nth([null, 2, 1.96], Math.floor(index / 2)),
  ],
  HYDRATEWATER: (draw, index) => {
    const [vessel, before, after] = weighings(draw, index, draw(0.5, 0.99));
    return [
      vessel,
      before ?? null,
      after ?? null,
      nth(["CuSO4", "CaSO4", "MgSO4", "Na2CO3", "3CdSO4"], index),
      index % 4 === 0 ? null : draw(0.0005, 0.1),
    ];
  },
  "DECOMPOSITION.STEPS": (_draw, index) => [nth(["CaC2O4·H2O", "gypsum", "CuSO4·5H2O", "CaCO3", "NaHCO3", "dolomite"], index)],
  "SCHEDULE.TIME": (draw, index) => {
    const steps = 1 + (index % 4);
    const rises = Array.from({ length: steps }, () => draw(50, 300));
    const temperatures = [20, ...rises.map((_, step) => 20 + rises.slice(0, step + 1).reduce((sum, one) => sum + one, 0) - (step === 2 ? 400 : 0))];
    const rates = rises.map(() => draw(1, 20));
    const holds = rises.map((_, step) => (step % 2 === 0 ? Math.ceil(draw(1, 90)) : null));
    const isBeside = index % 3 === 0;
    return [
      ...[column([...temperatures, ...(index % 2 === 0 ? [null, null] : [])]), column(isBeside ? [null, ...rates] : rates)],
      column(index % 5 === 0 ? [Math.ceil(draw(1, 9)), ...holds] : holds),
      nth(["per hour", "per minute", " Per Hour"], index),
    ];
  },
  "TEMPERATURE.CORRECTED": (draw, index) => {
    const points = Array.from({ length: 2 + (index % 4) }, (_, row) => row * 150 + draw(0, 40));
    const readings = index % 2 === 0 ? points : [...points].reverse();
    return [
      draw(5, 140 * (points.length - 1)),
      column([...(index % 3 === 0 ? [0] : []), ...readings, ...(index % 4 === 0 ? [null] : [])]),
      column([...(index % 3 === 0 ? [0.2] : []), ...readings.map((one) => one + draw(-8, 8))]),
    ];
  },
  HEATINGRATE: (draw, index) => {
    const [count, rate, decimals] = [3 + (index % 7), draw(1, 8), index % 3];
    const times = Array.from({ length: count }, (_, row) => row * 10 + (row === 0 ? 0 : Number(draw(0, 2).toFixed(1))));
    const temperatures = times.map((time) => Number((25 + rate * time + draw(-0.6, 0.6)).toFixed(decimals)));
    return [
      ...[column([...times, ...(index % 2 === 0 ? [null] : [])]), column(temperatures), index % 4 === 0 ? null : rate * draw(0.8, 1.2)],
      ...[index % 5 === 1 ? 26 : null, index % 5 === 2 ? 400 : null],
    ];
  },
  "COMPARE.GROUPS": (draw, index) => {
    const groups = ["drum", "pit", "Kiln 3"].slice(0, 2 + (index % 2));
    const rows = groups.flatMap((group, place) =>
      Array.from(
        { length: 2 + ((index + place) % 3) },
        (_, row) => [row % 2 === 0 ? group : group.toUpperCase(), Number((28 + place * draw(0, 3) + draw(-0.5, 0.5)).toFixed(2))] as const,
      ),
    );
    return [column(rows.map(([, value]) => value)), rows.map(([group]) => [group]), nth([null, "count", "skip"], index)];
  },
  MOLARMASS: (_draw, index) => [nth(FORMULAS, index)],
  ATOMS: (_draw, index) => [nth(FORMULAS, index)],
  OXYGENDEMAND: (_draw, index) => [nth(FORMULAS, index), nth([null, "N2", "NH3", "hno3"], index), nth([null, "H2SO4", "SO2"], Math.floor(index / 4))],
  "BURN.PRODUCTS": (draw, index) => [nth(FORMULAS, index), everyOther(index, draw(0, 1))],
  "BURN.COMPARE": (draw, index) => {
    const [vessel, dry, char, ash] = weighings(draw, index, draw(0.2, 0.4), draw(0.005, 0.05));
    const run = [vessel, dry ?? null, char ?? null, index % 3 === 0 ? null : (ash ?? null)];
    if (index % 2 === 0) return [...run, nth(["C6H10O5", "CH1.44O0.66", "C10H16"], index)];
    return [
      ...run,
      null,
      draw(0.45, 0.52),
      draw(0.055, 0.065),
      draw(0.35, 0.42),
      everyOther(index, draw(0, 0.01)),
      index % 4 === 1 ? draw(0, 0.01) : null,
    ];
  },
  CONSTANTWEIGHT: constancy,
  "CONSTANTWEIGHT.STEPS": constancy,
  TYPICALRANGE: (draw, index) => [
    nth(["ash", "carbon", "heating value", "moisture", "char yield"], index),
    Number(draw(0, nth([0.3, 0.9, 25, 0.9, 0.6], index)).toFixed(4)),
    nth([null, "wood", "rice husk", "nut shells"], Math.floor(index / 5)),
  ],
  REPLICATES: (draw, index) => {
    // On grids of every kind, and on none; some of them shifted.
    const [grid, shift] = [nth([0.01, 0.1, 0.02, 0.05, 0], index), nth([0, 0.003], Math.floor(index / 5))];
    const read = (value: number): number => (grid === 0 ? value : Number((grid * Math.round(value / grid) + shift).toFixed(4)));
    const values = Array.from({ length: 6 }, (_, row) => (row < 2 + (index % 5) ? read(10 + draw(-0.4, 0.4)) : null));
    return [
      column(values),
      index % 3 === 0 ? null : draw(0.05, 0.4),
      nth([null, "count", "skip"], index),
      index % 4 < 2 ? null : nth([0.01, 0.1, 0.05], index),
    ];
  },
  DIXON: outlier,
  GRUBBS: outlier,
  PROXIMATE: (draw, index) => weighings(draw, index, draw(0.8, 0.95), draw(0.2, 0.4), draw(0.005, 0.05)),
  AIRDEMAND: (draw, index) => [draw(0.5, 4), everyOther(index, draw(0.22, 0.25))],
  "MOISTURE.WET": (draw, index) => weighings(draw, index, draw(0.3, 0.95)),
  "MOISTURE.DRY": (draw, index) => weighings(draw, index, draw(0.3, 0.95)),
  "MOISTURE.CONVERT": (draw, index) => [draw(0, 0.9), nth(["wet", "Dry", " WET "], index), nth(["dry", "wet"], Math.floor(index / 3))],
  VOLATILEFRACTION: (draw, index) => weighings(draw, index, draw(0.2, 0.9)),
  CHARYIELD: (draw, index) => {
    const [vessel, dry, char, ash] = weighings(draw, index, draw(0.2, 0.4), draw(0.005, 0.05));
    return [vessel, dry ?? null, char ?? null, everyOther(Math.floor(index / 2), ash ?? null)];
  },
  VOLATILEMATTER: (draw, index) => [...weighings(draw, index, draw(0.2, 0.5)), draw(0, 0.2), nth([null, "dry", "as analysed", "DRY "], index)],
  ASHFRACTION: (draw, index) => [...weighings(draw, index, draw(0.005, 0.2)), everyOther(index, draw(0, 0.2))],
  FIXEDCARBON: (draw, index) => [draw(0, 0.1), draw(0.3, 0.8), index % 3 === 0 ? "none" : draw(0.001, 0.1)],
  LOSSONIGNITION: (draw, index) => weighings(draw, index, draw(0.6, 0.99)),
  "ACID.FROMTITRATION": (draw, index) => [
    ...[draw(5, 40), draw(0.05, 0.2), draw(5, 20), nth(["g", "mL", " ML"], index)],
    ...[everyOther(index, draw(0.95, 1.1)), index % 3 === 0 ? draw(0.05, 1) : null, index % 4 === 0 ? draw(1, 5) : null],
  ],
  "MOLARMASS.U": (_draw, index) => [nth(FORMULAS, index)],
  MASSFRACTION: (_draw, index) => [
    nth(["CuSO4·5H2O", "KAl(SO4)2.12H2O", "CaCO3", "NaHCO3"], index),
    nth(["H2O", "SO4", "O", "CO3", "Cu"], index),
    nth([null, "fraction", "count"], index),
  ],
  ATOMICWEIGHT: (_draw, index) => [
    nth(["Ca", "C", "sulphur", "13C", "Tc", "D"], index),
    nth([null, "limit", "interval", "name"], Math.floor(index / 6)),
  ],
  THEORETICALLOSS: (_draw, index) => [
    ...nth(
      [
        ["CaCO3", "CaO", null],
        ["CuSO4·5H2O", "CuSO4·H2O", null],
        ["CaMg(CO3)2", "CaCO3 + MgO", null],
        ["HgO", "Hg", null],
        ["Fe", "Fe2O3", null],
        ["NaHCO3", "Na2CO3", null],
      ],
      index,
    ),
    nth([null, "u", "equation", "oxygen", "loss"], Math.floor(index / 6)),
  ],
  "PURITY.FROMLOSS": (draw, index) => [
    ...[draw(0.3, 0.46), "CaCO3", "CaO", everyOther(index, draw(0, 0.05)), index % 3 === 0 ? null : draw(0.001, 0.05)],
    nth([null, "u", "verdict", "purity"], Math.floor(index / 2)),
  ],
  "MIXTURE.FROMLOSS": (draw, index) => [
    ...[draw(0.44, 0.53), "CaCO3", "CaO", nth(["MgCO3", "Mg(OH)2"], index), "MgO", index % 3 === 0 ? null : draw(0.001, 0.05)],
    nth([null, "u", "verdict", "share"], Math.floor(index / 2)),
  ],
  "CALCINATION.DEGREE": (draw, index) => [index % 5 === 0 ? 0 : draw(0, 0.2), draw(0.2, 0.6)],
  "BASIS.CONVERT": (draw, index) => [
    ...[
      draw(0.1, 0.5),
      nth(["as received", "as analysed", "dry", "ash-free"], index),
      nth(["dry", "ash-free", "as received"], Math.floor(index / 4)),
    ],
    ...[draw(0.05, 0.3), draw(0.01, 0.05), draw(0.001, 0.1), nth([null, "other", "hydrogen", "oxygen", null], index)],
  ],
  ZERODRIFT: (draw, index) => [
    ...[draw(10, 60), draw(-0.01, 0.01), draw(-0.01, 0.01)],
    ...(index % 2 === 0 ? [] : [draw(0, 2), draw(3, 5), draw(6, 9)]),
  ],
  BLANKCORRECTED: (draw) => [draw(0.1, 2), draw(-0.01, 0.01)],
  AIRDENSITY: (draw, index) => [...[draw(15.5, 26.5), draw(90_500, 105_000), draw(0.1, 0.79)], ...[nth([null, "OIML", "CIPM-2007", "oiml"], index)]],
  BUOYANCY: (draw, index) => [
    ...[draw(0.1, 100), draw(500, 9000), everyOther(index, draw(0.9, 1.29))],
    ...[index % 3 === 0 ? draw(7900, 8500) : null],
  ],
  HOTWEIGHING: (draw, index) => [draw(1, 99), everyOther(index, draw(1e-6, 1e-3))],
  "READING.U": (draw, index) => [
    ...[nth([0.1, 0.01, 0.001, 0.0001], index), everyOther(index, draw(1e-5, 0.02)), index % 3 === 0 ? draw(1e-5, 0.02) : null],
    ...[nth([null, true, false], index)],
  ],
  GASVOLUME: (draw, index) => [draw(0.1, 50), draw(2, 100), draw(-20, 1200), everyOther(index, draw(80_000, 110_000))],
  AIRLEFT: (draw) => [draw(0, 12)],
  VENTDIAMETER: (draw, index) => [draw(0.1, 500), draw(0.5, 300), draw(0.05, 5), draw(1, 10), everyOther(index, draw(1, 1000))],
  SEVERITY: (draw, index) => [...[draw(150, 500), index % 3 === 0 ? null : draw(1, 300)], ...(index % 3 === 1 ? [] : [draw(20, 100), draw(1, 20)])],
  DRYINGHEAT: (draw, index) => [
    ...[draw(1, 100), draw(1, 100), draw(0, 40), draw(45, 200), everyOther(index, draw(0.5, 2))],
    ...(index % 3 === 0 ? [draw(10, 200), draw(0.3, 1)] : []),
  ],
  SHRINKAGE: (draw, index) => [draw(90, 110), draw(70, 89), nth([null, "volume", "length"], index)],
  ABSORPTION: (draw, index) => [draw(100, 200), draw(201, 220), everyOther(index, draw(5, 50))],
  "SLIP.SOLIDS": (draw, index) => [
    ...(index % 4 === 3 ? ["tared", draw(120, 180)] : [draw(50, 90), draw(220, 260)]),
    ...[100, everyOther(index, draw(2400, 3000))],
  ],
  "BOILINGPOINT.WATER": (draw) => [draw(20_000, 1_000_000)],
  "LOSSFRACTION.U": (draw, index) => [...weighings(draw, index, draw(0.1, 0.9)), draw(1e-4, 0.02)],
  "SAMPLE.MINIMUM": (draw, index) => [
    ...[draw(1e-4, 0.02), draw(0.001, 0.02), everyOther(index, draw(0.05, 0.9))],
    ...[index % 3 === 0 ? draw(1, 3) : null],
  ],
  "CHANGE.SIGNIFICANT": (draw, index) => [
    ...[draw(34.97, 35.02), draw(34.98, 35.01), draw(1e-4, 0.02), everyOther(index, draw(1, 3))],
    ...[nth([null, 1e-5, 1e-4, 3e-4], index)],
  ],
};

/** The argument lists that a function is tried on, the same in every run. */
export function argumentCases(name: string): readonly (readonly Given[])[] {
  const drawCase = ARGUMENTS[name];
  if (drawCase === undefined) throw new Error(`${name} has a form in built-in functions and no arguments here to try it on. Add them.`);
  const uniform = seededUniform(SEED);
  const draw: Draw = (least, most) => least + (most - least) * uniform();
  return Array.from({ length: CASES }, (_, index) => drawCase(draw, index));
}
