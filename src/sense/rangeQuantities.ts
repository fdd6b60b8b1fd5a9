/** What typical ranges are known for. All are fractions but the heating value, in MJ/kg. */
export const RANGE_QUANTITIES = [
  "volatile matter",
  "fixed carbon",
  "ash",
  "carbon",
  "hydrogen",
  "oxygen",
  "nitrogen",
  "heating value",
  "moisture",
  "char yield",
] as const;
export type RangeQuantity = (typeof RANGE_QUANTITIES)[number];

export const rangeUnit = (quantity: RangeQuantity): string => (quantity === "heating value" ? "MJ/kg" : "");
