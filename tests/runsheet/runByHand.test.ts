// Runs worked out by hand, and the sheet's own formulas worked out on plain values, without a spreadsheet.
// The runs are invented: prunings from a community orchard, dried in its oven and charred in its kiln.
import { cell, type Cell } from "../../src/runsheet/expressions/Expression";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { VALUE } from "../../src/runsheet/sheet/sampleCells";
import { plainRun, type PlainRun } from "./plainRun";
import { CellProblem } from "../../src/cells/CellProblem";

const PLUM = [65.2, 55.31, 52.1, 51.22, 51.21];

/** Plum prunings, one tin: vessel 25.00 g, moist 65.20 g, dry 51.21 g, char 32.53 g, ash 25.40 g. */
function plum(options: Partial<RunSheetOptions> = {}): PlainRun {
  const run = plainRun(options);
  run.type(run.first.emptyVessel.box, 25);
  run.weigh(PLUM);
  if (run.first.charring) run.type(run.first.charring.weighing.box, 32.53);
  if (run.first.ashing) run.type(run.first.ashing.weighing.box, 25.4);
  return run;
}

const below = ({ row, column }: Cell): Cell => cell(row + 1, column);
const inTable = ({ first }: PlainRun, number: number, column: number): Cell => cell(first.rows.first + number - 1, column);
const there = <T>(part: T | undefined): T => {
  if (part === undefined) throw new Error("this sheet has no such cell");
  return part;
};

describe("A run worked out by hand", () => {
  const run = plum();
  const { first, value, sheet } = { ...run };
  const charring = there(first.charring);
  const ashing = there(first.ashing);

  it.each([
    // (65.20 - 51.21) / (65.20 - 25.00) = 13.99 / 40.20; 13.99 / (51.21 - 25.00) = 13.99 / 26.21
    ["moisture, wet basis", first.shares.moistureWet, 0.34801, "34.801 % ± 0.013 %"],
    ["moisture, dry basis", first.shares.moistureDry, 0.533766, "53.377 % ± 0.030 %"],
    // (51.21 - 32.53) / 26.21 = 18.68 / 26.21; 7.53 / 26.21
    ["volatile fraction", charring.shares.volatile, 0.712705, "71.271 % ± 0.020 %"],
    ["char yield", charring.shares.charYield, 0.287295, "28.729 % ± 0.020 %"],
    // (32.53 - 25.40) / (51.21 - 25.40) = 7.13 / 25.81; 0.40 / 26.21
    ["char yield, ash-free", ashing.shares.charYieldAshFree, 0.27625, "27.625 % ± 0.020 %"],
    ["ash", ashing.shares.ash, 0.015261, "1.526 % ± 0.022 %"],
  ])("gives %s", (_, at, share, text) => {
    expect(value(at)).toBeCloseTo(share, 5);
    expect(value(below(at))).toBe(text);
  });

  it.each([
    // One weighing: u = sqrt(2 / 12) * 0.01 g = 0.00408248 g. A loss w of m g: u / m * sqrt((1 - w)^2 + 1 + w^2).
    [first.shares.moistureWet, (0.00408248 / 40.2) * 1.243464],
    // Dry basis: times (1 + U)^2 = 1.533766^2
    [first.shares.moistureDry, (0.00408248 / 40.2) * 1.243464 * 2.352438],
    [charring.shares.volatile, (0.00408248 / 26.21) * 1.261138],
    [charring.shares.charYield, (0.00408248 / 26.21) * 1.261138],
    [ashing.shares.charYieldAshFree, (0.00408248 / 25.81) * 1.264966],
    [ashing.shares.ash, (0.00408248 / 26.21) * 1.403546],
  ])("keeps the standard uncertainty of %j right of everything printed", (at, u) => {
    expect(value(first.working(at.row))).toBeCloseTo(u, 8);
  });

  it("says since when it is steady, and takes the last weighing for the dry one", () => {
    expect([value(first.steadySince), value(first.dry)]).toEqual([5, 51.21]);
    expect(value(sheet.weighingUncertainty)).toBeCloseTo(0.00408248, 8);
  });

  it("follows the weigh-ins row by row, and gives the chart the last point again below them", () => {
    const { elapsed, sample, change, steady, chartElapsed, chartSample } = sheet.columns.at;
    const rows = [1, 2, 3, 4, 5, 6].map((number) =>
      [elapsed, sample, change, steady, chartElapsed, chartSample].map((column) => {
        const held = value(inTable(run, number, column));
        return typeof held === "number" ? Number(held.toFixed(9)) : held;
      }),
    );
    expect(rows).toEqual([
      [0, 40.2, null, "first", 0, 40.2],
      [30, 30.31, -9.89, "not yet", 30, 30.31],
      [60, 27.1, -3.21, "not yet", 60, 27.1],
      [90, 26.22, -0.88, "not yet", 90, 26.22],
      [120, 26.21, -0.01, "steady", 120, 26.21],
      ["", "", "", "", 120, 26.21],
    ]);
  });
});

