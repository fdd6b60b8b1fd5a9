import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { formulaNotAccepted } from "../../../src/problems/workbook/workbookProblems";
import type { CellStyle, PlannedChart, SheetPlan } from "../../../src/workbook/SheetPlan";
import type { FrozenArea } from "../../../src/workbook/Workbook";
import { emphasisStyles, sheetStyles } from "../../../src/workbook/sheetStyles";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import { contractFormulas } from "../contractFormulas";

// Sixty thousand cells take seconds where many processes share a processor.
jest.setTimeout(30_000);

const host = new ExcelHost();
host.calculate = contractFormulas;
loadClientLibrary(host);
beforeEach(() => host.newBook());
const workbook = new ExcelWorkbook();

const blank: SheetPlan = { name: "Run", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };

describe("addSheet(plan) in Excel", () => {
  test("sends one request for the names, one for the sheet and one to finish it, with two charts or without", async () => {
    const series = [{ name: "Sample 1", x: "A2:A5", y: "B2:B5" }];
    await workbook.addSheet({ ...blank, cells: [{ cell: "A1", content: 1 }] });
    const withoutChart = requestsThatAct();
    host.requests.length = 0;
    await workbook.addSheet({
      ...blank,
      cells: [{ cell: "A1", content: 1 }],
      charts: ["t", "t2"].map((title) => ({ title, xTitle: "x", yTitle: "y", series, over: "D2:J12" })),
    });
    expect([withoutChart, requestsThatAct()]).toEqual([3, 3]);
  });

  test("writes a column in one write, and rows apart from each other in a write each", async () => {
    await workbook.addSheet({ ...blank, cells: [...cells("B", 1, 200), ...cells("D", 900, 5)] });
    const writes = host.requests.flatMap(({ Actions }) => Actions).filter(({ Name }) => Name === "Formulas");
    expect(writes).toHaveLength(2);
  });

  test("puts each entry rule on its range, with its prompt and its refusal", async () => {
    const rule = { promptTitle: "Dry mass", prompt: "Grams, cooled.", refusal: "Grams, please." };
    await workbook.addSheet({
      ...blank,
      entryRules: [
        { ...rule, range: "B2:B9", allow: { kind: "number", atLeast: 0, atMost: 500 } },
        { ...rule, range: "C2", allow: { kind: "number", atLeast: 0, atMost: Infinity } },
        { ...rule, range: "D2", allow: { kind: "words", words: ["open", "closed"] } },
        { ...rule, range: "E2", allow: { kind: "anything" } },
        { ...rule, range: "F2:F9", allow: { kind: "condition", condition: "=F2>0" } },
        { ...rule, range: "G2", prompt: "", allow: { kind: "condition", condition: "=FALSE" } },
      ],
    });
    const prompt = { title: "Dry mass", message: "Grams, cooled." };
    const errorAlert = { style: "Stop", title: "Dry mass", message: "Grams, please." };
    expect(host.book.sheet("Run").entryRules).toEqual([
      { range: "B2:B9", rule: { decimal: { formula1: 0, formula2: 500, operator: "Between" } }, prompt, errorAlert },
      { range: "C2", rule: { decimal: { formula1: 0, operator: "GreaterThanOrEqualTo" } }, prompt, errorAlert },
      { range: "D2", rule: { list: { inCellDropDown: true, source: "open,closed" } }, prompt, errorAlert },
      { range: "E2", prompt },
      { range: "F2:F9", rule: { custom: { formula: "=F2>0" } }, prompt, errorAlert },
      // Without a prompt, so that moving over it stays quiet.
      { range: "G2", rule: { custom: { formula: "=FALSE" } }, errorAlert },
    ]);
  });

  test("gives cells to fill in a line all round, and computed cells none", async () => {
    await workbook.addSheet({
      ...blank,
      cells: [
        { cell: "A1", style: "input", format: "0.000" },
        { cell: "B1", style: "computed" },
      ],
    });
    const { looks } = host.book.sheet("Run");
    const lines = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"].map((line) => looks.get("A1")?.[`border.${line}.style`]);
    expect(lines).toEqual(new Array(4).fill("Continuous"));
    expect(looks.get("A1")).toMatchObject({
      numberFormat: "0.000",
      "fill.color": sheetStyles.input.fill,
      "font.color": sheetStyles.input.fontColour,
    });
    expect(Object.keys(looks.get("B1") ?? {}).filter((look) => look.startsWith("border"))).toEqual([]);
  });

  test.each([
    ["one below the other", ["A1", "A2"], ["InsideHorizontal"]],
    ["side by side", ["A1", "B1"], ["InsideVertical"]],
    ["in a square", ["A1", "B1", "A2", "B2"], ["InsideHorizontal", "InsideVertical"]],
  ])("draws a line between cells to fill in that stand %s", async (_how, cells, between) => {
    await workbook.addSheet({ ...blank, cells: cells.map((cell) => ({ cell, style: "input" })) });
    const drawn = Object.entries(host.book.sheet("Run").looks.get("A1") ?? {}).flatMap(
      ([look]) => /^border\.(Inside\w+)\.style$/.exec(look)?.[1] ?? [],
    );
    expect(drawn.sort()).toEqual(between);
  });

  test("puts results to the right, texts among them, and leaves every other style where its contents stand", async () => {
    const styles = Object.keys(sheetStyles) as CellStyle[];
    await workbook.addSheet({ ...blank, cells: styles.map((style, row) => ({ cell: `A${2 * row + 1}`, content: "34.8 % ± 0.1 %", style })) });
    const { looks } = host.book.sheet("Run");
    const placed = styles.map((style, row) => [style, looks.get(`A${2 * row + 1}`)?.horizontalAlignment]);
    expect(placed.filter(([, alignment]) => alignment !== undefined)).toEqual([
      ["result", "Right"],
      ["runTotalNumber", "Right"],
      ["runReckoned", "Right"],
    ]);
    const indented = styles.filter((_style, row) => looks.get(`A${2 * row + 1}`)?.indentLevel === 1);
    expect(indented).toEqual(["runVerdict", "runVerdictStrong", "runBeside"]);
  });

  test("draws a box open where it goes on, a dotted line to write on, and the heavy line between hand and sheet", async () => {
    await workbook.addSheet({
      ...blank,
      cells: [
        { cell: "A1", style: "runBoxStart" },
        { cell: "B1", style: "runBoxMore" },
        { cell: "C1", style: "runBoxEnd" },
        { cell: "E1", style: "runReckoned", heavyLeft: true },
      ],
    });
    const { looks } = host.book.sheet("Run");
    const lines = (cell: string) => Object.keys(looks.get(cell) ?? {}).flatMap((name) => /^border\.(Edge\w+)\.style$/.exec(name)?.slice(1) ?? []);
    expect([lines("A1").sort(), lines("B1").sort(), lines("C1").sort()]).toEqual([
      ["EdgeBottom", "EdgeLeft", "EdgeTop"],
      ["EdgeBottom", "EdgeTop"],
      ["EdgeBottom", "EdgeRight", "EdgeTop"],
    ]);
    expect(looks.get("E1")).toMatchObject({
      "border.EdgeLeft.weight": "Medium",
      "border.EdgeLeft.style": "Continuous",
      "border.EdgeBottom.style": "Dot",
    });
  });

  test("sets row heights, and the page as planned: area, repeated rows, scale, margins, page numbers and breaks", async () => {
    const margins = { left: 21.6, right: 21.6, top: 21.6, bottom: 32.4, header: 10.8, footer: 14.4 };
    await workbook.addSheet({
      ...blank,
      cells: [{ cell: "A1", content: "head" }],
      rowHeights: [{ from: 1, to: 2, height: 21 }],
      gridlines: false,
      print: {
        area: "A1:I98",
        titleRows: 3,
        scale: 82,
        margins,
        header: "&10Read the cautions",
        footer: { left: "&A, &D", centre: "Page &P of &N", right: "run" },
        breaksBefore: [49, 77],
      },
    });
    const { rowHeights, page, pageBreaks, gridlines } = host.book.sheet("Run");
    expect(gridlines).toBe(false);
    expect([...rowHeights]).toEqual([
      [0, 21],
      [1, 21],
    ]);
    expect(page).toEqual({
      orientation: "Portrait",
      zoom: { scale: 82 },
      centerHorizontally: true,
      printArea: "A1:I98",
      printTitleRows: "$1:$3",
      leftMargin: 21.6,
      rightMargin: 21.6,
      topMargin: 21.6,
      bottomMargin: 32.4,
      headerMargin: 10.8,
      footerMargin: 14.4,
      leftFooter: expect.stringMatching(/^&A, set up \d{4}-\d\d-\d\d$/) as unknown,
      centerHeader: "&10Read the cautions",
      centerFooter: "Page &P of &N",
      rightFooter: "run",
    });
    expect(pageBreaks).toEqual(["A49", "A77"]);
  });

  test("shows looks under their conditions", async () => {
    await workbook.addSheet({ ...blank, emphasis: [{ range: "B2:B9", condition: '=LEFT(B2,1)="?"', look: "failed" }] });
    expect(host.book.sheet("Run").conditionalFormats).toEqual([
      {
        range: "B2:B9",
        formula: '=LEFT(B2,1)="?"',
        look: { "fill.color": emphasisStyles.failed.fill, "font.color": emphasisStyles.failed.fontColour, "font.bold": true },
      },
    ]);
  });

  test("sets column widths in points and freezes rows", async () => {
    await workbook.addSheet({ ...blank, columnWidths: [8.43, 20], frozenRows: 6 });
    const { columnWidths, frozenRows } = host.book.sheet("Run");
    expect([...columnWidths]).toEqual([
      [0, 48],
      [1, 108.75],
    ]);
    expect(frozenRows).toBe(6);
  });

  test("draws a scatter chart of the planned series only, each with a marker of its own, and leaves gaps for blanks", async () => {
    const series = [
      { name: "Sample 1", x: "A2:A5", y: "B2:B5" },
      { name: "Sample 2", x: "A2:A5", y: "C2:C5" },
      { name: "dry if the next falls in here", x: "E2:E5", y: "F2:F5", draws: "limit" },
      { name: "end foretold by the curve", x: "E6:E7", y: "F6:F7", draws: "foretold" },
      { name: "Sample 1, ash", x: "A2:A5", y: "D2:D5", look: 0, open: true },
      { name: "(axes)", x: "E8:E9", y: "F8:F9", draws: "frame" },
      { name: "dry, sample 2", x: "E2:E3", y: "G2:G3", draws: "limit", look: 1 },
      { name: "dry, sample 2: upper edge", x: "E2:E3", y: "G4:G5", draws: "limit", look: 0, isUpper: true },
    ] as const;
    const chart: PlannedChart = { title: "Drying", xTitle: "Elapsed (min)", yTitle: "Sample (g)", series, unforetold: ["y"], over: "E2:K16" };
    await workbook.addSheet({ ...blank, charts: [chart] });
    // The key has no place for what is not seen, and none twice for what looks alike.
    const named = host.book.sheet("Run").charts[0]?.series.map((one) => one.isInKey ?? true);
    expect(named).toEqual([true, true, true, true, true, false, false, false]);
    for (const one of host.book.sheet("Run").charts[0]?.series ?? []) delete one.isInKey;
    expect(host.book.sheet("Run").charts).toEqual([
      {
        id: expect.any(String) as unknown,
        name: "Drying",
        type: "XYScatterLines",
        title: "Drying",
        xTitle: "Elapsed (min)",
        yTitle: "Sample (g)",
        yFormat: "General;;",
        legend: true,
        legendAt: "Right",
        blanks: "NotPlotted",
        over: "E2:K16",
        series: [
          {
            name: "Sample 1",
            x: "Run!A2:A5",
            y: "Run!B2:B5",
            marker: "Circle",
            line: "Continuous",
            colour: "#1F2328",
            inside: "#1F2328",
            weight: 1.5,
          },
          { name: "Sample 2", x: "Run!A2:A5", y: "Run!C2:C5", marker: "Square", line: "Dash", colour: "#8A3B12", inside: "#8A3B12", weight: 1.5 },
          {
            name: "dry if the next falls in here",
            x: "Run!E2:E5",
            y: "Run!F2:F5",
            marker: "None",
            line: "Dash",
            colour: "#1F2328",
            inside: "#1F2328",
            weight: 1,
          },
          {
            name: "end foretold by the curve",
            x: "Run!E6:E7",
            y: "Run!F6:F7",
            marker: "None",
            line: "Dot",
            colour: "#1F2328",
            inside: "#1F2328",
            weight: 1,
          },
          {
            name: "Sample 1, ash",
            x: "Run!A2:A5",
            y: "Run!D2:D5",
            marker: "Circle",
            line: "Continuous",
            colour: "#1F2328",
            inside: "#FFFFFF",
            weight: 1.5,
          },
          { name: "(axes)", x: "Run!E8:E9", y: "Run!F8:F9", marker: "None", line: "None", colour: "#1F2328", inside: "#1F2328", weight: 1 },
          { ...edge("dry, sample 2", "G2:G3"), colour: "#8A3B12", inside: "#8A3B12" },
          { ...edge("dry, sample 2: upper edge", "G4:G5"), colour: "#1F2328", inside: "#1F2328" },
        ],
      },
    ]);
  });

  const edge = (name: string, at: string) => ({ name, x: "Run!E2:E3", y: `Run!${at}`, marker: "None", line: "Dash", weight: 1 });

  test("takes the sheet away again when Excel does not accept part of it", async () => {
    await expect(workbook.addSheet({ ...blank, cells: [{ cell: "A1", formula: "=SUM((" }] })).rejects.toThrow(
      "Excel could not do this (InvalidArgument).",
    );
    expect(await workbook.sheetNames()).toEqual(["Sheet1"]);
  });

  test("writes the sheet without one undo step where Excel refuses that, and leaves nothing of the first attempt", async () => {
    for (const refusedRequest of [1, 2]) {
      host.newBook();
      host.failNext("UndoNotSupported", refusedRequest);
      const series = [{ name: "Sample 1", x: "A2:A5", y: "B2:B5" }];
      const chart = { title: "t", xTitle: "x", yTitle: "y", series, over: "D2:J12" };
      expect(await workbook.addSheet({ ...blank, cells: cells("A", 1, 3), charts: [chart] })).toBe("Run");
      expect(await workbook.sheetNames()).toEqual(["Sheet1", "Run"]);
      expect(host.book.sheet("Run").charts).toHaveLength(1);
    }
  });

  test("keeps every request below the 5 MB that the web takes, with 60,000 cells", async () => {
    await workbook.addSheet({ ...blank, cells: Array.from("ABCDEF").flatMap((letter) => cells(letter, 1, 10_000)) });
    expect(host.longest.request).toBeLessThan(FIVE_MEGABYTES);
    expect(host.book.sheet("Run").cells.size).toBe(60_000);
  });
});

