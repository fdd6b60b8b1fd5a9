import { FilledDownFormulas } from "../../sharing/plain/FilledDownFormulas";
import type { FormulaSources } from "../../sharing/plain/change/FormulaSources";
import { calculatedFrom } from "../../sharing/plain/change/staleness";
import { formulaTree } from "../../sharing/plain/formula/formulaTree";
import type { ReadFormula, ReadSheets } from "../../sharing/plain/reading/ReadSheets";
import type { Surroundings } from "../../sharing/plain/reading/Surroundings";
import { WorkingsSheet } from "../../sharing/plain/WorkingsSheet";
import { seenSources } from "./seenSources";

/** Reads cells of another workbook, which no file of this one tells to be from before. */
const READS_ELSEWHERE = /\[[^[\]]+\][^[\]"!]*!/;

// A name that is not known refers to no cell of this workbook.
const REFERS_UNSEEN = /\b(?:INDIRECT|OFFSET)\(/i;

/** What every formula of some sheets is calculated from, by its number. */
export function everySource(sheets: ReadSheets, nameOf: Surroundings["nameOf"]): readonly FormulaSources[] {
  const formulas = new FilledDownFormulas(sheets, {}, new WorkingsSheet(""));
  const seen = seenSources(sheets, nameOf);
  return sheets.formulas.map((formula) => seen(formula, formulas.sourcesOf(formula, nameOf)));
}

/** Those of some formulas that call one of our functions or are calculated from one that does, at whatever distance. */
export function calculatedFromOurs(
  these: readonly ReadFormula[],
  isOurs: (formula: ReadFormula) => boolean,
  sheets: ReadSheets,
  sourcesNow: () => readonly FormulaSources[],
): readonly ReadFormula[] {
  const asked = these.filter(({ reading }) => !READS_ELSEWHERE.test(reading.formula));
  if (asked.every(isOurs)) return asked;
  const sources = sourcesNow();
  const mayReadAny = ({ reading: { formula } }: ReadFormula): boolean => REFERS_UNSEEN.test(formula) || formulaTree(formula) === undefined;
  const unseen = sheets.formulas.flatMap((formula) => (sources[formula.id]?.isUnseen === true && mayReadAny(formula) ? [formula.id] : []));
  const ours = new Set(sheets.formulas.filter(isOurs).map(({ id }) => id));
  const after = calculatedFrom(sheets, sources, ours, unseen);
  return asked.filter(({ id }) => ours.has(id) || after.has(id));
}
