import { readingUncertainty } from "../../../src/confidence/readingUncertainty";
import { type PlanMade, type PlanOutcome, readRunPlanForm, type RunPlanForm } from "../../../src/pane/runSheet/runPlanForm";
import { runPlanText } from "../../../src/pane/runSheet/runPlanText";
import { planRun } from "../../../src/runsheet/planning/planRun";

const FORM: RunPlanForm = {
  kind: "charring",
  readability: "0.01",
  intervalMinutes: "30",
  replicates: "1",
  samplesAre: "repeats",
  charFirings: "3",
  ovenCelsius: "",
  degrees: "C",
  wantedUncertainty: "0.5",
  expectedMoisture: "50",
  expectedLoss: "70",
  dryingHours: "3",
  kiln: "450",
  heatingRate: "3",
  holdMinutes: "60",
  coolingHours: "",
  repeatability: "",
  methodScatter: "",
  bulkDensity: "",
  molarMass: "",
  vesselMaterial: "",
  beginAt: "",
};

const NO_KILN = { kiln: "", heatingRate: "", holdMinutes: "" } as const;

const withTyped = (typed: Partial<RunPlanForm>): PlanOutcome => readRunPlanForm({ ...FORM, ...typed });

/** The plan of a form that makes one. */
function made(typed: Partial<RunPlanForm> = {}): PlanMade {
  const outcome = withTyped(typed);
  if ("problem" in outcome) throw new Error(outcome.problem);
  return outcome;
}

describe("a number that is likely of another unit", () => {
  const KILN = { kiln: "450" };
  test.each<[Partial<RunPlanForm>, string]>([
    [{ ...KILN, heatingRate: "600" }, "Heating (°C/min): 600 may be 600 °C/min or 600 °C/h. Type 10, or 600 °C/min with its unit."],
    [{ ...KILN, heatingRate: "60" }, "Heating (°C/min): 60 may be 60 °C/min or 60 °C/h. Type 1, or 60 °C/min with its unit."],
    [
      { kiln: "842", degrees: "F", heatingRate: "100" },
      "Heating (°F/min): 100 may be 100 °F/min or 100 °F/h. Type 1.67, or 100 °F/min with its unit.",
    ],
    [{ holdMinutes: "1" }, "Hold (min): 1 may be 1 min or 1 h. Type 60, or 1 min with its unit."],
    [{ holdMinutes: "0,5" }, "Hold (min): 0.5 may be 0.5 min or 0.5 h. Type 30, or 0.5 min with its unit."],
    [{ repeatability: "10" }, "Repeatability (g): 10 may be 10 g or 10 mg. Type 0.01, or 10 g with its unit."],
    [{ repeatability: "20", kind: "drying" }, "Repeatability (g): 20 may be 20 g or 20 mg. Type 0.02, or 20 g with its unit."],
    [{ readability: "0.0001", repeatability: "0.2" }, "Repeatability (g): 0.2 may be 0.2 g or 0.2 mg. Type 0.0002, or 0.2 g with its unit."],
  ])("%j is asked about", (typed, problem) => {
    expect(withTyped(typed)).toEqual({ problem, field: Object.keys(typed).find((name) => problem.includes(LABELS[name] ?? "-")) });
    expect(runPlanText(withTyped(typed))).toEqual(["Mend the marked entry to see the plan."]);
  });

  const LABELS: Readonly<Record<string, string>> = { heatingRate: "Heating (", holdMinutes: "Hold (", repeatability: "Repeatability (" };

  test.each<[Partial<RunPlanForm>]>([
    [{ heatingRate: "600 °C/min" }],
    [{ heatingRate: "60/min" }],
    [{ heatingRate: "20" }],
    [{ holdMinutes: "1 min" }],
    [{ holdMinutes: "0" }],
    [{ holdMinutes: "30 minutes" }],
    [{ repeatability: "10 g" }],
    [{ repeatability: "0.1" }],
    [{ kind: "drying", heatingRate: "600", holdMinutes: "1" }],
  ])("%j is taken", (typed) => {
    expect(withTyped(typed)).not.toHaveProperty("problem");
  });

  const SPELLINGS = {
    dryingHours: ["h", "H", "hour", "hours"],
    coolingHours: ["h", "H", "hour", "hours"],
    heatingRate: ["°C/min", "C/MIN", "° C / min", "K per min", "/min", "F/min"],
    holdMinutes: ["min", "MIN", "minute", "minutes"],
    repeatability: ["g", "G"],
  } as const;
  const DOUBTED = { dryingHours: "30", coolingHours: "30", heatingRate: "60", holdMinutes: "1", repeatability: "10" } as const;

  test.each(Object.entries(SPELLINGS))("%s is taken with its unit however that is spelt and spaced, and asked about without", (field, units) => {
    const number = DOUBTED[field as keyof typeof DOUBTED];
    const outcome = (typed: string): PlanOutcome => withTyped({ intervalMinutes: "240", [field]: typed });
    for (const unit of units)
      for (const typed of [`${number}${unit}`, `${number} ${unit}`, `  ${number}   ${unit.replaceAll(" ", "  ")} `, `${number}\u00a0${unit}`])
        expect([typed, outcome(typed)]).toEqual([typed, outcome(`${number} ${units[0]}`)]);
    expect(outcome(`${number} ${units[0]}`)).not.toHaveProperty("problem");
    for (const bare of [number, ` ${number} `])
      expect(outcome(bare)).toMatchObject({ field, problem: expect.stringContaining(" may be ") as string });
  });
});

