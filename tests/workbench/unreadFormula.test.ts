// Formulas that no spreadsheet reads; in a file such a formula would be taken for damage, and taken out (from memory of what spreadsheets do).
import { Workbook as FileWorkbook, type CellValue } from "exceljs";
import { formulaUnread, savedAsText, tableUnread, unreadInCell } from "../../src/problems/workbook/entryProblems";
import { isUnread, readableInstead, whyUnread } from "../../src/workbench/unreadFormula";
import { unreadAsText } from "../../src/workbench/unreadAsText";
import { whatIsWrong } from "../../src/workbench/whatIsWrong";
import { openFile } from "../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "./headlessWorkbook";

jest.setTimeout(60_000);

const UNREAD =
  `=1+|=)|=SUM(A1;B2)|=A1;B1|=1,5*2|=[x|={1,2|=A1:|=“a”|=A1 B1 C 1|="abc|='abc|=A1)|=*2|=A1**2|=1 2|=={1}|=@|=#|={}|={A1}|={1,2;3}|=A1+#|=f(|=Sheet1!|=A1=
=<>|=()|=1.2.3|=A$|=A1:1|=[1]|=!A1|=2A|=5 g|=A1×2|=A1−B1|=£5|=IF(A1>1,5;2;3)|=2(3)|=1e+|=A1&|=5%5|=IFERROR(1+;0)`
    .split(/[|\n]/)
    .map((formula) => [formula]);

test.each(UNREAD)("%s cannot be read", (formula) => expect(isUnread(formula)).toBe(true));

test.each(
  `=A1#|=@A1:A3|=SUM((A1,B1))|=-+--1|=1%|=5%%|={1,2;3,4}|="a""b“"|=#REF!|=Sheet1!#REF!+1|='a b'!#REF!|=[1]Sheet1!A1|=A:A|=$1:$3|=LAMBDA(x,x)(1)|=LET(a,1,a+1)|=IF(A1,,1)
=OFFSET(A1,1,1):B2|=A1:INDEX(A:A,3)|=SUM(A1:B2 B2:C3)|=SUM(Sheet1:Sheet3!A1)|=größe*2|=_x.y|='It''s'!A1|=.5|=1.E5|=A1+-B1|= A1
=SUM(1,5*2)|=RETORT.MOISTURE.WET(A1,B1,C1)|=HYPERLINK("#A1","“x”")|=日本!A1|=SUM({1;2},3)|="a;b"`
    .split(/[|\n]/)
    .map((formula) => [formula]),
)("%s can be read", (formula) => expect(isUnread(formula)).toBe(false));

test.each(["=Table1[[#This Row],[A b]]", "=Table1[@A]", "=SUM(Table1[A])*2", "=table1[#All]"])(
  "%s can be read where there is such a table, and nowhere else",
  (formula) => {
    expect([isUnread(formula, ["Table1"]), isUnread(formula, ["Table2"]), isUnread(formula)]).toEqual([false, true, true]);
    expect(whyUnread(formula)).toBe(tableUnread(formula));
    expect(tableUnread("=Runs[Mass]")).toBe(
      '"=Runs[Mass]" names a column of a table, and this page knows no tables. Name the cells instead, as B2:B9.',
    );
  },
);

test.each([
  ["=SUM(A1;B2)", "=SUM(A1,B2)"],
  ["=1,5*2", "=1.5*2"],
  ["=25,10", "=25.10"],
  ["=IF(A1>1,5;2;3)", "=IF(A1>1.5,2,3)"],
  ['=IF(A1="a;b";"1,5";2)', '=IF(A1="a;b","1,5",2)'],
  ["=SUM({1;2};3)", "=SUM({1;2},3)"],
  ["=IF(A1=“x”;1;2)", '=IF(A1="x",1,2)'],
  ["=A1×2−B1÷3", "=A1*2-B1/3"],
  ["=A1;B1", undefined],
  ["=1+", undefined],
  ["={1,2;3}", undefined],
])("in place of %s stands %s", (formula, instead) => expect(readableInstead(formula)).toBe(instead));

