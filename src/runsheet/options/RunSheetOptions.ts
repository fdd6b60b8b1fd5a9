import type { BlockName } from "../BlockName";

/** What is done to the sample; src/runsheet/kinds.ts says of which blocks each is made. */
export const RUN_KINDS = ["drying", "charring", "ashing", "liquids", "staged", "salt", "balance"] as const;
export type RunKind = (typeof RUN_KINDS)[number];
/** Kinds that weigh samples in vessels; a balance check weighs a check weight. */
export const SAMPLE_KINDS = ["drying", "charring", "ashing", "liquids", "staged", "salt"] as const satisfies readonly RunKind[];

/** Whether samples beside each other are one material weighed more than once, and so averaged. */
export const SAMPLES_ARE = ["repeats", "different"] as const;
export type SamplesAre = (typeof SAMPLES_ARE)[number];

export interface RunSheetOptions {
  readonly kind: RunKind;
  /** Rounds of weighing while drying, or of a check weight, 3 to 60. */
  readonly weighIns: number;
  /** Planned minutes between weighings. */
  readonly intervalMinutes: number;
  /** The balance's smallest display step, g. */
  readonly readability: number;
  /** What the vessel is called on the sheet: "lidded steel tin". */
  readonly vessel: string;
  /** Samples run side by side, 1 to 6; 1 for a balance check. */
  readonly replicates: number;
  /** Oven temperature, °C; left out, a box to fill in. */
  readonly ovenCelsius?: number;
  /** The balance's zero before and after each round, and masses corrected for its drift. Left out: none. */
  readonly panZeros?: boolean;
  /** The temperatures of room and sample at each round, and a flag where it was weighed warm. Left out: none. */
  readonly temperatures?: boolean;
  /** Times that the char, or a salt or mineral, is fired and weighed, 1 to 4. Left out: 3. */
  readonly charFirings?: number;
  /** The same for the ash. Left out: 2. */
  readonly ashFirings?: number;
  /** Receivers that liquids are caught in, 1 to 4, of a run with liquids caught only. Left out: 1. */
  readonly receivers?: number;
  /** Stages of staged heating, 2 to 12, of such a run only. Left out: 4. */
  readonly stages?: number;
  /**
   * What a salt or mineral is, and what is to be left of it: "CuSO4·5H2O", "CuSO4". Where a run is compared with an open fire, the formula of what
   * burns: "C6H10O5". Left out: boxes to fill in.
   */
  readonly formula?: string;
  readonly residue?: string;
  /** Left out: repeats. */
  readonly samplesAre?: SamplesAre;
  /** The unit of every temperature on the sheet. Left out: C. */
  readonly degrees?: "C" | "F";
  /** Whether rounds are timed by the clock or in minutes since the first. Left out: by the clock. */
  readonly timing?: "clock" | "minutes";
  /** What a plan knew, put into the boxes it belongs to. Left out: nothing was planned. */
  readonly plan?: CarriedPlan;
  /** The sample that was added while the run was under way, whose empty vessel comes before all else. Left out: none was. */
  readonly addedSample?: number;
  /** The block below which the cautions stand. Left out: the last that fits on page one with them. */
  readonly cautionsAfter?: BlockName;
}

/** What a plan hands on to the sheet. Shares are fractions. */
export interface CarriedPlan {
  /** Moist sample in each vessel, g. */
  readonly moistGrams: number;
  /** What is to be left of it when dry, g, for a run that goes on after drying; left out: not known. */
  readonly dryGrams?: number;
  readonly wantedUncertainty: number;
  readonly repeatability?: number;
  readonly methodScatter?: number;
  readonly vesselMaterial?: string;
  /** In the degrees of the sheet. */
  readonly kilnSetPoint?: number;
  /** From the end of the programme until the vessel is cold: how long it stays closed at the least. */
  readonly coolingHours?: number;
  /** What no box holds, and a line among the notes tells. Minutes after midnight. */
  readonly beginAt?: number;
  /** Until the sample is expected to be dry. */
  readonly dryingHours?: number;
  /** Water, of the moist sample. */
  readonly expectedMoisture?: number;
  /** Of the moist sample as it lies in the vessel, g/mL. */
  readonly bulkDensity?: number;
  /** Degrees of the sheet a minute. */
  readonly heatingRate?: number;
  readonly holdMinutes?: number;
  /** What leaves as vapour, of the dry sample. */
  readonly expectedLoss?: number;
  /** Mean of the vapour, g/mol. */
  readonly molarMass?: number;
}

/** What the sheet has no usual value for, or only one kind of run has. */
type LeftOpen = "ovenCelsius" | "plan" | "addedSample" | "cautionsAfter" | "receivers" | "stages" | "formula" | "residue";

/** The same with everything said. */
export type CheckedOptions = Required<Omit<RunSheetOptions, LeftOpen>> & Pick<RunSheetOptions, LeftOpen>;
