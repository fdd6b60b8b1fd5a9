import { inBuiltInFunctions } from "../inBuiltInFunctions";
import { EDITION } from "../../../src/chemistry/atomicWeights";
import { everyFunction } from "../../../src/functions/catalogue";
import { calculationRecord, VERSION } from "../../../src/sharing/record/calculationRecord";
import { findCalls } from "../../../src/sharing/findCalls";
import type { FormulaCell } from "../../../src/sharing/formulaCells";
import { checkSheetPlan } from "../../../src/workbook/checkSheetPlan";
import { recordRows } from "../../../src/sharing/record/recordRows";
import type { PlainCell } from "../../../src/sharing/plain/plainSheets";
import { pixelsOf, POINTS_PER_PIXEL } from "../../../src/workbook/columnPixels";
import { sheetStyles } from "../../../src/workbook/sheetStyles";
import { drawnLines } from "../../../src/workbook/drawnLines";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import type { CellContent } from "../../../src/workbook/Workbook";
import { reading } from "../MemoryWorkbook";

const formulaCell = (cell: string, formula: string, values: CellContent[][], range = cell): FormulaCell => ({
  cell,
  label: "",
  formula,
  calls: findCalls(formula),
  area: { range, values },
  errors: [],
});
const record = (...formulaCells: FormulaCell[]) =>
  calculationRecord({ sheet: "Tin 3", copy: "Tin 3 values", date: "2026-03-14", formulaCells }, "Tin 3 record");
const rowOf = (cell: string): number => Number(cell.slice(1));
/** The rows below the column headings, each with its five columns; a blank one is null. */
const rowsOf = ({ cells }: SheetPlan): (CellContent | undefined)[][] => {
  const headings = rowOf(cells.find(({ content }) => content === "On the sheet")?.cell ?? "B1");
  const at = new Map(cells.map(({ cell, content }) => [cell, content]));
  const last = Math.max(...cells.map(({ cell }) => rowOf(cell)));
  return Array.from({ length: last - headings }, (_, index) =>
    ["A", "B", "C", "D", "E"].map((column) => at.get(`${column}${headings + 1 + index}`) ?? null),
  );
};
/** What is said below the heading of a group. */
const under = (heading: string, ...formulaCells: FormulaCell[]): (CellContent | undefined)[][] => {
  const rows = rowsOf(record(...formulaCells));
  const isBand = (row: readonly unknown[]): boolean => row[0] !== null && row.slice(1).every((one) => one === null);
  const from = rows.findIndex(([first]) => first === heading) + 1;
  const end = rows.findIndex((row, index) => index >= from && isBand(row));
  return rows.slice(from, end === -1 ? undefined : end);
};
const named = (name: string) => everyFunction.find((definition) => definition.name === name);

