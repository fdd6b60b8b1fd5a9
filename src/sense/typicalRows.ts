import type { RangeQuantity } from "./typicalBands";

/** One material as a paper or table prints it, dry: fractions, and the higher heating value in MJ/kg. */
export interface TypicalRow {
  readonly feedstock: string;
  readonly source: string;
  readonly values: Readonly<Partial<Record<RangeQuantity, number>>>;
}

const COLUMNS = ["volatile matter", "fixed carbon", "ash", "carbon", "hydrogen", "oxygen", "nitrogen", "heating value"] as const;
const PERCENT = 100;

const FUELS = "T. R. Miles, table of wood fuels with both bases (trmiles.com/alkali/fuelsc2.html)";
// The paper prints volatile matter on the ash-free basis; here on the dry basis.
const RAVEENDRAN = "Raveendran 1995";
const NIST = "MaCFP, NIST wood data; as tested, not stated dry";

/** Printed mass percent in the order of the columns, then MJ/kg; a gap where nothing is printed. */
const row = (feedstock: string, source: string, ...printed: readonly (number | undefined)[]): TypicalRow => ({
  feedstock,
  source,
  values: Object.fromEntries(
    COLUMNS.flatMap((quantity, index) => {
      const value = printed[index];
      if (value === undefined) return [];
      return [[quantity, quantity === "heating value" ? value : value / PERCENT]];
    }),
  ),
});

/** Left out: the heating value of coir pith, which does not go with its carbon, and rows that sum far from 100 %. */
export const typicalRows: readonly TypicalRow[] = [
  row("red oak sawdust", FUELS, 86.2, 13.5, 0.31, 49.96, 5.92, 43.77, 0.03),
  row("fir mill waste", FUELS, 82.1, 17.5, 0.41, 51.2, 5.98, 42.3, 0.06),
  row("hybrid poplar", FUELS, 84.8, 12.5, 2.7, 50.2, 6.06, 40.4, 0.6),
  row("poplar coarse", FUELS, 86.1, 12.3, 1.6, 50.8, 5.89, 41.1, 0.59),
  row("alder and fir sawdust", FUELS, 76.6, 19.3, 4.13, 51, 5.8, 38.5, 0.46),
  row("furniture waste", FUELS, 83, 13.4, 3.61, 49.9, 5.91, 40.3, 0.29),
  row("forest residuals", FUELS, 82.4, 13.6, 3.97, 50.3, 4.59, 40, 1.03),
  row("Christmas trees", FUELS, 74, 20.8, 5.21, 51.6, 5.58, 36.7, 0.52),
  row("pine", NIST, undefined, undefined, undefined, 48.8, 6.13, 40.7, 0.05),
  row("bagasse", RAVEENDRAN, 81.8, 15.3, 2.9, 43.8, 5.8, 47.1, 0.4, 16.29),
  row("coconut shell", RAVEENDRAN, 79.6, 19.7, 0.7, 50.2, 5.7, 43.4, 0, 20.5),
  row("coir pith", RAVEENDRAN, 68.1, 24.8, 7.1, 44, 4.7, 43.4, 0.7),
  row("corn cob", RAVEENDRAN, 83, 14.2, 2.8, 47.6, 5, 44.6, 0, 15.65),
  row("corn stalks", RAVEENDRAN, 74.6, 18.6, 6.8, 41.9, 5.3, 46, 0, 16.54),
  row("groundnut shell", RAVEENDRAN, 78.1, 16, 5.9, 48.3, 5.7, 39.4, 0.8, 18.65),
  row("millet husk", RAVEENDRAN, 66.1, 15.8, 18.1, 42.7, 6, 33, 0.1, 17.48),
  row("rice husk", RAVEENDRAN, 62.4, 14.1, 23.5, 38.9, 5.1, 32, 0.6, 15.29),
  row("rice straw", RAVEENDRAN, 64.3, 15.9, 19.8, 36.9, 5, 37.9, 0.4, 16.78),
  row("subabul wood", RAVEENDRAN, 84.8, 14.3, 0.9, 48.2, 5.9, 45.1, 0, 19.78),
  row("wheat straw", RAVEENDRAN, 74.5, 14.3, 11.2, 47.5, 5.4, 35.8, 0.1, 17.99),
];
