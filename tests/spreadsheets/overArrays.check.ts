// Plain cells of calls and formulas over arrays, calculated anew by two independent spreadsheets.
import { Workbook } from "exceljs";
import { CommandFolder, ran } from "../command/inFolder";
import { ARRAY_FORMULAS, arrayBook } from "../sharing/plain/arrayFormulas";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(300_000);

/** The plain copy without any stored answer; what is over arrays stays so. */
async function withoutAnswers(): Promise<Workbook> {
  const files = new CommandFolder();
  try {
    const done = await ran("share", files.put("in.xlsx", arrayBook()), "--as", "plain-cells", "-o", files.at("out.xlsx"));
    expect(done).toMatchObject({ code: 0 });
    const file = new Workbook();
    await file.xlsx.load(files.read("out.xlsx").buffer);
    file.eachSheet((sheet) =>
      sheet.eachRow((row) =>
        row.eachCell((cell) => {
          if (!cell.formula) return;
          const isOverArrays = (cell.value as { shareType?: string }).shareType === "array";
          cell.value = isOverArrays ? { formula: cell.formula, shareType: "array", ref: cell.address } : { formula: cell.formula };
        }),
      ),
    );
    return file;
  } finally {
    files.remove();
  }
}

test.each(PROGRAMS)("%s comes to the same over arrays as the functions do", async (program) => {
  const sheet = (await recalculatedBy(program, await withoutAnswers())).getWorksheet("Tray");
  const now = Object.keys(ARRAY_FORMULAS).map((cell): [string, unknown] => [cell, sheet?.getCell(cell).result]);
  for (const [cell, result] of now) expect([cell, result]).toEqual([cell, expect.closeTo(ARRAY_FORMULAS[cell]?.value ?? NaN, 11)]);
});
