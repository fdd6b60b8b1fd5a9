import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import type { CellInFile } from "../../../src/xlsx/package/readCells";
import { CommandFolder, ran } from "../../command/inFolder";
import { oddBook } from "../../sharing/odd/oddBook";
import { ARRAY_FORMULAS, arrayBook, DRYING_CELLS, FIXED_CALL } from "../../sharing/plain/arrayFormulas";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

async function plainCopy(content: Uint8Array, further = ["--recalculate"]): Promise<WorkbookPackage> {
  const done = await ran("share", files.put("in.xlsx", content), "--as", "plain-cells", "-o", files.at("out.xlsx"), ...further);
  expect(done).toMatchObject({ code: 0, notes: expect.stringMatching(/^Wrote/) as string });
  return WorkbookPackage.of(files.read("out.xlsx"));
}

async function formulasOf(file: WorkbookPackage, sheet: string): Promise<CellInFile[]> {
  const found: CellInFile[] = [];
  await file.readCells(sheet, (cell) => void (cell.formula !== "" && found.push(cell)));
  return found;
}

test("what worked over arrays still says so in plain cells, on the sheet and on that of the workings", async () => {
  const file = await plainCopy(arrayBook());
  const kinds = new Map(
    (await formulasOf(file, "Tray")).map(({ cell, formulaKind, fills }) => [cell, formulaKind === "array" ? fills : formulaKind]),
  );
  // E11 is a value behind a guard.
  expect(Object.fromEntries(kinds)).toEqual(Object.fromEntries(Object.keys(ARRAY_FORMULAS).map((cell) => [cell, cell === "E11" ? "plain" : cell])));
  const moved = (await formulasOf(file, "Workings")).filter(({ formula }) => /\*Tray!|masses|LEN/.test(formula));
  expect(moved.length).toBe(3);
  expect(moved.map(({ formulaKind }) => formulaKind)).toEqual(moved.map(() => "array"));
});

test("a formula that took the one cell of a range in its row still does, behind its guard", async () => {
  const watched = { formula: `A1:A2*1+B1*0`, value: 22 };
  const cells = { ...DRYING_CELLS, A1: 21, A2: 22, B1: { formula: `IF(A1>0,${FIXED_CALL})`, value: 20 }, B2: watched };
  const file = await plainCopy(oddBook({ sheets: [{ name: "Tray", cells }] }), []);
  expect((await formulasOf(file, "Tray")).find(({ cell }) => cell === "B2")).toMatchObject({
    formula: `IF('Tray changes'!B2=2,"fixed on 2027-01-15: inputs changed",A1:A2*1+B1*0)`,
    formulaKind: "plain",
  });
});
