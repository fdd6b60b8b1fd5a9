import type { Refusal } from "./Refusal";

export const dryingEnd: readonly Refusal[] = [
  ["=RETORT.DRYING.END()", "#VALUE! times: nothing here (blank or 0). Give minutes."],
  ["=RETORT.DRYING.END({0; 30; 60; 90; 120})", "#VALUE! weights: nothing here (blank or 0). Give grams."],
  ["=RETORT.DRYING.END(, {10; 9.2; 8.8; 8.6; 8.5})", "#VALUE! times: nothing here (blank or 0). Give minutes."],
  ["=RETORT.DRYING.END({0; 0; 0}, {10; 9.2; 8.8; 8.6; 8.5})", "#VALUE! times: length 3 does not fit weights, length 5. Give ranges of one size."],
  ["=RETORT.DRYING.END({0; 30; 60}, {10; 9.2; 8.8; 8.6; 8.5})", "#VALUE! times: length 3 does not fit weights, length 5. Give ranges of one size."],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; ""}, {10; 9.2; 8.8; 8.6; 8.5})',
    "#VALUE! times: row 5 is blank, but weights holds 8.5 g there. Give the minutes of that weighing.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 30; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5})",
    "#VALUE! times: row 3 holds 30 min, not later than row 2, 30 min. Give rising minutes.",
  ],
  [
    "=RETORT.DRYING.END({0; 60; 30; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5})",
    "#VALUE! times: row 3 holds 30 min, not later than row 2, 60 min. Give rising minutes.",
    "rows out of order",
  ],
  [
    "=RETORT.DRYING.END({120; 90; 60; 30; 0}, {10; 9.2; 8.8; 8.6; 8.5})",
    "#VALUE! times: row 5 is blank, but weights holds 8.5 g there. Give the minutes of that weighing.",
  ],
  [
    "=RETORT.DRYING.END({0; -30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5})",
    "#VALUE! times: row 2 holds -30 min, below zero. Clear the cell or give minutes.",
  ],
  [
    '=RETORT.DRYING.END({0; "30 min"; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5})',
    '#VALUE! times: row 2 holds "30 min", not a time in minutes. Clear the cell or give minutes.',
  ],
  [
    '=RETORT.DRYING.END({0; "30"; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5})',
    '#VALUE! times: row 2 holds "30", text, not a number. Retype it as a number.',
  ],
  [
    "=RETORT.DRYING.END({0; 0.02; 0.04; 0.06; 0.08}, {10; 9.2; 8.8; 8.6; 8.5})",
    "#VALUE! times: the whole run lasts 0.08 min, which looks like clock times. Give minutes since the start: (time - start) * 1440.",
    "clock times or dates for minutes",
  ],
  [
    "=RETORT.DRYING.END({45000; 45001; 45002; 45003; 45004}, {10; 9.2; 8.8; 8.6; 8.5})",
    "#VALUE! times: row 1 holds 45000 min, which looks like a date. Give minutes since the start: (time - start) * 1440.",
  ],
  [
    "=RETORT.DRYING.END({0; #REF!; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5})",
    "#VALUE! times: row 2: the cell given here shows #REF!. Mend that cell first.",
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; "n/a"; 8.6; 8.5})',
    '#VALUE! weights: row 3 holds "n/a", not a weighing. Clear the cell or give grams.',
  ],
  ["=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 0; 8.6; 8.5})", "#VALUE! weights: row 3 is blank. Fill the gap or remove the row."],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; "8,8"; 8.6; 8.5})',
    '#VALUE! weights: row 3 holds "8,8", text, not a number. Retype it as a number.',
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; -8.8; 8.6; 8.5})",
    "#VALUE! weights: row 3 holds -8.8 g, below zero. Clear the cell or give grams.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 92; 8.8; 8.6; 8.5})",
    "#VALUE! weights: row 2 holds 92 g, far above row 1, 10 g. Check for a wrong cell, a slipped decimal or another vessel.",
    "another vessel",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; #N/A; 8.6; 8.5})",
    "#N/A weights: row 3: the cell given here shows #N/A. Mend that cell first.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, 25)",
    '#VALUE! weights: row 1 holds 10 g, not more than vessel, 25 g. Weigh with the vessel, or give "tared" as vessel.',
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, "glass")',
    '#VALUE! vessel: "glass" is not a weighing. Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, 0)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, -1)",
    '#VALUE! vessel: -1 g is below zero. Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , -0.001)",
    "#VALUE! readability: -0.001 g is below zero. Give the balance's smallest step in grams, such as 0.001.",
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , "fine")',
    `#VALUE! readability: "fine" is not a display step. Give the balance's smallest step in grams, such as 0.001.`,
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , 1)",
    "#N/A weights: 1.5 g lost since row 1 is below 4 steps of 1 g, inside the balance's noise. Use CONSTANTWEIGHT.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , 0.001, 0.2)",
    "#VALUE! limit: 0.2 is above 0.04, the widest in use. Type 0.1 % as 0.001 or 0.1%.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , 0.001, -1)",
    "#VALUE! limit: -1 is below zero. Give a number above 0, or leave the argument out.",
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , , , "absolute")',
    '#VALUE! limit: left out, blank or 0, but "absolute" has no usual limit. Give grams: 0.5 mg is 0.0005.',
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , , 2, "readability")',
    `#VALUE! readability: left out, blank or 0, but the criterion "readability" counts display steps. Give the balance's step in grams.`,
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , 0.001, 1, "readability")',
    "#VALUE! limit: 1 steps is below 2 display steps, which rounding alone can cause. Give a number of steps, 2 or more.",
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , , 0.5, "absolute")',
    "#VALUE! limit: 0.5 g is more than 4 % of the first sample, 10 g. Give grams: 0.5 mg is 0.0005.",
  ],
  [
    '=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , , 0.001, "quick")',
    '#VALUE! criterion: "quick" is not one of "absolute", "of last", "of initial", "of total loss", "per gram", "per hour", "readability".',
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , , , , 60)",
    "#VALUE! timing: 60 min is above 15 min. Give the minutes a time may be off, such as 0.5.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , , , , -1)",
    "#VALUE! timing: -1 min is below zero. Give the minutes a time may be off, such as 0.5.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , #DIV/0!)",
    "#DIV/0! readability: the cell given here shows #DIV/0!. Mend that cell first.",
  ],
  ["=RETORT.DRYING.END({0}, {10})", "#N/A weights: 1 weighing cannot show where drying ends; it takes 4. Weigh again."],
  ["=RETORT.DRYING.END({0; 30; 60}, {10; 9.2; 8.8})", "#N/A weights: 3 weighings cannot show where drying ends; it takes 4. Weigh again."],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90}, {10; 9; 8; 7})",
    "#N/A weights: 3 g lost since row 1 is below 4 steps of 1 g, their last digit. If the balance is finer, give its readability; else use CONSTANTWEIGHT.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90}, {10; 9.1; 8.3; 7.6})",
    "#N/A weights: since row 1 the loss does not slow down clearly enough to show an end. Dry on and weigh again.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 10; 10; 10; 10})",
    "#N/A weights: nothing lost since row 1, so there is no curve to follow. Use CONSTANTWEIGHT to see whether it is dry.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9; 9.5; 8.6; 8.5})",
    "#N/A weights: row 3, 9.5 g, is above row 2, 9 g. If the balance explains that, give its readability; else look for regained moisture.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.61}, , 0.001)",
    "#N/A weights: row 5, 8.61 g, is above row 4, 8.6 g, by more than a balance of 0.001 g strays. Look for regained moisture or a wrong cell.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120; 150}, {10; 9; 8; 7; 6.5; 6.2})",
    "#N/A weights: the rate falls only since row 5, and 2 weighings cannot show the end; it takes 4. Weigh again.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120; 150; 180}, {10; 9; 8; 8; 8; 8; 8})",
    "#N/A weights: 2 g lost since row 1 is below 4 steps of 1 g, their last digit. If the balance is finer, give its readability; else use CONSTANTWEIGHT.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9.999; 9.998; 9.998; 9.998}, , 0.001)",
    "#N/A weights: 0.002 g lost since row 1 is below 4 steps of 0.001 g, inside the balance's noise. Use CONSTANTWEIGHT.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 8; 8; 8; 8})",
    "#N/A weights: 2 g lost since row 1 is below 4 steps of 1 g, their last digit. If the balance is finer, give its readability; else use CONSTANTWEIGHT.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 8; 6.2; 4.6; 3.18})",
    "#N/A weights: the curve ends at -8.62 g, below what any sample leaves. Dry on and weigh again.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 7; 4.6; 2.7; 1.2})",
    "#N/A weights: the curve ends at -4.62 g, below what any sample leaves. Dry on and weigh again.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 8.5; 7.5; 7.5; 7.4})",
    "#N/A weights: since row 1 the loss does not slow down clearly enough to show an end. Dry on and weigh again.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 8; 8; 8; 8}, , 0.01)",
    "#N/A weights: nearly all was lost between rows 1 and 2, so no rate shows. Weigh more often, or use CONSTANTWEIGHT.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120; 150; 180; 210}, {10; 9; 8; 7.995; 7.994; 7.993; 7.992; 7.992}, , 0.001)",
    "#N/A weights: 0.003 g lost since row 4 is below 4 steps of 0.001 g, inside the balance's noise. Use CONSTANTWEIGHT.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {10; 9; 8; 7; 6})",
    "#N/A weights: since row 1 the loss does not slow down clearly enough to show an end. Dry on and weigh again.",
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {36; 35; 34.2; 33.6; 24}, 25)",
    '#VALUE! weights: row 5 holds 24 g, not more than vessel, 25 g. Weigh with the vessel, or give "tared" as vessel.',
  ],
];
