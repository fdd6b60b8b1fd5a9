import { glossary } from "../glossary";
import { newestVerdict } from "../newestVerdict";
import { sampleCells } from "../sampleCells";
import { IN_ORDER, type CheckFormula } from "./Check";

/** Whether the sample was shown steady, and before it was charred. */
export const steadyCheck: CheckFormula = (rows, sample) => {
  const cells = sampleCells(rows, sample);
  const newest = newestVerdict(cells, rows);
  const weighed = cells.stretch(rows.table.letters.sample);
  const { notYet: waiting } = glossary.verdicts;
  const notYet = `IF(ISERROR(${newest}),"see the weigh-in table",IF(${newest}="${waiting}","not steady yet","not shown steady: "&${newest}))`;
  const char = cells.heating("char");
  const otherwise = char === "" ? notYet : `IF(COUNT(${char})=1,"charred before it was shown steady",${notYet})`;
  return `IF(COUNT(${weighed})<2,"",IF(COUNT(${cells.dry})=1,${IN_ORDER},${otherwise}))`;
};
