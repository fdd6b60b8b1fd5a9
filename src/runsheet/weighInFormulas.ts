import { coldEnough } from "./coldEnough";
import { constantWeightArguments, detailBox } from "./constantWeightArguments";
import { driftCorrected } from "./driftCorrected";
import { glossary } from "./glossary";
import type { Layout } from "./layout";
import type { SampleCells } from "./sampleCells";
import type { TableColumn } from "./tableColumns";

const MINUTES_PER_DAY = 1440;
// Clocks are read to the second at best, so hundredths of a minute are enough.
const DECIMALS_OF_A_MINUTE = 2;
// CONSTANTWEIGHT.STEPS gives headings in its first row and the verdict in its last column.
const HEADING_ROWS = 1;
const VERDICT_COLUMN = 5;

const { verdicts } = glossary;

/**
 * The cell formulas of one row of a weigh-in table, "=" included. The first row has no change since the one before.
 * @param row of the weigh-in on the sheet
 */
export function weighInFormulas(rows: Layout, cells: SampleCells, row: number): Partial<Record<TableColumn, string>> {
  const { letters } = rows.table;
  const at = (column: string): string => `${column}${row}`;
  const [gross, sample, before] = [at(cells.gross), at(letters.sample), `${letters.sample}${row - 1}`];
  const isFirst = row === cells.rows.first;
  const { zeroBefore, zeroAfter, room, warmth } = letters;
  return {
    elapsed: isFirst ? `=IF(ISNUMBER(${at(letters.clock)}),0,"")` : laterElapsed(rows, cells, row),
    sample: `=IF(COUNT(${cells.vessel},${gross})<2,"",${gross}-${cells.vessel})`,
    ...(isFirst ? {} : { change: `=IF(COUNT(${before},${sample})<2,"",${sample}-${before})` }),
    steady: steady(rows, cells, row),
    chartElapsed: lastKnown(rows, cells, "chartElapsed", row),
    chartSample: lastKnown(rows, cells, "chartSample", row),
    ...(zeroBefore === undefined || zeroAfter === undefined
      ? {}
      : { corrected: `=${driftCorrected(at(letters.loaded), at(zeroBefore), at(zeroAfter))}` }),
    ...(room === undefined || warmth === undefined ? {} : coldEnough(at(room), at(warmth), detailBox(rows, "readability"))),
  };
}

/** Dates with times count straight; bare clock times are counted on from the weigh-in before, past midnight as often as needed. */
function laterElapsed({ table }: Layout, cells: SampleCells, row: number): string {
  const { clock: column, elapsed } = table.letters;
  const [start, clock] = [`${column}$${cells.rows.first}`, `${column}${row}`];
  const soFar = `MAX(${cells.stretch(elapsed, row - 1)})`;
  const minutes = `(${clock}-${start})*${MINUTES_PER_DAY}`;
  const onward = `${soFar}+MOD(ROUND(${minutes}-${soFar},${DECIMALS_OF_A_MINUTE}),${MINUTES_PER_DAY})`;
  return `=IF(COUNT(${start},${clock})<2,"",IF(MIN(${start},${clock})>=1,ROUND(${minutes},${DECIMALS_OF_A_MINUTE}),${onward}))`;
}

function steady(rows: Layout, cells: SampleCells, row: number): string {
  const { letters } = rows.table;
  const [number, elapsed, sample] = [`${letters.number}${row}`, `${letters.elapsed}${row}`, `${letters.sample}${row}`];
  const filled = `MIN(COUNT(${cells.stretch(letters.elapsed, row)}),COUNT(${cells.stretch(letters.loaded, row)}))`;
  const details = `COUNT(${detailBox(rows, "limit")},${detailBox(rows, "readability")},${detailBox(rows, "interval")})+COUNTA(${detailBox(rows, "criterion")})`;
  const verdict = `INDEX(RETORT.CONSTANTWEIGHT.STEPS(${constantWeightArguments(rows, cells, row)}),${number}+${HEADING_ROWS},${VERDICT_COLUMN})`;
  return (
    `=IF(ISTEXT(${letters.clock}${row}),"${verdicts.clockIsText}",IF(ISTEXT(${letters.loaded}${row}),"${verdicts.weightIsText}",` +
    `IF(COUNT(${elapsed},${sample})<2,"",IF(${filled}<${number},"${verdicts.rowMissing}",` +
    `IF(${details}<4,"${verdicts.detailsMissing}",${verdict})))))`
  );
}

const CHARTED = { chartElapsed: "elapsed", chartSample: "sample" } as const;

/** A chart takes the empty text of a cell not yet calculated for 0, so rows not yet weighed repeat the last point. */
function lastKnown({ table: { letters } }: Layout, { rows: { first } }: SampleCells, column: keyof typeof CHARTED, row: number): string {
  const otherwise = row === first ? '""' : `${letters[column]}${row - 1}`;
  return `=IF(COUNT(${letters.elapsed}${row},${letters.sample}${row})=2,${letters[CHARTED[column]]}${row},${otherwise})`;
}
