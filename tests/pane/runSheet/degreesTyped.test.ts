import { asDegrees, followDegrees, ovenLabel, type Holds } from "../../../src/pane/runSheet/degreesTyped";
import { readRunPlanForm } from "../../../src/pane/runSheet/runPlanForm";
import { readRunSheetForm, type RunSheetForm } from "../../../src/pane/runSheet/runSheetForm";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";

const FORM: RunSheetForm = {
  ...({ kind: "charring", readability: "0.01", intervalMinutes: "30", weighIns: "8", replicates: "1", samplesAre: "repeats" } as const),
  ...({ charFirings: "3", ashFirings: "2", receivers: "1", stages: "4", formula: "", residue: "", ovenCelsius: "", degrees: "C" } as const),
  ...({ timing: "clock", vessel: "tin", panZeros: false, temperatures: false } as const),
};

/** What a box shows after each choice of a unit in turn. */
function shown(typed: string, holds: Holds, ...choices: readonly ("C" | "F")[]): string[] {
  const control = { value: typed };
  const follow = followDegrees([{ control, holds }], "C");
  return choices.map((degrees) => {
    follow(degrees);
    return control.value;
  });
}

describe("followDegrees()", () => {
  // F = 1.8 C + 32, worked by hand; a rate has no zero point.
  it.each<[string, Holds, string]>([
    ["105", "temperature", "221"],
    ["37.5", "temperature", "99.5"],
    ["107,2", "temperature", "224.96"],
    ["-40", "temperature", "-40"],
    ["3", "rate", "5.4"],
    ["", "temperature", ""],
    ["hot", "temperature", "hot"],
  ])("writes %j, a %s, as %j", (typed, holds, fahrenheit) => expect(shown(typed, holds, "F")).toEqual([fahrenheit]));

  it("gives back what was typed when the choice comes back, to the letter", () => {
    expect(shown("107,2", "temperature", "F", "C", "C", "F")).toEqual(["224.96", "107,2", "107,2", "224.96"]);
  });

  it("converts what was typed anew in the other unit", () => {
    const control = { value: "105" };
    const follow = followDegrees([{ control, holds: "temperature" }], "C");
    follow("F");
    control.value = "212";
    follow("C");
    expect(control.value).toBe("100");
  });
});

describe("the oven's temperature in degrees Fahrenheit", () => {
  it("goes onto the sheet as it was typed", () => {
    for (const typed of ["225", "221", "230.5", "572"]) {
      const outcome = readRunSheetForm({ ...FORM, degrees: "F", ovenCelsius: typed });
      if ("problem" in outcome) throw new Error(outcome.problem);
      const { cells } = buildRunSheet(outcome.options);
      expect(cells.filter(({ content }) => content === Number(typed)).map(({ style }) => style)).toContain("runBox");
    }
  });

  it("is held to its bounds in its own unit, and named by it", () => {
    expect(readRunSheetForm({ ...FORM, degrees: "F", ovenCelsius: "600" })).toEqual({
      problem: "Oven (°F): 600 °F is not between 68 and 572 °F. Give a number in between.",
      field: "ovenCelsius",
    });
    expect(readRunSheetForm({ ...FORM, degrees: "F", ovenCelsius: "hot" })).toMatchObject({
      problem: expect.stringMatching(/^Oven \(°F\): "hot"/) as string,
    });
    expect([ovenLabel("F"), asDegrees("F"), asDegrees("C")]).toEqual(["Oven (°F)", "F", "C"]);
  });

  it("reaches the plan in degrees Celsius, so that a vessel is held against it", () => {
    const plan = {
      wantedUncertainty: "0.5",
      expectedMoisture: "50",
      expectedLoss: "",
      dryingHours: "3",
      kiln: "",
      heatingRate: "",
      holdMinutes: "",
      coolingHours: "",
    };
    const more = { repeatability: "", methodScatter: "", bulkDensity: "", molarMass: "", vesselMaterial: "", beginAt: "" };
    const outcome = readRunPlanForm({ ...FORM, ...plan, ...more, degrees: "F", ovenCelsius: "221" });
    if ("problem" in outcome) throw new Error(outcome.problem);
    expect(outcome.wanted.ovenCelsius).toBeCloseTo(105, 10);
  });
});
