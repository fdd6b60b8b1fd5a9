import type { RunKind } from "../../../src/runsheet/options/RunSheetOptions";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { planText, readRunSheetForm, type FieldName, type FormOutcome, type RunSheetForm } from "../../../src/pane/runSheet/runSheetForm";

const FORM: RunSheetForm = {
  kind: "charring",
  weighIns: "8",
  intervalMinutes: "30",
  readability: "0.01",
  vessel: "lidded steel tin",
  replicates: "2",
  samplesAre: "repeats",
  charFirings: "3",
  ashFirings: "2",
  receivers: "1",
  stages: "4",
  formula: "",
  residue: "",
  ovenCelsius: "",
  degrees: "C",
  timing: "clock",
  panZeros: false,
  temperatures: false,
};

const withField = (field: FieldName, typed: string): FormOutcome => readRunSheetForm({ ...FORM, [field]: typed });

describe("readRunSheetForm(form)", () => {
  test("plans the sheet that the form asks for", () => {
    const outcome = readRunSheetForm(FORM);
    expect(outcome).toMatchObject({
      options: { kind: "charring", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded steel tin", replicates: 2 },
    });
    if ("problem" in outcome) throw new Error(outcome.problem);
    expect(buildRunSheet(outcome.options).cells.length).toBeGreaterThan(0);
  });

  test("leaves the oven temperature out when its box is blank, and takes it when given", () => {
    expect(readRunSheetForm(FORM)).not.toHaveProperty("options.ovenCelsius");
    expect(withField("ovenCelsius", "105")).toHaveProperty("options.ovenCelsius", 105);
  });

  test("carries on what is chosen of samples, firings, degrees and timing", () => {
    expect(readRunSheetForm({ ...FORM, samplesAre: "different", charFirings: "4", ashFirings: "1", degrees: "F", timing: "minutes" })).toMatchObject({
      options: { samplesAre: "different", charFirings: 4, ashFirings: 1, degrees: "F", timing: "minutes" },
    });
  });

  test("asks for the extra columns that are ticked, and no others", () => {
    const ticked = (extras: Partial<RunSheetForm>): unknown => (readRunSheetForm({ ...FORM, ...extras }) as { options: unknown }).options;
    expect(ticked({ panZeros: true })).toHaveProperty("panZeros", true);
    expect(ticked({ panZeros: true })).toHaveProperty("temperatures", false);
    expect(ticked({ temperatures: true })).toHaveProperty("temperatures", true);
    expect(ticked({})).toHaveProperty("panZeros", false);
  });

  test("carries on the formulas of a salt, held to chemistry, and to no other kind", () => {
    const asked = (kind: RunKind, formula: string, residue: string) => {
      const outcome = readRunSheetForm({ ...FORM, kind, formula, residue });
      return "problem" in outcome ? [outcome.field, outcome.problem] : [outcome.options.formula, outcome.options.residue];
    };
    expect(asked("salt", " CuSO4·5H2O ", "CuSO4")).toEqual(["CuSO4·5H2O", "CuSO4"]);
    expect(asked("salt", "", "")).toEqual([undefined, undefined]);
    expect(asked("charring", "CuSO4·5H2O", "lime")).toEqual([undefined, undefined]);
    expect(asked("salt", "CaCo3", "CaO")[0]).toBe("formula");
    expect(asked("salt", "CaCO3", "MgO")[0]).toBe("residue");
  });

  test("carries on receivers to a run with liquids caught, and stages to staged heating, and to no other kind", () => {
    const asked = (kind: RunSheetForm["kind"]): object => {
      const outcome = readRunSheetForm({ ...FORM, kind, receivers: "3", stages: "7" });
      if ("problem" in outcome) throw new Error(outcome.problem);
      return outcome.options;
    };
    expect(asked("liquids")).toMatchObject({ kind: "liquids", receivers: 3 });
    expect(asked("staged")).toMatchObject({ kind: "staged", stages: 7 });
    expect([asked("liquids"), asked("charring")].filter((options) => "stages" in options)).toEqual([]);
    expect([asked("staged"), asked("charring")].filter((options) => "receivers" in options)).toEqual([]);
  });

  test("asks a balance check for nothing that its form hides, whatever stands there", () => {
    const outcome = readRunSheetForm({ ...FORM, kind: "balance", replicates: "6", intervalMinutes: "none", ovenCelsius: "9999", panZeros: true });
    expect(outcome).toMatchObject({ options: { kind: "balance", replicates: 1, weighIns: 8, readability: 0.01, panZeros: false } });
    if ("problem" in outcome) throw new Error(outcome.problem);
    expect(buildRunSheet(outcome.options).name).toBe("Balance check");
  });

  test("takes a decimal comma and outer spaces", () => {
    expect(withField("intervalMinutes", " 7,5 ")).toHaveProperty("options.intervalMinutes", 7.5);
  });

  test.each<[FieldName, string, string]>([
    ["weighIns", "", "Weigh-ins: nothing here. Type a value such as 8."],
    ["weighIns", "eight", 'Weigh-ins: "eight" is not a number. Type digits, such as 30 or 0.01.'],
    ["weighIns", "2", "weigh-ins: 2 is not between 3 and 60. Give a number in between."],
    ["weighIns", "8.5", "weigh-ins: 8.5 is not a whole number. Give one such as 9."],
    ["intervalMinutes", "0", "interval: 0 min is not between 1 and 1440 min. Give a number in between."],
    ["intervalMinutes", "30 min", 'Minutes apart: "30 min" is not a number. Type digits, such as 30 or 0.01.'],
    ["ovenCelsius", "1050", "oven temperature: 1050 °C is not between 20 and 300 °C. Give a number in between."],
    ["replicates", "7", "replicates: 7 is not between 1 and 6. Give a number in between."],
    ["charFirings", "5", "char firings: 5 is not between 1 and 4. Give a number in between."],
    ["ashFirings", "0", "ash firings: 0 is not between 1 and 4. Give a number in between."],
    ["receivers", "5", "receivers: 5 is not between 1 and 4. Give a number in between."],
    ["stages", "1", "stages: 1 is not between 2 and 12. Give a number in between."],
    ["stages", "", "Stages: nothing here. Type a value such as 4."],
    ["degrees", "K", 'degrees: "K" is not one of "C", "F".'],
    ["samplesAre", "alike", 'samples: "alike" is not one of "repeats", "different".'],
    ["vessel", "x".repeat(61), "vessel: a name of 61 characters is longer than the 60 that fit on the sheet. Shorten it."],
    ["kind", "boiling", 'kind of run: "boiling" is not one of "drying", "charring", "ashing", "liquids", "staged", "salt", "balance".'],
  ])("says under the field %s what is wrong with %j", (field, typed, problem) => {
    expect(withField(field, typed)).toEqual({ problem, field });
  });
});

describe("planText(outcome)", () => {
  test("says how long the weighings take", () => {
    expect(planText(readRunSheetForm(FORM))).toBe("8 weigh-ins of 2 samples, 30\u00a0min apart: 3\u00a0h\u00a030\u00a0min from first to last.");
    expect(planText(withField("replicates", "1"))).toBe(
      "8 weigh-ins of one sample, 30\u00a0min apart: 3\u00a0h\u00a030\u00a0min from first to last.",
    );
  });

  test("counts the rounds of a balance check", () => {
    expect(planText(readRunSheetForm({ ...FORM, kind: "balance" }))).toBe(
      "8 rounds of one check weight, each on its day, and the corners of the pan once.",
    );
  });

  test("points at the marked entry while one is wrong", () => {
    expect(planText(withField("weighIns", "2"))).toBe("Mend the marked entry to go on.");
  });
});
