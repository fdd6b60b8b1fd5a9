import { glossary } from "./glossary";
import { LIGHTER_PER_CELSIUS } from "./lighterPerCelsius";
import type { TableColumn } from "./tableColumns";

// A larger vessel errs more than the crucible that was measured, so a tenth of a display step counts; own margin, no source.
const SHARE_OF_A_STEP = 10;

const { enough, warm, chilled } = glossary.cold;

/** How far the sample was above the room when weighed, and whether this balance could show that. Nothing is corrected. */
export function coldEnough(room: string, sample: string, readability: string): Pick<Record<TableColumn, string>, "cold" | "warmer"> {
  const { grams, per } = LIGHTER_PER_CELSIUS;
  const shows = (warmer: string): string => `(${warmer})*${grams * SHARE_OF_A_STEP}>=${readability}*${per}`;
  return {
    warmer: `=IF(COUNT(${room},${sample})<2,"",${sample}-${room})`,
    cold: `=IF(COUNT(${room},${sample},${readability})<3,"",IF(${shows(`${sample}-${room}`)},"${warm}",IF(${shows(`${room}-${sample}`)},"${chilled}","${enough}")))`,
  };
}
