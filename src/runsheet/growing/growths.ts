import { has } from "../kinds";
import { optionBounds } from "../options/optionBounds";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { layout } from "../sheet/layout";

/** What a run sheet grows by: the options that count rounds, firings, stages, receivers and samples. */
export const GROWTHS = [
  "weighIns",
  "charFirings",
  "ashFirings",
  "stages",
  "receivers",
  "replicates",
] as const satisfies readonly (keyof CheckedOptions & keyof typeof optionBounds)[];
export type Growth = (typeof GROWTHS)[number];

/** What a growth is called on a sheet: what is fired on that of a salt or mineral is no char. */
export const calledOn = ({ kind }: CheckedOptions, growth: Growth): Growth | "heatings" =>
  growth === "charFirings" && has(kind, "heating") ? "heatings" : growth;

/** The same sheet with one more; a sample that is added is the next to be weighed. */
export function withOneMore(options: CheckedOptions, growth: Growth): CheckedOptions {
  const count = (options[growth] ?? 0) + 1;
  return { ...options, [growth]: count, ...(growth === "replicates" ? { addedSample: count } : {}) };
}

/** Whether a sheet has any use for the option: a run that ends with drying has no firings, and a balance check has one check weight. */
export const hasUseFor = (options: CheckedOptions, growth: Growth): boolean =>
  growth === "replicates" ? options.kind !== "balance" : layout(withOneMore(options, growth)).last > layout(options).last;

export const isAtLimit = (options: CheckedOptions, growth: Growth): boolean => (options[growth] ?? 0) >= optionBounds[growth].atMost;
