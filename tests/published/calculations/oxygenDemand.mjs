// Oxygen in g per g of substance: the moles of O2 of each reaction were balanced by hand.
import { mass, weight } from "./ciaaw2021.mjs";

const O2 = 2 * weight.O;
const perGram = (moles, atoms) => (moles * O2) / mass(atoms);
const methane = { C: 1, H: 4 };
const cellulose = { C: 6, H: 10, O: 5 };
const octane = { C: 8, H: 18 };

/** Oxygen from mass fractions: C to CO2, H to H2O, S to SO2, less what the sample carries. */
const ofFractions = (c, h, o, s = 0) => O2 * (c / weight.C + h / (4 * weight.H) + s / weight.S) - o;

// Two ways for 10 g of dry cellulose with 0.125 g of ash, of which 3 g of char stay without air: 9.875 g burn.
const burnt = 10 - 0.125;

console.log(
  JSON.stringify({
    methane: perGram(2, methane),
    glucose: perGram(6, { C: 6, H: 12, O: 6 }),
    ethanol: perGram(3, { C: 2, H: 6, O: 1 }),
    methanol: perGram(1.5, { C: 1, H: 4, O: 1 }),
    octane: perGram(12.5, octane),
    propane: perGram(5, { C: 3, H: 8 }),
    cellulose: perGram(6, cellulose),
    sucrose: perGram(12, { C: 12, H: 22, O: 11 }),
    phenol: perGram(7, { C: 6, H: 6, O: 1 }),
    naphthalene: perGram(12, { C: 10, H: 8 }),
    "methyl methacrylate": perGram(6, { C: 5, H: 8, O: 2 }),
    triolein: perGram(80, { C: 57, H: 104, O: 6 }),
    "vinyl chloride, to HCl": perGram(2.5, { C: 2, H: 3, Cl: 1 }),
    "CH1.44O0.66": perGram(1.03, { C: 1, H: 1.44, O: 0.66 }),
    "glycine, to N2": perGram(2.25, { C: 2, H: 5, N: 1, O: 2 }),
    "glycine, to NH3": perGram(1.5, { C: 2, H: 5, N: 1, O: 2 }),
    "glycine, to HNO3": perGram(3.5, { C: 2, H: 5, N: 1, O: 2 }),
    "potassium hydrogen phthalate": perGram(7.5, { K: 1, H: 5, C: 8, O: 4 }),
    limonene: perGram(14, { C: 10, H: 16 }),
    pine: ofFractions(0.4877, 0.0613, 0.4069),
    "char of pine": ofFractions(0.9119, 0.0228, 0.0365),
    carbon: ofFractions(1, 0, 0),
    "half hydrogen": ofFractions(0.0001, 0.5, 0),
    "nine tenths sulfur": ofFractions(0.0001, 0, 0, 0.9),
    "air for methane at 0.232": perGram(2, methane) / 0.232,
    "air for octane at 0.2314": perGram(12.5, octane) / 0.2314,
    "air for propane at 0.2314": perGram(5, { C: 3, H: 8 }) / 0.2314,
    // Dry air of 0.20939 O2 by volume and 28.96546 g/mol: composition of CIPM-2007, from memory.
    "air that holds 1 g of oxygen": 28.96546 / (0.20939 * O2),
    "CO2 of methane": mass({ C: 1, O: 2 }) / mass(methane),
    "H2O of methane": (2 * mass({ H: 2, O: 1 })) / mass(methane),
    "all products of methane": 1 + perGram(2, methane),
    "all products of cellulose": 1 + perGram(6, cellulose),
    "oxygen that 9.875 g of cellulose take up": burnt * perGram(6, cellulose),
    "CO2 that 9.875 g of cellulose give": (burnt * 6 * mass({ C: 1, O: 2 })) / mass(cellulose),
    "H2O that 9.875 g of cellulose give": (burnt * 5 * mass({ H: 2, O: 1 })) / mass(cellulose),
    "air that brings this oxygen": (burnt * perGram(6, cellulose)) / 0.2314,
  }),
);
