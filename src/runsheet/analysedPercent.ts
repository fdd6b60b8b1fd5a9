import { COLUMNS } from "./columns";
import type { Layout } from "./layout";
import { COMPOSITION } from "./quantities";
import { sampleCells } from "./sampleCells";

/** The least that fractions and ash may add up to, %: BURN.COMPARE answers from there on. */
export const LEAST_ANALYSED_PERCENT = 90;

/** How much of a sample, from 1, its analysis and ash account for so far, %, as a cell formula without "="; only once it is dry. */
export function analysedPercent(rows: Layout, sample: number): string {
  const [, ...fractions] = COMPOSITION.map((part) => `$${COLUMNS.value}$${rows.burning?.composition[part]}`);
  const { vessel, dry, heating } = sampleCells(rows, sample);
  const ash = heating("ash");
  const ofAsh = ash === "" ? "" : `+IF(COUNT(${ash})=0,0,(${ash}-${vessel})/(${dry}-${vessel}))`;
  return `ROUND(100*(SUM(${fractions.join(",")})${ofAsh}),1)`;
}
