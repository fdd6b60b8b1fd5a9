import { problemIn } from "./callLiteral";

const THIRTY_ONE = Array.from({ length: 31 }, (_, index) => 10 + index / 10).join("; ");

/** The call, and the error the cell shows with the whole message behind it. */
const refusals: readonly (readonly [cell: string, problem: string])[] = [
  ["=RETORT.READING.U()", "#VALUE! readability: nothing here (blank or 0). Give the balance's smallest step in grams, such as 0.001."],
  ["=RETORT.READING.U(0)", "#VALUE! readability: nothing here (blank or 0). Give the balance's smallest step in grams, such as 0.001."],
  ["=RETORT.READING.U(-0.01)", "#VALUE! readability: -0.01 g is below zero. Give the balance's smallest step in grams, such as 0.001."],
  ['=RETORT.READING.U("0.01 g")', `#VALUE! readability: "0.01 g" is not a display step. Give the balance's smallest step in grams, such as 0.001.`],
  [
    "=RETORT.READING.U(1e300)",
    "#VALUE! readability: 1e+300 g is beyond 1000000000000000 either way. Give the balance's smallest step in grams, such as 0.001.",
  ],
  ["=RETORT.READING.U(0.01, 0)", "#VALUE! repeatability: nothing here (blank or 0). Give grams, or leave the argument out."],
  ["=RETORT.READING.U(0.01, -0.02)", "#VALUE! repeatability: -0.02 g is below zero. Give grams, or leave the argument out."],
  ['=RETORT.READING.U(0.01, "0.02")', '#VALUE! repeatability: "0.02" is text, not a number. Retype it as a number.'],
  ['=RETORT.READING.U(0.01,, "good")', '#VALUE! linearity: "good" is not a mass. Give grams, or leave the argument out.'],
  ["=RETORT.READING.U(0.01,, TRUE)", "#VALUE! linearity: TRUE is not a mass. Give grams, or leave the argument out."],
  ["=RETORT.READING.U(0.01,,, 1)", "#VALUE! tared: 1 is not TRUE or FALSE. Type TRUE or FALSE, or leave the argument out."],
  ['=RETORT.READING.U(0.01,,, "tared")', '#VALUE! tared: "tared" is not TRUE or FALSE. Type TRUE or FALSE, or leave the argument out.'],
  ["=RETORT.READING.U(0.01,,, 0)", "#VALUE! tared: nothing here (blank or 0). Type TRUE or FALSE, or leave the argument out."],
  ["=RETORT.READING.U(#N/A)", "#N/A readability: the cell given here shows #N/A. Mend that cell first."],
  ["=RETORT.READING.U(0.01,,, #N/A)", "#N/A tared: the cell given here shows #N/A. Mend that cell first."],
  [
    "=RETORT.LOSSFRACTION.U(0, 35, 32, 0.01)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ["=RETORT.LOSSFRACTION.U(35, 25, 22, 0.01)", "#VALUE! before: 25 g is not more than vessel, 35 g. Check for swapped cells or a different vessel."],
  ["=RETORT.LOSSFRACTION.U(25, 35, 36, 0.01)", "#VALUE! after: 36 g is more than before, 35 g. Check for swapped cells or regained moisture."],
  ["=RETORT.LOSSFRACTION.U(25, 35, 24, 0.01)", "#VALUE! after: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.LOSSFRACTION.U(25, 35, 32)", "#VALUE! u: nothing here (blank or 0). Give the standard uncertainty in grams, such as 0.0005."],
  ["=RETORT.LOSSFRACTION.U(25, 35, 32, -0.01)", "#VALUE! u: -0.01 g is below zero. Give the standard uncertainty in grams, such as 0.0005."],
  [
    "=RETORT.LOSSFRACTION.U(25, 35, 32, 1.5)",
    "#N/A u: 1.5 g is more than a tenth of the sample, 10 g, so the loss is not known. Check the grams, or take more sample.",
  ],
  ["=RETORT.LOSSFRACTION.U(25, 35, #DIV/0!, 0.01)", "#DIV/0! after: the cell given here shows #DIV/0!. Mend that cell first."],
  ["=RETORT.SAMPLE.MINIMUM(0, 0.005)", "#VALUE! u: nothing here (blank or 0). Give the standard uncertainty in grams, such as 0.0005."],
  ["=RETORT.SAMPLE.MINIMUM(0.01)", "#VALUE! wantedU: nothing here (blank or 0). Type 0.5 % as 0.005 or 0.5%."],
  ["=RETORT.SAMPLE.MINIMUM(0.01, 0.5)", "#VALUE! wantedU: 0.5 is above 0.1, too coarse to be of use. Type 0.5 % as 0.005 or 0.5%."],
  ["=RETORT.SAMPLE.MINIMUM(0.01, 1e-300)", "#VALUE! wantedU: 1e-300 is below 1e-9, finer than any balance tells. Type 0.5 % as 0.005 or 0.5%."],
  ["=RETORT.SAMPLE.MINIMUM(0.01, -0.005)", "#VALUE! wantedU: -0.005 is below zero. Type 0.5 % as 0.005 or 0.5%."],
  ['=RETORT.SAMPLE.MINIMUM(0.01, "0.5%")', '#VALUE! wantedU: "0.5%" is text, not a number. Retype it as a number.'],
  [
    "=RETORT.SAMPLE.MINIMUM(0.01, 0.005, 30)",
    "#VALUE! expectedLoss: 30 is above 1 and looks like a percentage. Type a share from 0 to 1, such as 0.35 or 35%.",
  ],
  ["=RETORT.SAMPLE.MINIMUM(0.01, 0.005, -0.3)", "#VALUE! expectedLoss: -0.3 is below zero. Type a share from 0 to 1, such as 0.35 or 35%."],
  ["=RETORT.SAMPLE.MINIMUM(0.01, 0.005,, 0.95)", "#VALUE! k: 0.95 is below 1. Give a coverage factor, such as 2 for about 95 %."],
  [
    "=RETORT.SAMPLE.MINIMUM(0.01, 0.005,, 95)",
    "#VALUE! k: 95 is above 13 and looks like a confidence level. Give a coverage factor, such as 2 for about 95 %.",
  ],
  ["=RETORT.SAMPLE.MINIMUM(0.01, 0.005,, 0)", "#VALUE! k: nothing here (blank or 0). Give a coverage factor, such as 2 for about 95 %."],
  ["=RETORT.CHANGE.SIGNIFICANT(0, 34.9, 0.01)", "#VALUE! before: nothing here (blank or 0). Give grams."],
  ["=RETORT.CHANGE.SIGNIFICANT(35, 0, 0.01)", "#VALUE! after: nothing here (blank or 0). Give grams."],
  ['=RETORT.CHANGE.SIGNIFICANT(35, "34,9", 0.01)', '#VALUE! after: "34,9" is text, not a number. Retype it as a number.'],
  ["=RETORT.CHANGE.SIGNIFICANT(35, 34.9, 0)", "#VALUE! u: nothing here (blank or 0). Give the standard uncertainty in grams, such as 0.0005."],
  ["=RETORT.CHANGE.SIGNIFICANT(35, 34.9, 40)", "#VALUE! u: 40 g is not below the weighing itself, before, 35 g. Give grams: 1.5 mg is 0.0015."],
  ['=RETORT.CHANGE.SIGNIFICANT(35, 34.9, 0.01, "95%")', '#VALUE! k: "95%" is text, not a number. Retype it as a number.'],
  ["=RETORT.REPLICATES()", "#VALUE! values: nothing here (blank). Give the replicate results."],
  ["=RETORT.REPLICATES({; ; })", "#VALUE! values: nothing here (blank). Give the replicate results."],
  ["=RETORT.REPLICATES({10.1})", "#N/A values: one result has no scatter. Take at least two replicates."],
  [
    "=RETORT.REPLICATES({10.1; 10.2; 0; 0})",
    '#VALUE! values: row 3 is 0 or an empty cell, which look alike here. Give "count" as zeros if 0 was found, "skip" if the cell is empty.',
  ],
  [
    "=RETORT.REPLICATES({0; 0.1; 0.2})",
    '#VALUE! values: row 1 is 0 or an empty cell, which look alike here. Give "count" as zeros if 0 was found, "skip" if the cell is empty.',
  ],
  ["=RETORT.REPLICATES({10.1; ; 10.3})", '#VALUE! values: row 2 is blank. Fill the gap, or give "skip" as zeros to pass over empty cells.'],
  ['=RETORT.REPLICATES({10.1; ; 10.3},, "count")', '#VALUE! values: row 2 is blank. Fill the gap, or give "skip" as zeros to pass over empty cells.'],
  ['=RETORT.REPLICATES({0; 0; 0},, "skip")', "#VALUE! values: nothing here (blank or 0). Give the replicate results."],
  ['=RETORT.REPLICATES({10.1; 0; 0},, "skip")', "#N/A values: one result has no scatter. Take at least two replicates."],
  ['=RETORT.REPLICATES({10.1; 10.2},, "ignore")', '#VALUE! zeros: "ignore" is not one of "count", "skip".'],
  ["=RETORT.REPLICATES({10.1; 10.2},, 0)", '#VALUE! zeros: nothing here (blank or 0). Type one of "count", "skip".'],
  ['=RETORT.REPLICATES({"Yield"; 10.1; 10.2})', '#VALUE! values: row 1 holds "Yield", not a number. Clear the cell or give a number.'],
  ['=RETORT.REPLICATES({10.1; "10,2"})', '#VALUE! values: row 2 holds "10,2", text, not a number. Retype it as a number.'],
  ["=RETORT.REPLICATES({10.1; TRUE})", "#VALUE! values: row 2 holds TRUE, not a number. Clear the cell or give a number."],
  [
    "=RETORT.REPLICATES({10.1; 1e16})",
    "#VALUE! values: row 2 holds 10000000000000000, beyond 1000000000000000 either way. Clear the cell or give a number.",
  ],
  ["=RETORT.REPLICATES({10.1; #N/A})", "#N/A values: row 2: the cell given here shows #N/A. Mend that cell first."],
  [
    "=RETORT.REPLICATES({10.1; 10.2}, 0)",
    "#VALUE! repeatabilitySd: nothing here (blank or 0). Give a number above 0 in the unit of the values, or leave the argument out.",
  ],
  [
    "=RETORT.REPLICATES({10.1; 10.2}, -0.1)",
    "#VALUE! repeatabilitySd: -0.1 is below zero. Give a number above 0 in the unit of the values, or leave the argument out.",
  ],
  ["=RETORT.REPLICATES({10.1; 10.2}, {0.1; 0.2})", "#VALUE! repeatabilitySd: 2 rows by 1 column given where one cell is wanted. Give one cell."],
  ["=RETORT.GRUBBS({10.1; 10.2})", "#N/A values: 2 values cannot show an outlier; it takes 3. Take more replicates."],
  ["=RETORT.GRUBBS({10.1})", "#N/A values: 1 value cannot show an outlier; it takes 3. Take more replicates."],
  ["=RETORT.GRUBBS({10.1; 10.1; 10.1})", "#N/A values: all 3 values are equal, so none stands out."],
  ["=RETORT.GRUBBS({0.3; 0.30000000000000004; 0.3})", "#N/A values: all 3 values are equal, so none stands out."],
  [
    "=RETORT.GRUBBS({10.1; 10.2; 0})",
    '#VALUE! values: row 3 is 0 or an empty cell, which look alike here. Give "count" as zeros if 0 was found, "skip" if the cell is empty.',
  ],
  ["=RETORT.GRUBBS({1; 2; 9}, 5)", "#VALUE! alpha: 5 is not below 1 and looks like a percentage. Type 0.05 or 5% for 95 % confidence."],
  ["=RETORT.GRUBBS({1; 2; 9}, 0.95)", "#VALUE! alpha: 0.95 is not below 0.5 and looks like a confidence level. Type 0.05 or 5% for 95 % confidence."],
  ["=RETORT.GRUBBS({1; 2; 9}, -0.05)", "#VALUE! alpha: -0.05 is below zero. Type 0.05 or 5% for 95 % confidence."],
  ["=RETORT.GRUBBS({1; 2; 9}, 0)", "#VALUE! alpha: nothing here (blank or 0). Type 0.05 or 5% for 95 % confidence."],
  ["=RETORT.GRUBBS({1; 2; 9}, 1e-7)", "#VALUE! alpha: 1e-7 is below 0.000001. Type 0.05 or 5% for 95 % confidence."],
  ["=RETORT.GRUBBS({1; 2; 9},, 2)", '#VALUE! sides: 2 is not one of "two", "largest", "smallest".'],
  ['=RETORT.GRUBBS({1; 2; 9},, "both")', '#VALUE! sides: "both" is not one of "two", "largest", "smallest".'],
  ["=RETORT.DIXON({10.1; 10.2})", "#N/A values: 2 values cannot show an outlier; it takes 3. Take more replicates."],
  ["=RETORT.DIXON({5; 5; 5; 5})", "#N/A values: all 4 values are equal, so none stands out."],
  [`=RETORT.DIXON({${THIRTY_ONE}})`, "#N/A values: 31 values are more than the 30 that Dixon's ratio r10 serves. Use GRUBBS."],
  ['=RETORT.DIXON({1; 2; 9}, "five")', '#VALUE! alpha: "five" is not a significance level. Type 0.05 or 5% for 95 % confidence.'],
  ["=RETORT.DIXON({1; 2; 9},, 0)", '#VALUE! sides: nothing here (blank or 0). Type one of "two", "largest", "smallest".'],
];

test.each(refusals)("%s shows %s", (cell, problem) => {
  expect(problemIn(cell)).toBe(problem);
});

test("every message names its argument, ends with a full stop and stays near 150 characters", () => {
  for (const [, problem] of refusals) {
    const message = problem.replace(/^#\S+ /, "");
    expect(message).toMatch(/^\w+: .*\.$/);
    expect(message.length).toBeLessThanOrEqual(155);
  }
});