it.each(["clock", "loaded"] as const)("The chart repeats the point before where a weigh-in has no %s", (column) => {
  const run = plum();
  const { at } = run.sheet.columns;
  run.type(inTable(run, 3, at[column]), null);
  const charted = (number: number) => [at.chartElapsed, at.chartSample].map((charts) => run.value(inTable(run, number, charts)));
  expect([charted(3), charted(4)]).toEqual([
    [30, expect.closeTo(30.31, 9)],
    [90, expect.closeTo(26.22, 9)],
  ]);
});

describe("The comparison with open burning", () => {
  // Cellulose takes up 6 * 31.998 / 162.141 = 1.18408 g oxygen per g; CO2 6 * 44.009 / 162.141 and H2O 5 * 18.015 / 162.141 g leave.
  it("puts each quantity where its label says, by a formula", () => {
    const run = plum();
    const composition = there(run.sheet.composition);
    const { comparison } = there(run.first.charring);
    expect(Object.values(comparison).map(run.value)).toEqual(Array.from({ length: 10 }, () => ""));
    run.type(composition.formula, "C6H10O5");
    const shown = Object.fromEntries(Object.entries(comparison).map(([name, at]) => [name, Number(Number(run.value(at)).toFixed(2))]));
    expect(shown).toEqual({
      dry: 26.21,
      charLeft: 7.53,
      vapourLeft: 18.68,
      oxygenTaken: 30.56,
      // 30.561 / 0.2314
      air: 132.07,
      ashLeft: 0.4,
      gases: 56.37,
      notCovered: 0,
      massIn: 56.77,
      massOut: 56.77,
    });
    expect(run.value(there(run.first.charring).note)).toMatch(/^Sample 1: ./);
  });

  it.each([
    [{ carbon: 0.488 }, ""],
    [{ carbon: 0.488, hydrogen: 0.061 }, ""],
    // 2.66406 * 0.488 + 7.93601 * 0.061 - 0.441 = 1.34316 g per g dry, of 26.21 g; 1 - 0.488 - 0.061 - 0.441 = 0.010 not analysed
    [{ carbon: 0.488, hydrogen: 0.061, oxygen: 0.441 }, "35.20 and 0.26"],
    // 0.488 + 0.061 + 0.351 = 0.9, the least
    [{ carbon: 0.488, hydrogen: 0.061, oxygen: 0.351 }, "37.56 and 2.62"],
    [{ carbon: 0.488, hydrogen: 0.061, oxygen: 0.3494 }, ""],
  ])("by an analysis of %j shows %j", (given, shown) => {
    const run = plum({ kind: "charring" });
    const composition = there(run.sheet.composition);
    for (const [element, fraction] of Object.entries(given)) run.type(composition[element as keyof typeof given], fraction);
    const { oxygenTaken, notCovered } = there(run.first.charring).comparison;
    const [oxygen, rest] = [run.value(oxygenTaken), run.value(notCovered)];
    expect(oxygen === "" ? "" : `${Number(oxygen).toFixed(2)} and ${Number(rest).toFixed(2)}`).toBe(shown);
  });
});

