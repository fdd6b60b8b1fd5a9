// What the further kinds of run state as ± at 95 %, against runs whose truth is known: their own formulas, worked out on plain values.
// The runs are made up, the noise is seeded.
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import type { ShareName } from "../../../src/runsheet/sheet/layout";
import { seededNormal } from "../../numerics/seededNormal";
import { seededUniform } from "../../numerics/seededUniform";
import { plainBalance } from "../balance/plainBalance";
import { plainRun, type PlainRun } from "../plainRun";

const RUNS = 1000;
const STEP = 0.01;
const REPEATABILITY = 0.01;
const STATED = 0.95;
// 1000 runs scatter about 95 % by 0.7 %, three times that.
const SCATTER = 3 * 0.0069;

const [uniform, normal] = [seededUniform(91), seededNormal(92)];
const between = (least: number, most: number): number => least + (most - least) * uniform();
/** A zeroed balance stands anywhere within the step that it shows as 0; the load scatters, then is rounded. */
const read = (grams: number): number => Math.round((grams + REPEATABILITY * normal() + (uniform() - 0.5) * STEP) / STEP) * STEP;

const sheetFor = (kind: "liquids" | "staged" | "salt", options: Partial<RunSheetOptions> = {}): PlainRun => {
  const run = plainRun({ kind, weighIns: 3, ...options });
  run.type(run.sheet.settings.repeatability, REPEATABILITY);
  // Two readings that scatter by a step each differ by more than two steps now and then; six show the sheet's own arithmetic.
  run.type(run.sheet.settings.limit, 6);
  return run;
};

/** Counts, share by share, the runs whose truth lies within what the sheet states; each run types itself and gives the truths. */
function covered<Name extends ShareName>(run: PlainRun, once: () => Readonly<Record<Name, number>>): Readonly<Record<Name, number>> {
  const inside: Partial<Record<Name, number>> = {};
  let runs = 0;
  for (; runs < RUNS; runs++) {
    for (const [name, truth] of Object.entries<number>(once()) as [Name, number][]) {
      const [value, off] = [run.value(run.sheet.share(name, 1)), run.value(run.sheet.plusMinus(name, 1))];
      if (typeof value !== "number" || typeof off !== "number") throw new Error(`${name} is not told: ${String(value)} ± ${String(off)}`);
      inside[name] = (inside[name] ?? 0) + (Math.abs(value - truth) <= off ? 1 : 0);
    }
  }
  return Object.fromEntries(Object.entries<number>(inside as Record<Name, number>).map(([name, count]) => [name, count / runs])) as Record<
    Name,
    number
  >;
}

/** Vessel, dry sample, char and the gains of tube, trap and receiver; what gas is measured, and what leaked. */
const apparatus = () => {
  const dry = between(20, 30);
  return { vessel: between(30, 50), dry, char: dry * between(0.25, 0.33), gains: [0.2, 1, 0.4 * dry], gas: dry * 0.2, empty: [55, 80, 120] };
};

const expectStated = (shares: Readonly<Record<string, number>>): void => {
  const off = Object.entries(shares).filter(([, share]) => Math.abs(share - STATED) >= SCATTER);
  expect(off).toEqual([]);
};

describe("The ± 95 % of the product ledger", () => {
  it("covers liquids, water formed, the closure and what is unaccounted in 95 of 100 runs", () => {
    const run = sheetFor("liquids");
    const { caught } = run.sheet;
    if (caught === undefined) throw new Error("a run with liquids caught");
    const shares = covered(run, () => {
      const { vessel, dry, char, gains, gas, empty } = apparatus();
      const water = between(55, 75);
      run.vessel(read(vessel));
      run.weigh([dry + 8, dry, dry].map((grams) => read(vessel + grams)));
      run.caught(empty.map((grams, part) => [read(grams), read(grams + (gains[part] ?? 0))]));
      run.fire("charring", [read(vessel + char), read(vessel + char)]);
      run.type(caught.box("gas", 1), gas);
      // Known to one percentage point at 95 %.
      run.type(caught.box("water", 1), water + 0.5 * normal());
      run.type(caught.box("known", 1), 1);
      const liquids = gains.reduce((sum, gain) => sum + gain, 0);
      return {
        liquidYield: liquids / dry,
        waterFormed: (liquids * water) / 100 / dry,
        unaccounted: (dry - char - liquids - gas) / dry,
        closure: (char + liquids + gas) / dry,
      };
    });
    expectStated(shares);
  });

  it("covers char, liquids, water formed and gas by difference of a sample that is charred moist", () => {
    const run = sheetFor("liquids");
    const { caught } = run.sheet;
    if (caught === undefined) throw new Error("a run with liquids caught");
    const shares = covered(run, () => {
      const { vessel, dry, char, gains, empty } = apparatus();
      const moisture = between(8, 20);
      const moist = dry / (1 - moisture / 100);
      run.vessel(read(vessel));
      run.weigh([read(vessel + moist)]);
      run.type(caught.box("fed", 1), moisture + 0.5 * normal());
      run.type(caught.box("known", 1), 1);
      run.type(caught.box("water", 1), 70 + 0.5 * normal());
      const held = [0.2, 1, 0.4 * dry + moist - dry];
      run.caught(empty.map((grams, part) => [read(grams), read(grams + (held[part] ?? gains[part] ?? 0))]));
      run.fire("charring", [read(vessel + char), read(vessel + char)]);
      const liquids = held.reduce((sum, gain) => sum + gain, 0);
      return {
        charYield: char / dry,
        liquidYield: liquids / dry,
        waterFormed: (0.7 * liquids - (moist - dry)) / dry,
        gasDifference: (moist - char - liquids) / dry,
      };
    });
    expectStated(shares);
  });
});

