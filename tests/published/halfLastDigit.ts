/** Half a unit of the last digit of a printed number: 0.005 for "12.93". A hair is added for binary rounding. */
export function halfLastDigit(printed: string): number {
  const decimals = printed.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals * (1 + 1e-9);
}