describe("Replicates", () => {
  const pear = (run: PlainRun): void => {
    const second = there(run.sheet.samples[1]);
    run.type(second.emptyVessel.box, 24.8);
    run.weigh([60.1, 50.02, 47.7, 47.68], 2);
  };
  const across = (run: PlainRun, place: number): Cell => cell(run.first.shares.moistureWet.row, VALUE + run.sheet.options.replicates + place);

  it("have a mean with s / sqrt(n), and a standard deviation, once two are finished", () => {
    const run = plum({ kind: "drying", replicates: 3 });
    expect([run.value(across(run, 0)), run.value(across(run, 1)), run.value(below(across(run, 0)))]).toEqual(["", "", ""]);
    pear(run);
    // 0.348010 and 12.42 / 35.30 = 0.351841: mean 0.349926, s = 0.003831 / sqrt 2 = 0.002709, s / sqrt 2 = 0.001916
    expect(run.value(across(run, 0))).toBeCloseTo(0.349926, 6);
    expect(run.value(across(run, 1))).toBeCloseTo(0.002709, 6);
    expect(run.value(below(across(run, 0)))).toBe("34.99 % ± 0.19 %");
    // Agreement to less than one in a thousand million is binary rounding.
    run.type(across(run, 1), 1e-9);
    expect(run.value(below(across(run, 0)))).not.toBe("");
    run.type(across(run, 1), 0.99e-9);
    expect(run.value(below(across(run, 0)))).toBe("");
  });

  it("are held against the critical range for two, 2.772 s, once the method's s is known", () => {
    const run = plum({ kind: "drying", replicates: 2 });
    const row = there(run.sheet.rows.replicates).first;
    const shown = () => [1, 2, 4, 5].map((column) => run.value(cell(row, column)));
    expect(shown()).toEqual([1, "", "", ""]);
    pear(run);
    expect(shown()).toEqual([2, expect.closeTo(0.003831, 6), "", ""]);
    run.type(cell(row, 3), 0.002);
    expect(shown().slice(2)).toEqual([expect.closeTo(0.005544, 6), "agree: within the critical range; report the mean"]);
    run.type(cell(row, 3), 0.001);
    expect(shown().slice(3)).toEqual(["too far apart: look for a cause, take more results, or report the median and say so"]);
    // Exactly as far apart as the method allows
    run.type(cell(row, 4), 0.003);
    run.type(cell(row, 2), 0.003);
    expect(shown().slice(3)).toEqual(["agree: within the critical range; report the mean"]);
    // The second line is that of the dry basis: 13.99 / 26.21 and 12.42 / 22.88
    expect(run.value(cell(row + 1, 2))).toBeCloseTo(0.542832 - 0.533766, 5);
  });

  it("of a share of exactly 0 count that 0", () => {
    const run = plum({ kind: "drying", replicates: 2 });
    pear(run);
    run.type(run.first.shares.moistureWet, 0);
    const row = there(run.sheet.rows.replicates).first;
    run.type(cell(row, 3), 0.2);
    expect([1, 2, 4].map((column) => run.value(cell(row, column)))).toEqual([2, expect.closeTo(0.351841, 6), expect.closeTo(0.5544, 4)]);
  });
});

