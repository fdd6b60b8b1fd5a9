import type { RunSheetOptions } from "./RunSheetOptions";

export const DETAILS = [
  "date",
  "operator",
  "sample",
  "vessel",
  "material",
  "readability",
  "repeatability",
  "wanted",
  "interval",
  "oven",
  "criterion",
  "limit",
] as const;
export type Detail = (typeof DETAILS)[number];

const DRYING_RESULTS = ["steadySince", "moistureWet", "moistureDry"] as const;
const CHARRING_RESULTS = ["volatile", "charYield"] as const;
const ASHING_RESULTS = ["charYieldAshFree", "ash"] as const;
export type Result = (typeof DRYING_RESULTS | typeof CHARRING_RESULTS | typeof ASHING_RESULTS)[number];
/** A result that is a share, and has an uncertainty. */
export type Share = Exclude<Result, "steadySince">;

const CHARRING_RECORD = ["kilnSet", "started", "smokeStopped", "cooled", "char"] as const;
const ASHING_RECORD = ["furnaceSet", "ash"] as const;
export type HeatingRecord = (typeof CHARRING_RECORD | typeof ASHING_RECORD)[number];

/** What is weighed once in a sample's block, outside the weigh-in table. */
export type Weighed = "vessel" | "char" | "ash";

export const COMPOSITION = ["formula", "carbon", "hydrogen", "oxygen", "nitrogen", "sulfur"] as const;
export type Composition = (typeof COMPOSITION)[number];

export const COMPARISON = ["dry", "charLeft", "vapourLeft", "oxygenTaken", "air", "ashLeft", "gases", "notCovered", "massIn", "massOut"] as const;
export type Comparison = (typeof COMPARISON)[number];

/** The results that a run of this kind comes to. */
export const resultsOf = ({ kind }: RunSheetOptions): readonly Result[] => [
  ...DRYING_RESULTS,
  ...(kind === "drying" ? [] : CHARRING_RESULTS),
  ...(kind === "ashing" ? ASHING_RESULTS : []),
];

/** What is noted while heating in a run of this kind. */
export const heatingRecordOf = ({ kind }: RunSheetOptions): readonly HeatingRecord[] => [
  ...(kind === "drying" ? [] : CHARRING_RECORD),
  ...(kind === "ashing" ? ASHING_RECORD : []),
];

/** The shares among the results of a run of this kind. */
export const sharesOf = (options: RunSheetOptions): readonly Share[] =>
  resultsOf(options).filter((result): result is Share => result !== "steadySince");

const CHECKS = ["tare", "order", "gain", "steady", "balance", "range", "material"] as const;
export type Check = (typeof CHECKS)[number] | "closure" | "zeros" | "warmth";

/** What is looked at on a sheet for these options. */
export const checksOf = ({ kind, panZeros, temperatures }: RunSheetOptions): readonly Check[] => [
  ...CHECKS,
  ...(kind === "drying" ? [] : (["closure"] as const)),
  ...(panZeros ? (["zeros"] as const) : []),
  ...(temperatures ? (["warmth"] as const) : []),
];
