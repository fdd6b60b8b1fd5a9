import type { Answer } from "../../src/cells/CellProblem";
import { ROWS_OF_A_SHEET } from "../../src/cells/Grid";
import { answerOf, callLiteral, tableIn, workingOf } from "./call";

/** The value beside a label of a spilled table; a part of the label is enough. */
const beside = (cell: string, label: string): Answer | undefined => tableIn(cell).find(([first]) => String(first).includes(label))?.[1];

describe("CHANGE.SIGNIFICANT", () => {
  test.each([
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.9, 0.01)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 35.1, 0.01)", "gain"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 35, 0.01)", "not significant"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.95, 0.01, 1)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.98, 0.01, 1, 0.0001)", "loss"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 34.99, 0.01, 1, 0.01)", "not significant"],
    ["=RETORT.CHANGE.SIGNIFICANT(35, 1, 0.01)", "loss"],
  ])("%s is the word %s, never an error for a pair of weighings", (cell, word) => {
    expect(callLiteral(cell)).toBe(word);
  });
});

describe("LOSSFRACTION.U", () => {
  test("takes whole columns, leaves blank rows empty and lets one bad row stand alone", () => {
    const answer = answerOf("LOSSFRACTION.U", [[25], ["tared"], [0]], [[35], [10], [0]], [[32], [7], [0]], 0.01) as Answer[][];
    expect(answer[0]?.[0]).toBeCloseTo(0.00125698, 8);
    expect(answer[1]?.[0]).toBeCloseTo(0.00122066, 8);
    expect(answer[2]).toEqual([""]);
  });

  test("of weighings that did not change is sqrt(2) u over the sample", () => {
    expect(callLiteral("=RETORT.LOSSFRACTION.U(25, 35, 35, 0.01)")).toBeCloseTo(0.001 * Math.SQRT2, 14);
  });
});

describe("replicates that may be 0", () => {
  test('a 0 counts once zeros is "count"', () => {
    expect(beside('=RETORT.REPLICATES({0; 0.1; 0.2},, "count")', "Mean")).toBeCloseTo(0.1, 14);
    expect(beside('=RETORT.REPLICATES({0; 0.1; 0.2},, "count")', "Results")).toBe(3);
  });

  test('empty cells, handed over as 0, null or "", are passed over once zeros is "skip"', () => {
    for (const empty of [0, null, ""]) {
      const answer = answerOf("REPLICATES", [[10.1], [empty], [10.3], [empty], [empty]], null, "skip") as Answer[][];
      expect(answer[1]?.[1]).toBe(2);
      expect(answer[2]?.[1]).toBeCloseTo(10.2, 14);
    }
  });

  test("blanks at the end are left off where the host tells them from 0", () => {
    for (const empty of [null, ""]) expect((answerOf("REPLICATES", [[10.1], [10.3], [empty], [empty]]) as Answer[][])[1]?.[1]).toBe(2);
  });

  test("GRUBBS and DIXON count rows as given, empty cells included", () => {
    expect(beside('=RETORT.GRUBBS({5; 0; 5.1; 5.2; 9},, , "skip")', "Row")).toBe(5);
    expect(beside('=RETORT.DIXON({5; 0; 5.1; 5.2; 9},, , "skip")', "Row")).toBe(5);
  });

  test("a counted 0 may itself be the suspect", () => {
    expect(beside('=RETORT.GRUBBS({5; 5.1; 5.2; 0; 5.1},, , "count")', "Suspect")).toBe(0);
  });

  test("whole columns are taken as far down as they are filled", () => {
    const whole = Array.from({ length: ROWS_OF_A_SHEET }, (_, row) => [[10.1, 10.3, 10.2][row] ?? 0]);
    expect((answerOf("REPLICATES", whole) as Answer[][])[1]?.[1]).toBe(3);
  });

  test("negative results are results", () => {
    expect(beside("=RETORT.REPLICATES({-0.2; 0.1; -0.1})", "Mean")).toBeCloseTo(-0.2 / 3, 14);
  });

  test("one row of cells serves as well as one column", () => {
    const [asRow, asColumn] = [[[10.1, 10.3, 10.2]], [[10.1], [10.3], [10.2]]].map((cells) => answerOf("REPLICATES", cells));
    expect(asRow).toEqual(asColumn);
  });
});

