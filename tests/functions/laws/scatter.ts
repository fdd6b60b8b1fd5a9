/** Standard deviation of what a draw gives in so many runs; 4000 tell it within about 1 %. */
export function scatterOf(runs: number, draw: () => number): number {
  const values = Array.from({ length: runs }, draw);
  const mean = values.reduce((sum, value) => sum + value, 0) / runs;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (runs - 1));
}
