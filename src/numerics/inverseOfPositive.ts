// A pivot this small, out of 1, means that two unknowns cannot be told apart within the rounding of a double.
const LEAST_PIVOT = 1e-13;

/**
 * The inverse of a symmetric positive definite matrix, by Cholesky's factors of the matrix scaled to a unit diagonal.
 * Golub and Van Loan, Matrix Computations, section 4.2 (from memory).
 * @param matrix square, a few rows
 * @returns undefined when it is singular to rounding
 */
export function inverseOfPositive(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const scales = matrix.map((row, i) => 1 / Math.sqrt(row[i] as number));
  const factor = lowerFactor(matrix, scales);
  if (factor === undefined) return undefined;
  const columns = matrix.map((_, column) => unitColumnSolved(factor, column));
  return matrix.map((_, i) => matrix.map((_, j) => (columns[j]?.[i] as number) * (scales[i] as number) * (scales[j] as number)));
}

/** L of the scaled matrix = L L', or undefined where it is not positive definite. */
function lowerFactor(matrix: readonly (readonly number[])[], scales: readonly number[]): number[][] | undefined {
  const factor: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const line: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = (row[j] as number) * (scales[i] as number) * (scales[j] as number);
      for (let k = 0; k < j; k++) sum -= (line[k] as number) * ((j === i ? line : factor[j])?.[k] as number);
      if (j < i) line.push(sum / (factor[j]?.[j] as number));
      else if (sum > LEAST_PIVOT) line.push(Math.sqrt(sum));
      else return undefined;
    }
    factor.push(line);
  }
  return factor;
}

/** The column x of the inverse, from L L' x = unit column. */
function unitColumnSolved(factor: readonly (readonly number[])[], column: number): number[] {
  const forward: number[] = [];
  for (const [i, line] of factor.entries()) {
    let sum = i === column ? 1 : 0;
    for (let k = 0; k < i; k++) sum -= (line[k] as number) * (forward[k] as number);
    forward.push(sum / (line[i] as number));
  }
  const solved = forward.slice();
  for (let i = factor.length - 1; i >= 0; i--) {
    let sum = solved[i] as number;
    for (let k = i + 1; k < factor.length; k++) sum -= (factor[k]?.[i] as number) * (solved[k] as number);
    solved[i] = sum / (factor[i]?.[i] as number);
  }
  return solved;
}
