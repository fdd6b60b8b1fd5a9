/**
 * How much lighter a warm vessel reads: up to 0.19 mg for each °C above the balance, measured on a 17 g porcelain crucible
 * (Blade, Differential Temperature Error in Weighing, Analytical Chemistry). In whole numbers, for cell formulas: 19 g per 100 000 °C.
 */
export const LIGHTER_PER_CELSIUS = { grams: 19, per: 100_000 } as const;
