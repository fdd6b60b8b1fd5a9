import { firstOf } from "../expressions/choices";
import { is, type Expression } from "../expressions/Expression";
import { optionBounds } from "../options/optionBounds";
import { LABEL } from "../sheet/Columns";
import { gatherWords } from "../words/gatherWords";
import { resultWords } from "../words/resultWords";
import { setupWords } from "../words/setupWords";
import { sheetWords } from "../words/sheetWords";
import type { HeldCells } from "./HeldCells";
import { GATHERED_SHARES, LOSSES, type RunRow } from "./RunRow";

/** The samples of a run sheet; undefined where no results stand under their heading. */
export function readRun(sheet: string, held: HeldCells): readonly RunRow[] | undefined {
  const heading = held.rowWith(resultWords.heading, LABEL);
  if (heading === undefined) return undefined;
  const trustColumn = held.columnWith(resultWords.trust, heading);
  const rowOf = (label: string): number | undefined => held.rowWith(label, LABEL, heading);
  const vapour = rowOf(resultWords.shares.volatile);
  const loss = LOSSES.map((of) => ({ of, row: rowOf(resultWords.shares[of]) })).find(({ row }) => vapour === undefined && row !== undefined);
  const headline = vapour ?? loss?.row ?? rowOf(resultWords.shares.moistureWet);
  if (trustColumn === undefined || headline === undefined) return undefined;
  return samplesUnder(held, heading, sheetWords.sample).map(({ sample, column }) => {
    const plusMinus = held.columnWith(resultWords.plusMinus(sample), heading);
    return {
      sheet,
      heading: held.at(heading, LABEL),
      trust: held.at(headline, trustColumn),
      ...nameOf(held, sample),
      shares: Object.fromEntries(
        GATHERED_SHARES.flatMap((name) => {
          const row = rowOf(resultWords.shares[name]);
          return row === undefined ? [] : [[name, held.at(row, column)]];
        }),
      ),
      ...(loss?.row === undefined ? {} : { loss: { of: loss.of, share: held.at(loss.row, column) } }),
      plusMinus: plusMinus === undefined ? undefined : held.at(headline, plusMinus),
    };
  });
}

/** Samples, from 1, whose heading stands in a row, with its column. */
export const samplesUnder = (held: HeldCells, row: number, heading: (sample: number) => string): { sample: number; column: number }[] =>
  Array.from({ length: optionBounds.replicates.atMost }, (_, index) => index + 1).flatMap((sample) => {
    const column = held.columnWith(heading(sample), row);
    return column === undefined ? [] : [{ sample, column }];
  });

/** What a sample is called: its own name, or the material with its number. */
function nameOf(held: HeldCells, sample: number): Pick<RunRow, "name" | "own"> {
  const heading = held.rowWith(setupWords.heading, LABEL);
  const { samples, oneSample, material } = setupWords.labels;
  const [nameRow, materialRow] = [
    held.rowWith(samples, LABEL, heading) ?? held.rowWith(oneSample, LABEL, heading),
    held.rowWith(material, LABEL, heading),
  ];
  const column = heading === undefined ? undefined : held.columnWith(sheetWords.sample(sample), heading);
  if (nameRow === undefined || column === undefined) return { name: gatherWords.sample(sample) };
  const [own, ofMaterial] = [held.at(nameRow, column), materialRow === undefined ? undefined : held.at(materialRow, LABEL + 1)];
  return { name: named(own, ofMaterial, sample), own: { at: own, called: held.textAt(own).trim() } };
}

/** @param own undefined for a sheet that names no samples */
export function named(own: Expression | undefined, material: Expression | undefined, sample: number): Expression {
  const unnamed = gatherWords.sample(sample);
  const byMaterial = material === undefined ? unnamed : firstOf([[is(material, "=", ""), unnamed]], gatherWords.sampleOf(material, sample));
  return own === undefined ? byMaterial : firstOf([[is(own, "=", ""), byMaterial]], own);
}