describe("The ± 95 % of staged heating", () => {
  it("covers what the first and a later stage lost, and what was lost in all, in 95 of 100 runs", () => {
    const run = sheetFor("staged");
    const shares = covered(run, () => {
      const [vessel, dry] = [between(20, 40), between(8, 12)];
      const left = [between(0.8, 0.9), between(0.65, 0.75), between(0.6, 0.64), between(0.3, 0.4)];
      run.vessel(read(vessel));
      // All of it went in the first round: what may yet dry off would widen the ±.
      run.weigh([dry + 8, dry, dry].map((grams) => read(vessel + grams)));
      run.fire(
        "stages",
        left.map((share) => read(vessel + dry * share)),
      );
      return { stage1: 1 - (left[0] ?? 0), stage3: (left[1] ?? 0) - (left[2] ?? 0), lostInAll: 1 - (left[3] ?? 0) };
    });
    expectStated(shares);
  });

  it("covers it at least as often where the vessel scaled in whichever stage, and was weighed again", () => {
    const run = sheetFor("staged");
    const shares = covered(run, () => {
      const [vessel, dry, scale] = [between(20, 40), between(8, 12), between(0, 0.06)];
      const left = [between(0.8, 0.9), between(0.65, 0.75), between(0.6, 0.64), between(0.3, 0.4)];
      const grown = [uniform(), uniform(), uniform()].sort((one, other) => one - other).concat(1);
      run.vessel(read(vessel));
      run.weigh([dry + 0.1, dry, dry].map((grams) => read(vessel + grams)));
      run.fire(
        "stages",
        left.map((share, index) => read(vessel + scale * (grown[index] ?? 1) + dry * share)),
      );
      if (run.sheet.end) run.type(run.sheet.end.vessel(1), read(vessel + scale));
      return { stage1: 1 - (left[0] ?? 0), stage3: (left[1] ?? 0) - (left[2] ?? 0), lostInAll: 1 - (left[3] ?? 0) };
    });
    expect(Math.min(...Object.values(shares))).toBeGreaterThan(STATED - SCATTER);
  });
});

describe("The ± 95 % of a salt or mineral", () => {
  // g/mol, CIAAW 2021: CaCO3 100.086, CaO 56.077.
  const THEORY = (100.086 - 56.077) / 100.086;
  const lime = (): PlainRun => sheetFor("salt", { formula: "CaCO3", residue: "CaO" });
  /** A crucible with 20 to 40 g of limestone of some purity, dried first where it is damp, on a crucible that may have scaled. */
  const burnt = (run: PlainRun, isDamp: boolean, scale: number) => {
    const [vessel, stone, purity] = [between(30, 50), between(20, 40), between(0.8, 1)];
    run.vessel(read(vessel));
    run.weigh((isDamp ? [stone + between(0.5, 2), stone, stone] : [stone]).map((grams) => read(vessel + grams)));
    const left = vessel + scale + stone * (1 - THEORY * purity);
    run.fire("heating", [read(left + 0.02), read(left), read(left)]);
    if (run.sheet.end) run.type(run.sheet.end.vessel(1), scale > 0 ? read(vessel + scale) : null);
    return { lossOnHeating: THEORY * purity, ofTheory: purity };
  };

  it("covers the loss and the share of theory of a stone heated as weighed in, three times, in 95 of 100 runs", () => {
    const run = lime();
    expectStated(covered(run, () => burnt(run, false, 0)));
  });

  it("covers them where surface water was dried off first", () => {
    const run = lime();
    if (run.sheet.salt) run.type(run.sheet.salt.water, "dried first");
    expectStated(covered(run, () => burnt(run, true, 0)));
  });

  it("covers them on a crucible that scaled and was weighed again", () => {
    const run = lime();
    // The gain counts as anything from none to all of it, a rectangle, which two standard uncertainties cover whole: oftener, never seldomer.
    const shares = Object.values<number>(covered(run, () => burnt(run, false, between(0.005, 0.08))));
    expect(shares.length).toBeGreaterThan(1);
    expect(Math.min(...shares)).toBeGreaterThan(STATED - SCATTER);
  });
});

test("the ± 95 % of a balance's bias covers it at least so often, with a check weight that is off by what it is known to", () => {
  const run = plainBalance();
  run.type(run.sheet.setup.value, 200);
  run.type(run.sheet.setup.known, 0.02);
  let inside = 0;
  for (let number = 0; number < RUNS; number++) {
    const [weight, bias] = [200 + 0.01 * normal(), between(-0.05, 0.05)];
    run.rounds(Array.from({ length: 8 }, () => read(weight + bias)));
    const { value, plusMinus } = run.sheet.finding("bias");
    if (Math.abs(Number(run.value(value)) - bias) <= Number(run.value(plusMinus))) inside++;
  }
  // The rounding counts in full, though a scatter of a step averages some of it away.
  expect(inside / RUNS).toBeGreaterThan(STATED - SCATTER);
});
