import type { Refusal } from "./Refusal";

const GIVE_FORMULA = "Type a chemical formula such as CaCO3.";
const GIVE_SHARE = "Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.";
const GIVE_AIR = "Give the mass fraction of oxygen, 0.2314 for dry air.";
const GIVE_OXYGEN = "Give grams of oxygen per gram of fuel; a fuel that takes up none needs no air.";
const GIVE_EXCESS = "Type 0.15 or 15% for 15 % more air than needed.";
const COVERED = "Use C H N S P Li Na K Mg Ca Ba Zn Cu Al Fe Si O F Cl Br I only.";

const demand: readonly Refusal[] = [
  ["=RETORT.OXYGENDEMAND(0)", `#VALUE! formula: nothing here (blank or 0). ${GIVE_FORMULA}`],
  ['=RETORT.OXYGENDEMAND("")', `#VALUE! formula: nothing here (blank or 0). ${GIVE_FORMULA}`],
  ["=RETORT.OXYGENDEMAND()", `#VALUE! formula: nothing here (blank or 0). ${GIVE_FORMULA}`],
  ["=RETORT.OXYGENDEMAND(162.141)", `#VALUE! formula: 162.141 is not a chemical formula. ${GIVE_FORMULA}`],
  ["=RETORT.OXYGENDEMAND(TRUE)", `#VALUE! formula: TRUE is not a chemical formula. ${GIVE_FORMULA}`],
  ["=RETORT.OXYGENDEMAND(#N/A)", "#N/A formula: the cell given here shows #N/A. Mend that cell first."],
  ['=RETORT.OXYGENDEMAND("K2Cr2O7")', `#VALUE! formula: no end product of burning is settled for Cr. ${COVERED}`],
  ['=RETORT.OXYGENDEMAND("B2H6")', `#VALUE! formula: no end product of burning is settled for B. ${COVERED}`],
  ['=RETORT.OXYGENDEMAND("Pb(C2H5)4")', `#VALUE! formula: no end product of burning is settled for Pb. ${COVERED}`],
  ['=RETORT.OXYGENDEMAND("XeF2")', "#VALUE! formula: Xe is a noble gas and does not burn. Leave it out of the formula."],
  [
    '=RETORT.OXYGENDEMAND("CH3COO-")',
    '#VALUE! formula: "CH3COO-" is an ion, and ions do not burn alone. Write the whole compound, such as CH3COONa.',
    "nothing there to burn",
  ],
  ['=RETORT.OXYGENDEMAND("NH4+")', '#VALUE! formula: "NH4+" is an ion, and ions do not burn alone. Write the whole compound, such as CH3COONa.'],
  [
    '=RETORT.OXYGENDEMAND("CaCl2")',
    "#VALUE! formula: more halogen than hydrogen and alkali metal, so whether Ca ends as halide or oxide is open. Give the part that burns.",
  ],
  [
    '=RETORT.OXYGENDEMAND("FeCl3")',
    "#VALUE! formula: more halogen than hydrogen and alkali metal, so whether Fe ends as halide or oxide is open. Give the part that burns.",
  ],
  ['=RETORT.OXYGENDEMAND("C2H5NO2", "NO3")', '#VALUE! nitrogenTo: "NO3" is not one of "N2", "NH3", "HNO3".'],
  ['=RETORT.OXYGENDEMAND("C2H5NO2", 14)', '#VALUE! nitrogenTo: 14 is not one of "N2", "NH3", "HNO3".'],
  ['=RETORT.OXYGENDEMAND("C2H6S", "N2", "SO3")', '#VALUE! sulfurTo: "SO3" is not one of "SO2", "H2SO4".'],
];

