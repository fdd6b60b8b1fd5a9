import { plainNumber } from "../problems/quoted";
import { RANGE_QUANTITIES } from "./rangeQuantities";
import { typicalBands } from "./typicalBands";
import { typicalRows } from "./typicalRows";

/** What is printed of a quantity, a line for the bands and one for the single materials; none for an unknown word. */
export function rangeEvidence(quantity: unknown): readonly string[] {
  const asked = RANGE_QUANTITIES.find((word) => word === String(quantity).trim().toLowerCase());
  if (asked === undefined) return [];
  const bands = typicalBands.flatMap(({ feedstock, bands: { [asked]: band } }) =>
    band === undefined ? [] : [`${feedstock} ${plainNumber(band[0])} to ${plainNumber(band[1])}`],
  );
  const rows = typicalRows.flatMap(({ feedstock, values: { [asked]: value } }) =>
    value === undefined ? [] : [`${feedstock} ${plainNumber(value)}`],
  );
  return [`bands of ${asked}: ${bands.join("; ")}`, ...(rows.length === 0 ? [] : [`printed: ${rows.join("; ")}`])];
}
