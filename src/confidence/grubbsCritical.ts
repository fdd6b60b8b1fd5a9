import { remembered } from "../numerics/remembered";
import { studentTQuantile } from "../numerics/studentTQuantile";

const VALUES_KEPT = 200;

/**
 * Critical value of Grubbs' G for n values: (n-1)/sqrt(n) sqrt(t^2 / (n-2+t^2)), t exceeded with probability tail/n at
 * n-2 degrees of freedom (Grubbs, Technometrics 11 (1969) 1, doi:10.1080/00401706.1969.10490657). As in the published
 * tables, an upper bound that is exact wherever two values cannot stand out that far at once.
 * @param n from 3
 * @param tail alpha for a one-sided test, alpha/2 for a two-sided one
 */
export const grubbsCritical = remembered(VALUES_KEPT, (n: number, tail: number): number => {
  const t = studentTQuantile(tail / n, n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
});
