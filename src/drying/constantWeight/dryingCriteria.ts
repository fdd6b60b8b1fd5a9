import type { ConstancyCriterion } from "./constancyCriteria";

/** What a standard or pharmacopoeia calls constant weight. */
export interface DryingCriterion {
  readonly standard: string;
  readonly sample: string;
  /** Temperature as the standard prints it; "" where it is set elsewhere. */
  readonly oven: string;
  /** Least minutes of further heating between the compared weighings; undefined where none was found. */
  readonly intervalMinutes: number | undefined;
  readonly criterion: ConstancyCriterion;
  /** In the unit of the criterion: g, a fraction, a fraction per hour, or display steps. */
  readonly limit: number;
  /** How far the row can be relied on. Limits printed as "less than" are treated as "at most". */
  readonly mark: Mark;
}

const SEEN = "seen in an open copy";
const LIMIT_SEEN = "limit seen in print; interval from memory, check your edition";
const FROM_MEMORY = "from memory, check your edition";
type Mark = typeof SEEN | typeof LIMIT_SEEN | typeof FROM_MEMORY;

const row = (
  standard: string,
  sample: string,
  oven: string,
  intervalMinutes: number | undefined,
  criterion: ConstancyCriterion,
  limit: number,
  mark: Mark,
): DryingCriterion => ({ standard, sample, oven, intervalMinutes, criterion, limit, mark });

/**
 * Constant-weight limits in use. One series of weighings can pass some and fail others, so a sheet must name its own.
 * Left out: methods that are timed instead (ASTM E872, AOAC), that give no number (ASTM D4442 method B), that combine
 * two limits (EPA method 5, Standard Methods 2540), and those whose text could not be confirmed (ISO 589, ISO 11722).
 */
export const dryingCriteria: readonly DryingCriterion[] = [
  row("EN 322", "wood panels", "103 ± 2 °C", 360, "of last", 0.001, SEEN),
  row("EN 13183-1", "sawn timber", "103 ± 2 °C", 120, "of last", 0.001, SEEN),
  row("EN 13183-1, dense wood", "sawn timber", "103 ± 2 °C", 240, "of last", 0.001, SEEN),
  row("Timber test chapter, ISBN 9781482271362", "timber", "105 ± 5 °C", 240, "of last", 0.002, SEEN),
  row("ASTM D4442 method A", "wood", "103 ± 2 °C", 180, "readability", 2, SEEN),
  row("ISO 18134-1, -2", "solid biofuel", "105 ± 2 °C", 60, "of total loss", 0.002, FROM_MEMORY),
  row("ISO 18134-3", "solid biofuel, analysis sample", "105 ± 2 °C", 60, "absolute", 0.001, FROM_MEMORY),
  row("ASTM E871", "particulate wood fuel", "103 ± 1 °C", 120, "of last", 0.002, FROM_MEMORY),
  row("ISO 11465", "soil", "105 ± 5 °C", 240, "of last", 0.001, FROM_MEMORY),
  row("ASTM D2216", "soil and rock", "110 ± 5 °C", 60, "of last", 0.001, FROM_MEMORY),
  row("ASTM D3302", "coal, air-drying", "at most 40 °C", 60, "per hour", 0.001, SEEN),
  // Printed as a change of 0.1 percentage point in the solids: the wet sample is the divisor.
  row("ASTM E1756 method A", "biomass, total solids", "105 ± 3 °C", 60, "of initial", 0.001, SEEN),
  row("ASTM E1755", "biomass, ash", "575 ± 25 °C", 60, "absolute", 0.0003, FROM_MEMORY),
  row("ASTM D1102, drying", "wood", "100 to 105 °C", 60, "absolute", 0.0001, SEEN),
  row("ASTM D1102, ashing", "wood ash", "580 to 600 °C", 30, "absolute", 0.0002, SEEN),
  row("ISO 21656", "solid recovered fuel, ash", "550 ± 10 °C", 30, "absolute", 0.0002, SEEN),
  row("ISO 18122", "solid biofuel, ash", "550 ± 10 °C", 30, "absolute", 0.0002, FROM_MEMORY),
  row("USP", "drug substances", "", 60, "per gram", 0.0005, LIMIT_SEEN),
  row("Ph. Eur. 2.2.32", "drug substances", "", 30, "absolute", 0.0005, SEEN),
  row("Chinese Pharmacopoeia (doi 10.1186/s13020-020-00357-3, table 2)", "herbal drugs", "105 °C", undefined, "absolute", 0.0003, SEEN),
  row("Teaching laboratories", "crucible", "red heat", undefined, "absolute", 0.0002, SEEN),
  row("Small dishes below 25 g", "dish", "", undefined, "absolute", 0.0002, SEEN),
];

/** The standards whose constant-weight limit is this one; their intervals may differ. */
export const criteriaLike = (criterion: ConstancyCriterion, limit: number): readonly DryingCriterion[] =>
  dryingCriteria.filter((known) => known.criterion === criterion && known.limit === limit);
