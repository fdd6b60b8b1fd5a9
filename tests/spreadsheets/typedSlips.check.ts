// The times of rounds and firings, in order and not, in independent spreadsheets: they find what the local workbook finds.
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { cell, type Cell } from "../../src/runsheet/expressions/Expression";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import { runSheet } from "../../src/runsheet/sheet/RunSheet";
import { areaNamed } from "../../src/workbook/areaNamed";
import type { PlannedCell, SheetPlan } from "../../src/workbook/SheetPlan";
import { plannedFile } from "../../src/xlsx/planned/plannedFile";
import { planSlips } from "../runsheet/planning/planSlips";
import { isAsSaid, slipsOfEachTable, type TypedSlip } from "../runsheet/slips/timeSlips";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(600_000);

const slips = [...slipsOfEachTable, ...planSlips];

const lookedAt = ({ options, check }: TypedSlip): Cell => {
  const { rows } = runSheet(checkOptions(options));
  return cell(rows.checks.lines.find((line) => line.check === check)?.row ?? 0, CLOCK + 1);
};

/** A sheet for each: what stands above the dry sample and the one finding; what else the sheet calculates does not bear on it. */
function planned(slip: TypedSlip, index: number): SheetPlan {
  const { rows } = runSheet(checkOptions(slip.options));
  const finding = placeOf(lookedAt(slip));
  const typed = new Map(slip.typed.map(([at, content]) => [placeOf(at), content]));
  const plan = buildRunSheet(slip.options);
  const cells = plan.cells.flatMap((one): PlannedCell[] => {
    const at = typed.get(one.cell);
    if (at !== undefined) return [{ cell: one.cell, content: at }];
    const isWanted = one.cell === finding || areaNamed(one.cell).row < rows.drying.total;
    if (one.formula !== undefined) return isWanted && !one.formula.includes("RETORT.") ? [one] : [];
    return one.content === undefined ? [] : [{ cell: one.cell, content: one.content }];
  });
  return { ...plan, name: `S${index}`, cells, entryRules: [], emphasis: [], charts: [] };
}

test.each(PROGRAMS)("%s tells of each firing and round what is said of it", async (program) => {
  const book = await recalculatedBy(program, await plannedFile(slips.map(planned)));
  const found = slips.map((slip, index) => {
    const { result } = book.getWorksheet(`S${index}`)?.getCell(placeOf(lookedAt(slip))) ?? {};
    return [slip.title, isAsSaid(result, slip.says) ? slip.says : result];
  });
  expect(found).toEqual(slips.map(({ title, says }) => [title, says]));
});
