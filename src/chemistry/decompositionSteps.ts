/** One step: what is left, what leaves in words, and where reported over a range, the temperatures with their source. */
export type KnownStep = readonly [residue: string, leaves: string, temperature?: string];

/** A solid and the steps in which it is known to decompose, each from what the step before left. */
export interface KnownSteps {
  readonly start: string;
  readonly steps: readonly KnownStep[];
}

// What leaves and in which order: general inorganic chemistry, from memory; the losses follow from the formulas. Temperatures only as a
// source gives them, because they move with heating rate, layer, gas and grain; none for carbonates, whose sources spread over 25 °C and more.
const SOLVAY = "87 to 177 °C at 1.25 to 5 °C/min in nitrogen (Wu and Shih, Thermochim. Acta 223 (1993) 177)";
const WHEWELLITE = "heated as slowly as it loses; later when heated fast (Frost and Weier, Thermochim. Acta 409 (2004) 79)";
const CLAY = "400 to 700 °C (Clays Clay Miner. 2020, doi 10.1007/s42860-020-00082-w)";
const FILLERS = "Polymers 12 (2020) 429, table 2";
const GYPSUM = "both steps 100 to 300 °C (application note of an instrument maker)";
const BLUESTONE =
  "63 to 102 °C by two sources (supplier's data page; warming curves, abstract of Thermal transitions in copper sulphate pentahydrate)";
const GOETHITE = "175 to 263 °C (abstract of Thermal analysis of goethite, high-resolution thermogravimetry)";

/** The solids whose steps are listed. */
export const KNOWN_STEPS: readonly KnownSteps[] = [
  {
    start: "CaC2O4·H2O",
    steps: [
      ["CaC2O4", "H2O", `near 162 °C, ${WHEWELLITE}`],
      ["CaCO3", "CO", `near 479 °C, ${WHEWELLITE}`],
      ["CaO", "CO2"],
    ],
  },
  {
    start: "CuSO4·5H2O",
    steps: [
      ["CuSO4·3H2O", "2 H2O", BLUESTONE],
      ["CuSO4·H2O", "2 H2O", "109 to 113 °C (the same two)"],
      ["CuSO4", "H2O"],
      ["CuO", "SO3, and SO2 with O2"],
    ],
  },
  {
    start: "CaSO4·2H2O",
    steps: [
      ["CaSO4·0.5H2O", "1.5 H2O", GYPSUM],
      ["CaSO4", "0.5 H2O", GYPSUM],
    ],
  },
  {
    start: "MgSO4·7H2O",
    steps: [
      ["MgSO4·H2O", "6 H2O"],
      ["MgSO4", "H2O"],
    ],
  },
  {
    start: "FeSO4·7H2O",
    steps: [
      ["FeSO4·H2O", "6 H2O"],
      ["FeSO4", "H2O"],
      ["Fe2O3", "SO2 and SO3"],
    ],
  },
  { start: "CoCl2·6H2O", steps: [["CoCl2", "6 H2O"]] },
  { start: "BaCl2·2H2O", steps: [["BaCl2", "2 H2O"]] },
  {
    start: "Na2CO3·10H2O",
    steps: [
      ["Na2CO3·H2O", "9 H2O"],
      ["Na2CO3", "H2O"],
    ],
  },
  {
    start: "Na2B4O7·10H2O",
    steps: [
      ["Na2B4O7·5H2O", "5 H2O"],
      ["Na2B4O7", "5 H2O"],
    ],
  },
  { start: "KAl(SO4)2·12H2O", steps: [["KAl(SO4)2", "12 H2O"]] },
  { start: "NaHCO3", steps: [["Na2CO3", "0.5 H2O and 0.5 CO2", SOLVAY]] },
  { start: "KHCO3", steps: [["K2CO3", "0.5 H2O and 0.5 CO2"]] },
  { start: "CaCO3", steps: [["CaO", "CO2"]] },
  { start: "MgCO3", steps: [["MgO", "CO2"]] },
  {
    start: "CaMg(CO3)2",
    steps: [
      ["CaCO3 + MgO", "CO2"],
      ["CaO + MgO", "CO2"],
    ],
  },
  { start: "FeCO3", steps: [["Fe2O3", "CO2; takes up oxygen, in air"]] },
  { start: "MnCO3", steps: [["MnO", "CO2, without air"]] },
  { start: "ZnCO3", steps: [["ZnO", "CO2"]] },
  { start: "Cu2CO3(OH)2", steps: [["CuO", "CO2 and H2O"]] },
  { start: "Mg5(CO3)4(OH)2·4H2O", steps: [["MgO", "5 H2O and 4 CO2", `begins at 220 to 240 °C (${FILLERS})`]] },
  { start: "Ca(OH)2", steps: [["CaO", "H2O"]] },
  { start: "Mg(OH)2", steps: [["MgO", "H2O", `begins at 300 to 320 °C (${FILLERS})`]] },
  { start: "Al(OH)3", steps: [["Al2O3", "1.5 H2O", "200 to 300 °C (a filler supplier's data page)"]] },
  { start: "Cu(OH)2", steps: [["CuO", "H2O"]] },
  { start: "FeOOH", steps: [["Fe2O3", "0.5 H2O", GOETHITE]] },
  { start: "Al2Si2O5(OH)4", steps: [["Al2Si2O7", "2 H2O", CLAY]] },
];

/** Trade and mineral names, in small letters. */
export const SOLID_NAMES: Readonly<Record<string, string>> = {
  "calcium oxalate": "CaC2O4·H2O",
  whewellite: "CaC2O4·H2O",
  bluestone: "CuSO4·5H2O",
  "copper sulfate pentahydrate": "CuSO4·5H2O",
  "copper sulphate pentahydrate": "CuSO4·5H2O",
  "blue vitriol": "CuSO4·5H2O",
  gypsum: "CaSO4·2H2O",
  selenite: "CaSO4·2H2O",
  "plaster of paris": "CaSO4·0.5H2O",
  "epsom salt": "MgSO4·7H2O",
  "green vitriol": "FeSO4·7H2O",
  "washing soda": "Na2CO3·10H2O",
  borax: "Na2B4O7·10H2O",
  alum: "KAl(SO4)2·12H2O",
  "baking soda": "NaHCO3",
  "sodium bicarbonate": "NaHCO3",
  "bicarbonate of soda": "NaHCO3",
  "calcium carbonate": "CaCO3",
  limestone: "CaCO3",
  chalk: "CaCO3",
  calcite: "CaCO3",
  marble: "CaCO3",
  magnesite: "MgCO3",
  dolomite: "CaMg(CO3)2",
  siderite: "FeCO3",
  rhodochrosite: "MnCO3",
  smithsonite: "ZnCO3",
  malachite: "Cu2CO3(OH)2",
  hydromagnesite: "Mg5(CO3)4(OH)2·4H2O",
  "slaked lime": "Ca(OH)2",
  "calcium hydroxide": "Ca(OH)2",
  portlandite: "Ca(OH)2",
  "magnesium hydroxide": "Mg(OH)2",
  "aluminium hydroxide": "Al(OH)3",
  "aluminum hydroxide": "Al(OH)3",
  brucite: "Mg(OH)2",
  gibbsite: "Al(OH)3",
  goethite: "FeOOH",
  kaolinite: "Al2Si2O5(OH)4",
  kaolin: "Al2Si2O5(OH)4",
  "china clay": "Al2Si2O5(OH)4",
};
