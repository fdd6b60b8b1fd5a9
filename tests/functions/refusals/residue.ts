import type { Refusal } from "./Refusal";

export const residue: readonly Refusal[] = [
  [
    "=RETORT.VOLATILEFRACTION(25, 35, 36)",
    "#VALUE! after: 36 g is more than before, 35 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  ["=RETORT.VOLATILEFRACTION(25, 35, 24)", "#VALUE! after: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.VOLATILEFRACTION(25, 25, 24)", "#VALUE! before: 25 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  [
    "=RETORT.VOLATILEFRACTION(, 35, 28)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ['=RETORT.VOLATILEFRACTION(25, "35,1", 28)', '#VALUE! before: "35,1" is text, not a number. Retype it as a number.'],
  [
    '=RETORT.CHARYIELD("tared", 10, 10.4)',
    "#VALUE! char: 10.4 g is more than dry, 10 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  ["=RETORT.CHARYIELD(35, 30, 28)", "#VALUE! dry: 30 g is not more than vessel, 35 g. Check for swapped cells or a different vessel."],
  [
    "=RETORT.CHARYIELD(25, 35, 24)",
    "#VALUE! char: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel.",
    "another vessel",
  ],
  ["=RETORT.CHARYIELD(25, 35, 27.5, 24)", "#VALUE! ash: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.CHARYIELD(25, 35, 27.5, 28)", "#VALUE! ash: 28 g is more than char, 27.5 g. Check for swapped cells or regained moisture."],
  ["=RETORT.CHARYIELD(25, 35, 35, 35)", "#VALUE! ash: 35 g is the same as dry, 35 g, so nothing burnt away. Check for a repeated cell."],
  ['=RETORT.CHARYIELD(25, 35, 27.5, "none")', '#VALUE! ash: "none" is not a weighing. Give grams.'],
  ["=RETORT.CHARYIELD(25, 35, 27.5, -1)", "#VALUE! ash: -1 g is below zero. Give grams."],
  ["=RETORT.CHARYIELD(25, 35, )", "#VALUE! char: nothing here (blank or 0). Give grams."],
  ["=RETORT.CHARYIELD(25, 35, #VALUE!)", "#VALUE! char: the cell given here shows #VALUE!. Mend that cell first."],
];