describe("Pan zeros", () => {
  it("correct a weighing by their middle where both are read, and carry through to the shares", () => {
    const run = plum({ panZeros: true });
    const { emptyVessel } = run.first;
    const zeros = there(run.sheet.columns.zeros);
    const { sample } = run.sheet.columns.at;
    run.type(inTable(run, 1, zeros.before), 0.5);
    expect(run.value(inTable(run, 1, sample))).toBeCloseTo(40.2, 9);
    run.type(inTable(run, 1, zeros.before), 0);
    run.type(inTable(run, 1, zeros.after), 0.03);
    // 65.20 - (0.00 + 0.03) / 2 - 25.00
    expect(run.value(inTable(run, 1, sample))).toBeCloseTo(40.185, 9);
    const { before, after, corrected } = there(emptyVessel.zeros);
    run.type(before, -0.01);
    run.type(after, -0.03);
    expect(run.value(corrected)).toBeCloseTo(25.02, 9);
    expect(run.value(inTable(run, 2, sample))).toBeCloseTo(30.29, 9);
    for (const [weighing, zero] of [
      [there(run.first.charring).weighing, 0.03],
      [there(run.first.ashing).weighing, -0.01],
    ] as const) {
      run.type(there(weighing.zeros).before, zero - 0.01);
      run.type(there(weighing.zeros).after, zero + 0.01);
    }
    // char 32.50 - 25.02 = 7.48 and ash 25.41 - 25.02 = 0.39 of 51.21 - 25.02 = 26.19 g dry
    expect(run.value(there(run.first.charring).shares.charYield)).toBeCloseTo(7.48 / 26.19, 9);
    expect(run.value(there(run.first.ashing).shares.ash)).toBeCloseTo(0.39 / 26.19, 9);
    // moist 65.185 - 25.02 = 40.165 g
    expect(run.value(run.first.shares.moistureWet)).toBeCloseTo((40.165 - 26.19) / 40.165, 9);
  });
});

describe("The flag of a warm weighing", () => {
  // A tenth of a display step of 0.01 g is 1 mg, at 0.19 mg a degree 5.263 °C.
  it.each([
    [20, 25.26, 0.01, "yes"],
    [20, 25.27, 0.01, "too warm: reads light"],
    [20, 14.74, 0.01, "yes"],
    [20, 14.73, 0.01, "colder than the room"],
    [20, 50, 0.1, "yes"],
    // 0.00019 g of a degree is a tenth of 0.0019 g
    [20, 21, 0.0019, "too warm: reads light"],
    [20, 21, 0.00191, "yes"],
  ])("in a room of %s °C, sample at %s °C, balance to %s g: %s", (room, sample, readability, flag) => {
    const run = plum({ temperatures: true, readability });
    const columns = there(run.sheet.columns.temperatures);
    expect(run.value(inTable(run, 1, columns.cold))).toBe("");
    run.type(inTable(run, 1, columns.room), room);
    expect(run.value(inTable(run, 1, columns.cold))).toBe("");
    run.type(inTable(run, 1, columns.warmth), sample);
    expect(run.value(inTable(run, 1, columns.cold))).toBe(flag);
    expect(run.value(inTable(run, 1, columns.warmer))).toBeCloseTo(sample - room, 9);
    expect(run.value(inTable(run, 1, run.sheet.columns.at.sample))).toBeCloseTo(40.2, 9);
  });
});

describe("The clock", () => {
  const elapsed = (clocks: readonly (number | null)[]) => {
    const run = plainRun({ kind: "drying" });
    for (const [index, clock] of clocks.entries()) run.type(inTable(run, index + 1, run.sheet.columns.at.clock), clock);
    return clocks.map((_, index) => run.value(inTable(run, index + 1, run.sheet.columns.at.elapsed)));
  };
  const at = (hours: number, minutes: number): number => (hours * 60 + minutes) / 1440;

  it.each([
    ["past midnight, as often as needed", [at(23, 10), at(23, 40), at(0, 10), at(0, 40), at(18, 40), at(6, 40)], [0, 30, 60, 90, 1170, 1890]],
    // .9 is 21:36, .925 is 22:12
    ["by dates with times, also with days between", [46000.9, 46000.925, 46003.025], [0, 36, 3060]],
    ["from midnight as from any other time", [0, at(0, 30)], [0, 30]],
    ["over a weigh-in whose clock is missing", [at(9, 0), null, at(10, 0)], [0, "", 60]],
    ["to a hundredth of a minute", [at(9, 0), at(9, 0) + 0.125 / 1440], [0, 0.13]],
    ["not at all while the first clock is missing", [null, at(9, 30)], ["", ""]],
    ["on from a bare time to a date with a time", [at(9, 0), 46000 + at(9, 30)], [0, 30]],
    ["straight from the first day a spreadsheet counts", [1, 3.5], [0, 3600]],
  ])("counts %s", (_, clocks, minutes) => {
    expect(elapsed(clocks)).toEqual(minutes);
  });
});