const ultimate: readonly Refusal[] = [
  ["=RETORT.OXYGENDEMAND.ULTIMATE(0, 0.06, 0.4)", `#VALUE! carbon: nothing here (blank or 0). ${GIVE_SHARE}`],
  ["=RETORT.OXYGENDEMAND.ULTIMATE(, 0.06, 0.4)", `#VALUE! carbon: nothing here (blank or 0). ${GIVE_SHARE}`],
  ["=RETORT.OXYGENDEMAND.ULTIMATE(0.48, , 0.4)", `#VALUE! hydrogen: nothing here (blank). ${GIVE_SHARE}`],
  ["=RETORT.OXYGENDEMAND.ULTIMATE(0.48, 0.06)", `#VALUE! oxygen: nothing here (blank). ${GIVE_SHARE}`],
  [
    "=RETORT.OXYGENDEMAND.ULTIMATE(48.77, 6.13, 40.69)",
    `#VALUE! carbon: 48.77 is above 1 and looks like a percentage. ${GIVE_SHARE}`,
    "percentage for a fraction",
  ],
  ["=RETORT.OXYGENDEMAND.ULTIMATE(0.4877, 6.13, 0.4069)", `#VALUE! hydrogen: 6.13 is above 1 and looks like a percentage. ${GIVE_SHARE}`],
  ["=RETORT.OXYGENDEMAND.ULTIMATE(0.4877, 0.0613, 40.69)", `#VALUE! oxygen: 40.69 is above 1 and looks like a percentage. ${GIVE_SHARE}`],
  ["=RETORT.OXYGENDEMAND.ULTIMATE(-0.48, 0.06, 0.4)", `#VALUE! carbon: -0.48 is below zero. ${GIVE_SHARE}`],
  ['=RETORT.OXYGENDEMAND.ULTIMATE(0.48, 0.06, 0.4, "n/a")', `#VALUE! nitrogen: "n/a" is not a fraction. ${GIVE_SHARE}`],
  ['=RETORT.OXYGENDEMAND.ULTIMATE("0,48", 0.06, 0.4)', '#VALUE! carbon: "0,48" is text, not a number. Retype it as a number.'],
  [
    "=RETORT.OXYGENDEMAND.ULTIMATE(0.5, 0.06, 0.44, 0.05)",
    "#VALUE! carbon to chlorine: the fractions sum to 1.05, above 1.02. Give one basis, hydrogen and oxygen without those of moisture.",
    "figures that cannot all be of one sample",
  ],
  [
    "=RETORT.OXYGENDEMAND.ULTIMATE(0.5, 0.06, 0.4603)",
    "#VALUE! carbon to chlorine: the fractions sum to 1.0203, above 1.02. Give one basis, hydrogen and oxygen without those of moisture.",
  ],
  [
    "=RETORT.OXYGENDEMAND.ULTIMATE({0.5; 0.5}, {0.06; 0.06; 0.06}, 0.4)",
    "#VALUE! carbon: 2 rows by 1 column does not fit hydrogen, 3 rows by 1 column. Give ranges of one size.",
  ],
];

const air: readonly Refusal[] = [
  ["=RETORT.AIRDEMAND(0)", `#VALUE! oxygen: nothing here (blank or 0). ${GIVE_OXYGEN}`],
  ["=RETORT.AIRDEMAND()", `#VALUE! oxygen: nothing here (blank or 0). ${GIVE_OXYGEN}`],
  ["=RETORT.AIRDEMAND(1e+308)", `#VALUE! oxygen: 1e+308 g/g is beyond 1000000000000000 either way. ${GIVE_OXYGEN}`],
  ["=RETORT.AIRDEMAND(-0.2)", `#VALUE! oxygen: -0.2 g/g is below zero. ${GIVE_OXYGEN}`],
  ['=RETORT.AIRDEMAND("C6H10O5")', `#VALUE! oxygen: "C6H10O5" is not a mass of oxygen. ${GIVE_OXYGEN}`],
  ["=RETORT.AIRDEMAND(1.18, 20.95)", `#VALUE! oxygenInAir: 20.95 is above 1 and looks like a percentage. ${GIVE_AIR}`],
  ["=RETORT.AIRDEMAND(1.18, 23.14)", `#VALUE! oxygenInAir: 23.14 is above 1 and looks like a percentage. ${GIVE_AIR}`, "percentage for a fraction"],
  ["=RETORT.AIRDEMAND(1.18, 0.2095)", `#VALUE! oxygenInAir: 0.2095 is the share by volume, not by mass. ${GIVE_AIR}`, "volume for mass"],
  ["=RETORT.AIRDEMAND(1.18, 0.21)", `#VALUE! oxygenInAir: 0.21 is the share by volume, not by mass. ${GIVE_AIR}`],
  ["=RETORT.AIRDEMAND(1.18, 0.02314)", `#VALUE! oxygenInAir: 0.02314 is below 0.05, in which nothing burns. ${GIVE_AIR}`],
  ["=RETORT.AIRDEMAND(1.18, -0.23)", `#VALUE! oxygenInAir: -0.23 is below zero. ${GIVE_AIR}`],
];

