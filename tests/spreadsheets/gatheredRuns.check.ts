// The sheet that gathers runs, through a saved file: an independent spreadsheet calculates it from the run sheets it refers to.
import { Workbook } from "exceljs";
import { gatherRuns } from "../../src/runsheet/gathering/gatherRuns";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import type { CellReading } from "../../src/workbook/Workbook";
import { charring, filled, kiln, prunings, weighed } from "../runsheet/gathering/gatherable";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { recalculatedBy } from "./recalculated";

jest.setTimeout(180_000);

const WITHIN = 1e-11;

test("LibreOffice calculates a gathered sheet as the local workbook shows it, band and marks included", async () => {
  const open = await openHeadlessWorkbook();
  const plum = filled("It's (a) b", { ...charring, kind: "ashing", replicates: 3, ashFirings: 2 }, (sheet) => [
    ...weighed(sheet, [prunings(0.712, 0.03), prunings(0.713, 0.031), prunings(0.714, 0.032)]),
    [sheet.setup.material, "plum"],
  ]);
  const dried = filled("Drying run", { ...charring, kind: "drying" }, (sheet) => weighed(sheet, [{ vessel: 25, moist: 65, dry: 45 }]));
  // Ash above char, and one not begun.
  const swapped = filled("Swapped", { ...charring, kind: "ashing", ashFirings: 2 }, (sheet) => weighed(sheet, [{ ...prunings(0.7), ash: 32 }]));
  const blank = filled("Blank", charring, () => []);
  for (const plan of [kiln("Kiln 1", 0.71), kiln("Kiln 2", 0.72), kiln("Kiln 3", 0.81), plum, dried, swapped, blank])
    await open.workbook.addSheet(plan);
  const { sheet } = await gatherRuns(open.workbook);
  await open.type(sheet, "B4", 71);
  await open.type(sheet, "D4", 75);
  await open.settled();
  const calculated = (await open.workbook.readUsed(sheet)).rows.flat().filter(({ formula }) => formula !== "");
  expect(calculated.find(({ cell }) => cell === "E4")?.value).toBe("1 of 6 counted samples outside the band");

  const file = new Workbook();
  await file.xlsx.load((await saveXlsx(open.engine)).buffer);
  open.close();
  // The library writes names of sheets with an apostrophe so that they cannot be read again; saveXlsx mends that.
  file.eachSheet(({ pageSetup }) => void Object.assign(pageSetup, { printArea: undefined, printTitlesRow: undefined }));
  // LibreOffice keeps the values that formulas come with, so those it is to calculate come without.
  file.getWorksheet(sheet)?.eachRow((row) => row.eachCell((cell) => cell.formula && (cell.value = { formula: cell.formula })));
  const back = (await recalculatedBy("LibreOffice", file)).getWorksheet(sheet);
  const differences = calculated.flatMap(({ cell, formula, value }) => {
    const other: unknown = back?.getCell(cell).result;
    return agrees(other, value) ? [] : [{ cell, formula, value, other }];
  });
  expect(differences).toEqual([]);
});

const agrees = (other: unknown, ours: CellReading["value"]): boolean => {
  if (typeof other === "object" && other !== null && "error" in other) return other.error === ours;
  if (typeof ours !== "number") return (other ?? "") === (ours ?? "");
  return typeof other === "number" && Math.abs(other - ours) <= WITHIN * Math.max(Math.abs(ours), 1);
};
