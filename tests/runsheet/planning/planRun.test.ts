import { planRun, type RunWanted } from "../../../src/runsheet/planning/planRun";

const usual: RunWanted = {
  kind: "charring",
  readability: 0.01,
  wantedUncertainty: 0.005,
  samples: 1,
  samplesAre: "repeats",
  expectedLoss: 0.7,
  moisture: 0.5,
  intervalMinutes: 30,
  dryingHours: 2,
};

describe("planRun(wanted)", () => {
  it("counts the moisture: the loss is of the dry sample, and what is weighed out is moist", () => {
    // u = sqrt(2 / 12) * 0.01 g = 0.00408248 g; sqrt(2 (1 + 0.3^2)) = 1.476482; 2 * 0.00408248 * 1.476482 / 0.005 = 2.411085 g dry
    expect(planRun({ ...usual, moisture: 0 }).smallestSampleGrams).toBeCloseTo(2.411085, 5);
    expect(planRun(usual).smallestSampleGrams).toBeCloseTo(2.411085 / 0.5, 5);
    expect(planRun({ ...usual, moisture: 0.2 }).smallestSampleGrams).toBeCloseTo(2.411085 / 0.8, 5);
    // To weigh out, 4 u more dry sample: (2.411085 + 0.016330) / 0.5 = 4.85483, up to what the balance shows; half of it is dry.
    expect(planRun(usual).weighOutGrams).toBeCloseTo(4.85483, 5);
    expect(planRun(usual)).toMatchObject({ moistGrams: 4.86, dryGrams: 2.43 });
  });

  it("asks of a run that ends with drying what the sheet asks of a sample just weighed in", () => {
    // 2 * 0.00408248 * sqrt(2) / 0.005 = 2.309401 g moist, whatever share of it is water
    for (const moisture of [0.1, 0.5, 0.8]) expect(planRun({ ...usual, kind: "drying", moisture }).smallestSampleGrams).toBeCloseTo(2.309401, 5);
  });

  it("asks for twice the sample for half the uncertainty, and for a tenth on a balance ten times finer", () => {
    const { smallestSampleGrams: grams } = planRun(usual);
    expect(planRun({ ...usual, wantedUncertainty: 0.0025 }).smallestSampleGrams).toBeCloseTo(2 * grams, 9);
    expect(planRun({ ...usual, readability: 0.001 }).smallestSampleGrams).toBeCloseTo(grams / 10, 9);
  });

  it("counts a repeatability beside the display's rounding and says which asks for more", () => {
    // u = sqrt(0.01^2 + 2 * 0.01^2 / 12) = 0.01080123 g; 2 * 0.01080123 * 1.476482 / 0.005 / 0.5 = 12.75825
    expect(planRun({ ...usual, repeatability: 0.01 }).smallestSampleGrams).toBeCloseTo(12.75825, 4);
    expect(planRun({ ...usual, repeatability: 0.01 }).setBy).toBe("repeatability");
    expect(planRun({ ...usual, repeatability: 0.004 }).setBy).toBe("rounding");
    expect(planRun(usual).setBy).toBe("rounding");
  });

  // t and chi-square as printed for n - 1 degrees of freedom (NIST/SEMATECH e-Handbook, 1.3.6.7.2 and 1.3.6.7.4).
  it.each([
    // 12.706 * sqrt(3.841 / 1 / 2) / 2 = 8.80412
    [2, 12.706, 8.80412],
    // 4.303 * sqrt(5.991 / 2 / 3) / 2 = 2.14988
    [3, 4.303, 2.14988],
    // 3.182 * sqrt(7.815 / 3 / 4) / 2 = 1.28393
    [4, 3.182, 1.28393],
    // Below 1, the sheet's own check of each weighing decides.
    [5, 2.776, 1],
    [6, 2.571, 1],
  ])("takes the factor that %d repeats ask for, %d, and %d times the sample of one", (samples, factor, times) => {
    const plan = planRun({ ...usual, samples });
    expect(plan.repeats?.factor).toBe(factor);
    expect(plan.repeats?.times).toBeCloseTo(times, 4);
    expect(plan.smallestSampleGrams).toBeCloseTo((times * 2.411085) / 0.5, 3);
  });

  it("leaves samples that are kept apart at what one needs", () => {
    const plan = planRun({ ...usual, samples: 3, samplesAre: "different", methodScatter: 0.05 });
    expect(plan).toMatchObject({ repeats: undefined, smallestSampleGrams: planRun(usual).smallestSampleGrams });
  });

  it("leaves room for the scatter between samples, and says when that asks for more than the balance", () => {
    // allowed 0.005 / 2.567868 = 0.001947141; sqrt(0.001947141^2 - 0.001^2) = 0.001670736; 0.00408248 * 1.476482 / 0.001670736 / 0.5
    const plan = planRun({ ...usual, samples: 4, methodScatter: 0.001 });
    expect(plan.smallestSampleGrams).toBeCloseTo(7.21562, 3);
    expect(plan.setBy).toBe("rounding");
    expect(planRun({ ...usual, samples: 4, methodScatter: 0.0018 }).setBy).toBe("scatter");
  });

  it("gives the hot gas of all samples", () => {
    // 4.86 g * 0.5 * 0.7 / 25 g/mol = 0.06804 mol; * 8.314463 * 723.15 / 101325 * 1000 = 4.03748 L
    const kiln = { kilnCelsius: 450, celsiusPerMinute: 3 };
    expect(planRun({ ...usual, ...kiln }).gasLitres).toBeCloseTo(4.03748, 4);
    expect(planRun({ ...usual, ...kiln, samples: 3, samplesAre: "different" }).gasLitres).toBeCloseTo(3 * 4.03748, 4);
    expect(planRun({ ...usual, ...kiln, molarMass: 50 }).gasLitres).toBeCloseTo(4.03748 / 2, 4);
    expect(planRun(usual).gasLitres).toBeUndefined();
    expect(planRun({ ...usual, ...kiln, kind: "drying" }).gasLitres).toBeUndefined();
  });

  it("gives the room that the moist sample takes, and holds the vessel's material against oven and kiln", () => {
    expect(planRun({ ...usual, bulkDensity: 0.2 }).millilitres).toBeCloseTo(4.86 / 0.2, 9);
    expect(planRun(usual).millilitres).toBeUndefined();
    const tin = { vesselMaterial: "tinned steel" };
    expect(planRun({ ...usual, ...tin, kilnCelsius: 230, celsiusPerMinute: 3 }).tooHot).toBeUndefined();
    expect(planRun({ ...usual, ...tin, kilnCelsius: 231, celsiusPerMinute: 3 }).tooHot).toMatchObject({
      celsius: 231,
      material: { standsCelsius: 230 },
    });
    expect(planRun({ ...usual, ...tin, ovenCelsius: 240 }).tooHot).toMatchObject({ celsius: 240 });
    expect(planRun({ ...usual, kilnCelsius: 1200, celsiusPerMinute: 3 }).tooHot).toBeUndefined();
  });

  it("adds drying, firings and cooling up to when the run is done, once the cooling is known", () => {
    const kiln = { kilnCelsius: 450, celsiusPerMinute: 2.15, holdMinutes: 60 };
    // 150 min of drying and 3 times (430 / 2.15 + 60 + 300) min
    expect(planRun({ ...usual, ...kiln, coolingHours: 5, charFirings: 3 }).totalMinutes).toBeCloseTo(150 + 3 * 560, 9);
    expect(planRun({ ...usual, ...kiln }).totalMinutes).toBeUndefined();
  });

  it.each([
    // moist, 30, 60, 90, 120 min, and one more that confirms
    [2, 30, 6, 150],
    [1.6, 30, 6, 150],
    // 2.1 h is three times 42 min, which binary arithmetic misses by a hair
    [2.1, 42, 5, 168],
    [0, 60, 3, 120],
    // As many as a run sheet has rows for
    [29, 30, 60, 1770],
  ])("counts weigh-ins for %s h of drying every %s min: %s in %s min", (dryingHours, intervalMinutes, weighIns, dryingMinutes) => {
    expect(planRun({ ...usual, dryingHours, intervalMinutes })).toMatchObject({ weighIns, dryingMinutes });
  });

  it("adds up heating and hold, up or down, from 20 °C when nothing else is said, and gives no programme without a kiln", () => {
    expect(planRun(usual).programmeMinutes).toBeUndefined();
    expect(planRun({ ...usual, holdMinutes: 60, celsiusPerMinute: 3 }).programmeMinutes).toBeUndefined();
    // The second leg of 20 to 105 °C at 5 °C/min, 120 min, to 600 °C at 3 °C/min, 60 min (362 min in all): 165 + 60
    expect(planRun({ ...usual, kilnCelsius: 600, celsiusPerMinute: 3, holdMinutes: 60, startCelsius: 105 }).programmeMinutes).toBe(225);
    expect(planRun({ ...usual, kilnCelsius: 105, celsiusPerMinute: 5, holdMinutes: 120 }).programmeMinutes).toBe(137);
    expect(planRun({ ...usual, kilnCelsius: 100, celsiusPerMinute: 5, startCelsius: 300 }).programmeMinutes).toBe(40);
  });

  it.each([
    [{ readability: Number.NaN }, "readability: nothing is not between 0.000001 and 100 g. Give a number in between."],
    [{ wantedUncertainty: 0.5 }, "wanted uncertainty: 0.5 is not between 0.00001 and 0.1. Give a number in between."],
    [{ wantedUncertainty: 0 }, "wanted uncertainty: 0 is not between 0.00001 and 0.1. Give a number in between."],
    [{ expectedLoss: 30 }, "expected loss: 30 is not between 0 and 1. Give a number in between."],
    [{ moisture: 50 }, "expected moisture: 50 is not between 0 and 0.95. Give a number in between."],
    [{ moisture: Number.NaN }, "expected moisture: nothing is not between 0 and 0.95. Give a number in between."],
    [{ samples: 7 }, "replicates: 7 is not between 1 and 6. Give a number in between."],
    [{ repeatability: -0.01 }, "repeatability: -0.01 g is not between 1e-7 and 100 g. Give a number in between."],
    [{ methodScatter: 0.3 }, "scatter between samples: 0.3 is not between 0.000001 and 0.1. Give a number in between."],
    [{ molarMass: 0.025 }, "mean molar mass: 0.025 g/mol is not between 2 and 300 g/mol. Give a number in between."],
    [{ bulkDensity: 200 }, "bulk density: 200 g/mL is not between 0.01 and 5 g/mL. Give a number in between."],
    [{ kilnCelsius: 450, celsiusPerMinute: 5, coolingHours: -1 }, "cooling: -1 h is not between 0 and 240 h. Give a number in between."],
    [
      { samples: 3, methodScatter: 0.0015 },
      "scatter between samples: alone it is more than 3 samples can average to the wanted uncertainty. Take 4 samples, or allow a wider uncertainty.",
    ],
    [
      { samples: 2, methodScatter: 0.05 },
      "scatter between samples: alone it is more than 2 samples can average to the wanted uncertainty. Allow a wider uncertainty.",
    ],
    [{ intervalMinutes: 0 }, "interval: 0 min is not between 1 and 1440 min. Give a number in between."],
    [{ dryingHours: -1 }, "drying time: -1 h is not between 0 and 720 h. Give a number in between."],
    [{ dryingHours: 40 }, "interval: every 30 min for 40 h makes 82 weigh-ins, more than the 60 of a run sheet. Take a longer interval."],
    [{ kilnCelsius: 450 }, "heating rate: nothing here, though a kiln temperature is given. Give degrees Celsius per minute."],
    [{ kilnCelsius: 450, celsiusPerMinute: 0 }, "heating rate: 0 °C/min is not between 0.01 and 1000 °C/min. Give a number in between."],
    [{ kilnCelsius: 4500, celsiusPerMinute: 5 }, "kiln temperature: 4500 °C is not between 20 and 1800 °C. Give a number in between."],
    [{ kilnCelsius: 450, celsiusPerMinute: 5, holdMinutes: -5 }, "hold: -5 min is not between 0 and 43200 min. Give a number in between."],
    [
      { kilnCelsius: 450, celsiusPerMinute: 5, startCelsius: Number.NaN },
      "start temperature: nothing is not between -40 and 1800 °C. Give a number in between.",
    ],
  ])("refuses %j", (wrong, message) => {
    expect(() => planRun({ ...usual, ...wrong })).toThrow(expect.objectContaining({ name: "InputProblem", message }));
  });
});