describe("calculationRecord(shared, name)", () => {
  const call = formulaCell("B4", "=RETORT.MOISTURE.WET(B1,B2,B3)", [[0.35]]);

  it("is a plan that a workbook can take, with nothing to calculate on it", () => {
    const plan = record(call);
    expect(() => checkSheetPlan(plan)).not.toThrow();
    expect(plan.cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
    expect(plan.name).toBe("Tin 3 record");
  });

  it("says when, by which version and with which atomic weights", () => {
    const contents = record(call).cells.map(({ content }) => content);
    for (const said of ["2026-03-14", `Retort ${VERSION}`, EDITION]) expect(contents).toContain(said);
  });

  it("gives each call its cell, value, unit, cell formula and built-in form, and its function once with meaning and source", () => {
    const form = inBuiltInFunctions("=RETORT.MOISTURE.WET(B1,B2,B3)");
    expect(under("Drying", call)).toEqual([
      ["B4", null, 0.35, "fraction", "=RETORT.MOISTURE.WET(B1,B2,B3)"],
      [null, null, "with", null, "B1 blank; B2 blank; B3 blank"],
      [null, null, "built-in form", null, form],
    ]);
    const { summary, source } = named("MOISTURE.WET") ?? {};
    const again = { ...formulaCell("D9", "=RETORT.MOISTURE.WET(D1,B2,B3)", [[0.1]]) };
    expect(under("Functions of Retort, each once", call, again)).toEqual([
      [null, "B4, D9", null, "fraction", `RETORT.MOISTURE.WET: ${summary} Source: ${source}`],
    ]);
  });

  it("says with which numbers a formula was worked, those of ranges too", () => {
    const rows = [["B1", 25], ["B2", 35], ["B3", 31.5], ["B5", "tared"], ["B6", ""]].map(([cell, value]) => [reading(String(cell), { value: value as CellContent })]); // prettier-ignore
    const cells = [call, formulaCell("C4", "=SUM($B$1:$B$8)*Other!B1", [[91.5]])];
    const plan = calculationRecord({ sheet: "Tin 3", copy: "Tin 3 values", date: "2026-03-14", formulaCells: cells, rows }, "Tin 3 record");
    expect(rowsOf(plan).flatMap((row) => (row[2] === "with" ? [row[4]] : []))).toEqual([
      "B1 = 25; B2 = 35; B3 = 31.5",
      'B1:B8 = 25, 35, 31.5, "tared", 4 blank',
    ]);
  });

  it("names both functions of a cell formula below it, each once however often it is called", () => {
    const twice = formulaCell("B5", "=IF(RETORT.MOISTURE.WET(B1,B2,B3)>0.5,1,RETORT.MOISTURE.WET(B1,B2,B3)/RETORT.MOISTURE.DRY(B1,B2,B3))", [[0.35]]);
    const functions = under("Functions of Retort, each once", twice).map((row) => String(row[4]).split(":")[0]);
    expect(functions).toEqual(["RETORT.MOISTURE.WET", "RETORT.MOISTURE.DRY"]);
    expect(under("Drying", twice)[0]?.[0]).toBe("B5");
  });

  it("tells alike formulas of a column once, with every value", () => {
    const lost = ["F13", "F14", "F15"].map((cell, index) => formulaCell(cell, `=C${12 + index}-C${13 + index}`, [[3 - index]]));
    expect(under("Built-in functions", ...lost)).toEqual([
      ["F13:F15", null, 3, null, "=C12-C13"],
      [null, null, "with", null, "C12 blank; C13 blank"],
      [null, null, "every value", null, "F13 3; F14 2; F15 1"],
    ]);
  });

  it("tells alike formulas of a row once, and which of the references held by $ move along", () => {
    const shares = ["C", "D", "E"].map((column, index) => formulaCell(`${column}43`, `=1-$${column}$19/($${column}$12-$B$2)`, [[index]]));
    expect(under("Built-in functions", ...shares).map((row) => row.slice(2))).toEqual([
      [0, null, "=1-$C$19/($C$12-$B$2)"],
      ["moving too", null, "$C$19 $C$12"],
      ["with", null, "C19 blank; C12 blank; B2 blank"],
      ["every value", null, "C43 0; D43 1; E43 2"],
    ]);
  });

  it("calls each cell what the sheet calls it, the first and the last of alike ones", () => {
    expect(under("Drying", { ...call, label: "Moisture" })[0]?.slice(0, 3)).toEqual(["B4", "Moisture", 0.35]);
    const two = [1, 2].map((row) => ({ ...formulaCell(`B${row}`, `=A${row}*2`, [[row]]), label: `Round ${row}` }));
    expect(under("Built-in functions", ...two)[0]?.slice(0, 2)).toEqual(["B1:B2", "Round 1 … Round 2"]);
  });

  it("wraps its lines, so that no formula runs off the page", () => {
    const lines = record(call).cells.filter(({ style }) => style === "recorded");
    expect(lines.length).toBeGreaterThanOrEqual(9);
    expect(sheetStyles.recorded.wrap).toBe(true);
  });

  it("prints in landscape on A4 and Letter at 7 points or more, with the column headings on every page and rows that fit", () => {
    const { print, columnWidths, rowHeights = [], cells } = record(call);
    // Points: the wider margins of the shorter page, Letter, in landscape.
    const [letter, a4] = [11 * 72, 842];
    const onPaper = (columnWidths.reduce((sum, width) => sum + pixelsOf(width), 0) * POINTS_PER_PIXEL * (print?.scale ?? 100)) / 100;
    // Measured on a print by LibreOffice, which draws these columns 2.5 % wider.
    expect(onPaper * 1.025).toBeLessThanOrEqual(Math.min(letter, a4) - (print?.margins.left ?? 0) - (print?.margins.right ?? 0));
    expect(((sheetStyles.recorded.size ?? 11) * (print?.scale ?? 0)) / 100).toBeGreaterThanOrEqual(7);
    const headings = cells.find(({ content }) => content === "On the sheet")?.cell.slice(1);
    expect(print).toMatchObject({ landscape: true, titleFrom: Number(headings), titleRows: Number(headings) });
    for (const { from, height } of rowHeights) {
      expect(height).toBeLessThanOrEqual(409);
      // No row is higher than its longest text needs; how the lines are drawn is measured by tests/spreadsheets/record.check.
      // A number is drawn shorter rather than wrapped.
      const lines = cells
        .filter(({ cell, content, style }) => Number(cell.slice(1)) === from && style === "recorded" && typeof content !== "number")
        .map(({ cell, content }) => drawnLines(String(content), columnWidths["ABCDE".indexOf(cell.charAt(0))] ?? 1));
      if (lines.length > 0) expect(height).toBe(15 * Math.max(...lines));
    }
  });

  it("takes no row higher than a sheet can hold, however much is said of a function, and says all of it in the rows below", () => {
    const long = `=RETORT.MOLARMASS(A1)${"+B12*(C14-D15)".repeat(500)}`;
    for (const { name, source = "" } of everyFunction) {
      const { cells, rowHeights = [] } = record(formulaCell("B4", `=RETORT.${name}(A1)`, [["so ".repeat(400)]]));
      expect([name, Math.max(...rowHeights.map(({ height }) => height)) <= 409]).toEqual([name, true]);
      const from = rowOf(cells.find(({ content }) => content === "Functions of Retort, each once")?.cell ?? "A1");
      const said = cells
        .filter(({ cell, style }) => cell.startsWith("E") && rowOf(cell) > from && style === "recorded")
        .map(({ content }) => String(content));
      expect(said.join("").endsWith(source)).toBe(true);
    }
    const { cells, rowHeights = [] } = record(formulaCell("B4", long, [[1]]));
    expect(Math.max(...rowHeights.map(({ height }) => height))).toBeLessThanOrEqual(409);
    const pieces = cells.filter(({ cell, style }) => cell.startsWith("E") && style === "recorded").map(({ content }) => String(content));
    expect(pieces.join("").startsWith(long)).toBe(true);
  });

  it("follows the steps of a run sheet, in the order of the work, calls and other formulas together", () => {
    const step = (one: FormulaCell, name: string): FormulaCell => ({ ...one, step: name });
    const plan = record(
      step(formulaCell("A2", "=B4*2", [[0.7]]), "HEAD"),
      step(call, "1 DRYING"),
      step(formulaCell("B6", "=B4+1", [[1.35]]), "1 DRYING"),
      step(formulaCell("B9", '=RETORT.MOLARMASS("CaCO3")', [[100.086]]), "RESULTS"),
    );
    const first = plan.cells.filter(({ cell, content }) => cell.startsWith("A") && content !== undefined).map(({ content }) => content);
    expect(first.slice(first.indexOf("Cell") + 1)).toEqual(["HEAD", "A2", "1 DRYING", "B4", "B6", "RESULTS", "B9", "Functions of Retort, each once"]);
  });

  it("of a run sheet prints what it says and not the formulas of that, which stand below what is printed", () => {
    const step = (one: FormulaCell, name: string): FormulaCell => ({ ...one, step: name });
    const plan = record(
      step(formulaCell("A2", '="Dry: "&B6', [["Dry: 1.35"]]), "HEAD"),
      step(call, "1 DRYING"),
      step(formulaCell("B6", "=B4+L4", [[1.35]]), "1 DRYING"),
      step({ ...formulaCell("L4", "=L6*1", [[1]]), isWorking: true }, "1 DRYING"),
      step({ ...formulaCell("L9", "=B6*1", [[1.35]]), isWorking: true }, "CURVES"),
    );
    const printedTo = Number(/\d+$/.exec(plan.print?.area ?? "")?.[0]);
    const placeOf = (text: string): number => rowOf(plan.cells.find(({ content }) => content === text)?.cell ?? "E0");
    for (const number of ["=B4+L4", "=L6*1"]) expect(placeOf(number)).toBeLessThanOrEqual(printedTo);
    for (const saying of ['="Dry: "&B6', "=B6*1"]) expect(placeOf(saying)).toBeGreaterThan(printedTo);
    const said = rowsOf(plan).filter(([, label]) => label === "HEAD" || label === "CURVES");
    expect(said.map((row) => row[4])).toEqual(['A2 "Dry: 1.35"', "L9 1.35"]);
    const about = plan.cells.find(({ content }) => String(content).startsWith("Sentences, checks and workings"));
    const begins = placeOf('="Dry: "&B6') - 1;
    expect(about?.content).toBe(
      `Sentences, checks and workings of the curves, on which no number rests that is listed above. Their formulas stand on this sheet from row ${begins} on and are not printed.`,
    );
  });

  it("draws the heading of a group across the page, so that its words stand on their band", () => {
    const bands = record(call).cells.filter(({ style }) => style === "heading");
    expect(bands.map(({ cell }) => cell.charAt(0)).join("")).toBe("ABCDEABCDE");
  });

  it("puts the calls of one family under its heading, in the order of the catalogue", () => {
    const plan = record(call, formulaCell("B1", '=RETORT.MOLARMASS("CaCO3")', [[100.086]]), formulaCell("B2", "=B1*2", [[200.172]]));
    const groups = plan.cells.filter(({ style, content }) => style === "heading" && content !== undefined).map(({ content }) => content);
    expect(groups).toEqual(["Compound", "Drying", "Built-in functions", "Functions of Retort, each once"]);
  });

  it("of a copy of plain cells, gives what stands in the cell now, or why its value does", () => {
    const plainCells: PlainCell[] = [
      { kind: "plain", sheet: "Tin 3", cell: "B4", area: "B4", before: call.formula, formulas: { one: "=(B2-B3)/(B2-B1)", isArray: false } },
      { ...{ kind: "fixed", sheet: "Tin 3", cell: "B5", area: "B5", before: "", why: "noForm" }, formulas: { each: [['=IF(F!B5=2,"fixed","x")']] } },
    ];
    const formulaCells = [call, formulaCell("B5", '=RETORT.BURN.EQUATION("CH4")', [["x"]])];
    const plan = calculationRecord({ sheet: "Tin 3", copy: "Tin 3", date: "2026-03-14", formulaCells, plainCells }, "Tin 3 record");
    const forms = rowsOf(plan).flatMap((row) => (row[2] === "built-in form" ? [row[4]] : []));
    expect(forms).toEqual(["fixed at its value: this function has no form in built-in functions", "=(B2-B3)/(B2-B1)"]);
    expect(plan.cells[1]?.content).toBe(
      'How the cells on "Tin 3" are calculated. They go on calculating without Retort; a fixed one says so once an input of it is changed.',
    );
  });

  it("keeps alike formulas apart on a copy of plain cells where one is fixed and one is not", () => {
    const cells = ["B4", "B5"].map((cell, index) => formulaCell(cell, `=RETORT.MOISTURE.WET(A${index + 1},C1,C2)`, [[0.35]]));
    const [plain, fixed] = cells.map(({ cell, formula }): PlainCell => ({ kind: "plain", sheet: "Tin 3", cell, area: cell, before: formula, formulas: { one: "=1", isArray: false } })); // prettier-ignore
    const plainCells = [plain as PlainCell, { ...(fixed as PlainCell), kind: "fixed", why: "notShared" } as const];
    const plan = calculationRecord({ sheet: "Tin 3", copy: "Tin 3", date: "2026-03-14", formulaCells: cells, plainCells }, "Tin 3 record");
    expect(rowsOf(plan).flatMap((row) => (row[2] === "built-in form" ? [row[4]] : []))).toEqual(["=1", "fixed at its value: it refers to a sheet that is not shared"]); // prettier-ignore
  });

  it("prints a stored formula as it was typed", () => {
    expect(under("Drying", formulaCell("B4", "='C:/x.xla'!_xldudf_RETORT_MOISTURE_WET(B1,B2,B3)*100", [[35]]))[0]?.[4]).toBe(
      "=RETORT.MOISTURE.WET(B1,B2,B3)*100",
    );
  });

  it.each([
    [
      "a function that has none",
      "B4",
      '=RETORT.DRYING.FIT(A1:A9,B1:B9,"Page",C1)',
      "Drying",
      "none: this function has no form in built-in functions",
    ],
    ["a form that takes several cells", "B4", '=RETORT.CONSTANTWEIGHT(A1:A9,0.1,"absolute")', "Drying", "none in one cell: its steps take several. A copy of plain cells holds them on a sheet of workings"], // prettier-ignore
    ["a spill", "B4:B5", "=RETORT.MOISTURE.WET(B1,B2:B3,C2:C3)", "Drying", "none in one cell: it fills several. A copy of plain cells holds a form for each"], // prettier-ignore
    ["a compound in a cell", "B4", "=RETORT.MOLARMASS(A1)", "Compound", "none: these arguments have no form in built-in functions"],
    ["a name", "B4", "=RETORT.MOISTURE.WET(tin,B2,B3)", "Drying", "none here: it uses a name or a table, which a copy of plain cells looks up"],
    ["a function of another version", "B4", "=RETORT.GONE(1)", "Other functions", "none: a function that this version of Retort does not have"],
  ])("says why a call has no built-in form: %s", (_, range, formula, heading, why) => {
    const values = range === "B4" ? [[1]] : [[1], [2]];
    const rows = under(heading, formulaCell("B4", formula, values, range));
    expect(rows[0]?.[0]).toBe(range);
    expect(rows.flatMap((row) => (row[2] === "built-in form" ? [row[4]] : []))).toEqual([why]);
  });

  it("prints no form that holds for the moment alone", () => {
    const rows = [[reading("A1", { value: "CaCO3" })]];
    const cells = [formulaCell("B4", "=RETORT.MOLARMASS(A1)", [[100.086]])];
    const plan = calculationRecord({ sheet: "Tin 3", copy: "Tin 3 values", date: "2026-03-14", formulaCells: cells, rows }, "Tin 3 record");
    expect(rowsOf(plan).flatMap((row) => (row[2] === "built-in form" ? [row[4]] : []))).toEqual([
      "none that stays right: it would hold for what its cells hold now. A copy of plain cells watches them",
    ]);
  });

  it("lists built-in cell formulas after the calls, but not those that show nothing", () => {
    const plan = record(formulaCell("A1", "=B2-B1", [[10]]), formulaCell("A2", '=IF(B9="","",B9)', [[null]]), call);
    const typed = rowsOf(plan).flatMap(([cell, , , , text]) => (cell !== null && text !== null ? [[cell, text]] : []));
    expect(typed).toEqual([
      ["B4", "=RETORT.MOISTURE.WET(B1,B2,B3)"],
      ["A1", "=B2-B1"],
    ]);
  });

  it("names a function that this version does not have", () => {
    expect(under("Functions of Retort, each once", formulaCell("B4", "=RETORT.GONE(1)", [[1]]))).toEqual([
      [null, "B4", null, null, "RETORT.GONE: Not a function of this version of Retort."],
    ]);
  });
});

const WETS = "RETORT.MOISTURE.WET(A1:A2,B1:B2,C1:C2)";

describe("a form that works on ranges cell by cell", () => {
  const told = (formula: string): unknown => rowsOf(record(formulaCell("B4", formula, [[0.4]]))).find(([, , what]) => what === "entered")?.[4];

  it.each([
    `=SUM(${WETS})/2`,
    `=INDEX(${WETS},2)`,
    `=SUM(IF(A1:A3>21,1,0))+RETORT.AIRLEFT(A1)`,
    `=MAX(LEN(D1:D3))*RETORT.AIRLEFT(A1)`,
    "=RETORT.AIRLEFT(SUM(A1:A3*B1:B3))",
  ])("says that it is entered as an array: %s", (formula) => {
    expect(told(formula)).toBe("as an array: end it with Ctrl+Shift+Enter. Entered otherwise, older programs take one cell of each range.");
    expect(recordRows([formulaCell("B4", formula, [[0.4]])], [])[0]).toMatchObject({ enteredAs: "array" });
  });

  it.each(["=RETORT.AIRLEFT(A1)", "=RETORT.AIRLEFT(SUM(A1:A3))*2", "=SUM(A1:A3)+RETORT.AIRLEFT(A1%)", `=IF(A1>2,RETORT.AIRLEFT(A1),"")`])(
    "and any other does not: %s",
    (formula) => {
      expect(told(formula)).toBeUndefined();
      expect(recordRows([formulaCell("B4", formula, [[0.4]])], [])[0]).not.toHaveProperty("enteredAs");
    },
  );
});

describe("recordRows(formulaCells, rows)", () => {
  it("gives a line to each function that a cell formula calls, in the order of the catalogue, and why there is no built-in form", () => {
    const cells = [
      formulaCell("A1", "=B2-B1", [[10]]),
      formulaCell("B4", '=RETORT.MOISTURE.CONVERT(RETORT.MOISTURE.WET(B1,B2,B3),"wet","dry")', [[0.54]]),
      formulaCell("B5", "=RETORT.MOLARMASS(A1)", [["x"]]),
    ];
    expect(recordRows(cells, []).map(({ cells: range, about }) => [range, about.split(":")[0]])).toEqual([
      ["B5", "RETORT.MOLARMASS"],
      ["B4", "RETORT.MOISTURE.CONVERT"],
      ["B4", "RETORT.MOISTURE.WET"],
      ["A1", "Built-in functions of the spreadsheet only."],
    ]);
    expect(recordRows(cells, []).map(({ builtIn }) => builtIn.split(/[(:]/)[0])).toEqual(["none", "=IF", "=IF", ""]);
  });
});
