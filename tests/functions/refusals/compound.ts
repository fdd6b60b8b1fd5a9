import type { Refusal } from "./Refusal";

const NO_WEIGHT = "has no standard atomic weight, so no molar mass follows. Leave it out or use one isotope's mass.";

export const compound: readonly Refusal[] = [
  ['=RETORT.MOLARMASS("CaXoO3")', '#VALUE! formula: no element "Xo" at character 3 of "CaXoO3". Check the symbol.'],
  [
    '=RETORT.MOLARMASS("CACO3")',
    '#VALUE! formula: no element "A" at character 2 of "CACO3". Check the symbol. Capitals matter: Co is cobalt, CO carbon monoxide.',
    "letter for digit or wrong capital",
  ],
  [
    '=RETORT.MOLARMASS("H20")',
    '#VALUE! formula: "H20" at character 1 of "H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.',
    "letter for digit or wrong capital",
  ],
  [
    '=RETORT.MOLARMASS("CaCo3")',
    '#VALUE! formula: "Co3" at character 3 of "CaCo3" reads as cobalt. Type CO3 for carbon and oxygen, or (Co)3 if so meant.',
    "letter for digit or wrong capital",
  ],
  ['=RETORT.MOLARMASS("WOOD")', '#VALUE! formula: "WOOD" is a word or an abbreviation, spelled in symbols. Type the formula, or (W)OOD if so meant.'],
  ['=RETORT.MOLARMASS("KHP")', '#VALUE! formula: "KHP" is an abbreviation. Type the formula: KHC8H4O4.'],
  [
    '=RETORT.MOLARMASS("K15NO3")',
    '#VALUE! formula: "15" at character 2 of "K15NO3" can be a count or the isotope N-15. Type [15N] for the isotope, (K)15 for the count.',
  ],
  ["=RETORT.MOLARMASS(40.08)", "#VALUE! formula: 40.08 is not a chemical formula. Type a chemical formula such as CaCO3."],
  ["=RETORT.MOLARMASS(0)", "#VALUE! formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
  ["=RETORT.MOLARMASS()", "#VALUE! formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
  ["=RETORT.MOLARMASS(#N/A)", "#N/A formula: the cell given here shows #N/A. Mend that cell first."],
  ['=RETORT.ATOMS("CaXoO3")', '#VALUE! formula: no element "Xo" at character 3 of "CaXoO3". Check the symbol.'],
  ['=RETORT.ATOMS("PmCl3")', `#VALUE! formula: promethium (Pm) ${NO_WEIGHT}`],
  ["=RETORT.ATOMS()", "#VALUE! formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
  ["=RETORT.ATOMS(100.09)", "#VALUE! formula: 100.09 is not a chemical formula. Type a chemical formula such as CaCO3."],
  [
    '=RETORT.ATOMS("caco3")',
    '#VALUE! formula: no element "caco" at character 1 of "caco3". A symbol begins with a capital. Check the symbol.',
    "letter for digit or wrong capital",
  ],
  ["=RETORT.ATOMS(#N/A)", "#N/A formula: the cell given here shows #N/A. Mend that cell first."],
  ['=RETORT.FORMULA.CHECK("TcO2")', `formula: technetium (Tc) ${NO_WEIGHT}`],
  [
    '=RETORT.FORMULA.CHECK("H20")',
    'formula: "H20" at character 1 of "H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.',
    "letter for digit or wrong capital",
  ],
  ["=RETORT.FORMULA.CHECK(100.09)", "formula: 100.09 is not a chemical formula. Type a chemical formula such as CaCO3."],
  ["=RETORT.FORMULA.CHECK(TRUE)", "formula: TRUE is not a chemical formula. Type a chemical formula such as CaCO3."],
  ["=RETORT.FORMULA.CHECK(0)", "formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
  ['=RETORT.FORMULA.CHECK(" ")', "formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
  ["=RETORT.FORMULA.CHECK(#N/A)", "#N/A formula: the cell given here shows #N/A. Mend that cell first."],
];
