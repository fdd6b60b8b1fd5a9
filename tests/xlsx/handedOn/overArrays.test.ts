import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import type { CellInFile } from "../../../src/xlsx/package/cells/readCells";
import { CommandFolder, ran } from "../../command/inFolder";
import { oddBook, type OddCell } from "../../sharing/odd/oddBook";
import { NAMED_FORMULAS, namedBook } from "../../sharing/plain/namedFormulas";
import { partsIn } from "../package/partsIn";
import { otherThanRead } from "../../../src/xlsx/handedOn/holdsWhatWasRead";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import type { CellReading } from "../../../src/workbook/Workbook";
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
  const cells = { ...DRYING_CELLS, A1: 21, A2: 22, B1: { formula: `IF(A1>0,${FIXED_CALL})`, value: 19.998831928 }, B2: watched };
  // Calculated anew the engine would fill two cells with it, which no spreadsheet does, and it would be refused.
  const file = await plainCopy(oddBook({ sheets: [{ name: "Tray", cells }] }), []);
  expect((await formulasOf(file, "Tray")).find(({ cell }) => cell === "B2")).toMatchObject({
    formula: `IF('Tray changes'!B2=2,"fixed on 2027-01-15: inputs changed",A1:A2*1+B1*0)`,
    formulaKind: "plain",
  });
});

test("names, rules of entry and of colour refer to the area of a spill that is written anew", async () => {
  const file = await plainCopy(namedBook(), ["--keep-errors"]);
  const named = new Map((await file.definedNames()).map(({ name, formula }) => [name, formula]));
  expect(named.get("spilled")).toBe("=Tray!$L$1:$L$3");
  expect(named.get("WETSHARE")).toMatch(/^=LAMBDA\(a,b,c,\(IF\(/);
  const parts = await partsIn(files.read("out.xlsx"));
  const sheet = String(parts.get("xl/worksheets/sheet1.xml"));
  expect(sheet).toContain("<formula>A1&gt;SUM($L$1:$L$3)</formula>");
  expect(sheet).toContain("<formula1>$L$1:$L$3</formula1>");
  expect(sheet).not.toMatch(/ANCHORARRAY/);
  const formulas = await formulasOf(file, "Tray");
  expect(formulas.filter(({ formula }) => /RETORT|fixed on/.test(formula))).toEqual([]);
  // T30 works over arrays as it did; T25 never did.
  expect(formulas.filter(({ cell }) => ["T25", "T30"].includes(cell)).map(({ formula, formulaKind }) => [formula, formulaKind])).toEqual([
    ["SUM(L1:L3)", "plain"],
    ["SUM(Tray!$L$1:$L$3*B1:B3)", "array"],
  ]);
  expect(Object.keys(NAMED_FORMULAS).length).toBe(formulas.filter(({ cell }) => cell.startsWith("T")).length);
});

test("one formula that a host tells of each cell of an array stays one", async () => {
  const wet = "_xldudf_RETORT_MOISTURE_WET(A1:A3,B1:B3,C1:C3)";
  const cells: Record<string, OddCell> = { E1: { formula: wet, value: 0.5, about: ` t="array" ref="E1:E3"` }, E2: 0.25, E3: 0.75 };
  for (const row of [1, 2, 3]) Object.assign(cells, { [`A${row}`]: 1, [`B${row}`]: 5, [`C${row}`]: 1 + row });
  const content = oddBook({ sheets: [{ name: "Tray", cells }] }) as Uint8Array<ArrayBuffer>;
  const told = (cell: string, value: number, formula = ""): CellReading => ({ cell, formula, value, shown: "", error: "", message: "", spill: "" });
  const formula = "=RETORT.MOISTURE.WET(A1:A3,B1:B3,C1:C3)";
  const rows = [1, 2, 3].map((row) => [
    ...[told(`A${row}`, 1), told(`B${row}`, 5), told(`C${row}`, 1 + row)],
    told(`E${row}`, [0.5, 0.25, 0.75][row - 1] ?? 0, formula),
  ]);
  expect(await otherThanRead(content, [{ sheet: "Tray", range: "A1:E3", rows }])).toBeUndefined();
  const made = await plainFile(content, { sheets: [{ sheet: "Tray", range: "A1:E3", rows }], date: "2027-01-15" });
  const formulas = await formulasOf(await WorkbookPackage.of(made.content), "Tray");
  expect(formulas.map(({ cell, formulaKind, fills }) => [cell, formulaKind, fills])).toEqual([["E1", "array", "E1:E3"]]);
});
