import { parseFormula } from "../../../src/chemistry/parseFormula";
import { InputProblem } from "../../../src/problems/InputProblem";

const refusal = (text: string): unknown => {
  try {
    return parseFormula(text).atoms;
  } catch (problem) {
    return problem instanceof InputProblem ? problem.message : String(problem);
  }
};

// Two capitals typed with a small second letter: what it reads as, what was meant and what stands in the text.
test.each(
  (
    "CaCo3 NaHCo3 KHCo3 LiHCo3 MgCo3 Na2Co3 K2Co3 Li2Co3 Ag2Co3 FeCo3 MnCo3 ZnCo3 NiCo3 CuCo3 CdCo3 PbCo3 SrCo3 BaCo3 CoCo3 H2Co3 NH4HCo3 (NH4)2Co3 " +
    "Ca(HCo3)2 CaMg(Co3)2 La2(Co3)3 Fe2(Co3)3 Cu2Co3(OH)2 Na2Co3·10H2O Na2Co3.10H2O Na2Co3.NaHCo3.2H2O 2PbCo3·Pb(OH)2 CaCo3(s) Co3^2- HCo3^-"
  ).split(" "),
)("parseFormula refuses %s as a slip for a carbonate, with both readings and the way round", (text) => {
  const at = text.indexOf("Co3") + 1;
  expect(refusal(text)).toBe(`formula: "Co3" at character ${at} of "${text}" reads as cobalt. Type CO3 for carbon and oxygen, or (Co)3 if so meant.`);
  expect(refusal(text.replace("Co3", "CO3").replace("Co3", "CO3"))).toBeInstanceOf(Object);
});

test.each([
  ["Co2", '"Co2" at character 1 of "Co2" reads as cobalt. Type CO2 for carbon and oxygen, or (Co)2 if so meant.'],
  ["Co2(g)", '"Co2" at character 1 of "Co2(g)" reads as cobalt. Type CO2 for carbon and oxygen, or (Co)2 if so meant.'],
  ["CH3CoOH", '"Co" at character 4 of "CH3CoOH" reads as cobalt. Type CO for carbon and oxygen, or (Co) if so meant.'],
  ["HCoONa", '"Co" at character 2 of "HCoONa" reads as cobalt. Type CO for carbon and oxygen, or (Co) if so meant.'],
  ["CH3CoCH3", '"Co" at character 4 of "CH3CoCH3" reads as cobalt. Type CO for carbon and oxygen, or (Co) if so meant.'],
  ["C6H5CoCl", '"Co" at character 5 of "C6H5CoCl" reads as cobalt. Type CO for carbon and oxygen, or (Co) if so meant.'],
  ["Co(NH2)2", '"Co" at character 1 of "Co(NH2)2" reads as cobalt. Type CO for carbon and oxygen, or (Co) if so meant.'],
  ["Fe(Co)5", '"Co" at character 4 of "Fe(Co)5" reads as cobalt. Type CO for carbon and oxygen, or [Co] if so meant.'],
  ["Cs2", '"Cs2" at character 1 of "Cs2" reads as caesium. Type CS2 for carbon and sulfur, or (Cs)2 if so meant.'],
  ["KHf2", '"Hf2" at character 2 of "KHf2" reads as hafnium. Type HF2 for hydrogen and fluorine, or (Hf)2 if so meant.'],
  ["HoCl", '"Ho" at character 1 of "HoCl" reads as holmium. Type HO for hydrogen and oxygen, or (Ho) if so meant.'],
  ["KScN", '"Sc" at character 2 of "KScN" reads as scandium. Type SC for sulfur and carbon, or (Sc) if so meant.'],
  ["KNo3", '"No3" at character 2 of "KNo3" reads as nobelium. Type NO3 for nitrogen and oxygen, or (No)3 if so meant.'],
  ["NH4No3", '"No3" at character 4 of "NH4No3" reads as nobelium. Type NO3 for nitrogen and oxygen, or (No)3 if so meant.'],
  ["Ca3(Po4)2", '"Po4" at character 5 of "Ca3(Po4)2" reads as polonium. Type PO4 for phosphorus and oxygen, or (Po)4 if so meant.'],
  ["PoCl3", '"Po" at character 1 of "PoCl3" reads as polonium. Type PO for phosphorus and oxygen, or (Po) if so meant.'],
  ["NaCn", '"Cn" at character 3 of "NaCn" reads as copernicium. Type CN for carbon and nitrogen, or (Cn) if so meant.'],
  ["COSO4", '"CO" at character 1 of "COSO4" reads as carbon and oxygen. Type Co for cobalt, or (C)O if it is so meant.'],
  ["LiCOO2", '"CO" at character 3 of "LiCOO2" reads as carbon and oxygen. Type Co for cobalt, or (C)O if it is so meant.'],
  ["COCl2·6H2O", '"CO" at character 1 of "COCl2·6H2O" reads as carbon and oxygen. Type Co for cobalt, or (C)O if it is so meant.'],
  ["NISO4", '"NI" at character 1 of "NISO4" reads as nitrogen and iodine. Type Ni for nickel, or (N)I if it is so meant.'],
  ["PBSO4", '"PB" at character 1 of "PBSO4" reads as phosphorus and boron. Type Pb for lead, or (P)B if it is so meant.'],
  ["SNO2", '"SN" at character 1 of "SNO2" reads as sulfur and nitrogen. Type Sn for tin, or (S)N if it is so meant.'],
  ["CDCl2", '"CD" at character 1 of "CDCl2" reads as carbon and deuterium. Type Cd for cadmium, or (C)D if it is so meant.'],
])("parseFormula refuses %s: %s", (text, message) => {
  expect(refusal(text)).toBe(`formula: ${message}`);
});

