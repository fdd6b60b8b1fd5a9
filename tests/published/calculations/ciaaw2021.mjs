// Abridged standard atomic weights of 2021 in g/mol: T. Prohaska et al., Pure Appl. Chem. 94 (2022) 573, typed from the table.
export const weight = {
  H: 1.008,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  Al: 26.982,
  Si: 28.085,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Mn: 54.938,
  Fe: 55.845,
  Co: 58.933,
  Cu: 63.546,
  Zn: 65.38,
  Ba: 137.33,
};

/** Mass of a set of atoms, each counted by hand from the written formula. */
export const mass = (atoms) => Object.entries(atoms).reduce((sum, [symbol, count]) => sum + count * weight[symbol], 0);
