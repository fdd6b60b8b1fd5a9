import { planRun, type RunWanted } from "../../src/runsheet/planning/planRun";

const usual: RunWanted = { readability: 0.01, wantedUncertainty: 0.005, expectedLoss: 0.3, intervalMinutes: 30, dryingHours: 2 };

describe("planRun(wanted)", () => {
  it("gives the smallest sample that keeps the loss within the wanted uncertainty", () => {
    // u = sqrt(2 / 12) * 0.01 g = 0.00408248 g; 2 * u * sqrt(0.7^2 + 1 + 0.3^2) / 0.005 = 2 * 0.00408248 * 1.256981 / 0.005
    expect(planRun(usual).smallestSampleGrams).toBeCloseTo(2.05264, 5);
  });

  it("asks for twice the sample for half the uncertainty, and for a tenth on a balance ten times finer", () => {
    const { smallestSampleGrams: grams } = planRun(usual);
    expect(planRun({ ...usual, wantedUncertainty: 0.0025 }).smallestSampleGrams).toBeCloseTo(2 * grams, 9);
    expect(planRun({ ...usual, readability: 0.001 }).smallestSampleGrams).toBeCloseTo(grams / 10, 9);
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