describe("READING.U", () => {
  test("takes whole columns: a tared mass beside a plain reading, and a blank cell, handed over as nothing or as 0, is the same as left out", () => {
    const [tared, plain, left, blank] = answerOf("READING.U", 0.01, null, null, [[true], [false], [null], [0]]) as Answer[][];
    expect(tared?.[0]).toBeCloseTo(0.01 / Math.sqrt(6), 14);
    expect(plain?.[0]).toBeCloseTo(0.01 / Math.sqrt(12), 14);
    expect(left).toEqual(plain);
    expect(blank).toEqual(plain);
  });

  test("never falls below the rounding of the display", () => {
    for (const repeatability of [1e-6, 0.001, 0.1]) {
      expect(callLiteral(`=RETORT.READING.U(0.01, ${repeatability})`)).toBeGreaterThan(0.01 / Math.sqrt(12));
    }
  });
});

describe("REPLICATES", () => {
  test("without the method's standard deviation leaves the range unjudged and says so", () => {
    expect(beside("=RETORT.REPLICATES({10.1; 10.3})", "Critical")).toBe("");
    expect(beside("=RETORT.REPLICATES({10.1; 10.3})", "Verdict")).toBe(
      "not judged: give the method's repeatability standard deviation; the replicates' own cannot judge them",
    );
  });

  test("says in words which result to report", () => {
    expect(beside("=RETORT.REPLICATES({10.1; 10.3}, 0.1)", "Verdict")).toBe("acceptable: the range is within the critical range; report the mean");
    expect(beside("=RETORT.REPLICATES({10.1; 10.5}, 0.1)", "Verdict")).toBe(
      "not acceptable: the range is above the critical range; look for a cause, take more results, or report the median and say so",
    );
  });

  test("with readability says that it cannot tell where a step decides", () => {
    expect(beside("=RETORT.REPLICATES({10.1; 10.4}, 0.1, , 0.1)", "Verdict")).toBe(
      "cannot tell: rounded too coarsely, to steps of 0.1; keep every value, and read finer or take more results",
    );
    expect(beside("=RETORT.REPLICATES({10.1; 10.4}, 0.1, , 0.001)", "Verdict")).toMatch(/^not acceptable: /);
  });

  test("says there is no RSD about a mean of 0", () => {
    expect(beside("=RETORT.REPLICATES({-1; 1})", "Relative")).toBe("none: the mean is 0");
  });

  test("keeps its rows in their places, for cells that point into the table", () => {
    expect(tableIn("=RETORT.REPLICATES({10.1; 10.3})").map(([label]) => label)).toEqual([
      "Quantity",
      "Results, n",
      "Mean",
      "Median",
      "Standard deviation, s",
      "Relative standard deviation, s / |mean|",
      "Repeatability limit, r = 2.8 s",
      "Range, largest - smallest",
      "Critical range, 95 %, f(n) repeatabilitySd",
      "Verdict",
    ]);
  });
});

describe("outlier tests", () => {
  test.each([
    ['"two"', "Critical value, two-sided, alpha 0.01"],
    ['"largest"', "Critical value, one-sided (largest), alpha 0.01"],
    ['"smallest"', "Critical value, one-sided (smallest), alpha 0.01"],
  ])("with sides %s the table says %s", (sides, label) => {
    for (const name of ["GRUBBS", "DIXON"]) expect(tableIn(`=RETORT.${name}({5; 5.1; 5.2; 9}, 0.01, ${sides})`)[5]?.[0]).toBe(label);
  });

  test("left out, alpha is 0.05 and the test two-sided, as the table says", () => {
    for (const name of ["GRUBBS", "DIXON"])
      expect(tableIn(`=RETORT.${name}({5; 5.1; 5.2; 9})`)[5]?.[0]).toBe("Critical value, two-sided, alpha 0.05");
  });

  test("the verdict never asks for a rejection without a cause", () => {
    for (const name of ["GRUBBS", "DIXON"]) {
      expect(beside(`=RETORT.${name}({5; 5.1; 5.2; 5.1; 5; 9})`, "Verdict")).toBe(
        "outlier: look for a cause; never reject without a cause, and at most one value",
      );
      expect(beside(`=RETORT.${name}({5; 5.1; 5.2; 5.3; 5.4})`, "Verdict")).toBe("no outlier shown: keep every value");
    }
  });

  test("with readability the verdict says what rounding leaves open", () => {
    for (const name of ["GRUBBS", "DIXON"]) {
      expect(beside(`=RETORT.${name}({5.1; 5.1; 5.1; 5.2}, , , , 0.1)`, "Verdict")).toBe(
        "cannot tell: rounded too coarsely, to steps of 0.1; keep every value, and read finer or take more results",
      );
      expect(beside(`=RETORT.${name}({5.1; 5.1; 5.1; 5.2}, , , , 0.001)`, "Verdict")).toMatch(/^outlier: /);
      expect(beside(`=RETORT.${name}({5.1; 5.1; 5.1; 5.2})`, "Verdict")).toBe(
        "cannot tell: rounded too coarsely, by the look of it to steps of 0.1; keep every value, and give readability if they are finer",
      );
    }
  });

  test("with three or four values no outlier shown is said to mean little", () => {
    for (const name of ["GRUBBS", "DIXON"]) {
      expect(beside(`=RETORT.${name}({5; 5.1; 5.4})`, "Verdict")).toBe("no outlier shown, which 3 values hardly ever can: keep every value");
    }
  });
});

