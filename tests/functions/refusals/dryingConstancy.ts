import type { Refusal } from "./Refusal";

export const dryingConstancy: readonly Refusal[] = [
  ["=RETORT.CONSTANTWEIGHT()", "#VALUE! weights: nothing here (blank or 0). Give grams."],
  ["=RETORT.CONSTANTWEIGHT({0; 0; 0})", "#VALUE! weights: nothing here (blank or 0). Give grams."],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; 0; 8.9})", "#VALUE! weights: row 3 is blank. Fill the gap or remove the row."],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; ; 8.9})", "#VALUE! weights: row 3 is blank. Fill the gap or remove the row."],
  ['=RETORT.CONSTANTWEIGHT({10; "9,2"; 8.95})', '#VALUE! weights: row 2 holds "9,2", text, not a number. Retype it as a number.'],
  ['=RETORT.CONSTANTWEIGHT({10; "n/a"; 8.95})', '#VALUE! weights: row 2 holds "n/a", not a weighing. Clear the cell or give grams.'],
  ["=RETORT.CONSTANTWEIGHT({10; TRUE; 8.95})", "#VALUE! weights: row 2 holds TRUE, not a weighing. Clear the cell or give grams."],
  ["=RETORT.CONSTANTWEIGHT({10; -9.2; 8.95})", "#VALUE! weights: row 2 holds -9.2 g, below zero. Clear the cell or give grams."],
  ["=RETORT.CONSTANTWEIGHT({10; #N/A; 8.95})", "#N/A weights: row 2: the cell given here shows #N/A. Mend that cell first."],
  ['=RETORT.CONSTANTWEIGHT({"Weighing (g)"; 10; 9.2})', '#VALUE! weights: row 1 holds "Weighing (g)", not a weighing. Clear the cell or give grams.'],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 89.5})",
    "#VALUE! weights: row 3 holds 89.5 g, far above row 1, 10 g. Check for a wrong cell, a slipped decimal or another vessel.",
    "another vessel",
  ],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2}, -0.001)", "#VALUE! limit: -0.001 is below zero. Give a number above 0, or leave the argument out."],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.1)",
    "#VALUE! limit: 0.1 is above 0.04, the widest in use. Type 0.1 % as 0.001 or 0.1%.",
    "percentage for a fraction",
  ],
  ['=RETORT.CONSTANTWEIGHT({10; 9.2}, "0.1%")', '#VALUE! limit: "0.1%" is text, not a number. Retype it as a number.'],
  ['=RETORT.CONSTANTWEIGHT({10; 9.2}, "strict")', '#VALUE! limit: "strict" is not a limit. Give a number above 0, or leave the argument out.'],
  ['=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.2, "of initial")', "#VALUE! limit: 0.2 is above 0.04, the widest in use. Type 0.1 % as 0.001 or 0.1%."],
  ['=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.2, "of total loss")', "#VALUE! limit: 0.2 is above 0.04, the widest in use. Type 0.2 % as 0.002 or 0.2%."],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.5, "per gram")',
    "#VALUE! limit: 0.5 g per g is above 0.04 g per g, the widest in use. Type 0.5 mg per g as 0.0005.",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.1, "per hour", {0; 30})',
    "#VALUE! limit: 0.1 per hour is above 0.04 per hour, the widest in use. Type 0.1 % per hour as 0.001 or 0.1%.",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.5, "absolute")',
    "#VALUE! limit: 0.5 g is more than 4 % of the first sample, 10 g. Give grams: 0.5 mg is 0.0005.",
    "other unit of mass, density or pressure",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, , "absolute")',
    '#VALUE! limit: left out, blank or 0, but "absolute" has no usual limit. Give grams: 0.5 mg is 0.0005.',
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, , "readability",,, 0.001)',
    '#VALUE! limit: left out, blank or 0, but "readability" has no usual limit. Give a number of display steps, such as 2.',
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.01, "readability",,, 0.001)',
    "#VALUE! limit: 0.01 steps is below 2 display steps, which rounding alone can cause. Give a number of steps, 2 or more.",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 2, "readability",,, 1)',
    "#VALUE! limit: 2 g is more than 4 % of the first sample, 10 g. Check that readability is in grams, or take more sample.",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 2, "readability")',
    `#VALUE! readability: left out, blank or 0, but the criterion "readability" counts display steps. Give the balance's step in grams.`,
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.001, "percent")',
    '#VALUE! criterion: "percent" is not one of "absolute", "of last", "of initial", "of total loss", "per gram", "per hour", "readability".',
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.001, "per hour")',
    '#VALUE! times: left out, blank or 0, but the criterion "per hour" needs them. Give the minutes of each weighing.',
  ],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2}, , , , , , 60)",
    "#VALUE! times: left out, blank or 0, but interval needs them. Give the minutes of each weighing.",
  ],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 30})", "#VALUE! times: length 2 does not fit weights, length 3. Give ranges of one size."],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 30; 0})",
    "#VALUE! times: row 3 is blank, but weights holds 9.1 g there. Give the minutes of that weighing.",
  ],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 0; 60})", "#VALUE! times: row 2 is blank. Fill the gap or remove the row."],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 60; 30})",
    "#VALUE! times: row 3 holds 30 min, not later than row 2, 60 min. Give rising minutes.",
    "rows out of order",
  ],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 30; 30})",
    "#VALUE! times: row 3 holds 30 min, not later than row 2, 30 min. Give rising minutes.",
  ],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; -30; 60})", "#VALUE! times: row 2 holds -30 min, below zero. Clear the cell or give minutes."],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; "10:30"; 60})',
    '#VALUE! times: row 2 holds "10:30", not a time in minutes. Clear the cell or give minutes.',
  ],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0.40625; 0.427083; 0.447917})",
    "#VALUE! times: the whole run lasts 0.0417 min, which looks like clock times. Give minutes since the start: (time - start) * 1440.",
    "clock times or dates for minutes",
  ],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {45992.40625; 45992.427083; 45993.447917})",
    "#VALUE! times: row 1 holds 45992.40625 min, which looks like a date. Give minutes since the start: (time - start) * 1440.",
  ],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; #REF!; 60})", "#VALUE! times: row 2: the cell given here shows #REF!. Mend that cell first."],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 30; 60}, , , 0.0417)",
    "#VALUE! interval: 0.0417 min is below 1 min and looks like a clock time. Give minutes, such as 60.",
  ],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 30; 60}, , , -60)", "#VALUE! interval: -60 min is below zero. Give minutes, such as 60."],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {0; 30; 60}, , , "1 h")',
    '#VALUE! interval: "1 h" is not a time in minutes. Give minutes, such as 60.',
  ],
  [
    "=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95}, , , , 0)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    '=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95}, , , , "tare")',
    '#VALUE! vessel: "tare" is not a weighing. Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95}, , , , 36)",
    '#VALUE! weights: row 1 holds 35 g, not more than vessel, 36 g. Weigh with the vessel, or give "tared" as vessel.',
  ],
  [
    "=RETORT.CONSTANTWEIGHT({35; 34.2; 9.95}, , , , 25)",
    '#VALUE! weights: row 3 holds 9.95 g, not more than vessel, 25 g. Weigh with the vessel, or give "tared" as vessel.',
  ],
  ["=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95}, , , , {25; 25})", "#VALUE! vessel: 2 rows by 1 column given where one cell is wanted. Give one cell."],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2}, , , , , -0.001)",
    "#VALUE! readability: -0.001 g is below zero. Give the balance's smallest step in grams, such as 0.001.",
  ],
  ['=RETORT.CONSTANTWEIGHT({10; 9.2}, , , , , "0,001")', '#VALUE! readability: "0,001" is text, not a number. Retype it as a number.'],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 8.95; 8.9; 8.89}, , , , , 0.01)",
    "#N/A readability: cannot be decided: the limit at weighing 5, 0.00889 g, is below two steps of 0.01 g. Take more sample or a finer balance.",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({1.5; 1.2; 0.5; 0.5}, 0.002, "of total loss", , , 0.01)',
    "#N/A readability: cannot be decided: the limit at weighing 4, 0.002 g, is below two steps of 0.01 g. Take more sample or a finer balance.",
  ],
  ["=RETORT.CONSTANTWEIGHT.STEPS()", "#VALUE! weights: nothing here (blank or 0). Give grams."],
  ['=RETORT.CONSTANTWEIGHT.STEPS({10; "9,2"})', '#VALUE! weights: row 2 holds "9,2", text, not a number. Retype it as a number.'],
  [
    "=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; 9.1}, , , {0; 60; 30})",
    "#VALUE! times: row 3 holds 30 min, not later than row 2, 60 min. Give rising minutes.",
    "rows out of order",
  ],
  ["=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; ; 8.9})", "#VALUE! weights: row 3 is blank. Fill the gap or remove the row."],
  [
    '=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2}, 0.001, "mg")',
    '#VALUE! criterion: "mg" is not one of "absolute", "of last", "of initial", "of total loss", "per gram", "per hour", "readability".',
  ],
  [
    '=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2}, 0.001, "per hour")',
    '#VALUE! times: left out, blank or 0, but the criterion "per hour" needs them. Give the minutes of each weighing.',
  ],
  [
    '=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2}, 0.5, "absolute")',
    "#VALUE! limit: 0.5 g is more than 4 % of the first sample, 10 g. Give grams: 0.5 mg is 0.0005.",
    "other unit of mass, density or pressure",
  ],
  [
    "=RETORT.CONSTANTWEIGHT.STEPS({10; 12})",
    "#VALUE! weights: row 2 holds 12 g, far above row 1, 10 g. Check for a wrong cell, a slipped decimal or another vessel.",
    "another vessel",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2; 9.198}, 0.0002, "absolute",,, 0.001)',
    "#N/A readability: cannot be decided: the limit at weighing 3, 0.0002 g, is below two steps of 0.001 g. Take more sample or a finer balance.",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2}, 0.001, "of last", {0}, 2, 0.001)',
    "#VALUE! times: length 1 does not fit weights, length 2. Give ranges of one size.",
  ],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {"start"; 30; 60})',
    '#VALUE! times: row 1 holds "start", not a time in minutes. Clear the cell or give minutes.',
  ],
  ["=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {; 30; 60})", "#VALUE! times: row 1 is blank. Fill the gap or remove the row."],
  [
    "=RETORT.CONSTANTWEIGHT({10; 9.2; 9.1}, , , {50000; 50030; 50060})",
    "#VALUE! times: row 1 holds 50000 min, which looks like a date. Give minutes since the start: (time - start) * 1440.",
  ],
  ['=RETORT.CONSTANTWEIGHT({10; "10.1.2026"; 9.1})', '#VALUE! weights: row 2 holds "10.1.2026", text, not a number. Retype it as a number.'],
  [
    '=RETORT.CONSTANTWEIGHT({10; 9.01; 9; 9}, 0.002, "of total loss", , , 0.01)',
    "#N/A readability: cannot be decided: the limit at weighing 4, 0.002 g, is below two steps of 0.01 g. Take more sample or a finer balance.",
  ],
];
