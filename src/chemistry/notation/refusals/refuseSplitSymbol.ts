import { capitalsMixedUp } from "../../../problems/functions/formulaProblems";
import { elementNames } from "../../elementNames";
import { canBalance } from "../../usualStates";
import type { Reading } from "../Reading";

// Two capitals that are also one metal. CI, CU, SI and TI are refused wherever they stand, in refuseTypingSlip.ts.
const METALS = new Set("Co Ni Sn Pb Bi In Cs Sc Nb Hf Os Yb Cd Nd Pd Pt Tb Dy Sb Th Ho".split(" "));
// The rest of a salt or oxide, to the end: anions, bare or in brackets, the longest first, and water.
const ANION =
  /[([]?(?:OH|NO[32]|SO[43]|CO3|C2O4|PO[43]|ClO[43]|CrO4|Cr2O7|MoO4|WO4|VO3|SiO[34]|TiO3|SCN|CN|CH3COO|C2H3O2|Se|Te|Cl|Br|O|S|F|I)(?:\d*[)\]])?\d*/y;
const WATER = /[·.*•]\d*H2O$/y;
const ALKALI_BEFORE = /^(?:Li|Na|K)?\d*$/;
// Compounds that are written so: the carbonyl and thiocarbonyl halides, carbonyl sulfide and the hypohalous acids.
const REAL = /^(?:CO(?:F|Cl|Br|I)2|CO(?:S|Se)|COF|COCN|CS(?:F|Cl|Br)2|HO(?:F|Cl|Br|I)|SCN|SNF3|PBO|HFO|BIO)$/;

/**
 * Refuses two capitals at the beginning where one metal was meant: `COSO4`, `NICl2`, `PBSO4`, `LiCOO2`. It is refused where all that follows
 * is anions that the metal balances, unless the compound is one that is written so: phosgene, COCl2.
 * @throws InputProblem naming both readings
 */
export function refuseSplitSymbol(reading: Reading, totals: ReadonlyMap<string, number>, charge: number): void {
  const { text, atoms } = reading;
  for (let index = 0; index < Math.min(2, atoms.length - 1); index++) {
    const [first, second] = [atoms.symbol[index] as string, atoms.symbol[index + 1] as string];
    if (first.length + second.length > 2 || atoms.at[index + 1] !== atoms.countAt[index]) continue;
    const metal = first + second.toLowerCase();
    if ((second === "D" || second === "T") && atoms.end[index + 1] !== atoms.countAt[index + 1]) continue;
    if (!METALS.has(metal)) continue;
    const at = atoms.at[index] as number;
    const rest = text.slice(atoms.end[index + 1]).trimEnd();
    if (!ALKALI_BEFORE.test(text.slice(0, at).trim()) || !isAnions(rest) || REAL.test(text.trim())) continue;
    const meant = new Map(totals);
    const count = Number(text.slice(atoms.countAt[index + 1], atoms.end[index + 1]) || 1);
    take(meant, first, 1);
    take(meant, second, count);
    meant.set(metal, (meant.get(metal) ?? 0) + count);
    if (!canBalance(meant, charge)) continue;
    throw capitalsMixedUp(reading.spot(at), first + second, `${nameOf(first)} and ${nameOf(second)}`, `${metal} for ${nameOf(metal)}`);
  }
}

// The longest salt in print is far shorter; bounds the work.
const LONGEST_REST = 60;

function isAnions(rest: string): boolean {
  let end = 0;
  for (ANION.lastIndex = 0; ANION.test(rest); ANION.lastIndex = end) end = ANION.lastIndex;
  WATER.lastIndex = end;
  return end > 0 && rest.length <= LONGEST_REST && (end === rest.length || WATER.test(rest));
}

function take(atoms: Map<string, number>, symbol: string, count: number): void {
  const left = (atoms.get(symbol) ?? 0) - count;
  if (left > 0) atoms.set(symbol, left);
  else atoms.delete(symbol);
}

const nameOf = (symbol: string): string => elementNames().get(symbol) ?? (symbol === "D" ? "deuterium" : "tritium");
