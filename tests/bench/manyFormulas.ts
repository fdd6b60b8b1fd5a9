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
    // More oxygen than carbon dioxide has is no compound, and may be refused as a slip.
    if (oxygens <= 2 * carbons) formulas.add(`C${count(carbons)}H${2 * carbons + 2 + nitrogens}N${count(nitrogens)}O${count(oxygens)}S`);
  }
  return [...formulas].slice(0, howMany);
}

/** A formula as a sheet has it, and the same for a library that reads only whole counts and brackets: a multiple of it, without dots. */
export interface WrittenTwice {
  readonly text: string;
  readonly plain: string;
  readonly multiple: number;
}

const HUNDREDTHS = 100;

/** Of ten formulas seven as above, one with a hydrate dot, one with a full stop before its water, and one with decimal counts, as of a char or an alloy. */
export function mixedFormulas(howMany: number): WrittenTwice[] {
  const salts = manyFormulas(CATIONS.length * ANIONS.length * LARGEST_COUNT ** 2);
  return manyFormulas(howMany).map((text, index) => {
    const salt = salts[index % salts.length] as string;
    const water = Math.floor(index / salts.length) + 2;
    if (index % 10 === 7) return { text: `${salt}·${water}H2O`, plain: `${salt}(H2O)${water}`, multiple: 1 };
    if (index % 10 === 8) return { text: `${salt}.${water}H2O`, plain: `${salt}(H2O)${water}`, multiple: 1 };
    if (index % 10 !== 9) return { text, plain: text, multiple: 1 };
    const [hydrogen, oxygen] = [101 + (index % 127), 11 + Math.floor(index / 127)];
    const decimal = (hundredths: number): string => String(hundredths / HUNDREDTHS);
    return { text: `CH${decimal(hydrogen)}O${decimal(oxygen)}`, plain: `C${HUNDREDTHS}H${hydrogen}O${oxygen}`, multiple: HUNDREDTHS };
  });
}

/** The same with one in ten as people mistype them, each another: a letter, a bracket, a sign or a digit that no reader takes. */
export function withBadOnes(formulas: readonly WrittenTwice[]): WrittenTwice[] {
  const slips = [
    (text: string) => `x${text}`,
    (text: string) => `${text})`,
    (text: string) => `(${text}`,
    (text: string) => `${text}%`,
    (text: string) => `${text}Xx`,
  ];
  return formulas.map((formula, index) => {
    if (index % 10 !== 3) return formula;
    const slip = slips[((index / 10) % slips.length) | 0] as (text: string) => string;
    return { text: slip(formula.text), plain: slip(formula.plain), multiple: formula.multiple };
  });
}
