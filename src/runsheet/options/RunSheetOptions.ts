import type { BlockName } from "../BlockName";

/** What is done to the sample; src/runsheet/kinds.ts says of which blocks each is made. */
export const RUN_KINDS = ["drying", "charring", "ashing"] as const;
export type RunKind = (typeof RUN_KINDS)[number];

/** Whether samples beside each other are one material weighed more than once, and so averaged. */
export const SAMPLES_ARE = ["repeats", "different"] as const;
export type SamplesAre = (typeof SAMPLES_ARE)[number];

export interface RunSheetOptions {
  readonly kind: RunKind;
  /** Rounds of weighing while drying, 3 to 60. */
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
  /** The balance's zero before and after each round, and masses corrected for its drift. Left out: none. */
  readonly panZeros?: boolean;
  /** The temperatures of room and sample at each round, and a flag where it was weighed warm. Left out: none. */
  readonly temperatures?: boolean;
  /** Times that the char is fired and weighed, 1 to 4. Left out: 3. */
  readonly charFirings?: number;
  /** The same for the ash. Left out: 2. */
  readonly ashFirings?: number;
  /** Left out: repeats. */
  readonly samplesAre?: SamplesAre;
  /** The unit of every temperature on the sheet. Left out: C. */
  readonly degrees?: "C" | "F";
  /** Whether rounds are timed by the clock or in minutes since the first. Left out: by the clock. */
  readonly timing?: "clock" | "minutes";
  /** The block below which the cautions stand. Left out: the last that fits on page one with them. */
  readonly cautionsAfter?: BlockName;
}

/** What the sheet has no usual value for. */
type LeftOpen = "ovenCelsius" | "cautionsAfter";

/** The same with everything said. */
export type CheckedOptions = Required<Omit<RunSheetOptions, LeftOpen>> & Pick<RunSheetOptions, LeftOpen>;
