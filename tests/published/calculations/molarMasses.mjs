// Molar masses in g/mol as sums over atoms that were counted by hand.
import { mass, weight } from "./ciaaw2021.mjs";

const massShare = (symbol, atoms) => ((atoms[symbol] ?? 0) * weight[symbol]) / mass(atoms);

console.log(
  JSON.stringify({
    H2O: mass({ H: 2, O: 1 }),
    CO2: mass({ C: 1, O: 2 }),
    O2: mass({ O: 2 }),
    C6H12O6: mass({ C: 6, H: 12, O: 6 }),
    C6H10O5: mass({ C: 6, H: 10, O: 5 }),
    C8H18: mass({ C: 8, H: 18 }),
    C6H5OH: mass({ C: 6, H: 6, O: 1 }),
    C2H5OH: mass({ C: 2, H: 6, O: 1 }),
    CaCO3: mass({ Ca: 1, C: 1, O: 3 }),
    "CuSO4·5H2O": mass({ Cu: 1, S: 1, O: 9, H: 10 }),
    "CaC2O4·H2O": mass({ Ca: 1, C: 2, O: 5, H: 2 }),
    NaHCO3: mass({ Na: 1, H: 1, C: 1, O: 3 }),
    "KAl(SO4)2·12H2O": mass({ K: 1, Al: 1, S: 2, O: 20, H: 24 }),
    "K4[Fe(CN)6]·3H2O": mass({ K: 4, Fe: 1, C: 6, N: 6, H: 6, O: 3 }),
    // With the weight of potassium unabridged, 39.0983.
    "K4[Fe(CN)6]·3H2O, K 39.0983": mass({ Fe: 1, C: 6, N: 6, H: 6, O: 3 }) + 4 * 39.0983,
    "CaSO4·0.5H2O": mass({ Ca: 1, S: 1, O: 4.5, H: 1 }),
    "CH1.44O0.66": mass({ C: 1, H: 1.44, O: 0.66 }),
    "CaMg(CO3)2": mass({ Ca: 1, Mg: 1, C: 2, O: 6 }),
    "(NH4)2SO4": mass({ N: 2, H: 8, S: 1, O: 4 }),
    MgSiO3: mass({ Mg: 1, Si: 1, O: 3 }),
    "BaCl2·2H2O": mass({ Ba: 1, Cl: 2, H: 4, O: 2 }),
    "share of H in H2O": massShare("H", { H: 2, O: 1 }),
    "share of O in H2O": massShare("O", { H: 2, O: 1 }),
    "loss of CaCO3 to CaO": mass({ C: 1, O: 2 }) / mass({ Ca: 1, C: 1, O: 3 }),
    "loss of MgCO3 to MgO": mass({ C: 1, O: 2 }) / mass({ Mg: 1, C: 1, O: 3 }),
    "share of Ca in CaCO3": massShare("Ca", { Ca: 1, C: 1, O: 3 }),
    "share of C in CaCO3": massShare("C", { Ca: 1, C: 1, O: 3 }),
  }),
);