describe("working", () => {
  test("READING.U puts the numbers in", () => {
    expect(workingOf("READING.U", { readability: 0.01, repeatability: 0.01, tared: true })).toEqual([
      "u^2 = repeatability^2 + 2 x readability^2 / 12 + 2 x linearity^2 / 3 for a tared mass: zero and load are both rounded",
      "u^2 = 0.01^2 + 2 x 0.01^2 / 12 + 2 x 0^2 / 3 = 0.0001166667 g^2",
      "u = 0.01080123 g (k = 1); k = 2, about 95 %: 0.02160247 g",
    ]);
  });

  // Worked by hand: 0.01^2 / 12 = 8.333e-6 alone, and 0.01^2 / 12 + 0.03^2 / 3 = 3.083e-4 with linearity.
  test("READING.U counts what is left out as nothing", () => {
    expect(workingOf("READING.U", { readability: 0.01 })).toEqual([
      "u^2 = repeatability^2 + readability^2 / 12 + linearity^2 / 3 for one reading",
      "u^2 = 0^2 + 0.01^2 / 12 + 0^2 / 3 = 0.000008333333 g^2",
      "u = 0.002886751 g (k = 1); k = 2, about 95 %: 0.005773503 g",
    ]);
    expect(workingOf("READING.U", { readability: 0.01, linearity: 0.03 })?.[1]).toBe("u^2 = 0^2 + 0.01^2 / 12 + 0.03^2 / 3 = 0.0003083333 g^2");
  });

  test("LOSSFRACTION.U says how separate taring differs", () => {
    expect(workingOf("LOSSFRACTION.U", { vessel: 25, before: 35, after: 32, u: 0.01 })).toEqual([
      "loss fraction w = (35 - 32) / 10 = 0.3",
      "one empty-vessel weighing serves both: u / sample x sqrt((1 - w)^2 + 1 + w^2) = 0.01 / 10 x sqrt((1 - 0.3)^2 + 1 + 0.3^2) = 0.001256981",
      "had each net mass been zeroed for itself, u with that zero in it: u / sample x sqrt(1 + (1 - w)^2) = 0.01 / 10 x sqrt(1 + (1 - 0.3)^2) = 0.001220656",
      "report k = 2, about 95 %: 0.3 +/- 0.002513961",
    ]);
    expect(workingOf("LOSSFRACTION.U", { vessel: 0, before: 10, after: 7, u: 0.01 })).toEqual([
      "loss fraction w = (10 - 7) / 10 = 0.3",
      "each net mass zeroed for itself: u / sample x sqrt(1 + (1 - w)^2) = 0.01 / 10 x sqrt(1 + (1 - 0.3)^2) = 0.001220656",
      "had one empty-vessel weighing served both: u / sample x sqrt((1 - w)^2 + 1 + w^2) = 0.01 / 10 x sqrt((1 - 0.3)^2 + 1 + 0.3^2) = 0.001256981",
      "report k = 2, about 95 %: 0.3 +/- 0.002441311",
    ]);
  });

  test("SAMPLE.MINIMUM names the pharmacopoeia's rule for comparison", () => {
    expect(workingOf("SAMPLE.MINIMUM", { u: 0.01, wantedU: 0.005, expectedLoss: 0.3 })).toEqual([
      "sample = k u sqrt((1 - w)^2 + 1 + w^2) / U = 2 x 0.01 x sqrt((1 - 0.3)^2 + 1 + 0.3^2) / 0.005 = 5.027922 g",
      "with net masses each zeroed for themselves: 4.882622 g",
      "for comparison, the pharmacopoeia's weighing rule (USP <41>) of 2000 standard deviations, u put for s: 20 g",
    ]);
  });

  // Worked by hand: 3 x 0.01 x sqrt(2) / 0.005, without loss the same for both ways of zeroing; the pharmacopoeia's rule has a k of its own.
  test("SAMPLE.MINIMUM with the loss left out works out the least favourable one, with the k given", () => {
    expect(workingOf("SAMPLE.MINIMUM", { u: 0.01, wantedU: 0.005, k: 3 })).toEqual([
      "sample = k u sqrt((1 - w)^2 + 1 + w^2) / U = 3 x 0.01 x sqrt((1 - 0)^2 + 1 + 0^2) / 0.005 = 8.485281 g",
      "with net masses each zeroed for themselves: 8.485281 g",
      "for comparison, the pharmacopoeia's weighing rule (USP <41>) of 2000 standard deviations, u put for s: 20 g",
    ]);
  });

  test("CHANGE.SIGNIFICANT does not take not significant for unchanged", () => {
    expect(workingOf("CHANGE.SIGNIFICANT", { before: 35, after: 34.98, u: 0.01 })).toEqual([
      "change = 34.98 - 35 = -0.02 g",
      "limit = sqrt(12 + the larger of 12 and 2 k^2) u: sqrt(12 + 12) x 0.01 = 0.04898979 g, either way, whatever the display step",
      "level: an unchanged load is called changed in at most 4.55 % of pairs, if u holds the scatter of the weighings",
      "not significant: that does not prove that nothing changed",
    ]);
  });

  // Worked by hand: s^2 = 1e-4 - 1e-4 / 12, s = 0.0095743; 3 sqrt(2) s + 0.01 = 0.05062.
  test("CHANGE.SIGNIFICANT parts the rounding from the scatter once the display step is given", () => {
    expect(workingOf("CHANGE.SIGNIFICANT", { before: 35, after: 34.94, u: 0.01, k: 3, readability: 0.01 })).toEqual([
      "change = 34.94 - 35 = -0.06 g",
      "scatter s^2 = u^2 - readability^2 / 12 = 0.01^2 - 0.01^2 / 12 = 0.00009166667 g^2",
      "limit = k sqrt(2) s + readability = 3 x sqrt(2) x sqrt(0.00009166667) + 0.01 = 0.05062019 g, either way",
      "level: an unchanged load is called changed in at most 0.27 % of pairs, if u holds the scatter of the weighings",
      "loss: more than the two readings explain",
    ]);
    expect(workingOf("CHANGE.SIGNIFICANT", { before: 35, after: 34.98, u: 0.0041, readability: 0.01 })?.slice(2)).toEqual([
      "limit = k sqrt(2) s + readability = 2 x sqrt(2) x sqrt(0.000008476667) + 0.01 = 0.01823489 g, either way",
      "at least two steps, or sqrt(24) u if that is less, where the zero is rounded too: 0.02 g",
      "level: an unchanged load is called changed in at most 4.55 % of pairs, if u holds the scatter of the weighings",
      "not significant: that does not prove that nothing changed",
    ]);
    expect(workingOf("CHANGE.SIGNIFICANT", { before: 35, after: 34.98, u: 0.0028, readability: 0.01 })?.slice(1, 3)).toEqual([
      "scatter s: u leaves none beside the rounding",
      "limit = k sqrt(2) s + readability = 2 x sqrt(2) x sqrt(0) + 0.01 = 0.01 g, either way",
    ]);
  });

  test("REPLICATES works out r and the critical range", () => {
    expect(workingOf("REPLICATES", { values: [10.1, 10.3], repeatabilitySd: 0.1 })).toEqual([
      "n = 2, mean = 10.2, s (n - 1) = 0.1414214",
      "r = 2.8 repeatabilitySd = 2.8 x 0.1 = 0.28: two results differ by more in one case of twenty",
      "range = 0.2",
      "critical range = f(2) x repeatabilitySd = 2.771808 x 0.1 = 0.2771808",
      "acceptable: the range is within the critical range; report the mean",
    ]);
  });

  test("GRUBBS and DIXON name the row of the suspect and the kind of test", () => {
    expect(workingOf("GRUBBS", { values: [5, 5.1, 5.2, 9], sides: "largest" })).toEqual([
      "n = 4, mean = 6.075, s (n - 1) = 1.951709",
      "suspect in row 4: G = |9 - 6.075| / 1.951709 = 1.498687",
      "critical value for n = 4, one-sided (largest), alpha 0.05: 1.4625",
      "outlier: look for a cause; never reject without a cause, and at most one value",
    ]);
    expect(workingOf("DIXON", { values: [5, 5.1, 5.2, 9] })).toEqual([
      "suspect in row 4: gap = |9 - 5.2|, range = 4, Q = gap / range = 0.95",
      "critical value of r10 for n = 4, two-sided, alpha 0.05: 0.8297501",
      "outlier: look for a cause; never reject without a cause, and at most one value",
    ]);
  });
});
