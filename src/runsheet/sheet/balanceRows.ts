import type { CheckedOptions } from "../options/RunSheetOptions";
import { HEIGHT } from "./heights";
import type { Rows } from "./Rows";

/** Places of the pan, the centre before and after the corners so that a drift between shows. */
export const PLACES = ["centre", "frontLeft", "frontRight", "backLeft", "backRight", "centreAgain"] as const;
export type Place = (typeof PLACES)[number];
/** What a balance check finds, g, one a row. */
export const PERFORMANCE = ["bias", "scatter", "corner", "zero", "forRuns"] as const;
export type Performance = (typeof PERFORMANCE)[number];

/** What is looked at on a balance check, in its order. */
export const BALANCE_CHECKS = ["given", "dates", "rows", "slip", "newest", "bias", "zero", "corners", "typedOver"] as const;
export type BalanceCheck = (typeof BALANCE_CHECKS)[number];

const NOTE_ROWS = 2;

/** Blocks of a balance check. */
export const BALANCE_BLOCKS = {
  weight: (_: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    ...rows.each(["date", "balance", "value", "known", "step"], HEIGHT.box),
  }),
  rounds: ({ weighIns }: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    ...rows.run(weighIns, HEIGHT.box),
    total: rows.next(HEIGHT.total),
  }),
  corners: (_: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    places: rows.each(PLACES, HEIGHT.box),
    total: rows.next(HEIGHT.total),
  }),
  notes: (_: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), ...rows.run(NOTE_ROWS, HEIGHT.box) }),
  performance: (_: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    lines: rows.each(PERFORMANCE, HEIGHT.result),
    foot: rows.next(HEIGHT.line),
  }),
} as const;