describe("writeFormula(address, formula) in Excel", () => {
  test("says so when Excel does not accept the formula", async () => {
    await expect(workbook.writeFormula({ sheet: "Sheet1", cell: "A1" }, "=SUM((1)")).rejects.toThrow(formulaNotAccepted("=SUM((1)"));
  });
});

describe("copyWithValues(sheet, wanted) in Excel", () => {
  test("keeps empty text as text, clears what was blank and leaves an error an error", async () => {
    host.type("Sheet1", "A1", "=SEQUENCE(3,2)");
    const values = [
      ["", null],
      ["#N/A", "a"],
      [true, 0],
    ];
    await copy([{ range: "A1:B3", values }]);
    const { rows } = await workbook.read("Copy", "A1:B3");
    expect(rows.map((row) => row.map(({ value, error }) => [value, error]))).toEqual([
      [
        ["", ""],
        [null, ""],
      ],
      [
        ["#N/A", "#N/A"],
        ["a", ""],
      ],
      [
        [true, ""],
        [0, ""],
      ],
    ]);
  });

  test("never asks for one undo step, which Excel refuses for a copy, and goes on where a request is refused for it", async () => {
    host.type("Sheet1", "A1", "=1+1");
    const read = await workbook.readUsed("Sheet1");
    host.failNext("UndoNotSupported", 2);
    await workbook.copyWithValues("Sheet1", { name: "Copy", read, areas: [{ range: "A1", values: [[2]] }], beside: { ...blank, name: "Beside" } });
    expect((await workbook.read("Copy", "A1")).rows[0]?.[0]).toMatchObject({ formula: "", value: 2 });
    expect(await workbook.sheetNames()).toEqual(["Sheet1", "Copy", "Beside"]);
  });

  test.each([
    ["=SEQUENCE(3,2)", "A1:B3", [[1, 2], [3, 4], [5, 6]]],
    ["=SEQUENCE(2,1)", "A1:A2", [[1], [2]]],
    ["=SEQUENCE(1,2)", "A1:B1", [[1, 2]]],
  ])("writes the formula's own cell of a spill, %s, before the cells it fills, all in one request", async (formula, range, values) => {
    host.type("Sheet1", "A1", formula);
    await copy([{ range, values }]);
    const writes = host.requests.map(({ Actions }) =>
      Actions.filter(({ Name }) => Name === "Values").map(({ ArgumentInfo }) => ArgumentInfo?.Arguments?.[0]),
    );
    expect(writes.filter((written) => written.length > 0)).toEqual([[[[1]], values]]);
  }); // prettier-ignore
});

// Office Add-ins documentation, "Resource limits and performance optimization for Office Add-ins".
const FIVE_MEGABYTES = 5_000_000;

/** Makes the copy "Copy" of what stands on "Sheet1". */
const copy = async (areas: readonly FrozenArea[]): Promise<void> => {
  const read = await workbook.readUsed("Sheet1");
  host.requests.length = 0;
  await workbook.copyWithValues("Sheet1", { name: "Copy", read, areas, beside: { ...blank, name: "Beside" } });
};

const cells = (column: string, from: number, count: number) =>
  Array.from({ length: count }, (_, row) => ({ cell: `${column}${from + row}`, content: row + 0.123456 }));

/** Requests that do more than let go of ranges. */
const requestsThatAct = (): number =>
  host.requests.filter(({ Actions }) => Actions.some(({ ActionType, Name }) => ActionType !== 1 && Name !== "_RemoveReference")).length;