describe("A weigh-in that cannot be judged", () => {
  const verdict = (change: (run: PlainRun) => void, number = 5) => {
    const run = plum({ kind: "drying" });
    change(run);
    const steady = run.value(inTable(run, number, run.sheet.columns.at.steady));
    return steady instanceof CellProblem ? steady.message : steady;
  };
  const { at } = plainRun({ kind: "drying" }).sheet.columns;

  it.each<[string, (run: PlainRun) => void, string]>([
    ["a clock typed as text", (run) => run.type(inTable(run, 5, at.clock), "half past"), "clock is not a time"],
    ["a weight typed as text", (run) => run.type(inTable(run, 5, at.loaded), "51,21"), "weight is not a number"],
    ["no vessel", (run) => run.type(run.first.emptyVessel.box, null), ""],
    ["no clock", (run) => run.type(inTable(run, 5, at.clock), null), ""],
    ["a weight missing above", (run) => run.type(inTable(run, 3, at.loaded), null), "a row is missing"],
    ["a clock missing above", (run) => run.type(inTable(run, 3, at.clock), null), "a row is missing"],
    ["no limit", (run) => run.type(run.sheet.details.limit, null), "run details missing"],
    ["no readability", (run) => run.type(run.sheet.details.readability, null), "run details missing"],
    ["no interval", (run) => run.type(run.sheet.details.interval, null), "run details missing"],
    ["no criterion", (run) => run.type(run.sheet.details.criterion, null), "run details missing"],
    ["nothing missing", () => undefined, "steady"],
    // Two display steps, the usual limit: 0.02 g is steady, 0.03 g is not.
    ["a change of two display steps", (run) => run.type(inTable(run, 5, at.loaded), 51.2), "steady"],
    ["a change of three display steps", (run) => run.type(inTable(run, 5, at.loaded), 51.19), "not yet"],
    ["weighings closer than the interval", (run) => run.type(run.sheet.details.interval, 31), "not yet"],
  ])("with %s", (_, change, says) => {
    expect(verdict(change)).toBe(says);
  });

  it.each<[string, (run: PlainRun) => void, string | number, string | number]>([
    ["once weighed", (run) => run.weigh([65.2, null, null, null, null]), "not yet", ""],
    ["while nothing is weighed", (run) => run.weigh([null, null, null, null, null]), "", ""],
    ["while it loses", (run) => run.type(inTable(run, 5, at.loaded), 50), "not yet", ""],
    ["after a gain", (run) => run.type(inTable(run, 5, at.loaded), 51.3), "gain", ""],
    ["when steady", () => undefined, 5, 51.21],
    ["with a last weight typed as text", (run) => run.type(inTable(run, 6, at.loaded), "51,20"), "weight is not a number", ""],
  ])("leaves the sample's result %s", (_, change, since, dry) => {
    const run = plum({ kind: "drying" });
    change(run);
    expect([run.value(run.first.steadySince), run.value(run.first.dry)]).toEqual([since, dry]);
  });
});

