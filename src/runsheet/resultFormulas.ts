import { constantWeightArguments } from "./constantWeightArguments";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import { newestVerdict } from "./newestVerdict";
import type { Result } from "./quantities";
import type { SampleCells } from "./sampleCells";

const { verdicts } = glossary;

/** The call once all the cells it needs hold numbers, else nothing. */
const onceFilled = (needed: readonly string[], call: string): string => `=IF(COUNT(${needed.join(",")})<${needed.length},"",${call})`;

/** The cell formula of each result of one sample, "=" included. */
export const RESULT_FORMULAS: Readonly<Record<Result, (cells: SampleCells, rows: Layout) => string>> = {
  steadySince: (cells, rows) => {
    const loaded = cells.stretch(rows.table.letters.loaded);
    const newest = newestVerdict(cells, rows);
    const otherwise = `IF(${newest}="${verdicts.first}","${verdicts.notYet}",${newest})`;
    return `=IF(COUNTA(${loaded})=0,"",IF(${newest}="${verdicts.steady}",RETORT.CONSTANTWEIGHT(${constantWeightArguments(rows, cells)}),${otherwise}))`;
  },
  moistureWet: ({ vessel, moist, dry }) => onceFilled([vessel, moist, dry], `RETORT.MOISTURE.WET(${vessel},${moist},${dry})`),
  moistureDry: ({ vessel, moist, dry }) => onceFilled([vessel, moist, dry], `RETORT.MOISTURE.DRY(${vessel},${moist},${dry})`),
  volatile: (cells) => {
    const { vessel, dry } = cells;
    const char = cells.heating("char");
    return onceFilled([vessel, dry, char], `RETORT.VOLATILEFRACTION(${vessel},${dry},${char})`);
  },
  charYield: (cells) => {
    const { vessel, dry } = cells;
    const char = cells.heating("char");
    return onceFilled([vessel, dry, char], `RETORT.CHARYIELD(${vessel},${dry},${char})`);
  },
  charYieldAshFree: (cells) => {
    const needed = [cells.vessel, cells.dry, cells.heating("char"), cells.heating("ash")];
    return onceFilled(needed, `RETORT.CHARYIELD(${needed.join(",")})`);
  },
  ash: (cells) => {
    const { vessel, dry } = cells;
    const [char, ash] = [cells.heating("char"), cells.heating("ash")];
    return onceFilled(
      [vessel, dry, char, ash],
      `IF(AND(${vessel}<=${ash},${ash}<=${char},${char}<=${dry}),(${ash}-${vessel})/(${dry}-${vessel}),"${glossary.checkAsh}")`,
    );
  },
};
