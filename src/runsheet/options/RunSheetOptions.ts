/** How far the run goes; each kind includes the ones before it. */
export const RUN_KINDS = ["drying", "charring", "ashing"] as const;
export type RunKind = (typeof RUN_KINDS)[number];

export interface RunSheetOptions {
  readonly kind: RunKind;
  /** Rows for weighings while drying, 3 to 60. */
  readonly weighIns: number;
  /** Planned minutes between weighings. */
  readonly intervalMinutes: number;
  /** The balance's smallest display step, g. */
  readonly readability: number;
  /** What the vessel is called on the sheet: "lidded steel tin". */
  readonly vessel: string;
  /** Samples run side by side, 1 to 6. */
  readonly replicates: number;
  /** Oven temperature, °C; left out, a box to fill in. */
  readonly ovenCelsius?: number;
  /** Columns for the balance's zero before and after each weighing, and masses corrected for its drift. Left out: none. */
  readonly panZeros?: boolean;
  /** Columns for the temperatures of room and sample at each weighing, and a flag where it was weighed warm. Left out: none. */
  readonly temperatures?: boolean;
}
