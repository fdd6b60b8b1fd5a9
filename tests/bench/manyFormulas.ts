const CATIONS = ["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "Mn", "Fe", "Co", "Ni", "Cu", "Zn", "Cd", "Al", "Cr", "Ga", "La", "(NH4)"];
const ANIONS = ["Cl", "Br", "(OH)", "(NO3)", "(SO4)", "(PO4)", "(CO3)", "(C2O4)", "(CH3COO)", "(ClO4)", "(S2O3)", "(Fe(CN)6)", "(MnO4)", "(SiO4)"];
const LARGEST_COUNT = 4;
const CARBONS = 30;
const OXYGENS = 20;

/** Distinct formulas that every parser compared can read: salts with nested brackets, then organics of C, H, N, O and S. */
export function manyFormulas(howMany: number): string[] {
  const formulas = new Set<string>();
  const count = (n: number): string => (n === 1 ? "" : String(n));
  for (const cation of CATIONS)
    for (const anion of ANIONS)
      for (let a = 1; a <= LARGEST_COUNT; a++) for (let b = 1; b <= LARGEST_COUNT; b++) formulas.add(cation + count(a) + anion + count(b));
  for (let index = 0; formulas.size < howMany; index++) {
    const carbons = (index % CARBONS) + 1;
    const oxygens = (Math.floor(index / CARBONS) % OXYGENS) + 1;
    const nitrogens = Math.floor(index / (CARBONS * OXYGENS)) + 1;
    formulas.add(`C${count(carbons)}H${2 * carbons + 2 + nitrogens}N${count(nitrogens)}O${count(oxygens)}S`);
  }
  return [...formulas].slice(0, howMany);
}