describe("readRunPlanForm(form)", () => {
  test("hands percent on as fractions and plans the run", () => {
    const wanted = {
      kind: "charring",
      readability: 0.01,
      intervalMinutes: 30,
      samples: 1,
      samplesAre: "repeats",
      charFirings: 3,
      wantedUncertainty: 0.005,
      moisture: 0.5,
      expectedLoss: 0.7,
      dryingHours: 3,
      kilnCelsius: 450,
      celsiusPerMinute: 3,
      holdMinutes: 60,
      startCelsius: 20,
    } as const;
    expect(readRunPlanForm(FORM)).toEqual({
      wanted,
      plan: planRun(wanted),
      carried: {
        ...{ moistGrams: 4.86, dryGrams: 2.43, wantedUncertainty: 0.005, kilnSetPoint: 450 },
        ...{ expectedMoisture: 0.5, expectedLoss: 0.7, dryingHours: 3, heatingRate: 3, holdMinutes: 60 },
      },
      degrees: "C",
      beginAt: undefined,
    });
  });

  test("plans for the loss that asks for the largest sample when the expected loss is blank", () => {
    const smallest = (expectedLoss: string): number => made({ expectedLoss }).plan.smallestSampleGrams;
    for (const loss of ["5", "30", "50", "70", "100"]) expect(smallest(loss)).toBeLessThanOrEqual(smallest(""));
    expect(smallest("0")).toBe(smallest(""));
  });

  test("plans no kiln for a run that ends with drying, whatever its boxes still hold", () => {
    const { plan, wanted, carried } = made({ kind: "drying", kiln: "hot", expectedLoss: "0.7", coolingHours: "long", molarMass: "-" });
    expect(plan).toMatchObject({ programmeMinutes: undefined, gasLitres: undefined });
    expect(wanted).not.toHaveProperty("kilnCelsius");
    for (const name of ["kilnSetPoint", "heatingRate", "holdMinutes", "coolingHours", "expectedLoss", "molarMass"])
      expect(carried).not.toHaveProperty(name);
    expect(carried).toMatchObject({ dryingHours: 3, expectedMoisture: 0.5 });
  });

  test("plans no kiln while all its boxes are blank", () => {
    expect(made(NO_KILN).plan.programmeMinutes).toBeUndefined();
  });

  test("hands on to the sheet everything that was typed", () => {
    const typed = {
      ...{ replicates: "3", repeatability: "0.002", methodScatter: "0.1", vesselMaterial: "mild steel", coolingHours: "2.5" },
      ...{ bulkDensity: "0.25", molarMass: "28", beginAt: "9:30 pm" },
    };
    expect(made(typed).carried).toEqual({
      moistGrams: made(typed).plan.moistGrams,
      dryGrams: made(typed).plan.dryGrams,
      wantedUncertainty: 0.005,
      repeatability: 0.002,
      methodScatter: 0.001,
      vesselMaterial: "mild steel",
      kilnSetPoint: 450,
      ...{ coolingHours: 2.5, bulkDensity: 0.25, molarMass: 28, beginAt: 1290 },
      ...{ expectedMoisture: 0.5, expectedLoss: 0.7, dryingHours: 3, heatingRate: 3, holdMinutes: 60 },
    });
  });

  test("reads the scatter between samples only where repeats have one", () => {
    for (const typed of [{ replicates: "1" }, { replicates: "3", samplesAre: "different" }] as const)
      expect(made({ ...typed, methodScatter: "much" }).carried).not.toHaveProperty("methodScatter");
  });

  test("takes temperatures in the degrees of the form: 842 °F is 450 °C, 5.4 °F/min is 3 °C/min", () => {
    const { wanted, plan, carried } = made({ degrees: "F", kiln: "842", heatingRate: "5.4" });
    expect(wanted.kilnCelsius).toBeCloseTo(450, 9);
    expect(wanted.celsiusPerMinute).toBeCloseTo(3, 9);
    expect(plan.programmeMinutes).toBeCloseTo(430 / 3 + 60, 9);
    expect([carried.kilnSetPoint, carried.heatingRate]).toEqual([842, 5.4]);
  });

  test.each<[Partial<RunPlanForm>, string, string | undefined]>([
    [{ wantedUncertainty: "" }, "Uncertainty (± %): nothing here. Type a value such as 0.5.", "wantedUncertainty"],
    [{ wantedUncertainty: "25" }, "Uncertainty (± %): 25 % is not between 0.001 and 10 %. Give a number in between.", "wantedUncertainty"],
    [{ wantedUncertainty: "0" }, "Uncertainty (± %): 0 % is not between 0.001 and 10 %. Give a number in between.", "wantedUncertainty"],
    [{ wantedUncertainty: "-0.5" }, "Uncertainty (± %): -0.5 % is not between 0.001 and 10 %. Give a number in between.", "wantedUncertainty"],
    [{ wantedUncertainty: "0.005" }, "Uncertainty (± %): 0.005 may be 0.005 % or 0.5 %. Type 0.5, or 0.005 % with its sign.", "wantedUncertainty"],
    [{ wantedUncertainty: "0,05" }, "Uncertainty (± %): 0.05 may be 0.05 % or 5 %. Type 5, or 0.05 % with its sign.", "wantedUncertainty"],
    [{ expectedMoisture: "" }, "Expected moisture (%): nothing here. Type a value such as 50.", "expectedMoisture"],
    [{ expectedMoisture: "wet" }, 'Expected moisture (%): "wet" is not a number. Type digits, such as 30 or 0.01.', "expectedMoisture"],
    [{ expectedMoisture: "0.45" }, "Expected moisture (%): 0.45 may be 0.45 % or 45 %. Type 45, or 0.45 % with its sign.", "expectedMoisture"],
    [{ expectedMoisture: "120" }, "Expected moisture (%): 120 % is not between 0 and 95 %. Give a number in between.", "expectedMoisture"],
    [{ expectedMoisture: "-5" }, "Expected moisture (%): -5 % is not between 0 and 95 %. Give a number in between.", "expectedMoisture"],
    [{ expectedLoss: "101" }, "Expected loss (%): 101 % is not between 0 and 100 %. Give a number in between.", "expectedLoss"],
    [{ expectedLoss: "-1" }, "Expected loss (%): -1 % is not between 0 and 100 %. Give a number in between.", "expectedLoss"],
    [{ expectedLoss: "0.71" }, "Expected loss (%): 0.71 may be 0.71 % or 71 %. Type 71, or 0.71 % with its sign.", "expectedLoss"],
    [{ expectedLoss: "70 percent" }, 'Expected loss (%): "70 percent" is not a number. Type digits, such as 30 or 0.01.', "expectedLoss"],
    [
      { replicates: "3", methodScatter: "0.003" },
      "Scatter of samples (%): 0.003 may be 0.003 % or 0.3 %. Type 0.3, or 0.003 % with its sign.",
      "methodScatter",
    ],
    [
      { replicates: "3", methodScatter: "30" },
      "Scatter of samples (%): 30 % is not between 0.0001 and 10 %. Give a number in between.",
      "methodScatter",
    ],
    [
      { replicates: "3", methodScatter: "0.3" },
      "Scatter of samples (%): alone it is more than 3 samples can average to the wanted uncertainty. Take 6 samples, or allow a wider uncertainty.",
      "methodScatter",
    ],
    [{ dryingHours: "" }, "Drying time (h): nothing here. Type a value such as 3.", "dryingHours"],
    [{ dryingHours: "180" }, "Drying time (h): 180 may be 180 min or 180 h. Type 3, or 180 h with its unit.", "dryingHours"],
    [{ dryingHours: "45" }, "Drying time (h): 45 may be 45 min or 45 h. Type 0.75, or 45 h with its unit.", "dryingHours"],
    [{ coolingHours: "90" }, "Cooling (h): 90 may be 90 min or 90 h. Type 1.5, or 90 h with its unit.", "coolingHours"],
    [{ dryingHours: "long h" }, 'Drying time (h): "long h" is not a number. Type digits, such as 30 or 0.01.', "dryingHours"],
    [{ readability: "1000" }, "Readability: 1000 g is not between 0.000001 and 100 g. Give a number in between.", undefined],
    [{ intervalMinutes: "2000" }, "Minutes apart: 2000 min is not between 1 and 1440 min. Give a number in between.", undefined],
    [{ replicates: "9" }, "Samples: 9 is not between 1 and 6. Give a number in between.", undefined],
    [{ dryingHours: "721 h" }, "Drying time (h): 721 h is not between 0 and 720 h. Give a number in between.", "dryingHours"],
    [{ kiln: "2000" }, "Kiln (°C): 2000 °C is not between 20 and 1800 °C. Give a number in between.", "kiln"],
    [{ kiln: "" }, "Kiln (°C): nothing here, though a heating rate or a hold is given. Give the temperature or clear them.", "kiln"],
    [
      { ...NO_KILN, holdMinutes: "60" },
      "Kiln (°C): nothing here, though a heating rate or a hold is given. Give the temperature or clear them.",
      "kiln",
    ],
    [{ heatingRate: "" }, "Heating (°C/min): nothing here, though a kiln temperature is given. Give degrees Celsius per minute.", "heatingRate"],
    [{ degrees: "F", heatingRate: "" }, "Heating (°F/min): nothing here, though a kiln temperature is given. Give the rate.", "heatingRate"],
    [{ degrees: "F", kiln: "60" }, "Kiln (°F): 60 °F is not between 68 and 3272 °F. Give a number in between.", "kiln"],
    [{ degrees: "F", heatingRate: "0" }, "Heating (°F/min): 0 °F/min is not between 0.018 and 1800 °F/min. Give a number in between.", "heatingRate"],
    [{ holdMinutes: "-5" }, "Hold (min): -5 min is not between 0 and 43200 min. Give a number in between.", "holdMinutes"],
    [{ coolingHours: "-1" }, "Cooling (h): -1 h is not between 0 and 240 h. Give a number in between.", "coolingHours"],
    [{ repeatability: "0" }, "Repeatability (g): 0 g is not between 1e-7 and 100 g. Give a number in between.", "repeatability"],
    [{ bulkDensity: "200" }, "Bulk density (g/mL): 200 g/mL is not between 0.01 and 5 g/mL. Give a number in between.", "bulkDensity"],
    [{ molarMass: "1" }, "Vapour (g/mol): 1 g/mol is not between 2 and 300 g/mol. Give a number in between.", "molarMass"],
    [{ beginAt: "9.30" }, 'Begin at (h:mm): "9.30" is a bare number, no clock time. Type 9:30 if you mean that.', "beginAt"],
    [
      { beginAt: "24:00" },
      'Begin at (h:mm): "24:00" is no clock time: hours go from 0 to 23. Type midnight as 0:00, with a date as 0:01.',
      "beginAt",
    ],
    [{ intervalMinutes: "soon" }, 'Minutes apart: "soon" is not a number. Type digits, such as 30 or 0.01.', undefined],
    [
      { intervalMinutes: "1" },
      "Minutes apart: every 1 min for 3 h makes 182 weigh-ins, more than the 60 of a run sheet. Take a longer interval.",
      undefined,
    ],
  ])("says under its box what is wrong with %j", (typed, problem, field) => {
    expect(withTyped(typed)).toEqual({ problem, field });
  });

  test("takes many hours with their unit, and a day without it", () => {
    expect(made({ dryingHours: "180 h", intervalMinutes: "240" }).wanted.dryingHours).toBe(180);
    expect(made({ dryingHours: "24", coolingHours: "36 hours" }).wanted).toMatchObject({ dryingHours: 24, coolingHours: 36 });
  });

  test("asks about weighings that are unlikely far apart, and plans all the same", () => {
    const question = (typed: Partial<RunPlanForm>): string | undefined => runPlanText(withTyped(typed)).find((line) => line.startsWith("?"));
    expect(question({ intervalMinutes: "1200", dryingHours: "24" })).toBe(
      "? Minutes apart: 1200 min are 20 h between two weighings. Type minutes, fewer if seconds were meant.",
    );
    expect(question({ intervalMinutes: "240", dryingHours: "3" })).toBe(
      "? Minutes apart: 240 min are longer than the 3 h of Drying time (h). Look at both.",
    );
    expect([question({}), question({ intervalMinutes: "480", dryingHours: "24" }), question({ dryingHours: "0" })]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  test.each([
    [{ expectedLoss: "0.71 %" }, { expectedLoss: 0.0071 }],
    [{ expectedLoss: "71%" }, { expectedLoss: 0.71 }],
    [{ expectedMoisture: " 0.5% " }, { moisture: 0.005 }],
    [{ wantedUncertainty: "0.05 %" }, { wantedUncertainty: 0.0005 }],
    [{ expectedLoss: "0" }, { expectedLoss: 0 }],
    [{ expectedLoss: "1" }, { expectedLoss: 0.01 }],
    [{ wantedUncertainty: "0.1" }, { wantedUncertainty: 0.001 }],
  ])("takes %j as percent", (typed, wanted) => {
    const read: Record<string, unknown> = { ...made(typed).wanted };
    for (const [name, share] of Object.entries(wanted)) expect(read[name]).toBeCloseTo(share, 12);
  });

  // The pane words these bounds itself, in percent; they must be the plan's own.
  test.each([
    ["wantedUncertainty", "wantedUncertainty", "0.001%"],
    ["wantedUncertainty", "wantedUncertainty", "10"],
    ["expectedMoisture", "moisture", "0"],
    ["expectedMoisture", "moisture", "95"],
    ["expectedLoss", "expectedLoss", "0"],
    ["expectedLoss", "expectedLoss", "100"],
  ] as const)("takes the outermost %s that the plan takes", (field, name, typed) => {
    const { wanted } = made({ [field]: typed });
    const share = wanted[name] ?? NaN;
    const step = share < 1e-4 ? -1e-6 : 1e-6;
    expect(() => planRun({ ...wanted, [name]: share + step })).toThrow("is not between");
  });
});

describe("runPlanText(outcome)", () => {
  const said = (typed: Partial<RunPlanForm> = {}): string[] => runPlanText(withTyped(typed)).map((line) => line.replaceAll("\u00a0", " "));

  test("says sample, weigh-ins, kiln time and gas", () => {
    expect(said()).toEqual([
      "Weigh in at least 4.86 g of moist sample: about 2.43 g when dry. The display's rounding alone asks for that; where repeat weighings scatter by one display step, take three times as much.",
      "8 weigh-ins, 30 min apart, take 3 h 30 min: the moist one, one after each interval until dry, and one more to confirm.",
      "The kiln runs for 3 h 23 min from 20 °C to the end of its programme. Cooling comes on top, and each firing again as long.",
      "Expect about 4 litres of hot, toxic, flammable gas at that temperature (ideal gas of 25 g/mol, common practice, no source). Vents are not sized here.",
    ]);
  });

  test("says of repeats what their factor and the chance in it ask for", () => {
    expect(said({ replicates: "3" })[0]).toBe(
      "Weigh in at least 10.4 g of moist sample into each of 3 vessels: about 5.2 g when dry. The display's rounding alone asks for that; where repeat weighings scatter by one display step, take three times as much. The ± of 3 repeats takes the factor 4.30 (Student's t), met in 95 of 100 runs. That is 2.1 times what one sample alone would need.",
    );
    expect(said({ replicates: "6" })[0]).toMatch(/The ± of 6 repeats takes the factor 2\.57 \(Student's t\), met in 95 of 100 runs\.$/);
    expect(said({ replicates: "3", samplesAre: "different" })[0]).not.toContain("repeats takes");
  });

  test.each([
    [{ repeatability: "0.02" }, "The balance's repeatability asks for that, more than its display."],
    [{ repeatability: "0.001" }, "The display's rounding asks for that, more than the repeatability."],
    [
      { replicates: "4", methodScatter: "0.18" },
      "The scatter between samples asks for that, more than the balance: more samples help further than more of each.",
    ],
  ])("says what sets the sample of %j", (typed, words) => {
    expect(said(typed)[0]).toContain(words);
  });

  test("says how much room the sample takes, and when the vessel does not stand the heat", () => {
    expect(said({ bulkDensity: "0.2" })[0]).toContain(" Loosely filled that is about 24 mL in each vessel. ");
    expect(said({ vesselMaterial: "tinned steel" })[2]).toBe("▲ 450 °C is above the 230 °C that tinned steel stands. Change vessel or programme.");
    expect(said({ vesselMaterial: "tinned steel", degrees: "F", kiln: "842", heatingRate: "5.4" })[2]).toBe(
      "▲ 842 °F is above the 446 °F that tinned steel stands. Change vessel or programme.",
    );
    expect(said({ vesselMaterial: "stainless steel 18/8" })).toHaveLength(4);
  });

  test("says when the run is done once the cooling is known, and by the clock once the start is", () => {
    // 210 min of drying and 3 times (203.33 + 300) min: 1720 min
    expect(said({ coolingHours: "5" })[2]).toBe(
      "The kiln runs for 3 h 23 min from 20 °C to the end of its programme, with 5 h to cool: 3 firings and the drying take 28 h 40 min.",
    );
    expect(said({ coolingHours: "5", beginAt: "9:00", kind: "ashing" })[2]).toMatch(
      /take 28 h 40 min\. Begun at 9:00, done about 13:40, 1 day later\. Ashing comes on top\.$/,
    );
    expect(said({ coolingHours: "5", charFirings: "1", beginAt: "9:00" })[2]).toMatch(/: 1 firing and the drying take .* done about 20:53\.$/);
  });

  test("says the gas of any loss as a bound, and by the molar mass that is given", () => {
    expect(said({ expectedLoss: "" })[3]).toMatch(/^Expect up to 7.8 litres /);
    expect(said({ molarMass: "40" })[3]).toBe(
      "Expect about 2.5 litres of hot, toxic, flammable gas at that temperature (ideal gas of 40 g/mol as given). Vents are not sized here.",
    );
  });

  test("says nothing of a kiln that is not planned", () => {
    expect(said(NO_KILN)).toHaveLength(2);
  });

  // GUM, combined uncertainty: a scatter of one step adds to the rounding; "three times" must cover it, and no more than needed.
  test("rounds up what a scatter of one display step asks for", () => {
    const times =
      readingUncertainty({ readability: 0.01, tared: true, repeatability: 0.01 }) / readingUncertainty({ readability: 0.01, tared: true });
    expect(Math.ceil(times)).toBe(3);
  });

  test("points at the marked box, or says what is wrong with an entry of the form", () => {
    expect(said({ expectedLoss: "101" })).toEqual(["Mend the marked entry to see the plan."]);
    expect(said({ intervalMinutes: "soon" })).toEqual(['Minutes apart: "soon" is not a number. Type digits, such as 30 or 0.01.']);
  });
});
