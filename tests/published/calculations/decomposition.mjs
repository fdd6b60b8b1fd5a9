// Losses on heating as 1 - left / start, from atoms counted by hand, and their uncertainty by numeric derivatives.
import { mass, weight } from "./ciaaw2021.mjs";

/** @param times residues that one start leaves */
const loss = (start, residue, times = 1) => 1 - (times * mass(residue)) / mass(start);

// The limits printed beside the abridged weights in the same table; for calcium and iron they are those of the full value too.
const limit = { H: 0.0002, C: 0.002, O: 0.001, S: 0.02, Ca: 0.004, Fe: 0.002 };
const STEP = 1e-6;

/** Each weight moved by itself, the limit taken for a rectangular distribution. */
function lossU(start, residue, times = 1) {
  const variance = Object.keys(start).reduce((sum, symbol) => {
    const at = (moved) => {
      const kept = weight[symbol];
      weight[symbol] = kept + moved;
      const value = loss(start, residue, times);
      weight[symbol] = kept;
      return value;
    };
    return sum + (((at(STEP) - at(-STEP)) / (2 * STEP)) * limit[symbol]) ** 2 / 3;
  }, 0);
  return Math.sqrt(variance);
}

const CaCO3 = { Ca: 1, C: 1, O: 3 };
const gypsum = { Ca: 1, S: 1, O: 6, H: 4 };
const siderite = { Fe: 1, C: 1, O: 3 };

console.log(
  JSON.stringify({
    "CaCO3 to CaO": loss(CaCO3, { Ca: 1, O: 1 }),
    "MgCO3 to MgO": loss({ Mg: 1, C: 1, O: 3 }, { Mg: 1, O: 1 }),
    "dolomite to oxides": loss({ Ca: 1, Mg: 1, C: 2, O: 6 }, { Ca: 1, Mg: 1, O: 2 }),
    "dolomite to MgO and CaCO3": loss({ Ca: 1, Mg: 1, C: 2, O: 6 }, { Ca: 1, Mg: 1, C: 1, O: 4 }),
    "oxalate to CaC2O4": loss({ Ca: 1, C: 2, O: 5, H: 2 }, { Ca: 1, C: 2, O: 4 }),
    "oxalate to CaCO3": loss({ Ca: 1, C: 2, O: 5, H: 2 }, CaCO3),
    "oxalate to CaO": loss({ Ca: 1, C: 2, O: 5, H: 2 }, { Ca: 1, O: 1 }),
    "bluestone to trihydrate": loss({ Cu: 1, S: 1, O: 9, H: 10 }, { Cu: 1, S: 1, O: 7, H: 6 }),
    "bluestone to CuSO4": loss({ Cu: 1, S: 1, O: 9, H: 10 }, { Cu: 1, S: 1, O: 4 }),
    "bluestone to CuO": loss({ Cu: 1, S: 1, O: 9, H: 10 }, { Cu: 1, O: 1 }),
    "epsomite to MgSO4": loss({ Mg: 1, S: 1, O: 11, H: 14 }, { Mg: 1, S: 1, O: 4 }),
    "FeSO4·7H2O to FeSO4": loss({ Fe: 1, S: 1, O: 11, H: 14 }, { Fe: 1, S: 1, O: 4 }),
    "CoCl2·6H2O to CoCl2": loss({ Co: 1, Cl: 2, O: 6, H: 12 }, { Co: 1, Cl: 2 }),
    "BaCl2·2H2O to BaCl2": loss({ Ba: 1, Cl: 2, O: 2, H: 4 }, { Ba: 1, Cl: 2 }),
    "soda to Na2CO3": loss({ Na: 2, C: 1, O: 13, H: 20 }, { Na: 2, C: 1, O: 3 }),
    "borax to Na2B4O7": loss({ Na: 2, B: 4, O: 17, H: 20 }, { Na: 2, B: 4, O: 7 }),
    "alum to KAl(SO4)2": loss({ K: 1, Al: 1, S: 2, O: 20, H: 24 }, { K: 1, Al: 1, S: 2, O: 8 }),
    "gypsum to hemihydrate": loss(gypsum, { Ca: 1, S: 1, O: 4.5, H: 1 }),
    "gypsum to CaSO4": loss(gypsum, { Ca: 1, S: 1, O: 4 }),
    "NaHCO3 to Na2CO3": loss({ Na: 1, H: 1, C: 1, O: 3 }, { Na: 2, C: 1, O: 3 }, 1 / 2),
    "siderite to FeO": loss(siderite, { Fe: 1, O: 1 }),
    "siderite to Fe2O3": loss(siderite, { Fe: 2, O: 3 }, 1 / 2),
    "MnCO3 to MnO": loss({ Mn: 1, C: 1, O: 3 }, { Mn: 1, O: 1 }),
    "ZnCO3 to ZnO": loss({ Zn: 1, C: 1, O: 3 }, { Zn: 1, O: 1 }),
    "malachite to CuO": loss({ Cu: 2, C: 1, O: 5, H: 2 }, { Cu: 1, O: 1 }, 2),
    "Ca(OH)2 to CaO": loss({ Ca: 1, O: 2, H: 2 }, { Ca: 1, O: 1 }),
    "Mg(OH)2 to MgO": loss({ Mg: 1, O: 2, H: 2 }, { Mg: 1, O: 1 }),
    "Al(OH)3 to Al2O3": loss({ Al: 1, O: 3, H: 3 }, { Al: 2, O: 3 }, 1 / 2),
    "kaolinite to metakaolin": loss({ Al: 2, Si: 2, O: 9, H: 4 }, { Al: 2, Si: 2, O: 7 }),
    "goethite to Fe2O3": loss({ Fe: 1, O: 2, H: 1 }, { Fe: 2, O: 3 }, 1 / 2),
    "u, CaCO3 to CaO": lossU(CaCO3, { Ca: 1, O: 1 }),
    "u, gypsum to CaSO4": lossU(gypsum, { Ca: 1, S: 1, O: 4 }),
    "u, siderite to Fe2O3": lossU(siderite, { Fe: 2, O: 3 }, 1 / 2),
  }),
);