const reaction: readonly Refusal[] = [
  ["=RETORT.BURN.EQUATION()", `#VALUE! formula: nothing here (blank or 0). ${GIVE_FORMULA}`],
  ["=RETORT.BURN.EQUATION(46.07)", `#VALUE! formula: 46.07 is not a chemical formula. ${GIVE_FORMULA}`],
  [
    '=RETORT.BURN.EQUATION("C2H60")',
    '#VALUE! formula: "H60" at character 3 of "C2H60" holds the digit 0. For oxygen type the letter O; for that count type (H)60.',
    "letter for digit or wrong capital",
  ],
  ["=RETORT.BURN.EQUATION(#N/A)", "#N/A formula: the cell given here shows #N/A. Mend that cell first."],
  ["=RETORT.BURN.PRODUCTS()", `#VALUE! formula: nothing here (blank or 0). ${GIVE_FORMULA}`],
  ["=RETORT.BURN.PRODUCTS(16)", `#VALUE! formula: 16 is not a chemical formula. ${GIVE_FORMULA}`],
  [
    '=RETORT.BURN.EQUATION("H2O")',
    '#N/A formula: "H2O" is an end product of burning itself, so there is no reaction to balance.',
    "nothing there to burn",
  ],
  ['=RETORT.BURN.EQUATION("CO2")', '#N/A formula: "CO2" is an end product of burning itself, so there is no reaction to balance.'],
  ['=RETORT.BURN.EQUATION("O2")', '#N/A formula: "O2" is oxygen alone, which feeds a fire and does not burn, so there is no reaction to balance.'],
  ['=RETORT.BURN.EQUATION("O3")', '#N/A formula: "O3" is oxygen alone, which feeds a fire and does not burn, so there is no reaction to balance.'],
  ['=RETORT.BURN.EQUATION("NaCl")', '#N/A formula: "NaCl" is an end product of burning itself, so there is no reaction to balance.'],
  [
    '=RETORT.BURN.EQUATION("C6D6")',
    "#VALUE! formula: the products of the isotope D are not told apart here. Write the element itself, such as H or C.",
  ],
  ['=RETORT.BURN.EQUATION("TiCl4")', `#VALUE! formula: no end product of burning is settled for Ti. ${COVERED}`],
  ['=RETORT.BURN.PRODUCTS({"CH4"; "C2H6"})', "#VALUE! formula: 2 rows by 1 column given where one cell is wanted. Give one cell."],
  ['=RETORT.BURN.PRODUCTS("CH4", 15)', `#VALUE! excessAir: 15 is above 5 and looks like a percentage. ${GIVE_EXCESS}`, "percentage for a fraction"],
  ['=RETORT.BURN.PRODUCTS("CH4", -0.1)', `#VALUE! excessAir: -0.1 is below zero. ${GIVE_EXCESS}`],
  ['=RETORT.BURN.PRODUCTS("CH4", "15 %")', '#VALUE! excessAir: "15 %" is text, not a number. Retype it as a number.'],
  ['=RETORT.BURN.PRODUCTS("CH4", "some")', `#VALUE! excessAir: "some" is not a share of the air needed. ${GIVE_EXCESS}`],
  [
    '=RETORT.BURN.PRODUCTS("KClO3", 0.15)',
    '#VALUE! excessAir: "KClO3" carries all the oxygen it needs, so there is no air to exceed. Leave excessAir out.',
  ],
];

