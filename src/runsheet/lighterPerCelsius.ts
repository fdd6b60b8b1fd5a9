import { CRUCIBLE_RATE } from "../balance/hotWeighing";

// In cell formulas a whole number over a power of ten; 0.19 mg needs five places.
const PER = 100_000;

/** How much lighter a warm vessel reads, the published case of HOTWEIGHING: so many g for so many degC above the balance. */
export const LIGHTER_PER_CELSIUS = { grams: Math.round(CRUCIBLE_RATE * PER), per: PER } as const;
