/**
 * What the limit of a constant-weight criterion is measured in:
 * - absolute: g
 * - of last: fraction of the newer of the two net weighings (EN 322, EN 13183-1, ISO 11465)
 * - of initial: fraction of the first net weighing
 * - of total loss: fraction of the loss from the first weighing to the newer one (ISO 18134-1)
 * - per gram: g of change per g of sample taken, as pharmacopoeias print it. The sample taken is the first net
 *   weighing, so 0.5 mg per g is 0.0005 and means the same as 0.0005 "of initial"
 * - per hour: fraction of the newer net weighing per hour between the two (ASTM D3302)
 * - readability: multiples of the balance's display step (ASTM D4442 method A)
 */
export const CONSTANCY_CRITERIA = ["absolute", "of last", "of initial", "of total loss", "per gram", "per hour", "readability"] as const;

export type ConstancyCriterion = (typeof CONSTANCY_CRITERIA)[number];
