import { readingUncertainty } from "../../../src/confidence/readingUncertainty";
import { type PlanOutcome, readRunPlanForm, type RunPlanForm } from "../../../src/pane/runSheet/runPlanForm";
import { runPlanText } from "../../../src/pane/runSheet/runPlanText";
import { planRun } from "../../../src/runsheet/planning/planRun";

const FORM: RunPlanForm = {
  kind: "charring",
  readability: "0.01",
  intervalMinutes: "30",
  wantedUncertainty: "0.5",
  expectedLoss: "70",
  dryingHours: "3",
  kilnCelsius: "450",
  celsiusPerMinute: "3",
  holdMinutes: "60",
};

const NO_KILN = { kilnCelsius: "", celsiusPerMinute: "", holdMinutes: "" } as const;

const withTyped = (typed: Partial<RunPlanForm>): PlanOutcome => readRunPlanForm({ ...FORM, ...typed });

describe("readRunPlanForm(form)", () => {
  test("hands percent on as fractions and plans the run", () => {
    const wanted = {
      readability: 0.01,
      intervalMinutes: 30,
      wantedUncertainty: 0.005,
      expectedLoss: 0.7,
      dryingHours: 3,
      kilnCelsius: 450,
      celsiusPerMinute: 3,
      holdMinutes: 60,
      startCelsius: 20,
    };
    expect(readRunPlanForm(FORM)).toEqual({ wanted, plan: planRun(wanted) });
  });

  test("plans for the loss that asks for the largest sample when the expected loss is blank", () => {
    expect(withTyped({ expectedLoss: "" })).toHaveProperty("wanted.expectedLoss", 0);
    const smallest = (outcome: PlanOutcome): number => ("plan" in outcome ? outcome.plan.smallestSampleGrams : Number.NaN);
    const forAny = smallest(withTyped({ expectedLoss: "" }));
    for (const loss of ["5", "30", "50", "70", "100"]) expect(smallest(withTyped({ expectedLoss: loss }))).toBeLessThanOrEqual(forAny);
  });

  test("plans no kiln for a run that ends with drying, whatever its boxes still hold", () => {
    expect(withTyped({ kind: "drying", kilnCelsius: "hot" })).toHaveProperty("plan.programmeMinutes", undefined);
    expect(withTyped({ kind: "drying" })).not.toHaveProperty("wanted.kilnCelsius");
  });

  test("plans no kiln while all its boxes are blank", () => {
    expect(withTyped(NO_KILN)).toHaveProperty("plan.programmeMinutes", undefined);
  });

  test.each<[Partial<RunPlanForm>, string, string | undefined]>([
    [{ wantedUncertainty: "" }, "Uncertainty (± %): nothing here. Type a value such as 0.5.", "wantedUncertainty"],
    [{ wantedUncertainty: "25" }, "Uncertainty (± %): 25 % is not between 0.001 and 10 %. Give a number in between.", "wantedUncertainty"],
    [{ wantedUncertainty: "0" }, "Uncertainty (± %): 0 % is not between 0.001 and 10 %. Give a number in between.", "wantedUncertainty"],
    [{ expectedLoss: "101" }, "Expected loss (%): 101 % is not between 0 and 100 %. Give a number in between.", "expectedLoss"],
    [{ expectedLoss: "-1" }, "Expected loss (%): -1 % is not between 0 and 100 %. Give a number in between.", "expectedLoss"],
    [{ expectedLoss: "70 %" }, 'Expected loss (%): "70 %" is not a number. Type digits, such as 30 or 0.01.', "expectedLoss"],
    [{ dryingHours: "" }, "Drying time (h): nothing here. Type a value such as 3.", "dryingHours"],
    [{ dryingHours: "721" }, "drying time: 721 h is not between 0 and 720 h. Give a number in between.", "dryingHours"],
    [{ kilnCelsius: "2000" }, "kiln temperature: 2000 °C is not between 20 and 1800 °C. Give a number in between.", "kilnCelsius"],
    [{ kilnCelsius: "" }, "Kiln (°C): nothing here, though a heating rate or a hold is given. Give the temperature or clear them.", "kilnCelsius"],
    [
      { ...NO_KILN, holdMinutes: "60" },
      "Kiln (°C): nothing here, though a heating rate or a hold is given. Give the temperature or clear them.",
      "kilnCelsius",
    ],
    [
      { celsiusPerMinute: "" },
      "heating rate: nothing here, though a kiln temperature is given. Give degrees Celsius per minute.",
      "celsiusPerMinute",
    ],
    [{ holdMinutes: "-5" }, "hold: -5 min is not between 0 and 43200 min. Give a number in between.", "holdMinutes"],
    [{ intervalMinutes: "soon" }, 'Minutes apart: "soon" is not a number. Type digits, such as 30 or 0.01.', undefined],
    [
      { intervalMinutes: "1" },
      "interval: every 1 min for 3 h makes 182 weigh-ins, more than the 60 of a run sheet. Take a longer interval.",
      undefined,
    ],
  ])("says under its box what is wrong with %j", (typed, problem, field) => {
    expect(withTyped(typed)).toEqual({ problem, field });
  });

  // The pane words these two bounds itself, in percent; they must be the plan's own.
  test.each([
    ["wantedUncertainty", "0.001"],
    ["wantedUncertainty", "10"],
    ["expectedLoss", "0"],
    ["expectedLoss", "100"],
  ] as const)("takes the outermost %s that the plan takes, %s %%", (field, typed) => {
    expect(withTyped({ [field]: typed })).toHaveProperty("plan");
    const beyond = Number(typed) / 100 + (Number(typed) < 1 ? -1e-6 : 1e-6);
    const read = withTyped({});
    if ("problem" in read) throw new Error(read.problem);
    expect(() => planRun({ ...read.wanted, [field]: beyond })).toThrow("is not between");
  });
});

describe("runPlanText(outcome)", () => {
  test("says sample, weigh-ins and kiln time", () => {
    expect(runPlanText(readRunPlanForm(FORM)).map((line) => line.replaceAll("\u00a0", " "))).toEqual([
      "Weigh in at least 2.06 g of sample. The display's rounding alone asks for that; where repeat weighings scatter by one display step, take three times as much.",
      "8 weigh-ins, 30 min apart, take 3 h 30 min: the moist one, one after each interval until dry, and one more to confirm.",
      "The kiln runs for 3 h 23 min from 20 °C to the end of its programme. Cooling comes on top.",
    ]);
  });

  test("says nothing of a kiln that is not planned", () => {
    expect(runPlanText(withTyped(NO_KILN))).toHaveLength(2);
  });

  // GUM, combined uncertainty: a scatter of one step adds to the rounding; "three times" must cover it, and no more than needed.
  test("rounds up what a scatter of one display step asks for", () => {
    const times =
      readingUncertainty({ readability: 0.01, tared: true, repeatability: 0.01 }) / readingUncertainty({ readability: 0.01, tared: true });
    expect(Math.ceil(times)).toBe(3);
  });

  test("points at the marked box, or says what is wrong with an entry of the form", () => {
    expect(runPlanText(withTyped({ expectedLoss: "101" }))).toEqual(["Mend the marked entry to see the plan."]);
    expect(runPlanText(withTyped({ intervalMinutes: "soon" }))).toEqual(['Minutes apart: "soon" is not a number. Type digits, such as 30 or 0.01.']);
  });
});
