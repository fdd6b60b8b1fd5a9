import { parseFormula } from "../../src/chemistry/parseFormula";
import { InputProblem } from "../../src/problems/InputProblem";

const REFUSED: Readonly<Record<string, readonly (readonly [text: string, message: string])[]>> = {
  symbols: [
    ["CaXoO3", 'formula: no element "Xo" at character 3 of "CaXoO3". Check the symbol.'],
    ["Xo", 'formula: no element "Xo" at character 1 of "Xo". Check the symbol.'],
    ["CACO3", 'formula: no element "A" at character 2 of "CACO3". Check the symbol. Capitals matter: Co is cobalt, CO carbon monoxide.'],
    ["NACL", 'formula: no element "A" at character 2 of "NACL". Check the symbol. Capitals matter: Co is cobalt, CO carbon monoxide.'],
    ["FeO2Q", 'formula: no element "Q" at character 5 of "FeO2Q". Check the symbol.'],
    ["Oh", 'formula: no element "Oh" at character 1 of "Oh". Check the symbol. Capitals matter: Co is cobalt, CO carbon monoxide.'],
    ["Nacl", 'formula: no element "cl" at character 3 of "Nacl". A symbol begins with a capital. Check the symbol.'],
    ["Cao", 'formula: no element "o" at character 3 of "Cao". A symbol begins with a capital. Check the symbol.'],
    ["caco3", 'formula: no element "caco" at character 1 of "caco3". A symbol begins with a capital. Check the symbol.'],
    ["mgO", 'formula: no element "mg" at character 1 of "mgO". A symbol begins with a capital. Check the symbol.'],
    ["Jz2", 'formula: no element "Jz" at character 1 of "Jz2". Check the symbol.'],
    ["EtOH", 'formula: no element "Et" at character 1 of "EtOH". Write the group out, such as C2H5.'],
    ["MeOH", 'formula: no element "Me" at character 1 of "MeOH". Write the group out, such as CH3.'],
    ["PhCl", 'formula: no element "Ph" at character 1 of "PhCl". Write the group out, such as C6H5.'],
    ["A1Cl3", 'formula: no element "A" at character 1 of "A1Cl3". Aluminium is Al with a small L.'],
    ["AI2O3", 'formula: no element "A" at character 1 of "AI2O3". Aluminium is Al with a small L.'],
    ["Calcium", 'formula: "Calcium" at character 1 of "Calcium" is a word, not an element symbol. Type a chemical formula such as CaCO3.'],
    ["water", 'formula: "water" at character 1 of "water" is a word, not an element symbol. Type a chemical formula such as CaCO3.'],
    ["Iron", 'formula: "Iron" at character 1 of "Iron" is a word, not an element symbol. Type a chemical formula such as CaCO3.'],
    ["Zinc oxide", 'formula: "Zinc" at character 1 of "Zinc oxide" is a word, not an element symbol. Type a chemical formula such as CaCO3.'],
    ["NaCl2b", 'formula: no element "b" at character 6 of "NaCl2b". A symbol begins with a capital. Check the symbol.'],
  ],
  "decimals without their 0": [
    ["Fe.947O", 'formula: ".947" at character 3 of "Fe.947O" can be a decimal or a hydrate dot. Type 0 before it for a decimal, or · for the dot.'],
    ["Fe.₉₄₇O", 'formula: ".₉₄₇" at character 3 of "Fe.₉₄₇O" can be a decimal or a hydrate dot. Type 0 before it for a decimal, or · for the dot.'],
    [
      "(Mg.9Fe.1)2SiO4",
      'formula: ".9" at character 4 of "(Mg.9Fe.1)2SiO4" can be a decimal or a hydrate dot. Type 0 before it for a decimal, or · for the dot.',
    ],
    [
      "Na.5K.5AlSi3O8",
      'formula: ".5" at character 3 of "Na.5K.5AlSi3O8" can be a decimal or a hydrate dot. Type 0 before it for a decimal, or · for the dot.',
    ],
  ],
  "oxidation states": [
    ["Fe(III)", 'formula: "(III)" at character 3 of "Fe(III)" is an oxidation state, not iodine or vanadium. Remove it.'],
    ["Cu(I)Cl", 'formula: "(I)" at character 3 of "Cu(I)Cl" is an oxidation state, not iodine or vanadium. Remove it.'],
    ["Mn(IV)O2", 'formula: "(IV)" at character 3 of "Mn(IV)O2" is an oxidation state, not iodine or vanadium. Remove it.'],
    ["Fe2O3(III)", 'formula: "(III)" at character 6 of "Fe2O3(III)" is an oxidation state, not iodine or vanadium. Remove it.'],
    ["Al(III)2O3", 'formula: "(III)" at character 3 of "Al(III)2O3" is an oxidation state, not iodine or vanadium. Remove it.'],
    ["Cr[VI]O3", 'formula: "[VI]" at character 3 of "Cr[VI]O3" is an oxidation state, not iodine or vanadium. Remove it.'],
  ],
  "letters of other scripts": [
    ["СO2", 'formula: "С" at character 1 of "СO2" is a Cyrillic letter that looks like C. Retype it as C.'],
    ["CаCO3", 'formula: "а" at character 2 of "CаCO3" is a Cyrillic letter that looks like a. Retype it as a.'],
    ["Н2О", 'formula: "Н" at character 1 of "Н2О" is a Cyrillic letter that looks like H. Retype it as H.'],
    ["ΝaCl", 'formula: "Ν" at character 1 of "ΝaCl" is a Greek letter that looks like N. Retype it as N.'],
    ["NaＣl", 'formula: "Ｃ" at character 3 of "NaＣl" is a full-width letter that looks like C. Retype it as C.'],
    ["Ｃ6H6", 'formula: "Ｃ" at character 1 of "Ｃ6H6" is a full-width letter that looks like C. Retype it as C.'],
    ["HОH", 'formula: "О" at character 2 of "HОH" is a Cyrillic letter that looks like O. Retype it as O.'],
  ],
  "capitals and digits mistaken": [
    ["NaCI", 'formula: "CI" at character 3 of "NaCI" reads as carbon and iodine. Type Cl with a small L for chlorine, or (C)I if it is so meant.'],
    ["NH4CI", 'formula: "CI" at character 4 of "NH4CI" reads as carbon and iodine. Type Cl with a small L for chlorine, or (C)I if it is so meant.'],
    [
      "[Co(NH3)6]CI3",
      'formula: "CI" at character 11 of "[Co(NH3)6]CI3" reads as carbon and iodine. Type Cl with a small L for chlorine, or (C)I if it is so meant.',
    ],
    ["CUSO4", 'formula: "CU" at character 1 of "CUSO4" reads as carbon and uranium. Type Cu for copper, or (C)U if it is so meant.'],
    ["SIO2", 'formula: "SI" at character 1 of "SIO2" reads as sulfur and iodine. Type Si for silicon, or (S)I if it is so meant.'],
    ["TIO2", 'formula: "TI" at character 1 of "TIO2" reads as tritium and iodine. Type Ti for titanium, Tl for thallium, or (T)I if it is so meant.'],
    ["NaC1", 'formula: "C1" at character 3 of "NaC1" reads as carbon with the digit 1. For chlorine type Cl with a small L; for carbon (C)1.'],
    ["CaC12", 'formula: "C12" at character 3 of "CaC12" reads as carbon with the digit 1. For chlorine type Cl with a small L; for carbon (C)12.'],
    ["CH3C1", 'formula: "C1" at character 4 of "CH3C1" reads as carbon with the digit 1. For chlorine type Cl with a small L; for carbon (C)1.'],
    ["SiC14", 'formula: "C14" at character 3 of "SiC14" reads as carbon with the digit 1. For chlorine type Cl with a small L; for carbon (C)14.'],
    ["H20", 'formula: "H20" at character 1 of "H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.'],
    ["CuSO4.5H20", 'formula: "H20" at character 8 of "CuSO4.5H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.'],
    ["H202", 'formula: "H202" at character 1 of "H202" holds the digit 0. For oxygen type the letter O; for that count type (H)202.'],
    ["K20", 'formula: "K20" at character 1 of "K20" holds the digit 0. For oxygen type the letter O; for that count type (K)20.'],
    ["Fe203", 'formula: "Fe203" at character 1 of "Fe203" holds the digit 0. For oxygen type the letter O; for that count type (Fe)203.'],
    ["CuSO4·5H20", 'formula: "H20" at character 8 of "CuSO4·5H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.'],
    ["C02", 'formula: "02" at character 2 of "C02" begins with the digit 0. For oxygen type the letter O; a decimal begins 0.'],
    ["CaC03", 'formula: "03" at character 4 of "CaC03" begins with the digit 0. For oxygen type the letter O; a decimal begins 0.'],
    ["Si02", 'formula: "02" at character 3 of "Si02" begins with the digit 0. For oxygen type the letter O; a decimal begins 0.'],
    ["Ca(0H)2", 'formula: "0" at character 4 of "Ca(0H)2" is a count of zero. Give a count above zero; for oxygen type the letter O.'],
    ["C6H1206", 'formula: "H1206" at character 3 of "C6H1206" holds the digit 0. For oxygen type the letter O; for that count type (H)1206.'],
    ["C2H60", 'formula: "H60" at character 3 of "C2H60" holds the digit 0. For oxygen type the letter O; for that count type (H)60.'],
    ["K2Cr207", 'formula: "Cr207" at character 3 of "K2Cr207" holds the digit 0. For oxygen type the letter O; for that count type (Cr)207.'],
    ["CaC204", 'formula: "C204" at character 3 of "CaC204" holds the digit 0. For oxygen type the letter O; for that count type (C)204.'],
    ["H20(l)", 'formula: "H20" at character 1 of "H20(l)" holds the digit 0. For oxygen type the letter O; for that count type (H)20.'],
  ],
  "unknown amounts": [
    ["CuSO4·xH2O", 'formula: "x" at character 7 of "CuSO4·xH2O" stands for an unknown number. Put the number in its place.'],
    ["CuSO4.nH2O", 'formula: "n" at character 7 of "CuSO4.nH2O" stands for an unknown number. Put the number in its place.'],
    ["(C6H10O5)n", 'formula: "n" at character 10 of "(C6H10O5)n" stands for an unknown number. Put the number in its place.'],
    ["nH2O", 'formula: "n" at character 1 of "nH2O" stands for an unknown number. Put the number in its place.'],
    ["CnH2n+2", 'formula: "n" at character 5 of "CnH2n+2" stands for an unknown number. Put the number in its place.'],
    ["CH3(CH2)nCH3", 'formula: "n" at character 9 of "CH3(CH2)nCH3" stands for an unknown number. Put the number in its place.'],
    ["NOx", 'formula: no element "Ox" at character 2 of "NOx". Check the symbol.'],
  ],
  brackets: [
    ["Ca(OH", 'formula: "(" at character 3 of "Ca(OH" is never closed. Add its closing bracket.'],
    ["CaOH)2", 'formula: ")" at character 5 of "CaOH)2" closes nothing. Remove it or add its opening bracket.'],
    ["Ca(OH]2", 'formula: "]" at character 6 of "Ca(OH]2" does not close "(". Use brackets in pairs: ( ), [ ], { }.'],
    ["[Co(NH3)6Cl3", 'formula: "[" at character 1 of "[Co(NH3)6Cl3" is never closed. Add its closing bracket.'],
    ["Ca()2", 'formula: "()" at character 3 of "Ca()2" has nothing in it. Fill it or remove it.'],
    ["Ca(", 'formula: "(" at character 3 of "Ca(" is never closed. Add its closing bracket.'],
    ["K4{Fe[CN)6}", 'formula: ")" at character 9 of "K4{Fe[CN)6}" does not close "[". Use brackets in pairs: ( ), [ ], { }.'],
    ["(", 'formula: "(" at character 1 of "(" is never closed. Add its closing bracket.'],
    ["Ca(]2", 'formula: "]" at character 4 of "Ca(]2" does not close "(". Use brackets in pairs: ( ), [ ], { }.'],
    [
      "(((((((((((((((((((((H)))))))))))))))))))))",
      'formula: "(" at character 21 of "((((((((((((((((((((…))))))))))))))))))))" is more than 20 brackets deep. Multiply some of them out.',
    ],
  ],
  counts: [
    ["H0", 'formula: "0" at character 2 of "H0" is a count of zero. Give a count above zero; for oxygen type the letter O.'],
    ["Ca(OH)0", 'formula: "0" at character 7 of "Ca(OH)0" is a count of zero. Give a count above zero; for oxygen type the letter O.'],
    ["C0.0H4", 'formula: "0.0" at character 2 of "C0.0H4" is a count of zero. Give a count above zero; for oxygen type the letter O.'],
    ["C99999999H2", 'formula: "99999999" at character 2 of "C99999999H2" is more than 10000000. Check the count.'],
    ["C0.0000001", 'formula: "0.0000001" at character 2 of "C0.0000001" is less than 0.000001. Check the count.'],
    ["C007", 'formula: "007" at character 2 of "C007" begins with the digit 0. For oxygen type the letter O; a decimal begins 0.'],
    ["((C9999)9999)9999", 'formula: "((C9999)9999)9999" multiplies out to 999700029999 C. Check the counts.'],
    ["O.66", 'formula: "66" at character 3 of "O.66" multiplies nothing. Put a formula after it, or type a decimal as 0.5.'],
    ["CH1.44O.66", 'formula: "66" at character 9 of "CH1.44O.66" multiplies nothing. Put a formula after it, or type a decimal as 0.5.'],
  ],
  "dots and spaces": [
    ["CuSO4·", 'formula: "·" at character 6 of "CuSO4·" has no formula after it. Name what follows, such as 5H2O, or remove the dot.'],
    ["·5H2O", 'formula: "·" at character 1 of "·5H2O" has no formula before it. Put the compound before the dot.'],
    ["CuSO4··5H2O", 'formula: "·" at character 6 of "CuSO4··5H2O" has no formula after it. Name what follows, such as 5H2O, or remove the dot.'],
    ["CuSO4·5", 'formula: "5" at character 7 of "CuSO4·5" multiplies nothing. Put a formula after it, or type a decimal as 0.5.'],
    ["CuSO4 5H2O", 'formula: "5" at character 7 of "CuSO4 5H2O" stands apart. Close the gap for a count, or type · before the water of a hydrate.'],
    ["Ca CO3", 'formula: the space at character 3 of "Ca CO3" parts the formula. Remove it, or type · before the water of a hydrate.'],
    ["NaCl KCl", 'formula: the space at character 5 of "NaCl KCl" parts the formula. Remove it, or type · before the water of a hydrate.'],
    ["C 6 H 12", 'formula: "6" at character 3 of "C 6 H 12" stands apart. Close the gap for a count, or type · before the water of a hydrate.'],
    ["CuSO4 x 5Xo", 'formula: "x" at character 7 of "CuSO4 x 5Xo" is a times sign. Type · or . before the water of a hydrate.'],
    ["CuSO4 × 5Xo", 'formula: "×" at character 7 of "CuSO4 × 5Xo" is a times sign. Type · or . before the water of a hydrate.'],
    ["3 × H2O", 'formula: "×" at character 3 of "3 × H2O" is a times sign. Type · or . before the water of a hydrate.'],
    [
      "2ZnCO3,3Zn(OH)2",
      'formula: "," at character 7 of "2ZnCO3,3Zn(OH)2" can be a decimal comma or a hydrate dot. Type · for a hydrate, or bracket a decimal: S(O4.5)H2O.',
    ],
    [
      "CuSO4,5H2O",
      'formula: "," at character 6 of "CuSO4,5H2O" can be a decimal comma or a hydrate dot. Type · for a hydrate, or bracket a decimal: S(O4.5)H2O.',
    ],
    [
      "(Mg,Fe)2SiO4",
      'formula: "," at character 4 of "(Mg,Fe)2SiO4" is no decimal mark here. Give each element its own count, such as (Mg0.5Fe0.5)2SiO4.',
    ],
    ["CaSO4·11/2H2O", 'formula: "/" at character 9 of "CaSO4·11/2H2O" divides. Type the amount as a decimal (0.5) or as ½.'],
    ["CuSO4, 5H2O", 'formula: "," at character 6 of "CuSO4, 5H2O" is no hydrate dot. Type · in its place.'],
    ["NaCl\nKCl", 'formula: a line break at character 5 of "NaCl\nKCl" parts the formula. Give one compound in a cell.'],
    ["Na Cl O3 ClO2", 'formula: the space at character 9 of "Na Cl O3 ClO2" parts the formula. Remove it, or type · before the water of a hydrate.'],
  ],
  charges: [
    ["K2+", 'formula: "2" at character 2 of "K2+" can be a count or part of the charge. Type ^2+ or 2^+.'],
    ["Na2SO42-", 'formula: "42" at character 6 of "Na2SO42-" can be a count or part of the charge. Type 4^2- or 42^-.'],
    ["N3-", 'formula: "3" at character 2 of "N3-" can be a count or part of the charge. Type ^3- or 3^-.'],
    ["VO2+", 'formula: "2" at character 3 of "VO2+" can be a count or part of the charge. Type ^2+ or 2^+.'],
    ["AlF2+", 'formula: "2" at character 4 of "AlF2+" can be a count or part of the charge. Type ^2+ or 2^+.'],
    ["O2-", 'formula: "2" at character 2 of "O2-" can be a count or part of the charge. Type ^2- or 2^-.'],
    ["(NH4)2+", 'formula: "2" at character 6 of "(NH4)2+" can be a count or part of the charge. Type ^2+ or 2^+.'],
    ["SO4^", 'formula: "^" at character 4 of "SO4^" has no charge or mass number after it. Type a charge such as ^2- or an isotope such as ^13C.'],
    [
      "SO4²",
      'formula: "²" at character 4 of "SO4²" is neither a charge nor a mass number. Add the sign of a charge, or type a count as plain digits.',
    ],
    ["^", 'formula: "^" at character 1 of "^" has no place in a formula. Remove it.'],
    ["2Na+", 'formula: "2" at character 1 of "2Na+" multiplies a charged formula. Give one ion, or put the neutral compound.'],
    ["(NH4+)2", 'formula: "+" at character 5 of "(NH4+)2" is a charge inside a bracket. Write the charge last, once.'],
    ["SO4^2-Na", 'formula: "-" at character 6 of "SO4^2-Na" is followed by more. A charge stands last; give one compound in a cell, without bonds.'],
    [
      "CaCO3-44",
      'formula: "-44" at character 6 of "CaCO3-44" is no charge an ion carries. Check the charge; give one compound in a cell, without arithmetic.',
    ],
    [
      "SO4^0-",
      'formula: "^0-" at character 4 of "SO4^0-" is no charge an ion carries. Check the charge; give one compound in a cell, without arithmetic.',
    ],
    [
      "SO4^123-",
      'formula: "^123-" at character 4 of "SO4^123-" is no charge an ion carries. Check the charge; give one compound in a cell, without arithmetic.',
    ],
    [
      "Fe^{3+",
      'formula: "^" at character 3 of "Fe^{3+" has no charge or mass number after it. Type a charge such as ^2- or an isotope such as ^13C.',
    ],
    ["Na+Cl-", 'formula: "+" at character 3 of "Na+Cl-" is followed by more. A charge stands last; give one compound in a cell, without bonds.'],
  ],
  isotopes: [
    ["13CO2", 'formula: "13" at character 1 of "13CO2" can be an amount or the isotope C-13. Type [13C] for the isotope, 13( ) for the amount.'],
    ["18O2", 'formula: "18" at character 1 of "18O2" can be an amount or the isotope O-18. Type [18O] for the isotope, 18( ) for the amount.'],
    ["[2O]", 'formula: no isotope "2O" at character 2 of "[2O]" in the table of nuclides. Check the mass number.'],
    ["^7C", 'formula: no isotope "7C" at character 1 of "^7C" in the table of nuclides. Check the mass number.'],
    ["²O", 'formula: no isotope "2O" at character 1 of "²O" in the table of nuclides. Check the mass number.'],
    ["^13Cx2", 'formula: no element "Cx" at character 4 of "^13Cx2". Check the symbol.'],
    ["[13Xo]", 'formula: no element "Xo" at character 4 of "[13Xo]". Check the symbol.'],
    ["[2Nb]", 'formula: no isotope "2Nb" at character 2 of "[2Nb]" in the table of nuclides. Check the mass number.'],
  ],
  states: [
    ["(s)", 'formula: "(s)" names no element. Type a chemical formula such as CaCO3.'],
    ["H2O(l)·NaCl", 'formula: "(l)" at character 4 of "H2O(l)·NaCl" is a state and does not stand last. Move it to the end or remove it.'],
    ["NaCl(aq)2", 'formula: "(aq)" at character 5 of "NaCl(aq)2" is a state and does not stand last. Move it to the end or remove it.'],
    ["Ca((s))", 'formula: "(s)" at character 4 of "Ca((s))" is a state and does not stand last. Move it to the end or remove it.'],
    ["NaCl(S)x", 'formula: "x" at character 8 of "NaCl(S)x" stands for an unknown number. Put the number in its place.'],
    ["NaCl(solid)", 'formula: no element "solid" at character 6 of "NaCl(solid)". A symbol begins with a capital. Check the symbol.'],
  ],
  "other than a formula": [
    ["35%", 'formula: "%" at character 3 of "35%" is a percentage, not a count. Give the formula alone; put the share in its own cell.'],
    ["CaCO3 98%", 'formula: "%" at character 9 of "CaCO3 98%" is a percentage, not a count. Give the formula alone; put the share in its own cell.'],
    [
      "CaO + CO2",
      'formula: "+" at character 5 of "CaO + CO2" is followed by more. A charge stands last; give one compound in a cell, without bonds.',
    ],
    ["CaCO3 -> CaO", 'formula: "->" at character 7 of "CaCO3 -> CaO" makes this a calculation or a reaction. Give one compound in a cell.'],
    ["CaCO3 → CaO", 'formula: "→" at character 7 of "CaCO3 → CaO" makes this a calculation or a reaction. Give one compound in a cell.'],
    ["CH3-CH3", 'formula: "-" at character 4 of "CH3-CH3" is followed by more. A charge stands last; give one compound in a cell, without bonds.'],
    ["CH2=CH2", 'formula: "=" at character 4 of "CH2=CH2" makes this a calculation or a reaction. Give one compound in a cell.'],
    ["=2+2", 'formula: "=2+2" is a cell formula stored as text. Enter it as a formula, or type a chemical formula.'],
    ["100.09", 'formula: "100.09" is a number, not a chemical formula. Type a chemical formula such as CaCO3.'],
    ["12", 'formula: "12" is a number, not a chemical formula. Type a chemical formula such as CaCO3.'],
    ["-5", 'formula: "-5" is a number, not a chemical formula. Type a chemical formula such as CaCO3.'],
    ["1e5", 'formula: "1e5" is a number, not a chemical formula. Type a chemical formula such as CaCO3.'],
    ["1,5", 'formula: "1,5" is a number, not a chemical formula. Type a chemical formula such as CaCO3.'],
    ["CaCO3/CaO", 'formula: "/" at character 6 of "CaCO3/CaO" makes this a calculation or a reaction. Give one compound in a cell.'],
    ["H<sub>2</sub>O", 'formula: "<" at character 2 of "H<sub>2</sub>O" has no place in a formula. Remove it.'],
    ["$5", 'formula: "$" at character 1 of "$5" has no place in a formula. Remove it.'],
    ["CaCO3!", 'formula: "!" at character 6 of "CaCO3!" has no place in a formula. Remove it.'],
    ["😀NaCl", 'formula: "😀" at character 1 of "😀NaCl" has no place in a formula. Remove it.'],
    ["NaCl😀Xo", 'formula: "😀" at character 5 of "NaCl😀Xo" has no place in a formula. Remove it.'],
    ["😀", 'formula: "😀" at character 1 of "😀" has no place in a formula. Remove it.'],
    ["CaCO3;", 'formula: ";" at character 6 of "CaCO3;" has no place in a formula. Remove it.'],
    ["?", 'formula: "?" at character 1 of "?" has no place in a formula. Remove it.'],
    ["H2O'", 'formula: "\'" at character 4 of "H2O\'" has no place in a formula. Remove it.'],
    ["...", 'formula: "." at character 1 of "..." has no formula before it. Put the compound before the dot.'],
    ["+", 'formula: "+" at character 1 of "+" makes this a calculation or a reaction. Give one compound in a cell.'],
    ["  ", 'formula: "  " names no element. Type a chemical formula such as CaCO3.'],
    ["", 'formula: "" names no element. Type a chemical formula such as CaCO3.'],
  ],
};

