import type { Formula } from "../chemistry/Formula";
import { elementOf } from "../chemistry/elementOf";
import { isMetal } from "../chemistry/isMetal";
import { doesNotFit, moreThanStart, shareOfSolidsOpen, solidNotFormed } from "../problems/functions/decompositionProblems";

/** Counts that differ by less are the same: formulas hold typed decimals such as 0.95. */
export const SAME_COUNT = 1e-9;

// Oxides of these are no gases at the temperatures of a kiln or leave a trace only; what else stays must be named as leaving.
const STAYING = ["B", "Si", "P", "As", "Te"];

/** True for what does not leave as a gas by itself: metals, boron, silicon, phosphorus, arsenic and tellurium. */
export const stays = (symbol: string): boolean => isMetal(symbol) || STAYING.includes(elementOf(symbol));

/**
 * How much of each solid of a residue one formula of the start leaves [mol/mol]: so much that the elements that stay are conserved. Where none
 * stays (sugar to carbon), one residue is as much as its scarcest element but oxygen gives.
 * @param staying symbols that must be conserved, each in some residue
 * @throws InputProblem under `argument` where no counts, or more than one set of them, conserve what stays
 */
export function residueCounts(start: Formula, residues: readonly Formula[], staying: readonly string[], argument: string): readonly number[] {
  const [only] = residues as [Formula];
  const counts =
    residues.length > 1
      ? severalCounts(start, residues, staying, argument)
      : [staying.length > 0 ? oneCount(start, only, staying, argument) : scarcestCount(start, only)];
  counts.forEach((count, index) => {
    if (count <= SAME_COUNT) throw solidNotFormed(argument, (residues[index] as Formula).text);
  });
  start.atoms.forEach((count, symbol) => {
    const kept = residues.reduce((sum, { atoms }, index) => sum + (counts[index] as number) * (atoms.get(symbol) ?? 0), 0);
    if (symbol !== "O" && kept > count + SAME_COUNT * Math.max(1, count)) throw moreThanStart(argument, symbol, start.text);
  });
  return counts;
}

const ratio = (start: Formula, residue: Formula, symbol: string): number =>
  (start.atoms.get(symbol) as number) / (residue.atoms.get(symbol) as number);

function oneCount(start: Formula, residue: Formula, staying: readonly string[], argument: string): number {
  const [first, ...others] = staying as [string, ...string[]];
  const count = ratio(start, residue, first);
  const other = others.find((symbol) => Math.abs(ratio(start, residue, symbol) - count) > SAME_COUNT * count);
  if (other !== undefined) throw doesNotFit(argument, first, other, start.text);
  return count;
}

function scarcestCount(start: Formula, residue: Formula): number {
  const symbols = [...residue.atoms.keys()];
  const bound = symbols.filter((symbol) => symbol !== "O");
  return Math.min(...(bound.length > 0 ? bound : symbols).map((symbol) => ratio(start, residue, symbol)));
}

/** Gauss-Jordan elimination of one equation for each element that stays, the largest pivot of each column first. */
function severalCounts(start: Formula, residues: readonly Formula[], staying: readonly string[], argument: string): readonly number[] {
  const unknowns = residues.length;
  const rows = staying.map((symbol) => [...residues.map(({ atoms }) => atoms.get(symbol) ?? 0), start.atoms.get(symbol) as number]);
  if (rows.length < unknowns) throw shareOfSolidsOpen(argument);
  for (let column = 0; column < unknowns; column++) {
    const below = rows.slice(column);
    const sizes = below.map((row) => Math.abs(row[column] as number));
    const largest = sizes.indexOf(Math.max(...sizes));
    const pivot = below[largest] as number[];
    const divisor = pivot[column] as number;
    if (Math.abs(divisor) < SAME_COUNT) throw shareOfSolidsOpen(argument);
    rows[column + largest] = rows[column] as number[];
    const unit = pivot.map((value) => value / divisor);
    rows[column] = unit;
    rows.forEach((row, index) => {
      const factor = row[column] as number;
      if (index !== column) rows[index] = row.map((value, place) => value - factor * (unit[place] as number));
    });
  }
  const left = rows.slice(unknowns).findIndex((row) => Math.abs(row[unknowns] as number) > SAME_COUNT);
  if (left >= 0) throw doesNotFit(argument, staying[0] as string, staying[unknowns + left] as string, start.text);
  return rows.slice(0, unknowns).map((row) => row[unknowns] as number);
}
