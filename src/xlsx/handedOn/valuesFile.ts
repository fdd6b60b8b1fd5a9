import { valuesBanner } from "../../problems/sharedCopyWords";
import { bannerCell } from "../../sharing/bannerCell";
import { calculationRecord } from "../../sharing/calculationRecord";
import { formulaCellsOf } from "../../sharing/formulaCells";
import type { FileWanted } from "../../sharing/shareInFile";
import { recordName } from "../../sharing/copyNames";
import { sheetStyles } from "../../workbook/sheetStyles";
import type { CellChange } from "../package/CellChange";
import { WorkbookPackage } from "../package/WorkbookPackage";
import { addPlanned } from "../planned/addPlanned";
import { boxLooks } from "./boxLooks";

export type Handed = Readonly<{ content: Uint8Array<ArrayBuffer>; cells: number; fixed: number }>;

export const BANNER_LOOK = { bold: true, italic: false, colour: sheetStyles.caution.fontColour } as const;

/**
 * A workbook file as values: these sheets and their records alone, no formula, no box to fill in, no rule for entries, and a line in view that
 * says so. Everything else on the sheets stays as it was, charts and comments too.
 * @throws WorkbookProblem where the file cannot be changed so
 */
export async function valuesFile(content: Uint8Array<ArrayBuffer>, { sheets, date }: Omit<FileWanted, "as">): Promise<Handed> {
  const file = await WorkbookPackage.of(content);
  await file.keepSheets(sheets.map(({ sheet }) => sheet));
  const printed = await boxLooks(file);
  const [bannerLook] = await file.addLooks([[0, BANNER_LOOK]]);
  let cells = 0;
  for (const reading of sheets) {
    const { sheet } = reading;
    const banner = bannerCell(reading, true);
    const changes: CellChange[] = [];
    await file.readCells(sheet, ({ cell, formulaKind, value, look }) => {
      const isFormula = formulaKind !== "none" && formulaKind !== "dataTable";
      const without = printed.get(look);
      if (isFormula) cells++;
      if (cell === banner || (!isFormula && without === undefined)) return;
      changes.push({ cell, content: isFormula ? { kind: "value", value } : { kind: "kept" }, ...(without !== undefined && { look: without }) });
    });
    changes.push({ cell: banner, content: { kind: "value", value: valuesBanner(date) }, ...(bannerLook !== undefined && { look: bannerLook }) });
    await file.changeCells(sheet, changes);
    await file.takeEntryRules(sheet);
  }
  const taken = (await file.sheets()).map(({ name }) => name);
  await addPlanned(
    file,
    sheets.map((reading) => {
      const shared = { sheet: reading.sheet, copy: reading.sheet, date, formulaCells: formulaCellsOf(reading, true) };
      return calculationRecord(shared, recordName(reading.sheet, taken));
    }),
  );
  await file.show(sheets[0]?.sheet ?? "");
  return { content: await file.bytes(), cells, fixed: 0 };
}