function refusal(text: string, argument?: string): unknown {
  try {
    return parseFormula(text, argument);
  } catch (problem) {
    return problem;
  }
}

describe.each(Object.entries(REFUSED))("parseFormula refuses %s", (_subject, cases) => {
  test.each(cases)("%j", (text, message) => {
    expect(refusal(text)).toBeInstanceOf(InputProblem);
    expect(refusal(text)).toMatchObject({ message, argument: "formula" });
  });
});

test("a message fits a hover box of about 150 characters", () => {
  for (const [, message] of Object.values(REFUSED).flat()) expect(message.length).toBeLessThanOrEqual(150);
});

test("parseFormula opens its message with the name of the argument", () => {
  expect(refusal("Xo", "fuel")).toMatchObject({
    message: 'fuel: no element "Xo" at character 1 of "Xo". Check the symbol.',
    argument: "fuel",
    name: "InputProblem",
  });
});

test("parseFormula refuses a text of more than 1000 characters", () => {
  expect(refusal("CaCO3".repeat(6000))).toMatchObject({
    message: "formula: the text is 30000 characters long. A formula has at most 1000. Check the cell.",
    name: "InputProblem",
  });
});

test("parseFormula shortens a long text in its message and counts places in the whole", () => {
  expect(refusal(`${"CaCO3".repeat(20)}Xo`)).toMatchObject({
    message: 'formula: no element "Xo" at character 101 of "CaCO3CaCO3CaCO3CaCO3…CO3CaCO3CaCO3CaCO3Xo". Check the symbol.',
    name: "InputProblem",
  });
});
