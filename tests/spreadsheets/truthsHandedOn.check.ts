// A truth that a cell holds, handed to an argument through functions that give cells as they are, is refused as the functions refuse it.
import { oddBook, type OddCell } from "../sharing/odd/oddBook";
import { plainCopyWithoutAnswers } from "./plainCopy";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(300_000);

/** With the truth in A1, and the like with the number in A2. */
const HANDED_ON: readonly (readonly [truth: string, number: string])[] = [
  ["A1", "A2"],
  ['IF(D1>0,A1,"")', 'IF(D1>0,A2,"")'],
  ['IFERROR(A1,"")', 'IFERROR(A2,"")'],
  ["INDEX(A1:A2,1)", "INDEX(A1:A2,2)"],
  ["CHOOSE(D1,A1,A2)", "CHOOSE(D1+1,A1,A2)"],
  ["+A1", "+A2"],
  ["(A1)", "(A2)"],
  ["IF(D1>0,IF(D1>1,A2,A1),2)", "IF(D1>0,IF(D1>1,A1,A2),2)"],
  ['IF(D1>0,INDEX(A1:A2,1),IF(D1>1,"",IF(D1>2,A2,A2)))', 'IF(D1>0,INDEX(A1:A2,2),IF(D1>1,"",IF(D1>2,A2,A2)))'],
  ["cup", "mass"],
];
const cells: Record<string, OddCell> = { A1: true, A2: 2, D1: 1 };
HANDED_ON.forEach(([truth, number], index) => {
  cells[`H${index + 1}`] = { formula: `_xldudf_RETORT_AIRLEFT(${truth})`, value: { error: "#VALUE!" } };
  cells[`I${index + 1}`] = { formula: `_xldudf_RETORT_AIRLEFT(${number})`, value: Math.exp(-2) };
});
const behind = '<definedNames><definedName name="cup">Tray!$A$1</definedName><definedName name="mass">Tray!$A$2</definedName></definedNames>';

test.each(PROGRAMS)("%s refuses a truth however it comes to an argument, and no number", async (program) => {
  const sheet = (await recalculatedBy(program, await plainCopyWithoutAnswers(oddBook({ sheets: [{ name: "Tray", cells }], behind })))).getWorksheet("Tray"); // prettier-ignore
  const shown = HANDED_ON.map(([argument], index) => [argument, sheet?.getCell(`H${index + 1}`).result, sheet?.getCell(`I${index + 1}`).result]);
  for (const one of shown) expect(one).toEqual([one[0], { error: "#VALUE!" }, expect.closeTo(Math.exp(-2), 11)]);
});