describe("The prediction", () => {
  // 45 + 15 * 0.4^n g in a vessel of 25 g: further changes 0.2304, 0.0922, 0.0369, 0.0147 g, the fourth within two display steps.
  const CURVE = [60, 51, 47.4, 45.96, 45.38, 45.15, 45.06, 45.02, 45.01];
  const predicted = (weighIns: number) => {
    const run = plainRun({ kind: "drying", weighIns: 12 });
    run.type(run.first.emptyVessel.box, 25);
    run.weigh(CURVE.slice(0, weighIns));
    return [run.value(run.first.weighingsLeft), run.value(run.first.prediction)];
  };

  it.each([
    [2, "", ""],
    [5, 4, "about 4 more weighings by the curve: a prediction, never the dry weight"],
    [8, 1, "about 1 more weighing by the curve: a prediction, never the dry weight"],
    [9, "", ""],
  ])("after %s weigh-ins counts %s: %s", (weighIns, count, words) => {
    expect(predicted(weighIns)).toEqual([count, words]);
  });

  it("rests on masses corrected for drift, as do the verdict and the dry weighing, where the sheet corrects them", () => {
    const run = plainRun({ kind: "drying", weighIns: 12, panZeros: true });
    const zeros = there(run.sheet.columns.zeros);
    run.type(run.first.emptyVessel.box, 25);
    const after = (weighIns: number) => {
      run.weigh(CURVE.slice(0, weighIns).map((grams, index) => grams + 0.5 * (index % 3)));
      for (let number = 1; number <= weighIns; number++)
        for (const column of [zeros.before, zeros.after]) run.type(inTable(run, number, column), 0.5 * ((number - 1) % 3));
      return [run.value(run.first.weighingsLeft), run.value(run.first.steadySince), run.value(run.first.dry)];
    };
    expect(after(5)).toEqual([4, "not yet", ""]);
    expect(after(9)).toEqual(["", 9, expect.closeTo(45.01, 9)]);
  });

  it("says nothing of no more weighings", () => {
    const run = plainRun({ kind: "drying" });
    run.type(run.first.weighingsLeft, 0);
    expect(run.value(run.first.prediction)).toBe("");
  });
});

describe("Boxes and results that wait", () => {
  it.each(["volatile", "charYield"] as const)("%s waits for vessel, dry sample and char", (share) => {
    for (const missing of ["vessel", "dry", "char"] as const) {
      const run = plum();
      const charring = there(run.first.charring);
      run.type({ vessel: run.first.emptyVessel.box, dry: run.first.dry, char: charring.weighing.box }[missing], null);
      expect(run.value(charring.shares[share])).toBe("");
    }
  });

  it("say so where the ash weighing is out of order", () => {
    for (const [vessel, char, ash, shown] of [
      [25, 32.53, 33, "check the ash weighing"],
      [25, 32.53, 24.99, "check the ash weighing"],
      [25, 60, 25.4, "check the ash weighing"],
      [25, 32.53, 32.53, 7.53 / 26.21],
      [25, 32.53, 25, 0],
      [25, 51.21, 25.4, 0.4 / 26.21],
    ] as const) {
      const run = plum();
      run.type(run.first.emptyVessel.box, vessel);
      run.type(there(run.first.charring).weighing.box, char);
      run.type(there(run.first.ashing).weighing.box, ash);
      const value = run.value(there(run.first.ashing).shares.ash);
      expect(typeof value === "number" ? Number(value.toFixed(9)) : value).toBe(typeof shown === "number" ? Number(shown.toFixed(9)) : shown);
    }
  });

  it("know one weighing by rounding alone, or with the balance's repeatability: sqrt(0.02^2 + 0.01^2 / 6)", () => {
    const run = plum();
    run.type(run.sheet.details.repeatability, 0.02);
    expect(run.value(run.sheet.weighingUncertainty)).toBeCloseTo(0.0204124, 7);
    run.type(run.sheet.details.readability, null);
    expect(run.value(run.sheet.weighingUncertainty)).toBe("");
    expect(run.value(below(run.first.shares.moistureWet))).toBe("");
  });

  it("caution beside kiln and furnace above what the vessel's material stands", () => {
    const run = plum();
    const beside = (at: Cell) => run.value(cell(at.row, at.column + 1));
    const [kiln, furnace] = [there(run.first.charring).kilnSet, there(run.first.ashing).furnaceSet];
    run.type(kiln, 231);
    expect(beside(kiln)).toBe("");
    run.type(run.sheet.details.material, "tinned steel");
    expect([beside(kiln), beside(furnace)]).toEqual(["Caution: above the 230 °C that tinned steel stands", ""]);
    run.type(kiln, 230);
    run.type(furnace, 550);
    expect([beside(kiln), beside(furnace)]).toEqual(["", "Caution: above the 230 °C that tinned steel stands"]);
  });
});
