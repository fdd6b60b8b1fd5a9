// What a run sheet states as ± at 95 %, against runs whose truth is known: its own formulas, worked out on plain values. The runs are
// made up, the noise is seeded.
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import type { ShareName } from "../../../src/runsheet/sheet/layout";
import { seededNormal } from "../../numerics/seededNormal";
import { seededUniform } from "../../numerics/seededUniform";
import { plainRun, type PlainRun } from "../plainRun";

const RUNS = 1000;
const STEP = 0.01;
const REPEATABILITY = 0.01;
const STATED = 0.95;
// 1000 runs scatter about 95 % by 0.7 %, three times that.
const SCATTER = 3 * 0.0069;

const [uniform, normal] = [seededUniform(71), seededNormal(72)];
const between = (least: number, most: number): number => least + (most - least) * uniform();
/** A zeroed balance stands anywhere within the step that it shows as 0; the load scatters, then is rounded. */
const read = (grams: number): number => Math.round((grams + REPEATABILITY * normal() + (uniform() - 0.5) * STEP) / STEP) * STEP;

interface Tin {
  readonly vessel: number;
  readonly moist: number;
  readonly dry: number;
  readonly char: number;
  readonly ash: number;
  /** What grew on the vessel by the end of charring, and by the end. */
  readonly scale: readonly [charred: number, ended: number];
}

/** Tins of 30 to 50 g with 25 to 45 g of moist prunings; what is left after firing i is above the char by 0.4 g * 0.05^i. */
function tin(charYield = between(0.24, 0.34), scales = false): Tin {
  const [vessel, sample] = [between(30, 50), between(25, 45)];
  const dry = sample * (1 - between(0.2, 0.45));
  const ended = scales ? between(0, 0.08) : 0;
  return { vessel, moist: sample, dry, char: dry * charYield, ash: dry * between(0.01, 0.05), scale: [ended * uniform(), ended] };
}

/** Types one tin into the sheet as it is read. */
function weigh(run: PlainRun, { vessel, moist, dry, char, ash, scale }: Tin, sample = 1): void {
  run.vessel(read(vessel), sample);
  run.weigh([moist, dry + 0.3, dry + 0.002, dry, dry].map((grams) => read(vessel + grams)), sample); // prettier-ignore
  const last = run.sheet.ashing === undefined ? scale[1] : scale[0];
  run.fire("charring", [0.4, 0.02, 0.001].map((more, index) => read(vessel + (last * (index + 1)) / 3 + char + more)), sample); // prettier-ignore
  if (run.sheet.ashing) run.fire("ashing", [0.02, 0].map((more) => read(vessel + scale[1] + ash + more)), sample); // prettier-ignore
}

const sheetFor = (options: Partial<RunSheetOptions>): PlainRun => {
  const run = plainRun({ kind: "charring", weighIns: 5, ...options });
  run.type(run.sheet.settings.repeatability, REPEATABILITY);
  // Two readings that scatter by a step each differ by more than two steps now and then; four show the sheet's own arithmetic.
  run.type(run.sheet.settings.limit, 8);
  run.type(run.sheet.settings.wanted, null);
  return run;
};

/** Share of the runs whose truth lies within what the sheet states, and how many it gave an answer for. */
function covered(run: PlainRun, name: ShareName, truthOf: (one: Tin) => number, again: boolean, make: () => Tin) {
  let [inside, answered] = [0, 0];
  for (let number = 0; number < RUNS; number++) {
    const one = make();
    weigh(run, one);
    const { end } = run.sheet;
    if (end) run.type(end.vessel(1), again ? read(one.vessel + one.scale[1]) : null);
    const [value, off] = [run.value(run.sheet.share(name, 1)), run.value(run.sheet.plusMinus(name, 1))];
    if (typeof value !== "number" || typeof off !== "number") continue;
    answered++;
    if (Math.abs(value - truthOf(one)) <= off) inside++;
  }
  return { share: inside / answered, answered: answered / RUNS };
}

const vapour = ({ dry, char }: Tin): number => 1 - char / dry;

describe("The ± 95 % of one sample, fired three times", () => {
  it("covers what left as vapour in 95 of 100 runs", () => {
    const { share, answered } = covered(sheetFor({}), "volatile", vapour, false, () => tin());
    expect(answered).toBe(1);
    expect(Math.abs(share - STATED)).toBeLessThan(SCATTER);
  });

  it("covers it on a tin that scales, once the tin is weighed again", () => {
    const { share } = covered(sheetFor({}), "volatile", vapour, true, () => tin(undefined, true));
    // The gain counts as anything from none to all of it, a rectangle, which two standard uncertainties cover whole: oftener, never seldomer.
    expect(share).toBeGreaterThan(STATED - SCATTER);
  });

  it("covers it far too seldom where such a tin is not weighed again", () => {
    const { share } = covered(sheetFor({}), "volatile", vapour, false, () => tin(undefined, true));
    expect(share).toBeLessThan(0.7);
  });

  it("covers it at least as often where the char is ashed later, and its tin stood somewhere between", () => {
    const { share } = covered(sheetFor({ kind: "ashing" }), "volatile", vapour, true, () => tin(undefined, true));
    expect(share).toBeGreaterThan(STATED - SCATTER);
  });

  it("covers the ash on a tin that scales", () => {
    const { share } = covered(
      sheetFor({ kind: "ashing" }),
      "ash",
      ({ ash, dry }) => ash / dry,
      true,
      () => tin(undefined, true),
    );
    // The gain counts as anything from none to all of it, a rectangle, which two standard uncertainties cover whole: oftener, never seldomer.
    expect(share).toBeGreaterThan(STATED - SCATTER);
  });
});

describe("The ± 95 % of three replicates together", () => {
  const TRUE_YIELD = 0.29;
  // Half a percentage point from tin to tin, ten times what weighing explains.
  const MATERIAL = 0.005;
  const run = sheetFor({ replicates: 3 });
  const errors = Array.from({ length: RUNS }, () => {
    for (const sample of [1, 2, 3]) weigh(run, tin(TRUE_YIELD + MATERIAL * normal()), sample);
    const shares = [1, 2, 3].map((sample) => Number(run.value(run.sheet.share("volatile", sample))));
    const mean = shares.reduce((sum, share) => sum + share, 0) / 3;
    const deviation = Math.sqrt(shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / 2);
    return {
      error: Math.abs(mean - (1 - TRUE_YIELD)),
      off: Number(run.value(run.sheet.working.together("volatile"))),
      fixed: (2 * deviation) / Math.sqrt(3),
    };
  });
  const within = (limit: "off" | "fixed"): number => errors.filter((one) => one.error <= one[limit]).length / RUNS;

  it("covers the mean of the material in 95 of 100 runs", () => {
    expect(Math.abs(within("off") - STATED)).toBeLessThan(SCATTER);
  });

  it("would cover it in 82 with a fixed factor of 2", () => {
    // P(|t| <= 2) with 2 degrees of freedom: 2 / sqrt(2 + 4) = 0.8165
    expect(Math.abs(within("fixed") - 0.8165)).toBeLessThan(3 * 0.0122);
  });
});
