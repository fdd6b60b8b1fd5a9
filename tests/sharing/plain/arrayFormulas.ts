import { oddBook, type OddCell } from "../odd/oddBook";

/** Calls and formulas that work over arrays, in the form of a file, with what they come to over the cells below. */
interface ArrayFormula {
  readonly formula: string;
  readonly value: number;
}

const WET = "_xldudf_RETORT_MOISTURE_WET";
// A drying run made up by 20 + 10 exp(-t/30).
const WEIGHINGS = [30, 25.13, 22.64, 21.35, 20.69, 20.36, 20.18, 20.09, 20.05];
export const DRYING_CELLS: Readonly<Record<string, number>> = Object.fromEntries(
  WEIGHINGS.flatMap((mass, index) => [
    [`J${index + 1}`, index * 20],
    [`K${index + 1}`, mass],
  ]),
);
export const FIXED_CALL = "INDEX(_xldudf_RETORT_DRYING_END(J1:J9,K1:K9),1,2)";

// 1 * 11 + 2 * 12 + 3 * 13 = 74 g moist in a vessel of 1 g, 2 g dry: (74 - 2) / (74 - 1).
const OF_74 = 72 / 73;

/** By cell. Each stands where no single cell of its ranges would do. */
export const ARRAY_FORMULAS: Readonly<Record<string, ArrayFormula>> = {
  E5: { formula: `${WET}(1,SUM(B1:B3*C1:C3),2)`, value: OF_74 },
  // Too long to be repeated in the formula, so it stands on the sheet of workings.
  E6: { formula: `${WET}(1,SUM(B1:B3*C1:C3*1+A1:A3*0+A1:A3*0+A1:A3*0),2)`, value: OF_74 },
  E7: { formula: `IF(${WET}(1,SUM(shares*masses),2)>0,SUM(shares*masses),0)`, value: 74 },
  E8: { formula: `${WET}(1,SUM(shares*masses)+SUM(shares*masses)*0+SUM(shares*masses)*0,2)`, value: OF_74 },
  // The longest of 21, 22, 23 has two figures: (33 + 2 + 6 - 2) / (33 + 2 + 6 - 1).
  E9: { formula: `${WET}(1,MAX(B1:B3*C1:C3-B1:B3*2)+MAX(LEN(A1:A3))+SUM(LEN(A1:A3)*1)+0,2)`, value: 39 / 40 },
  E10: { formula: `SUM(IF(A1:A3>21,1,0))+0*${WET}(1,C1,2)`, value: 2 },
  // Neither calls us: they are calculated from a cell that is fixed.
  E11: { formula: `${FIXED_CALL}*0`, value: 0 },
  E12: { formula: `SUM(IF(A1:A3>21,1,0))+E11*0`, value: 2 },
  E13: { formula: `IF(SUM((B1:B3>1)*C1:C3)>E11,SUM((B1:B3>1)*C1:C3),0)`, value: 25 },
  E14: { formula: `SUM(INDEX(_xldudf_RETORT_REPLICATES(C1:C3),3,2)*B1:B3)`, value: 72 },
};

/** A workbook of them all, each said to be one over arrays, as programs with arrays everywhere save them. */
export function arrayBook(): Uint8Array<ArrayBuffer> {
  const cells: Record<string, OddCell> = { ...DRYING_CELLS };
  for (const row of [1, 2, 3]) Object.assign(cells, { [`A${row}`]: 20 + row, [`B${row}`]: row, [`C${row}`]: 10 + row });
  for (const [cell, { formula, value }] of Object.entries(ARRAY_FORMULAS)) cells[cell] = { formula, value, about: ` t="array" ref="${cell}"` };
  const names = { shares: "Tray!$B$1:$B$3", masses: "Tray!$C$1:$C$3" };
  const defined = Object.entries(names).map(([name, refersTo]) => `<definedName name="${name}">${refersTo}</definedName>`);
  return oddBook({ sheets: [{ name: "Tray", cells }], behind: `<definedNames>${defined.join("")}</definedNames>` });
}
