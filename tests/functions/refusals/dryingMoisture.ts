import type { Refusal } from "./Refusal";

export const dryingMoisture: readonly Refusal[] = [
  [
    "=RETORT.MOISTURE.WET(, 35, 31.5)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.MOISTURE.WET(0, 35, 31.5)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ["=RETORT.MOISTURE.WET(25, , 31.5)", "#VALUE! moist: nothing here (blank or 0). Give grams."],
  ["=RETORT.MOISTURE.WET(25, 35, 0)", "#VALUE! dry: nothing here (blank or 0). Give grams."],
  [
    '=RETORT.MOISTURE.WET("tare", 35, 31.5)',
    '#VALUE! vessel: "tare" is not a weighing. Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ['=RETORT.MOISTURE.WET(25, "35,1", 31.5)', '#VALUE! moist: "35,1" is text, not a number. Retype it as a number.'],
  ['=RETORT.MOISTURE.WET(25, "35.1 g", 31.5)', '#VALUE! moist: "35.1 g" is not a weighing. Give grams.'],
  ["=RETORT.MOISTURE.WET(25, TRUE, 31.5)", "#VALUE! moist: TRUE is not a weighing. Give grams."],
  ["=RETORT.MOISTURE.WET(25, #N/A, 31.5)", "#N/A moist: the cell given here shows #N/A. Mend that cell first."],
  ["=RETORT.MOISTURE.WET(25, #REF!, 31.5)", "#VALUE! moist: the cell given here shows #REF!. Mend that cell first."],
  [
    "=RETORT.MOISTURE.WET(-25, 35, 31.5)",
    '#VALUE! vessel: -25 g is below zero. Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ["=RETORT.MOISTURE.WET(25, 35, -31.5)", "#VALUE! dry: -31.5 g is below zero. Give grams."],
  [
    "=RETORT.MOISTURE.WET(25, 35, 36.2)",
    "#VALUE! dry: 36.2 g is more than moist, 35 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  [
    "=RETORT.MOISTURE.WET(35, 30, 28)",
    "#VALUE! moist: 30 g is not more than vessel, 35 g. Check for swapped cells or a different vessel.",
    "another vessel",
  ],
  ["=RETORT.MOISTURE.WET(25, 35, 24)", "#VALUE! dry: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.MOISTURE.WET(25, 35, 25)", "#VALUE! dry: 25 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.MOISTURE.WET(25, 25, 25)", "#VALUE! moist: 25 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  [
    "=RETORT.MOISTURE.WET(25, {35; 36}, {31.5; 31.6; 31.7})",
    "#VALUE! moist: 2 rows by 1 column does not fit dry, 3 rows by 1 column. Give ranges of one size.",
  ],
  [
    "=RETORT.MOISTURE.DRY(25, 35, 36.2)",
    "#VALUE! dry: 36.2 g is more than moist, 35 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  [
    "=RETORT.MOISTURE.DRY(35, 30, 28)",
    "#VALUE! moist: 30 g is not more than vessel, 35 g. Check for swapped cells or a different vessel.",
    "another vessel",
  ],
  ["=RETORT.MOISTURE.DRY(25, 35, 25)", "#VALUE! dry: 25 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.MOISTURE.DRY(25, 35, )", "#VALUE! dry: nothing here (blank or 0). Give grams."],
  ['=RETORT.MOISTURE.DRY(25, 35, "dry")', '#VALUE! dry: "dry" is not a weighing. Give grams.'],
  ['=RETORT.MOISTURE.CONVERT(, "wet", "dry")', "#VALUE! moisture: nothing here (blank). Type a fraction such as 0.35 or 35%."],
  [
    '=RETORT.MOISTURE.CONVERT(35, "wet", "dry")',
    "#VALUE! moisture: 35 is not below 1, as a wet basis must be. Type 35 % as 0.35 or 35%; check the basis.",
    "percentage for a fraction",
  ],
  [
    '=RETORT.MOISTURE.CONVERT(1, "wet", "dry")',
    "#VALUE! moisture: 1 is not below 1, as a wet basis must be. Type 35 % as 0.35 or 35%; check the basis.",
  ],
  [
    '=RETORT.MOISTURE.CONVERT(1, "wet", "wet")',
    "#VALUE! moisture: 1 is not below 1, as a wet basis must be. Type 35 % as 0.35 or 35%; check the basis.",
  ],
  [
    '=RETORT.MOISTURE.CONVERT(54, "dry", "wet")',
    "#VALUE! moisture: 54 on the dry basis would be 98.2 % water, a liquid. Type 54 % as 0.54 or 54%; give a liquid on the wet basis.",
    "percentage for a fraction",
  ],
  ['=RETORT.MOISTURE.CONVERT(-0.1, "wet", "dry")', "#VALUE! moisture: -0.1 is below zero. Type a fraction such as 0.35 or 35%."],
  ['=RETORT.MOISTURE.CONVERT("20%", "wet", "dry")', '#VALUE! moisture: "20%" is text, not a number. Retype it as a number.'],
  ['=RETORT.MOISTURE.CONVERT("0,2", "wet", "dry")', '#VALUE! moisture: "0,2" is text, not a number. Retype it as a number.'],
  ['=RETORT.MOISTURE.CONVERT("damp", "wet", "dry")', '#VALUE! moisture: "damp" is not a moisture content. Type a fraction such as 0.35 or 35%.'],
  ['=RETORT.MOISTURE.CONVERT(TRUE, "wet", "dry")', "#VALUE! moisture: TRUE is not a moisture content. Type a fraction such as 0.35 or 35%."],
  ['=RETORT.MOISTURE.CONVERT(0.2, "oven", "dry")', '#VALUE! from: "oven" is not one of "wet", "dry".'],
  ['=RETORT.MOISTURE.CONVERT(0.2, "wet", )', '#VALUE! to: nothing here (blank or 0). Type one of "wet", "dry".'],
  ['=RETORT.MOISTURE.CONVERT(0.2, 0, "dry")', '#VALUE! from: nothing here (blank or 0). Type one of "wet", "dry".'],
  ['=RETORT.MOISTURE.CONVERT(0.2, "wet", 1)', '#VALUE! to: 1 is not one of "wet", "dry".'],
  ['=RETORT.MOISTURE.CONVERT(#DIV/0!, "wet", "dry")', "#DIV/0! moisture: the cell given here shows #DIV/0!. Mend that cell first."],
];
