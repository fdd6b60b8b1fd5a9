import type { Refusal } from "./Refusal";

export const dryingFit: readonly Refusal[] = [
  ["=RETORT.DRYING.FIT()", "#VALUE! times: nothing here (blank or 0). Give minutes."],
  [
    "=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45})",
    '#VALUE! model: nothing here (blank or 0). Type one of "Newton", "Page", "modified Page", "Henderson-Pabis", "logarithmic", "two-term", "Lewis".',
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "page2")',
    '#VALUE! model: "page2" is not one of "Newton", "Page", "modified Page", "Henderson-Pabis", "logarithmic", "two-term", "Lewis".',
  ],
  [
    "=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, 0)",
    '#VALUE! model: nothing here (blank or 0). Type one of "Newton", "Page", "modified Page", "Henderson-Pabis", "logarithmic", "two-term", "Lewis".',
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "logarithmic")',
    "#VALUE! dry: left out, blank or 0, but logarithmic has an end of its own, so none can be fitted beside it. Give the dry weighing, or take Henderson-Pabis.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "Newton", 25)',
    '#VALUE! weights: row 1 holds 10 g, not more than vessel, 25 g. Weigh with the vessel, or give "tared" as vessel.',
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "Newton", , 10.2)',
    "#VALUE! dry: 10.2 g is not below the first of weights, 10 g. Check for swapped cells.",
    "swapped cells",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "Newton", , 10)',
    "#VALUE! dry: 10 g is not below the first of weights, 10 g. Check for swapped cells.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {35; 34.2; 33.81; 33.6; 33.51; 33.45}, "Newton", 25, 8.4)',
    "#VALUE! dry: 8.4 g is not more than vessel, 25 g. Weigh it with the vessel, as the others.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "Newton", , "8,4")',
    '#VALUE! dry: "8,4" is text, not a number. Retype it as a number.',
  ],
  [
    '=RETORT.DRYING.FIT({0; 30}, {10; 9}, "Newton")',
    "#N/A weights: 2 weighings cannot carry the 2 unknowns of Newton; it takes 5. Weigh more often.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90}, {10; 9.2; 8.8; 8.6}, "Newton")',
    "#N/A weights: 4 weighings cannot carry the 2 unknowns of Newton; it takes 5. Weigh more often.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, "Page")',
    "#N/A weights: 5 weighings cannot carry the 3 unknowns of Page; it takes 6. Weigh more often.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "two-term")',
    "#N/A weights: 6 weighings cannot carry the 5 unknowns of two-term; it takes 7. Weigh more often.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150; 180}, {10; 10; 10; 10; 10; 10; 10}, "Page")',
    "#N/A model: these weighings do not settle the unknowns of Page. Weigh on, or take a model with fewer.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150; 180}, {10; 9; 8; 7; 6; 5; 4}, "Newton")',
    "#N/A model: these weighings do not settle the unknowns of Newton. Weigh on, or take a model with fewer.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 90}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "Newton")',
    "#VALUE! times: row 6 holds 90 min, not later than row 5, 120 min. Give rising minutes.",
    "rows out of order",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120}, {10; 9.2; 8.81; 8.6; 8.51; 8.45}, "Newton")',
    "#VALUE! times: length 5 does not fit weights, length 6. Give ranges of one size.",
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; "x"; 8.6; 8.51; 8.45}, "Newton")',
    '#VALUE! weights: row 3 holds "x", not a weighing. Clear the cell or give grams.',
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {10; 9.2; 88.1; 8.6; 8.51; 8.45}, "Newton")',
    "#VALUE! weights: row 3 holds 88.1 g, far above row 1, 10 g. Check for a wrong cell, a slipped decimal or another vessel.",
  ],
];
