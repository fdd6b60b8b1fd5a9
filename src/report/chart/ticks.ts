const STEPS = [1, 2, 5, 10] as const;
const DECADE = 10;
// Rounding residue of a multiple of a decimal step.
const FIGURES = 12;

export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

/**
 * An axis that holds all values and begins and ends on a tick: steps of 1, 2 or 5 times a power of ten, about as many as wanted.
 * Values that are all alike lie in the middle of one step to either side.
 */
export function scaleOf(values: readonly number[], wanted: number): Scale {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const span = high > low ? high - low : Math.max(Math.abs(high), 1);
  const rough = span / wanted;
  const decade = DECADE ** Math.floor(Math.log10(rough));
  const step = (STEPS.find((one) => one * decade >= rough) ?? DECADE) * decade;
  const first = Math.floor(low / step) - (high > low ? 0 : 1);
  const last = Math.max(Math.ceil(high / step), first + 1) + (high > low ? 0 : 1);
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(FIGURES)));
  return { from: ticks[0] ?? low, to: ticks.at(-1) ?? high, ticks };
}

/** Ticks as printed, all with as many decimals as the finest step needs. */
export function tickTexts({ ticks }: Scale): readonly string[] {
  const decimals = Math.max(...ticks.map((tick) => (String(tick).split(".")[1] ?? "").length));
  return ticks.map((tick) => tick.toFixed(decimals));
}
