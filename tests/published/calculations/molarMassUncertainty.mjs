// Standard uncertainties of molar masses in g/mol, from limits typed out of the same table as the weights: Prohaska et al., Pure Appl. Chem. 94
// (2022) 573, table 1; the abridged limit for H, C, O and S, which have intervals, the full one for Ca and Cu.
const limit = { H: 0.0002, C: 0.002, O: 0.001, S: 0.02, Ca: 0.004, Cu: 0.003 };

/** All atoms of an element move together. */
const u = (atoms) => Math.sqrt(Object.entries(atoms).reduce((sum, [symbol, count]) => sum + (count * limit[symbol]) ** 2 / 3, 0));

console.log(
  JSON.stringify({
    H2O: u({ H: 2, O: 1 }),
    CO2: u({ C: 1, O: 2 }),
    CaCO3: u({ Ca: 1, C: 1, O: 3 }),
    "CuSO4·5H2O": u({ Cu: 1, S: 1, O: 9, H: 10 }),
    C6H12O6: u({ C: 6, H: 12, O: 6 }),
  }),
);