test("the sentences", () => {
  expect(unreadInCell("B7", whyUnread("=1,5*2"))).toBe(
    'B7: "=1,5*2" cannot be read as a formula. Type =1.5*2 instead: decimals take a point here, arguments a comma between them, ' +
      "texts straight quotation marks. It would be saved as text.",
  );
  expect(formulaUnread("=1+", undefined)).toBe(
    '"=1+" cannot be read as a formula. Check its brackets, operators, commas, quotation marks and cell names, and type it again.',
  );
  expect(savedAsText(["Sheet1!B7", "Kiln!C2"])).toBe(
    " What cannot be read as a formula was saved as text: Sheet1!B7, Kiln!C2. Look there, and type it again.",
  );
});

describe("in a file", () => {
  let open: HeadlessWorkbook;
  beforeEach(async () => (open = await openHeadlessWorkbook()));
  afterEach(() => open.close());

  async function cellsOf(bytes: Uint8Array<ArrayBuffer>, sheet = FIRST_SHEET): Promise<(cell: string) => CellValue | undefined> {
    const file = new FileWorkbook();
    await file.xlsx.load(bytes.buffer);
    return (cell) => file.getWorksheet(sheet)?.getCell(cell).value;
  }

  /** A book of another program; what of its formulas cannot be read here, others may read. */
  async function bookOf(formulas: Readonly<Record<string, string>>): Promise<Uint8Array<ArrayBuffer>> {
    const file = new FileWorkbook();
    const sheet = file.addWorksheet(FIRST_SHEET);
    for (const [cell, formula] of Object.entries(formulas)) sheet.getCell(cell).value = { formula, result: 4 };
    return new Uint8Array(await file.xlsx.writeBuffer());
  }

  async function typeAll(): Promise<void> {
    for (const [row, [formula = ""]] of UNREAD.entries()) await open.type(FIRST_SHEET, `C${row + 10}`, formula);
    await open.type(FIRST_SHEET, "D1", "=2*3");
    await open.settled();
  }

  const expectTexts = (at: (cell: string) => CellValue | undefined): void => {
    expect(UNREAD.map((_, row) => [at(`C${row + 10}`)])).toEqual(UNREAD);
    expect((at("D1") as { formula?: string }).formula).toBe("2*3");
  };

  test("written anew they are texts", async () => {
    await typeAll();
    expectTexts(await cellsOf(await saveXlsx(open.engine)));
  });

  test("written in place they are texts, and a file's own formulas stay as they are", async () => {
    const own = { A1: "1+3", A2: "\\x*2", A3: "cmd|'/c calc'!A0" };
    const { opened } = await openFile(open.engine, await bookOf(own));
    await typeAll();
    const saved = await opened.saved();
    if ("because" in saved) throw new Error(saved.because);
    const at = await cellsOf(saved.content);
    expectTexts(at);
    expect(Object.entries(own).map(([cell]) => (at(cell) as { formula?: string }).formula)).toEqual(Object.values(own));
    const anew = await cellsOf(await saveXlsx(open.engine, opened.formulas));
    expectTexts(anew);
    expect((anew("A2") as { formula?: string }).formula).toBe("\\x*2");
  });

  test("once saved they are texts on the sheet too, and are named; the file's own are not", async () => {
    const { opened } = await openFile(open.engine, await bookOf({ A2: "\\x*2" }));
    await open.type(FIRST_SHEET, "C3", "=1+");
    await open.settled();
    expect(unreadAsText(open.engine, opened.formulas)).toEqual([`${FIRST_SHEET}!C3`]);
    await open.settled();
    const [cell] = (await open.workbook.read(FIRST_SHEET, "C3")).rows[0] ?? [];
    expect([cell?.formula, cell?.value]).toEqual(["", "=1+"]);
    expect((await open.workbook.read(FIRST_SHEET, "A2")).rows[0]?.[0]?.formula).toBe("=\\x*2");
    expect(unreadAsText(open.engine, opened.formulas)).toEqual([]);
  });

  test("before that, the cell shows an error and says what to type", async () => {
    await open.type(FIRST_SHEET, "C3", "=1,5*2");
    await open.settled();
    const [cell] = (await open.workbook.read(FIRST_SHEET, "C3")).rows[0] ?? [];
    expect(cell?.error).toMatch(/^#/);
    expect(cell && whatIsWrong(cell, FIRST_SHEET)).toBe(whyUnread("=1,5*2"));
  });
});
