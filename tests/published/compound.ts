import { calculated, PERCENT, published, type Published } from "./Published";

const CIAAW = "atoms counted by hand, weights of CIAAW 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573), abridged";

export const compound: readonly Published[] = [
  ...published("read as printed", "CIAAW 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573), abridged or conventional values", [
    ['=RETORT.MOLARMASS("N")', "14.007"],
    ['=RETORT.MOLARMASS("O")', "15.999"],
    ['=RETORT.MOLARMASS("Ca")', "40.078"],
    ['=RETORT.MOLARMASS("Cu")', "63.546"],
    ['=RETORT.MOLARMASS("Pb")', "207.2"],
    ['=RETORT.MOLARMASS("Ar")', "39.95"],
    ['=RETORT.MOLARMASS("Sn")', "118.71"],
  ]),
  ...published("read as printed", "Chemical & Engineering News 102 (34), Weighty matters, on the weight of lutetium before the revision of 2024", [
    ['=RETORT.MOLARMASS("Lu")', "174.9668"],
  ]),
  ...published("read as printed", "an open encyclopedia's article on sodium percarbonate", [
    ['=RETORT.MOLARMASS("2Na2CO3.3H2O2")', "314.02"],
    ['=RETORT.MOLARMASS("2Na2CO3·3(H2O2)")', "314.02"],
  ]),
  ...published("read as printed", "Handbook of Pharmaceutical Excipients, anhydrous magnesium trisilicate", [
    ['=RETORT.MOLARMASS("Mg2Si3O8")', "260.86"],
  ]),
  // They are the printed molar masses of general tables but for the edition of the weights.
  ...calculated("molarMasses.mjs", CIAAW, [
    ['=RETORT.MOLARMASS("H2O")', "18.015", "H2O"],
    ['=RETORT.MOLARMASS("CO2")', "44.009", "CO2"],
    ['=RETORT.MOLARMASS("O2")', "31.998", "O2"],
    ['=RETORT.MOLARMASS("C6H12O6")', "180.156", "C6H12O6"],
    ['=RETORT.MOLARMASS("C6H10O5")', "162.141", "C6H10O5"],
    ['=RETORT.MOLARMASS("C8H18")', "114.232", "C8H18"],
    ['=RETORT.MOLARMASS("C6H5OH")', "94.113", "C6H5OH"],
    ['=RETORT.MOLARMASS("C2H5OH")', "46.069", "C2H5OH"],
    ['=RETORT.MOLARMASS("CaCO3")', "100.086", "CaCO3"],
    ['=RETORT.MOLARMASS("CuSO4·5H2O")', "249.677", "CuSO4·5H2O"],
    // Read as a decimal it would be CuSO4.5H2O, 185.617 g/mol.
    ['=RETORT.MOLARMASS("CuSO4.5H2O")', "249.677", "CuSO4·5H2O"],
    ['=RETORT.MOLARMASS("CaC2O4·H2O")', "146.111", "CaC2O4·H2O"],
    ['=RETORT.MOLARMASS("NaHCO3")', "84.006", "NaHCO3"],
    ['=RETORT.MOLARMASS("KAl(SO4)2.12H2O")', "474.372", "KAl(SO4)2·12H2O"],
    ['=RETORT.MOLARMASS("K4[Fe(CN)6].3H2O")', "422.391", "K4[Fe(CN)6]·3H2O, K 39.0983"],
    ['=RETORT.MOLARMASS("K4(Fe(CN)6)·3H2O")', "422.39", "K4[Fe(CN)6]·3H2O"],
    ['=RETORT.MOLARMASS("CaSO4.0.5H2O")', "145.14", "CaSO4·0.5H2O"],
    ['=RETORT.MOLARMASS("CaSO4·0.5H2O")', "145.1415", "CaSO4·0.5H2O"],
    ['=RETORT.MOLARMASS("CH1.44O0.66")', "24.022", "CH1.44O0.66"],
    ['=RETORT.MOLARMASS("CH1.44O0.66")', "24.02186", "CH1.44O0.66"],
    ['=RETORT.MOLARMASS("CaMg(CO3)2")', "184.399", "CaMg(CO3)2"],
    ['=RETORT.MOLARMASS("(NH4)2SO4")', "132.134", "(NH4)2SO4"],
    ['=RETORT.MOLARMASS("MgSiO3")', "100.387", "MgSiO3"],
    ['=RETORT.MOLARMASS("BaCl2·2H2O")', "244.26", "BaCl2·2H2O"],

    ['=RETORT.ATOMS("H2O")', "0.11190674438", "share of H in H2O", { at: ["H", 3] }],
    ['=RETORT.ATOMS("H2O")', "0.888093255620", "share of O in H2O", { at: ["O", 3] }],
    ['=RETORT.ATOMS("CaCO3")', "0.400435625362", "share of Ca in CaCO3", { at: [1, 3] }],
    ['=RETORT.ATOMS("CaCO3")', "0.120006794157", "share of C in CaCO3", { at: [2, 3] }],
    ['=RETORT.ATOMS("CO2")', "31.998", "O2", { at: ["O", 2] }],
  ]),
  // The water of the second is 5 x 2 x 1.008 of hydrogen to 5 x 15.999 of oxygen.
  ...published("read as printed", "ASTM D3180: water holds 0.1119 of hydrogen and 0.8881 of oxygen", [
    ['=RETORT.ATOMS("H2O")', "0.1119", { at: ["H", 3] }],
    ['=RETORT.ATOMS("H2O")', "0.8881", { at: ["O", 3] }],
  ]),
  ...published("from memory", "general chemistry texts: calcium makes 40.04 % and carbon 12.00 % of calcium carbonate", [
    ['=RETORT.ATOMS("CaCO3")', "40.04", { ...PERCENT, at: [1, 3] }],
    ['=RETORT.ATOMS("CaCO3")', "12.00", { ...PERCENT, at: [2, 3] }],
  ]),

  // Counted by hand; the masses are those above.
  ...published("worked by hand", `sum over the atoms, ${CIAAW}`, [
    ['=RETORT.FORMULA.CHECK("CaCO3")', "Ca 1, C 1, O 3; 100.086 g/mol."],
    ['=RETORT.FORMULA.CHECK("C6H12O6")', "C 6, H 12, O 6; 180.156 g/mol."],
    ['=RETORT.FORMULA.CHECK("CuSO4.5H2O")', "Cu 1, S 1, O 9, H 10; 249.677 g/mol."],
    ['=RETORT.FORMULA.CHECK("(NH4)2SO4")', "N 2, H 8, S 1, O 4; 132.134 g/mol."],
    ['=RETORT.FORMULA.CHECK("SO4^2-")', "S 1, O 4; charge 2-; 96.056 g/mol."],
  ]),
];
