import type { RunSheetOptions } from "../options/RunSheetOptions";
import type { weighInWords } from "../words/weighInWords";

export type WeighInColumn = keyof (typeof weighInWords)["columns"];

/** The weigh-in table of a sheet: its columns from left to right, and where each stands, from 0. */
export interface WeighInColumns {
  readonly printed: readonly WeighInColumn[];
  /** Right of everything printed: numbers that other cells rest on. */
  readonly working: readonly WeighInColumn[];
  /** Columns that everything printed takes, from A on. */
  readonly width: number;
  readonly at: Readonly<
    Record<"number" | "clock" | "elapsed" | "loaded" | "sample" | "change" | "steady" | "notes" | "chartElapsed" | "chartSample", number>
  >;
  /** Weighings with the vessel, corrected for drift where the sheet does that. */
  readonly gross: number;
  /** Undefined on a sheet without pan zeros. */
  readonly zeros: Readonly<Record<"before" | "after" | "corrected", number>> | undefined;
  /** Undefined on a sheet without temperatures. */
  readonly temperatures: Readonly<Record<"room" | "warmth" | "cold" | "warmer", number>> | undefined;
}

// A to I: as many as six samples with their mean and deviation take.
const LEAST_PRINTED = 9;

/** In the order of the work: zero, weighing, zero, temperatures, then what follows from them. */
export function weighInColumns({ panZeros = false, temperatures = false }: RunSheetOptions): WeighInColumns {
  const only = (isWanted: boolean, ...columns: WeighInColumn[]): WeighInColumn[] => (isWanted ? columns : []);
  const printed: WeighInColumn[] = [
    "number",
    "clock",
    "elapsed",
    ...only(panZeros, "zeroBefore"),
    "loaded",
    ...only(panZeros, "zeroAfter"),
    ...only(temperatures, "room", "warmth"),
    "sample",
    "change",
    "steady",
    ...only(temperatures, "cold"),
    "notes",
  ];
  const working: WeighInColumn[] = ["chartElapsed", "chartSample", ...only(panZeros, "corrected"), ...only(temperatures, "warmer")];
  const width = Math.max(LEAST_PRINTED, printed.length);
  const place = (column: WeighInColumn): number => (printed.includes(column) ? printed.indexOf(column) : width + working.indexOf(column));
  const zeros = panZeros ? { before: place("zeroBefore"), after: place("zeroAfter"), corrected: place("corrected") } : undefined;
  return {
    printed,
    working,
    width,
    at: {
      number: place("number"),
      clock: place("clock"),
      elapsed: place("elapsed"),
      loaded: place("loaded"),
      sample: place("sample"),
      change: place("change"),
      steady: place("steady"),
      notes: place("notes"),
      chartElapsed: place("chartElapsed"),
      chartSample: place("chartSample"),
    },
    gross: zeros?.corrected ?? place("loaded"),
    zeros,
    temperatures: temperatures ? { room: place("room"), warmth: place("warmth"), cold: place("cold"), warmer: place("warmer") } : undefined,
  };
}