const comparison: readonly Refusal[] = [
  [
    "=RETORT.BURN.COMPARE(, 35, 28)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ['=RETORT.BURN.COMPARE(25, "35,1", 28, , "C6H10O5")', '#VALUE! dry: "35,1" is text, not a number. Retype it as a number.'],
  [
    '=RETORT.BURN.COMPARE("crucible", 35, 28, , "C6H10O5")',
    '#VALUE! vessel: "crucible" is not a weighing. Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ["=RETORT.BURN.COMPARE(25, 0, 28)", "#VALUE! dry: nothing here (blank or 0). Give grams."],
  [
    '=RETORT.BURN.COMPARE(25, 35, 36.2, , "C6H10O5")',
    "#VALUE! char: 36.2 g is more than dry, 35 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  [
    '=RETORT.BURN.COMPARE(25, 24, 23, , "C6H10O5")',
    "#VALUE! dry: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel.",
  ],
  ['=RETORT.BURN.COMPARE(25, 35, 28, 28.5, "C6H10O5")', "#VALUE! ash: 28.5 g is more than char, 28 g. Check for swapped cells or regained moisture."],
  [
    '=RETORT.BURN.COMPARE(25, 35, 28, 24.9, "C6H10O5")',
    "#VALUE! ash: 24.9 g is not more than vessel, 25 g. Check for swapped cells or a different vessel.",
  ],
  [
    "=RETORT.BURN.COMPARE(25, 35, 28)",
    "#VALUE! formula: no composition given. Give the ash-free sample's formula, or carbon, hydrogen and oxygen as fractions of the dry sample.",
  ],
  [
    '=RETORT.BURN.COMPARE(25, 35, 28, 25.1, "C6H10O5", 0.45)',
    '#VALUE! formula: "C6H10O5" is given and so is carbon, 0.45. Give the formula or the analysis, not both.',
  ],
  [
    '=RETORT.BURN.COMPARE(25, 35, 28, 25.1, "C6H10O5", , , , 0.01)',
    '#VALUE! formula: "C6H10O5" is given and so is nitrogen, 0.01. Give the formula or the analysis, not both.',
  ],
  [
    "=RETORT.BURN.COMPARE(25, 35, 28, , , , 0.06, 0.44)",
    "#VALUE! carbon: nothing here (blank or 0). An analysis needs carbon and hydrogen, as fractions of the dry sample.",
  ],
  [
    "=RETORT.BURN.COMPARE(25, 35, 28, , , 0.5, , 0.44)",
    "#VALUE! hydrogen: nothing here (blank or 0). An analysis needs carbon and hydrogen, as fractions of the dry sample.",
  ],
  [
    "=RETORT.BURN.COMPARE(25, 35, 28, , , 48.77, 6.13, 40.69)",
    `#VALUE! carbon: 48.77 is above 1 and looks like a percentage. ${GIVE_SHARE}`,
    "percentage for a fraction",
  ],
  [
    "=RETORT.BURN.COMPARE(25, 35, 28, 27, , 0.5, 0.06, 0.44)",
    "#VALUE! carbon to sulfur: the fractions and ash sum to 1.2, outside 0.9 to 1.1 of the dry sample. Check the basis and the ash.",
  ],
  [
    "=RETORT.BURN.COMPARE(25, 35, 28, , , 0.389, 0.051, 0.32, 0.006)",
    "#VALUE! carbon to sulfur: the fractions and ash sum to 0.766, outside 0.9 to 1.1 of the dry sample. Check the basis and the ash.",
  ],
  [
    '=RETORT.BURN.COMPARE(25, 35, 28, 25.1, "CaC2O4")',
    "#VALUE! ash: weighed, but the formula leaves CaO as well. Give the formula of the ash-free part, or leave the ash out.",
  ],
  [
    '=RETORT.BURN.COMPARE(25, 35, 28, , "NH4NO3")',
    "#VALUE! formula: this composition carries more oxygen than it needs, so burning takes up none. Compare a sample that takes up oxygen.",
  ],
  [
    "=RETORT.BURN.COMPARE(25, 35, 28, , , 0.1, 0.02, 0.88)",
    "#VALUE! oxygen: this composition carries more oxygen than it needs, so burning takes up none. Compare a sample that takes up oxygen.",
  ],
  ['=RETORT.BURN.COMPARE(25, 35, 28, , "Fe(CO)Xe")', "#VALUE! formula: Xe is a noble gas and does not burn. Leave it out of the formula."],
];

export const burning: readonly Refusal[] = [...demand, ...ultimate, ...air, ...reaction, ...comparison];
