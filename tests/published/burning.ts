import { calculated, PERCENT, published, type Published } from "./Published";

const THOD = 'encyclopedia article "Theoretical oxygen demand" (copies at cryer.org.uk and grokipedia.com)';
const BALANCED = "O2 per mol balanced by hand, weights of CIAAW 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573)";
const NIST_PINE = "composition printed in MaCFP matl-db, Wood/Calibration_Data/NIST/README.md; the demand summed from it";
const TEXTS = "general chemistry texts, the balanced reaction";
const TWO_WAYS = `10 g of dry cellulose with 0.125 g of ash and 3 g of char; ${BALANCED}`;
const COMPARED = '=RETORT.BURN.COMPARE(25, 35, 28, 25.125, "C6H10O5")';

const LOWER_BY = "documented difference: the book rounds 31.998/12.011 to 8/3 and 31.998/(4 x 1.008) to 8";

export const burning: readonly Published[] = [
  ...published("read as printed", "yr.7b3.cn/74 and brighthub.com article 15235, kg O2 per kg of methane", [['=RETORT.OXYGENDEMAND("CH4")', "3.99"]]),
  ...published("read as printed", THOD, [['=RETORT.OXYGENDEMAND("C6H12O6")', "1.07"]]),
  ...published("read as printed", `${THOD}, which divides 32 by 75`, [['=RETORT.OXYGENDEMAND("C2H5NO2", "HNO3")', "1.49"]]),
  ...calculated("oxygenDemand.mjs", BALANCED, [
    ['=RETORT.OXYGENDEMAND("CH4")', "3.98902948326", "methane"],
    ['=RETORT.OXYGENDEMAND("C6H12O6")', "1.06567641377", "glucose"],
    ['=RETORT.OXYGENDEMAND("C2H6O")', "2.08370053615", "ethanol"],
    ['=RETORT.OXYGENDEMAND("CH4O")', "1.49794020348", "methanol"],
    ['=RETORT.OXYGENDEMAND("C8H18")', "3.50142692065", "octane"],
    ['=RETORT.OXYGENDEMAND("C3H8")', "3.62813796857", "propane"],
    ['=RETORT.OXYGENDEMAND("C6H10O5")', "1.18408052251", "cellulose"],
    ['=RETORT.OXYGENDEMAND("C12H22O11")', "1.12176267978", "sucrose"],
    ['=RETORT.OXYGENDEMAND("C6H6O")', "2.37996876096", "phenol"],
    ['=RETORT.OXYGENDEMAND("C10H8")', "2.99574016571", "naphthalene"],
    ['=RETORT.OXYGENDEMAND("C5H8O2")', "1.91763636545", "methyl methacrylate"],
    ['=RETORT.OXYGENDEMAND("C57H104O6")', "2.89099477894", "triolein"],
    ['=RETORT.OXYGENDEMAND("C2H3Cl")', "1.28000192012", "vinyl chloride, to HCl"],
    ['=RETORT.OXYGENDEMAND("CH1.44O0.66")', "1.37199783864", "CH1.44O0.66"],
    ['=RETORT.OXYGENDEMAND("C10H16")', "3.28815748910", "limonene"],
    ['=RETORT.OXYGENDEMAND("C2H5NO2")', "0.959083218991", "glycine, to N2"],
    ['=RETORT.OXYGENDEMAND("C2H5NO2", "NH3")', "0.639388812661", "glycine, to NH3"],
    ['=RETORT.OXYGENDEMAND("C2H5NO2", "HNO3")', "1.49190722954", "glycine, to HNO3"],
    [
      '=RETORT.OXYGENDEMAND("KHC8H4O4")',
      "1.17511825",
      "potassium hydrogen phthalate",
      { within: [5e-6, "the weight of potassium is kept unabridged, 39.0983 for 39.098"] },
    ],
  ]),
  ...published("from memory", "tables of oxidiser salts in handbooks of pyrotechnics, oxygen balance: 100 g O2 left over per g", [
    ['=RETORT.OXYGENDEMAND("KNO3")', "39.6", { times: -100 }],
    ['=RETORT.OXYGENDEMAND("NaNO3")', "47.1", { times: -100 }],
    ['=RETORT.OXYGENDEMAND("NH4NO3")', "20.0", { times: -100 }],
    ['=RETORT.OXYGENDEMAND("KClO3")', "39.2", { times: -100 }],
  ]),

  ...calculated("oxygenDemand.mjs", NIST_PINE, [
    ["=RETORT.OXYGENDEMAND.ULTIMATE(0.4877, 0.0613, 0.4069, 0.0005, 0)", "1.37883859046", "pine"],
    ["=RETORT.OXYGENDEMAND.ULTIMATE(0.9119, 0.0228, 0.0365)", "2.57379551319", "char of pine"],
  ]),
  // The old books' whole numbers are 8/3, 8 and 1: 0.9 % above these at most.
  ...calculated("oxygenDemand.mjs", "one element at a time, weights of CIAAW 2021", [
    ["=RETORT.OXYGENDEMAND.ULTIMATE(1, 0, 0)", "2.66405794688", "carbon"],
    ["=RETORT.OXYGENDEMAND.ULTIMATE(0.0001, 0.5, 0)", "3.96827235818", "half hydrogen"],
    ["=RETORT.OXYGENDEMAND.ULTIMATE(0.0001, 0, 0, 0, 0.9)", "0.898525919207", "nine tenths sulfur"],
  ]),
  ...published("worked by hand", "FOSSEE 551 example 11.3, coal: 8/3 x 0.85 + 8 x 0.06 - 0.06", [
    ["=RETORT.OXYGENDEMAND.ULTIMATE(0.85, 0.06, 0.06)", "2.6866667", { within: [0.00615, LOWER_BY] }],
  ]),
  ...published("worked by hand", "FOSSEE 551 example 11.4, liquid fuel: 8/3 x 0.848 + 8 x 0.152", [
    ["=RETORT.OXYGENDEMAND.ULTIMATE(0.848, 0.152, 0)", "3.4773333", { within: [0.01199, LOWER_BY] }],
  ]),
  ...published("read as printed", "FOSSEE 615 example 8.12, coal of 780/41/120/12 g per kg: 2300 g of oxygen", [
    ["=RETORT.OXYGENDEMAND.ULTIMATE(0.78, 0.041, 0.12, 0, 0.012)", "2300", { times: 1000, within: [4.75, LOWER_BY] }],
  ]),

  ...published("read as printed", "yr.7b3.cn/74, methane with 0.232 of oxygen in air", [["=RETORT.AIRDEMAND(3.98902948326, 0.232)", "17.2"]]),
  ...published("read as printed", "O'Reilly 9780081001851 chapter 15, methane, with 9.52 x 28.97/16.04", [
    ["=RETORT.AIRDEMAND(3.98902948326, 0.232)", "17.19"],
  ]),
  ...published("from memory", "engine textbooks: n-octane, ethanol and hydrogen in dry air", [
    ["=RETORT.AIRDEMAND(3.50142692065)", "15.1"],
    ["=RETORT.AIRDEMAND(2.08370053615, 0.2314)", "9.0"],
    ["=RETORT.AIRDEMAND(7.93601190476, 0.2314)", "34.3"],
  ]),
  ...calculated("oxygenDemand.mjs", BALANCED, [
    ["=RETORT.AIRDEMAND(3.98902948326, 0.232)", "17.1940926", "air for methane at 0.232"],
    ["=RETORT.AIRDEMAND(3.50142692065)", "15.1314905819", "air for octane at 0.2314"],
    ["=RETORT.AIRDEMAND(3.62813796857)", "15.6790751", "air for propane at 0.2314"],
  ]),
  ...calculated("oxygenDemand.mjs", "dry air of 0.20939 O2 by volume and 28.96546 g/mol, composition of CIPM-2007 from memory", [
    [
      "=RETORT.AIRDEMAND(1)",
      "4.32306",
      "air that holds 1 g of oxygen",
      { within: [0.0037, "0.2313 with 0.20939 by volume; the trade's 0.2314 takes 0.2095: 0.0002 of the share"] },
    ],
  ]),
  // Books that round the atomic weights: their oxygen is fed in with their own share of oxygen in air.
  ...published("read as printed", "allindustrialtraining.com/stoichiometric-fuel-air-ratio, propane, 160/44 and 23 %", [
    ["=RETORT.AIRDEMAND(3.6363636364, 0.23)", "15.81"],
  ]),
  ...published("read as printed", "FOSSEE 551 example 11.3, coal, 8/3 C + 8 H - O and 23 %", [
    ["=RETORT.AIRDEMAND(2.6866666666667, 0.23)", "11.68115942"],
  ]),
  ...published("read as printed", "FOSSEE 615 example 8.12, coal: 2300 g oxygen, 10 000 g air at 23 %", [
    ["=RETORT.AIRDEMAND(2.3, 0.23)", "10"],
    ["=RETORT.AIRDEMAND(2.3, 0.23)", "10000", { times: 1000 }],
  ]),
  ...published("read as printed", "FOSSEE 551 example 11.4, liquid fuel of 0.848 C, 0.152 H and 23 %", [
    ["=RETORT.AIRDEMAND(3.4773333333333, 0.23)", "15.1188405797"],
  ]),

  ...published("worked by hand", `${TEXTS}: each element counted on both sides`, [
    ['=RETORT.BURN.EQUATION("CH4")', "CH4 + 2 O2 → CO2 + 2 H2O"],
    ['=RETORT.BURN.EQUATION("C3H8")', "C3H8 + 5 O2 → 3 CO2 + 4 H2O"],
    ['=RETORT.BURN.EQUATION("C2H6O")', "C2H6O + 3 O2 → 2 CO2 + 3 H2O"],
    ['=RETORT.BURN.EQUATION("CH4O")', "2 CH4O + 3 O2 → 2 CO2 + 4 H2O"],
    ['=RETORT.BURN.EQUATION("C6H12O6")', "C6H12O6 + 6 O2 → 6 CO2 + 6 H2O"],
    ['=RETORT.BURN.EQUATION("C10H16")', "C10H16 + 14 O2 → 10 CO2 + 8 H2O"],
    ['=RETORT.BURN.EQUATION("C8H18")', "2 C8H18 + 25 O2 → 16 CO2 + 18 H2O"],
    ['=RETORT.BURN.EQUATION("CH1.44O0.66")', "CH1.44O0.66 + 1.03 O2 → CO2 + 0.72 H2O"],
    ['=RETORT.BURN.EQUATION("Mg")', "2 Mg + O2 → 2 MgO"],
  ]),

  ...calculated("oxygenDemand.mjs", "CO2 44.009/16.043 and H2O 36.03/16.043 per g of methane, together 1 + oxygen", [
    ['=RETORT.BURN.PRODUCTS("CH4")', "2.7431901764", "CO2 of methane", { at: ["CO2", 2] }],
    ['=RETORT.BURN.PRODUCTS("CH4")', "2.24583930686", "H2O of methane", { at: ["H2O", 2] }],
    ['=RETORT.BURN.PRODUCTS("CH4")', "4.98902948326", "all products of methane", { at: ["In: fuel + oxygen", 2] }],
    ['=RETORT.BURN.PRODUCTS("CH4")', "4.98902948326", "all products of methane", { at: ["Out: products", 2] }],
    ['=RETORT.BURN.PRODUCTS("C6H10O5")', "2.18408052251", "all products of cellulose", { at: ["Out: products", 2] }],
  ]),

  ...calculated("oxygenDemand.mjs", TWO_WAYS, [
    [COMPARED, "11.6927951598", "oxygen that 9.875 g of cellulose take up", { at: ["In: oxygen taken up", 3] }],
    [COMPARED, "16.0818870613", "CO2 that 9.875 g of cellulose give", { at: ["of these CO2", 3] }],
    [COMPARED, "5.48590809851", "H2O that 9.875 g of cellulose give", { at: ["of these H2O", 3] }],
    [COMPARED, "50.5306618832", "air that brings this oxygen", { at: ["Air that brings the oxygen", 3] }],
  ]),
  ...published("worked by hand", "10 g of dry cellulose that keep 3 g of char, or 0.125 g of ash", [
    [COMPARED, "10", { at: ["In: dry sample", 1] }],
    [COMPARED, "30", { ...PERCENT, at: ["Stays: char, or ash", 2] }],
    [COMPARED, "0.125", { at: ["Stays: char, or ash", 3] }],
    [COMPARED, "7", { at: ["Leaves: vapours, or burned gases", 1] }],
  ]),
  ...published("worked by hand", "MaCFP matl-db, NIST pine: 0.4877 + 0.0613 + 0.4069 + 0.0005 printed, which leaves 0.0436 of the sample", [
    [
      '=RETORT.BURN.COMPARE("tared", 1, 0.2, , , 0.4877, 0.0613, 0.4069, 0.0005)',
      "0.0436",
      { at: ["Not covered by the analysis", 3], within: [5e-11, "a sum of four printed decimals"] },
    ],
  ]),
];
