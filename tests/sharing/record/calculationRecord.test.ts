import { inBuiltInFunctions } from "../../../src/sharing/inBuiltInFunctions";
import { EDITION } from "../../../src/chemistry/atomicWeights";
import { everyFunction } from "../../../src/functions/catalogue";
import { calculationRecord, VERSION } from "../../../src/sharing/record/calculationRecord";
import { findCalls } from "../../../src/sharing/findCalls";
import type { FormulaCell } from "../../../src/sharing/formulaCells";
import { checkSheetPlan } from "../../../src/workbook/checkSheetPlan";
import type { PlainCell } from "../../../src/sharing/plain/plainSheets";
import { pixelsOf, POINTS_PER_PIXEL } from "../../../src/workbook/columnPixels";
import { sheetStyles } from "../../../src/workbook/sheetStyles";
import { wrappedLines } from "../../../src/workbook/wrappedLines";
import type { CellContent } from "../../../src/workbook/Workbook";

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
const table = (...formulaCells: FormulaCell[]): unknown[][] => {
  const plan = record(...formulaCells);
  const headings = Number(plan.cells.find(({ content }) => content === "Cell formula as typed")?.cell.slice(1));
  const rows = [...new Set(plan.cells.map(({ cell }) => Number(cell.slice(1))))].filter((row) => row > headings);
  const isGroup = (row: number): boolean => plan.cells.some(({ cell, style }) => cell === `A${row}` && style === "heading");
  const lines = rows
    .filter((row) => !isGroup(row))
    .map((row) => ["A", "C", "D", "E", "F", "G", "H"].map((column) => plan.cells.find(({ cell }) => cell === `${column}${row}`)?.content ?? null));
  // A formula longer than a row holds goes on in the next rows.
  return lines.reduce<unknown[][]>((so, line) => {
    const last = so.at(-1);
    if (line[0] !== null || last === undefined) return [...so, line];
    return [...so.slice(0, -1), last.map((content, index) => (line[index] === null ? content : `${String(content)}${String(line[index])}`))];
  }, []);
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

  it("gives each call its cell, cell formula, value, unit, meaning, source and built-in form", () => {
    expect(table(call)).toEqual([
      [
        "B4",
        "=RETORT.MOISTURE.WET(B1,B2,B3)",
        0.35,
        "fraction",
        `RETORT.MOISTURE.WET: ${named("MOISTURE.WET")?.summary}`,
        named("MOISTURE.WET")?.source,
        inBuiltInFunctions("=RETORT.MOISTURE.WET(B1,B2,B3)"),
      ],
    ]);
  });

  it("gives one line to a function that a cell formula calls several times", () => {
    const twice = formulaCell("B5", "=IF(RETORT.MOISTURE.WET(B1,B2,B3)>0.5,1,RETORT.MOISTURE.WET(B1,B2,B3)/RETORT.MOISTURE.DRY(B1,B2,B3))", [[0.35]]);
    expect(table(twice).map((row) => String(row[4]).split(":")[0])).toEqual(["RETORT.MOISTURE.WET", "RETORT.MOISTURE.DRY"]);
  });

  it("calls each cell what the sheet calls it", () => {
    const plan = record({ ...call, label: "Moisture" });
    const { cell: under = "" } = plan.cells.find(({ content }) => content === "On the sheet") ?? {};
    expect(plan.cells.find(({ cell }) => cell === `A${Number(under.slice(1)) + 1}`)?.content).toBe("Drying");
    expect(plan.cells.find(({ cell }) => cell === `B${Number(under.slice(1)) + 2}`)?.content).toBe("Moisture");
  });

  it("wraps its lines, so that no formula runs off the page", () => {
    const lines = record(call).cells.filter(({ style }) => style === "recorded");
    expect(lines.length).toBeGreaterThanOrEqual(7);
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
    const headings = cells.find(({ content }) => content === "Cell formula as typed")?.cell.slice(1);
    expect(print).toMatchObject({ landscape: true, titleFrom: Number(headings), titleRows: Number(headings) });
    for (const { from, height } of rowHeights) {
      expect(height).toBeLessThanOrEqual(409);
      // A column holds at least 1.08 letters for each digit of its width (measured: 1.2), and no row is higher than its longest text needs.
      const lines = cells
        .filter(({ cell, style }) => Number(cell.slice(1)) === from && style === "recorded")
        .map(({ cell, content }) => wrappedLines(String(content), Math.floor((columnWidths["ABCDEFGH".indexOf(cell.charAt(0))] ?? 1) * 1.08)));
      if (lines.length > 0) expect(height).toBe(15 * Math.max(...lines));
    }
  });

  it("takes no row higher than a sheet can hold, however much is said of a function, and says all of it in the rows below", () => {
    const long = `=RETORT.MOLARMASS(A1)${"+B12*(C14-D15)".repeat(500)}`;
    for (const { name, source = "" } of everyFunction) {
      const { cells, rowHeights = [] } = record(formulaCell("B4", `=RETORT.${name}(A1)`, [["so ".repeat(400)]]));
      expect([name, Math.max(...rowHeights.map(({ height }) => height)) <= 409]).toEqual([name, true]);
      const said = cells.filter(({ cell, style }) => cell.startsWith("G") && style === "recorded").map(({ content }) => String(content));
      expect(said.join("")).toBe(source);
    }
    const { rowHeights = [] } = record(formulaCell("B4", long, [[1]]));
    expect(Math.max(...rowHeights.map(({ height }) => height))).toBeLessThanOrEqual(409);
    expect(table(formulaCell("B4", long, [[1]]))[0]?.[1]).toBe(long);
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
    expect(first.slice(first.indexOf("Cell") + 1)).toEqual(["HEAD", "A2", "1 DRYING", "B4", "B6", "RESULTS", "B9"]);
  });

  it("draws the heading of a group across the page, so that its words stand on their band", () => {
    const bands = record(call).cells.filter(({ style }) => style === "heading");
    expect(bands.map(({ cell }) => cell.charAt(0)).join("")).toBe("ABCDEFGH");
  });

  it("puts the calls of one family under its heading, in the order of the catalogue", () => {
    const plan = record(call, formulaCell("B1", '=RETORT.MOLARMASS("CaCO3")', [[100.086]]), formulaCell("B2", "=B1*2", [[200.172]]));
    const groups = plan.cells.filter(({ style, content }) => style === "heading" && content !== undefined).map(({ content }) => content);
    expect(groups).toEqual(["Compound", "Drying", "Built-in functions"]);
  });

  it("of a copy of plain cells, gives what stands in the cell now, or why its value does", () => {
    const plainCells: PlainCell[] = [
      { kind: "plain", sheet: "Tin 3", cell: "B4", area: "B4", before: call.formula, formulas: { one: "=(B2-B3)/(B2-B1)", isArray: false } },
      { ...{ kind: "fixed", sheet: "Tin 3", cell: "B5", area: "B5", before: "", why: "noForm" }, formulas: { each: [['=IF(F!B5=2,"fixed","x")']] } },
    ];
    const formulaCells = [call, formulaCell("B5", '=RETORT.BURN.EQUATION("CH4")', [["x"]])];
    const plan = calculationRecord({ sheet: "Tin 3", copy: "Tin 3", date: "2026-03-14", formulaCells, plainCells }, "Tin 3 record");
    const forms = plan.cells.filter(({ cell, style }) => cell.startsWith("H") && style === "recorded").map(({ content }) => content);
    expect(forms).toEqual(["fixed at its value: this function has no form in built-in functions", "=(B2-B3)/(B2-B1)"]);
    expect(plan.cells[1]?.content).toBe(
      'How the cells on "Tin 3" are calculated. They go on calculating without Retort; a fixed one says so once an input of it is changed.',
    );
  });

  it("prints a stored formula as it was typed", () => {
    expect(table(formulaCell("B4", "='C:/x.xla'!_xldudf_RETORT_MOISTURE_WET(B1,B2,B3)*100", [[35]]))[0]?.[1]).toBe(
      "=RETORT.MOISTURE.WET(B1,B2,B3)*100",
    );
  });

  it("lists a cell with two calls twice", () => {
    const rows = table(formulaCell("B4", '=RETORT.MOISTURE.CONVERT(RETORT.MOISTURE.WET(B1,B2,B3),"wet","dry")', [[0.54]]));
    expect(rows.map(([cell, , , , about]) => [cell, String(about).split(":")[0]])).toEqual([
      ["B4", "RETORT.MOISTURE.CONVERT"],
      ["B4", "RETORT.MOISTURE.WET"],
    ]);
  });

  it("gives a spill its area and first value, and no built-in form", () => {
    expect(table(formulaCell("B4", "=RETORT.MOISTURE.WET(B1,B2:B3,C2:C3)", [[0.35], [0.36]], "B4:B5"))[0]).toEqual(
      expect.arrayContaining(["B4:B5", 0.35, null]),
    );
  });

  it("leaves the built-in form out where a function has none", () => {
    expect(named("DRYING.FIT")?.inCells ?? named("DRYING.FIT")?.inManyCells).toBeUndefined();
    expect(table(formulaCell("B4", '=RETORT.DRYING.FIT(A1:A9,B1:B9,"Page",C1)', [["Page"]]))[0]?.[6]).toBeNull();
  });

  it("lists built-in cell formulas after the calls, but not those that show nothing", () => {
    const rows = table(formulaCell("A1", "=B2-B1", [[10]]), formulaCell("A2", '=IF(B9="","",B9)', [[null]]), call);
    expect(rows.map(([cell, typed]) => [cell, typed])).toEqual([
      ["B4", "=RETORT.MOISTURE.WET(B1,B2,B3)"],
      ["A1", "=B2-B1"],
    ]);
  });

  it("names a function that this version does not have", () => {
    expect(table(formulaCell("B4", "=RETORT.GONE(1)", [[1]]))[0]).toEqual(
      expect.arrayContaining(["RETORT.GONE: Not a function of this version of Retort.", null]),
    );
  });
});