test.each(["Ca(Co)3", "(Co)2", "Fe[Co]5", "K(Hf)2", "(Co)(NH2)2", "K(Sc)N", "(C)OSO4", "(W)OOD", "(K)15NO3", "(U)235F6", "Al2(O3.4)SiO2H2O"])(
  "parseFormula takes the way round, %s, as meant",
  (text) => {
    expect(refusal(text)).toBeInstanceOf(Object);
  },
);

const LONELY = "not in the table of nuclides. Leave the mass number out, or type";
test.each([
  ["(15NH4)2SO4", '"15" at character 2 of "(15NH4)2SO4" can be an amount or the isotope N-15. Type [15N] for the isotope, 15( ) for the amount.'],
  ["K15NO3", '"15" at character 2 of "K15NO3" can be a count or the isotope N-15. Type [15N] for the isotope, (K)15 for the count.'],
  ["Ba14CO3", '"14" at character 3 of "Ba14CO3" can be a count or the isotope C-14. Type [14C] for the isotope, (Ba)14 for the count.'],
  ["H218O", '"18" at character 3 of "H218O" can be a count or the isotope O-18. Type [18O] for the isotope, (H)218 for the count.'],
  ["D218O", '"18" at character 3 of "D218O" can be a count or the isotope O-18. Type [18O] for the isotope, (D)218 for the count.'],
  ["H2O18", '"18" at character 4 of "H2O18" can be a count or the isotope O-18. Type [18O] for the isotope, (O)18 for the count.'],
  ["Na37Cl", '"37" at character 3 of "Na37Cl" can be a count or the isotope Cl-37. Type [37Cl] for the isotope, (Na)37 for the count.'],
  ["NaH13CO3", '"13" at character 4 of "NaH13CO3" can be a count or the isotope C-13. Type [13C] for the isotope, (H)13 for the count.'],
  ["CH315NH2", '"15" at character 4 of "CH315NH2" can be a count or the isotope N-15. Type [15N] for the isotope, (H)315 for the count.'],
  ["C18O2", '"18" at character 2 of "C18O2" can be a count or the isotope O-18. Type [18O] for the isotope, (C)18 for the count.'],
  ["U235F6", '"235" at character 2 of "U235F6" can be a count or the isotope U-235. Type [235U] for the isotope, (U)235 for the count.'],
  ["KN15O3", '"15" at character 3 of "KN15O3" can be a count or the isotope N-15. Type [15N] for the isotope, (N)15 for the count.'],
  ["C14", '"14" at character 2 of "C14" can be a count or the isotope C-14. Type [14C] for the isotope, (C)14 for the count.'],
  ["He3", '"3" at character 3 of "He3" can be a count or the isotope He-3. Type [3He] for the isotope, (He)3 for the count.'],
  ["Na131I", `"131" at character 3 of "Na131I" can be a count or the isotope I-131, ${LONELY} (I).`],
  ["60CoCl2", `"60" at character 1 of "60CoCl2" can be a count or the isotope Co-60, ${LONELY} (Co).`],
  ["(35SO4)", '"35" at character 2 of "(35SO4)" can be an amount or the isotope S-35. Type [35S] for the isotope, 35( ) for the amount.'],
  ["(60CoCl2)", `"60" at character 2 of "(60CoCl2)" can be a count or the isotope Co-60, ${LONELY} (Co).`],
  ["C-14", '"C-14" at character 1 of "C-14" names an isotope. Type [14C].'],
  ["He-3", '"He-3" at character 1 of "He-3" names an isotope. Type [3He].'],
  ["Co-60", `"60" at character 1 of "Co-60" can be a count or the isotope Co-60, ${LONELY} (Co).`],
])("parseFormula refuses %s: %s", (text, message) => {
  expect(refusal(text)).toBe(`formula: ${message}`);
});

