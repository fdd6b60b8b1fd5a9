import { countWhere, when } from "../expressions/choices";
import { is, range, reckon, fn, type Expression } from "../expressions/Expression";
import { LABEL } from "../sheet/Columns";
import { gatherWords } from "../words/gatherWords";
import { olderSheets } from "../words/olderSheets";
import { resultWords } from "../words/resultWords";
import { sheetWords } from "../words/sheetWords";
import type { HeldCells } from "./HeldCells";
import { named, samplesUnder } from "./readRun";
import { GATHERED_SHARES, type RunRow } from "./RunRow";

const words = olderSheets.results;
const VERDICT = LABEL + 1;
// These sheets state standard uncertainties, k = 1; about 95 % is twice that.
const COVERAGE = 2;

/**
 * The samples of a sheet of version 0.2 or before; undefined where no results stand under their heading. Its trust is that of its
 * checks, each of which says that it is in order, something else, or nothing yet.
 */
export function readOlderRun(sheet: string, held: HeldCells): readonly RunRow[] | undefined {
  const heading = held.rowWith(words.heading, LABEL);
  if (heading === undefined) return undefined;
  const rowOf = (label: string): number | undefined => held.rowWith(label, LABEL, heading);
  const headline = rowOf(words.shares.volatile) ?? rowOf(words.shares.moistureWet);
  const trust = trustOf(held, heading);
  if (headline === undefined || trust === undefined) return undefined;
  const materialRow = held.rowWith(words.material, LABEL);
  return samplesUnder(held, heading, sheetWords.sample).map(({ sample, column }) => {
    const working = held.columnWith(words.working(sample), heading);
    return {
      sheet,
      heading: held.at(heading, LABEL),
      trust,
      name: named(undefined, materialRow === undefined ? undefined : held.at(materialRow, LABEL + 1), sample),
      shares: Object.fromEntries(
        GATHERED_SHARES.flatMap((name) => {
          const row = rowOf(words.shares[name]);
          return row === undefined ? [] : [[name, held.at(row, column)]];
        }),
      ),
      plusMinus: working === undefined ? undefined : reckon(COVERAGE, "*", held.at(headline, working)),
    };
  });
}

function trustOf(held: HeldCells, heading: number): Expression | undefined {
  const checks = held.rowWith(words.checks, LABEL, heading);
  if (checks === undefined) return undefined;
  const [first, last] = [checks + 1, held.lastFilled(checks + 1, LABEL)];
  if (last < first) return undefined;
  const verdicts = range(held.at(first, VERDICT), held.at(last, VERDICT));
  const quiet = countWhere(reckon(is(verdicts, "=", words.inOrder), "+", is(verdicts, "=", "")));
  return when(is(quiet, "=", fn("ROWS", verdicts)), resultWords.trusted, gatherWords.olderDoubt);
}
