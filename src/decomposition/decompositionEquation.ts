import { plainNumber } from "../problems/quoted";
import type { Decomposition } from "./decompose";
import { oxygenBalance } from "./oxygenBalance";

// Beyond this an equation is read by nobody; the count of one formula is then given in decimals.
const LARGEST_MULTIPLE = 1000;
// Counts of a formula are typed with at most so many figures.
const WHOLE = 1e-6;
const FIGURES = 6;

/** The least number of times that makes whole numbers of all counts, or 1 where none up to 1000 does. */
function leastMultiple(counts: readonly number[]): number {
  for (let times = 1; times <= LARGEST_MULTIPLE; times++) {
    if (counts.every((count) => Math.abs(times * count - Math.round(times * count)) < WHOLE * times)) return times;
  }
  return 1;
}

type Term = readonly [formula: string, moles: number];

const side = (terms: readonly Term[], times: number): string =>
  terms
    .map(([formula, moles]) => {
      const count = plainNumber(times * moles, FIGURES);
      return count === "1" ? formula : `${count} ${formula}`;
    })
    .join(" + ");

/** The solids alone, in smallest whole multiples: `2 FeCO3 → Fe2O3`. */
export function solidsEquation({ start, residues }: Decomposition): string {
  const right = residues.map(({ formula, perStart }): Term => [formula.text.trim(), perStart]);
  const times = leastMultiple(right.map(([, moles]) => moles));
  return `${side([[start.text.trim(), 1]], times)} → ${side(right, times)}`;
}

/** The whole reaction to full gases, in smallest whole numbers: `4 FeCO3 + O2 → 2 Fe2O3 + 4 CO2`. */
export function decompositionEquation(decomposition: Decomposition): string {
  const { start, residues } = decomposition;
  const { gases, oxygen } = oxygenBalance(decomposition);
  const left: Term[] = [[start.text.trim(), 1], ...(oxygen < 0 ? [["O2", -oxygen / 2] as const] : [])];
  const right: Term[] = [
    ...residues.map(({ formula, perStart }): Term => [formula.text.trim(), perStart]),
    ...gases,
    ...(oxygen > 0 ? [["O2", oxygen / 2] as const] : []),
  ];
  const times = leastMultiple([...left, ...right].map(([, moles]) => moles));
  return `${side(left, times)} → ${side(right, times)}`;
}