test.each(["T1Cl", "T1NO3", "T1I", "T1(g)"])("parseFormula refuses %s, thallium with the digit 1", (text) => {
  expect(refusal(text)).toBe(
    `formula: "T1" at character 1 of "${text}" reads as tritium with the digit 1. For thallium type Tl with a small L; for tritium T.`,
  );
});

test.each(["TCl", "HTO", "T2O", "T2", "(T)1Cl"])("parseFormula reads the tritium of %s", (text) => {
  expect(refusal(text)).toBeInstanceOf(Object);
});

test.each([
  ["HCI", '"CI" at character 2 of "HCI" reads as carbon and iodine. Type Cl with a small L for chlorine, or (C)I if it is so meant.'],
  ["KCI", '"CI" at character 2 of "KCI" reads as carbon and iodine. Type Cl with a small L for chlorine, or (C)I if it is so meant.'],
  ["KC1", '"C1" at character 2 of "KC1" reads as carbon with the digit 1. For chlorine type Cl with a small L; for carbon (C)1.'],
  ["CHC13", '"C13" at character 3 of "CHC13" reads as carbon with the digit 1. For chlorine type Cl with a small L; for carbon (C)13.'],
])("parseFormula refuses %s as a chloride, not as a word: %s", (text, message) => {
  expect(refusal(text)).toBe(`formula: ${message}`);
});

// Stable nuclides of metals that are sold enriched, as their oxide, carbonate or chloride, before and behind the symbol.
test.each(
  (
    "Sn119O2 119SnO2 Sn117O2 Cd113O 113CdO Ca48CO3 48CaCO3 Ca43CO3 Zn67O 67ZnO Zn68O Ge76O2 76GeO2 Se77O2 Rb87Cl 87SrCO3 Sr86CO3 Pb207O 207PbO Ti49O2 " +
    "Cr53Cl3 Ni61O 95MoO3 Mo98O3 Ag109NO3 109AgNO3 121Sb2O3 Te125O2 Ba138SO4 Nd143Cl3 W183O3 195PtCl4 199HgO Hg199O Cs137Cl 123SbCl3"
  ).split(" "),
)("parseFormula refuses %s, whose number is the mass of a stable nuclide", (text) => {
  expect(refusal(text)).toMatch(/can be a count or the isotope [A-Z][a-z]?-\d+, not in the table of nuclides/);
});

test.each(["Ti50Ni50", "Zr64Cu36", "Ni60Nb40", "Fe40Ni40P14B6", "W18O49", "Mo36O112H16", "(Sn)119O2", "67(Zn)O"])(
  "parseFormula takes the counts of %s as counts",
  (text) => {
    expect(refusal(text)).toBeInstanceOf(Object);
  },
);

const OR_DOT = "can be a decimal mark or a hydrate dot. Type · for the dot, or bracket a decimal: S(O4.5).";
test.each([
  ["Al2O3.4SiO2H2O", `"." at character 6 of "Al2O3.4SiO2H2O" ${OR_DOT}`],
  ["CuSO4.5.H2O", `"." at character 6 of "CuSO4.5.H2O" ${OR_DOT}`],
  ["CaSO4.2H", `"." at character 6 of "CaSO4.2H" ${OR_DOT}`],
  ["FeCl3.6H", `"." at character 6 of "FeCl3.6H" ${OR_DOT}`],
  ["NiSO4.6", `"." at character 6 of "NiSO4.6" ${OR_DOT}`],
  ["(NH4)2SO4.5N", `"." at character 10 of "(NH4)2SO4.5N" ${OR_DOT}`],
  ["H1.5.5O", '"." at character 5 of "H1.5.5O" follows a decimal. Type · before what is added, as in CuSO4·5H2O.'],
])("parseFormula refuses %s: %s", (text, message) => {
  expect(refusal(text)).toBe(`formula: ${message}`);
});

const WORD = "is a word or an abbreviation, spelled in symbols. Type the formula, or";
test.each([
  ["WOOD", `"WOOD" ${WORD} (W)OOD if so meant.`],
  ["(TBD)", `"(TBD)" ${WORD} (T)BD if so meant.`],
  ["C H I P", `"C H I P" ${WORD} (C)HIP if so meant.`],
  ["POT3", `"POT3" ${WORD} (P)OT3 if so meant.`],
  ["BOD5", `"BOD5" ${WORD} (B)OD5 if so meant.`],
  ["VOCs", `"VOCs" ${WORD} (V)OCs if so meant.`],
  ["KHP", '"KHP" is an abbreviation. Type the formula: KHC8H4O4.'],
  ["PVCs", '"PVCs" is an abbreviation. Type the formula: C2H3Cl.'],
  ["edta", '"edta" is an abbreviation. Type the formula: C10H16N2O8.'],
  ["NaN", '"NaN" is what programs write for a missing number. Mend that cell, or type a chemical formula.'],
])("parseFormula refuses %s: %s", (text, message) => {
  expect(refusal(text)).toBe(`formula: ${message}`);
});
