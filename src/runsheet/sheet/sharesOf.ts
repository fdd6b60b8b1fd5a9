import { has } from "../kinds";
import type { CheckedOptions } from "../options/RunSheetOptions";
import type { resultWords } from "../words/resultWords";

type ShareName = keyof (typeof resultWords)["shares"];

export const STAGE_SHARES = [
  ...(["stage1", "stage2", "stage3", "stage4", "stage5", "stage6"] as const),
  ...(["stage7", "stage8", "stage9", "stage10", "stage11", "stage12"] as const),
];
export type StageShare = (typeof STAGE_SHARES)[number];

/** Shares of the product ledger, all but the char's. */
export const LEDGER_SHARES = ["liquidYield", "waterFormed", "gasMeasured", "gasDifference", "unaccounted", "closure"] as const;
export type LedgerShare = (typeof LEDGER_SHARES)[number];

/** Shares of a salt or mineral; `waters` is a number per formula of the residue. */
export const SALT_SHARES = ["lossOnHeating", "leftOnHeating", "ofTheory", "waters"] as const;
export type SaltShare = (typeof SALT_SHARES)[number];

/** The shares that a sheet for these options gives, in their order. */
export const sharesOf = ({ kind, stages = 0 }: CheckedOptions): readonly ShareName[] => [
  ...(["moistureWet", "moistureDry"] as const),
  ...(has(kind, "charring") ? (["volatile", "charYield"] as const) : []),
  ...(has(kind, "ashing") ? (["charYieldAshFree", "ash"] as const) : []),
  ...(has(kind, "caught") ? LEDGER_SHARES : []),
  ...(has(kind, "heating") ? SALT_SHARES : []),
  ...(has(kind, "stages") ? ([...STAGE_SHARES.slice(0, stages), "lostInAll", "leftAtEnd"] as const) : []),
];

const JUDGED_BY: Readonly<Partial<Record<ShareName, ShareName>>> = {
  moistureDry: "moistureWet",
  charYield: "volatile",
  leftAtEnd: "lostInAll",
  leftOnHeating: "lossOnHeating",
  ofTheory: "lossOnHeating",
  waters: "lossOnHeating",
  closure: "unaccounted",
};

/**
 * The row whose samples a row is judged by, which has the one verdict of both: what is worked out of the same weighings of a sample by the same
 * shares agrees as they do. Every sheet with the one has the other.
 */
export const judgedBy = (name: ShareName): ShareName => JUDGED_BY[name] ?? name;

export const isLedgerShare = (name: ShareName): name is LedgerShare => (LEDGER_SHARES as readonly string[]).includes(name);
export const isStageShare = (name: ShareName): name is StageShare => (STAGE_SHARES as readonly string[]).includes(name);
