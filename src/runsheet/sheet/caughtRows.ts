import type { CheckedOptions } from "../options/RunSheetOptions";
import { HEIGHT } from "./heights";
import type { Rows } from "./Rows";

/** What is weighed besides the receivers: where vapour leaves what a receiver does not take. */
export const APPARATUS = ["tube", "trap"] as const;
/** What is typed below the weighings: the gas, and what the ledger's water rests on. */
export const LEDGER_BOXES = ["gas", "water", "fed", "known"] as const;
/** A feed of more water than this, %, is none that is charred; percent known no better than this tell nothing. Own bounds. */
export const MOST_PERCENT = { fed: 90, known: 20 } as const;
export type LedgerBox = (typeof LEDGER_BOXES)[number];

/** The apparatus before the fire and after it, part by part, the receivers last. */
export interface CaughtRows {
  readonly before: { readonly heading: number; readonly first: number; readonly last: number };
  readonly heading: number;
  readonly first: number;
  readonly last: number;
  readonly total: number;
  readonly boxes: Readonly<Record<LedgerBox, number>>;
}

export function caughtRows({ receivers = 0 }: CheckedOptions, rows: Rows): CaughtRows {
  const count = APPARATUS.length + receivers;
  const before = { heading: rows.next(HEIGHT.band), ...rows.run(count, HEIGHT.box) };
  const heading = rows.next(HEIGHT.band);
  return { before, heading, ...rows.run(count, HEIGHT.box), total: rows.next(HEIGHT.total), boxes: rows.each(LEDGER_BOXES, HEIGHT.box) };
}
