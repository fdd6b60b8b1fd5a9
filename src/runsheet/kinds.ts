import type { BlockName } from "./BlockName";
import type { RunKind } from "./options/RunSheetOptions";

/**
 * The blocks of each kind of run in the order of the work. What is calculated and checked follows from the blocks that are there;
 * every word of a kind stands in words/kindWords.ts. The cautions move up where the blocks before them do not fit on page one.
 */
export const KINDS: Readonly<Record<RunKind, readonly BlockName[]>> = {
  drying: ["setup", "drying", "end", "cautions", "results", "checks", "settings", "curves", "materials"],
  charring: ["setup", "drying", "charring", "end", "cautions", "results", "checks", "settings", "openFire", "curves", "materials"],
  ashing: ["setup", "drying", "charring", "ashing", "end", "cautions", "results", "checks", "settings", "openFire", "curves", "materials"],
  liquids: ["setup", "drying", "charring", "caught", "end", "cautions", "results", "checks", "settings", "curves", "materials"],
  staged: ["setup", "drying", "stages", "end", "cautions", "results", "checks", "settings", "curves", "materials"],
  salt: ["setup", "compound", "drying", "heating", "end", "cautions", "results", "checks", "settings", "curves", "materials"],
  balance: ["weight", "rounds", "corners", "notes", "cautions", "performance", "checks", "curves"],
};

/** Blocks that the hand fills in at the bench, before the cautions. */
export const BENCH: readonly BlockName[] = [
  ...(["setup", "compound", "drying", "charring", "ashing", "caught", "stages", "heating", "end"] as const),
  ...(["weight", "rounds", "corners", "notes"] as const),
];

export const has = (kind: RunKind, block: BlockName): boolean => KINDS[kind].includes(block);

/** Whether anything is heated beyond drying, so that char or residue is weighed in the vessel. */
export const isFired = (kind: RunKind): boolean => has(kind, "charring") || has(kind, "stages") || has(kind, "heating");
