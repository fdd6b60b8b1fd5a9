// The gathered sheet on plain values, by hand. The runs are invented.
import { CellProblem } from "../../../src/cells/CellProblem";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { buildGatheredSheet } from "../../../src/runsheet/gathering/buildGatheredSheet";
import { AT } from "../../../src/runsheet/gathering/GatheredSheet";
import { checkSheetPlan } from "../../../src/workbook/checkSheetPlan";
import { pixelsOf } from "../../../src/workbook/columnPixels";
import { beyond } from "../../../src/runsheet/gathering/rowFormulas";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { workOut } from "../../../src/explanation/runSheet/workOut";
import { seededNormal } from "../../numerics/seededNormal";
import { plainGathered, type PlainGathered, type PlainRow } from "./plainGathered";

const run = (vapour: Plain, more: Partial<PlainRow> = {}): PlainRow => ({ trust: "✓", water: 0.5, vapour, char: typeof vapour === "number" ? 1 - vapour : "", plusMinus: 0.0006, ...more }); // prettier-ignore
const runs = (...vapours: Plain[]): PlainGathered => plainGathered(vapours.map((vapour) => run(vapour)));
const marks = (gathered: PlainGathered): Plain[] => gathered.sheet.runs.rows.map((_, index) => gathered.row(index + 1).mark);

// 0.6745 (x - median) / MAD: Iglewicz and Hoaglin (1993), as printed in the NIST/SEMATECH
// e-Handbook of Statistical Methods, 1.3.5.17.
describe("The robust z of a gathered row", () => {
  it("is 0.6745 times its distance from the median over the median distance", () => {
    // Median 0.715; distances 0.005, 0.005, 0, 0.003, 0.095, the middle one of which is 0.005
    const gathered = runs(0.71, 0.72, 0.715, 0.712, 0.81);
    // 0.6745 * -0.005 / 0.005; 0.6745 * 0.005 / 0.005; 0; 0.6745 * -0.003 / 0.005; 0.6745 * 0.095 / 0.005
    expect([1, 2, 3, 4, 5].map((row) => Number(gathered.z(row)))).toEqual(
      [-0.6745, 0.6745, 0, -0.4047, 12.8155].map((z): unknown => expect.closeTo(z, 9)),
    );
    // 1.4826 * 0.005 = 0.007413
    expect(gathered.head()).toEqual([
      "Median 71.50 % of the dry sample left as vapour; scatter 0.74 % (1.4826 MAD); 5 samples counted.",
      "? Standing apart: 1 of the counted, robust z beyond 7.9, as by chance on one sheet in 20. Look for a cause first.",
      "of the vapour, as percent: 70 to 75",
    ]);
    expect(marks(gathered)).toEqual(["counted", "counted", "counted", "counted", "? apart, z 12.8"]);
  });

  // 0.715 ± 7.9 * 0.005 / 0.6745 is 0.715 ± 0.058562
  it.each([
    [0.7735, "counted"],
    [0.7736, "? apart, z 7.9"],
    [0.6565, "counted"],
    [0.6564, "? apart, z -7.9"],
  ])("of five stands apart beyond 7.9 either way: %d is %j", (share, mark) => {
    expect(marks(runs(0.71, 0.72, 0.715, share < 0.715 ? 0.718 : 0.712, share))[4]).toBe(mark);
  });

  it("says so where what stands apart lies within what weighing explains", () => {
    const gathered = plainGathered([0.715, 0.7151, 0.7152, 0.7149, 0.718].map((vapour) => run(vapour, { plusMinus: 0.003 })));
    expect(gathered.row(5).mark).toBe("? apart, z 19.6, within ±");
  });

  it("is refused in words while half of the counted or more are alike", () => {
    const gathered = runs(0.71, 0.71, 0.71, 0.81);
    expect(gathered.head().slice(0, 2)).toEqual([
      "Median 71.00 % of the dry sample left as vapour; 4 samples counted, at least half of them alike: no scatter.",
      "? No robust z: half of the counted samples or more are alike to the last figure (MAD 0).",
    ]);
    expect(marks(gathered)).toEqual(["counted", "counted", "counted", "counted"]);
    // Binary rounding is no scatter.
    expect(runs(0.3, 0.1 + 0.2, 0.3, 0.31).head()[1]).toMatch(/^\? No robust z/);
    expect(gathered.value(cell(gathered.sheet.scatter, AT.volatile))).toBe("alike");
  });

  it.each([
    [[], "No vapour share is counted yet: see the marks below."],
    [[0.71], "Vapour shares counted: 1. Too few for a median and a scatter: three are needed."],
    [[0.71, 0.73], "Vapour shares counted: 2. Too few for a median and a scatter: three are needed."],
  ])("is not given for %j", (vapours, answer) => {
    const gathered = runs(...vapours, "");
    expect(gathered.head().slice(0, 2)).toEqual([answer, `None can be told to stand apart. Not counted: 1 of ${vapours.length + 1} rows.`]);
    expect(gathered.value(cell(gathered.sheet.median, AT.volatile))).toBe("");
  });

  it("says that none stands apart", () => {
    const none = "✓ None stands apart: robust z within 6.9, which chance alone passes on one sheet in 20.";
    expect(runs(0.71, 0.72, 0.715, 0.712).head()[1]).toBe(none);
  });

  it("says that of three none can be told", () => {
    // 0.6745 * 0.1 / 0.001: by chance, where two lie close.
    const gathered = runs(0.71, 0.711, 0.811);
    expect(gathered.head()[1]).toBe("· Three samples cannot tell whether one of them stands apart: four are needed.");
    expect(marks(gathered)).toEqual(["counted", "counted", "counted"]);
  });

  // The same z without the sheet, whose cells on plain values are worked out over and over. 5 % of 2000 are 100, with a standard deviation of 9.7.
  it.each([4, 5, 6, 7, 8, 9, 10, 12, 15, 18, 25, 40])("is told of %i rows of one normal population on about one sheet in twenty", (rows) => {
    const normal = seededNormal(700 + rows);
    const limit = Number(workOut(beyond(rows), () => null));
    const median = (values: readonly number[]): number => {
      const sorted = [...values].sort((one, other) => one - other);
      return ((sorted[Math.ceil(rows / 2) - 1] ?? 0) + (sorted[Math.floor(rows / 2)] ?? 0)) / 2;
    };
    const sheets = Array.from({ length: 2000 }, () => Array.from({ length: rows }, () => normal()));
    const told = sheets.filter((shares) => {
      const distances = shares.map((share) => Math.abs(share - median(shares)));
      return (0.6745 * Math.max(...distances)) / median(distances) > limit;
    });
    expect(told.length).toBeGreaterThan(65);
    expect(told.length).toBeLessThan(135);
  });
});

const refused = new CellProblem("#VALUE!", "");

describe("A gathered row", () => {
  it.each<readonly [string, PlainRow, Plain]>([
    ["a finished run", run(0.71), "counted"],
    ["a run in doubt", run(0.71, { trust: "? check 9" }), "? in doubt: not counted"],
    ["a run with a contradiction beside it", run(0.71, { trust: "▲ check 5" }), "? in doubt: not counted"],
    ["a withheld share", run("withheld", { trust: "▲ check 5" }), "▲ withheld: not counted"],
    ["an unfinished run", run("", { trust: "" }), "· not finished: not counted"],
    ["a run with an error", run(refused), "? an error on its sheet"],
    ["a run whose mark shows an error", run(0.71, { trust: refused }), "? an error on its sheet"],
    [
      "a run whose sheet is gone",
      run(refused, { heading: refused, trust: refused, plusMinus: refused, name: refused }),
      '▲ gone, or its name holds "!"',
    ],
    ["a drying run", { trust: "✓", water: 0.5, plusMinus: 0.0003 }, "water only: no vapour share"],
    ["a drying run whose sheet is gone", { trust: refused, water: refused, heading: refused }, '▲ gone, or its name holds "!"'],
    ["a drying run with an error", { trust: refused, water: 0.5 }, "? an error on its sheet"],
  ])("of %s says so", (_, one, mark) => {
    const gathered = plainGathered([one, run(0.71), run(0.72), run(0.715)]);
    expect(gathered.row(1).mark).toBe(mark);
    // The others stand, and only what counts is counted.
    expect(gathered.head()[0]).toMatch(mark === "counted" ? /4 samples counted\.$/ : /3 samples counted\.$/);
    expect(marks(gathered).slice(1)).toEqual(["counted", "counted", "counted"]);
  });

  it("shows what its run shows, and nothing for a blank or an error", () => {
    const gathered = plainGathered([run(0.71, { ash: 0.03, name: "Asha" }), run("withheld", { water: null, trust: refused, plusMinus: "" })]);
    expect(gathered.row(1)).toEqual({
      ...{ run: "Run 1", trust: "✓", sample: "Asha", moistureWet: 0.5, volatile: 0.71, charYield: 1 - 0.71, ash: 0.03, plusMinus: 0.0006 },
      mark: "counted",
    });
    expect(gathered.row(2)).toMatchObject({ trust: "", moistureWet: "", volatile: "withheld", ash: null, plusMinus: "" });
  });

  it("brings water, char and ash to medians of what is trusted", () => {
    const gathered = plainGathered([
      ...[0.02, 0.03, 0.05].map((ash, index) => run(0.71 + index / 100, { ash, water: 0.4 + index / 10 })),
      run(0.9, { trust: "? check 2", ash: 0.9, water: 0.9 }),
      { trust: "✓", water: 0.7, plusMinus: 0.001 },
    ]);
    const { median, scatter } = gathered.sheet;
    const at = (row: number) => [AT.moistureWet, AT.volatile, AT.charYield, AT.ash].map((column) => gathered.value(cell(row, column)));
    // Water of 0.4, 0.5, 0.6 and 0.7; distances 0.15, 0.05, 0.05, 0.15
    expect(at(median)).toEqual([expect.closeTo(0.55, 12), expect.closeTo(0.72, 12), expect.closeTo(0.28, 12), 0.03]);
    expect(at(scatter)).toEqual([0.1, 0.01, 0.01, 0.01].map((mad): unknown => expect.closeTo(1.4826 * mad, 12)));
  });
});

describe("The target band", () => {
  const banded = (from: Plain, to: Plain): PlainGathered => {
    const gathered = plainGathered([...[0.69, 0.7, 0.75, 0.76].map((vapour) => run(vapour)), run(0.9, { trust: "? check 2" })]);
    gathered.type(gathered.sheet.band.from, from);
    gathered.type(gathered.sheet.band.to, to);
    return gathered;
  };

  it.each<readonly [Plain, Plain, string, readonly string[]]>([
    [70, 75, "2 of 4 counted samples outside the band", [", below band", "", "", ", above band"]],
    [70, null, "1 of 4 counted samples outside the band", [", below band", "", "", ""]],
    [null, 75, "1 of 4 counted samples outside the band", ["", "", "", ", above band"]],
    [null, null, "of the vapour, as percent: 70 to 75", ["", "", "", ""]],
    [0.7, 75, "? Type percent, such as 70: no fraction, no sign.", ["", "", "", ""]],
    [70, 0.75, "? Type percent, such as 70: no fraction, no sign.", ["", "", "", ""]],
    [70, "75 %", "? Type percent, such as 70: no fraction, no sign.", ["", "", "", ""]],
    [700, 750, "? Type percent, such as 70: no fraction, no sign.", ["", "", "", ""]],
    [75, 70, "? From is above to: swap them.", ["", "", "", ""]],
  ])("from %j to %j says %j", (from, to, said, beside) => {
    const gathered = banded(from, to);
    expect(gathered.head()[2]).toBe(said);
    expect(marks(gathered)).toEqual([...beside.map((words) => `counted${words}`), "? in doubt: not counted"]);
  });
});

describe("The plan of a gathered sheet", () => {
  const many = (count: number) => plainGathered(Array.from({ length: count }, (_, index) => run(0.7 + index / 1000)), [{ sheet: "Copy", why: "a copy with values: it follows no correction" }]); // prettier-ignore
  const plan = buildGatheredSheet(many(6).sheet.runs);

  it("fits what a sheet can take and holds no call of ours", () => {
    expect(() => checkSheetPlan(plan)).not.toThrow();
    const formulas = plan.cells.flatMap(({ formula }) => formula ?? []);
    expect(formulas.length).toBeGreaterThan(60);
    expect(formulas.filter((formula) => formula.includes("RETORT"))).toEqual([]);
    // The longest formula that Excel takes: Excel specifications and limits.
    expect(Math.max(...formulas.map((formula) => formula.length))).toBeLessThan(8192);
  });

  it("is called by these words", () => {
    const content = (column: string): unknown[] => plan.cells.flatMap(({ cell: at, content: held }) => (at.replace(/\d/g, "") === column && held !== undefined ? [held] : [])); // prettier-ignore
    expect(plan.name).toBe("Gathered runs");
    expect(content("A")).toEqual([
      ...["Several runs, one row a sample", "Target band, from %"],
      "Live: numbers and marks follow the run sheets; names of sheets are those of the gathering. Medians are of rows marked ✓.",
      ...["Run (sheet)", "Run 1", "Run 2", "Run 3", "Run 4", "Run 5", "Run 6", "Median", "Scatter, 1.4826 MAD", "LEFT OUT", "Copy"],
      "VAPOUR BY ROW",
    ]);
    expect(plan.cells.filter(({ style }) => style === "runBand").flatMap(({ content: held }) => held ?? [])).toEqual([
      ...["Run (sheet)", "Trust", "Sample", "Water", "Vapour", "Char", "Ash", "± 95 %", "Mark", "LEFT OUT", "VAPOUR BY ROW"],
      "of the dry sample, in percent; median and target band as lines; drawn in Excel and in the saved file",
    ]);
    expect(content("B")).toEqual(["Trust", "a copy with values: it follows no correction"]);
    expect(plan.entryRules.filter(({ promptTitle }) => promptTitle === "Target band")).toEqual(
      ["B4", "D4"].map((range) => ({
        range,
        allow: { kind: "number", atLeast: 1, atMost: 100 },
        promptTitle: "Target band",
        prompt: "Percent of the dry sample that is to leave as vapour, such as 70. One end may stay blank. What lies outside is marked.",
        refusal: "Type percent from 1 to 100 as a plain number, such as 70 for 70 %.",
      })),
    );
  });

  it("refuses what is typed over every calculated printed cell", () => {
    const guarded = plan.entryRules.filter(({ promptTitle }) => promptTitle === "Calculated").map(({ range }) => range);
    expect(guarded).toEqual(["A2:A3", "E4", "B7:C12", "H7:I12", "D7:F14", "G13:G14"]);
  });

  it("draws each value by itself, by the row it stands in, with the median and the ends of the band as lines", () => {
    const [chart] = plan.charts ?? [];
    expect(chart).toMatchObject({ title: "Vapour by row", xTitle: "row of this sheet", yTitle: "vapour, % of dry" });
    expect(chart?.series.map(({ name, draws = "" }) => [name, draws])).toEqual([
      ["counted", ""],
      ["not counted", ""],
      ["median", "limit"],
      ["band from", "limit"],
      ["band to", "limit"],
    ]);
    expect(chart?.series.map(({ y }) => y)).toEqual(["Y7:Y17", "Z7:Z17", "AB7:AB8", "AC7:AC8", "AD7:AD8"]);
    // A blank cell between two values keeps a line from joining them.
    expect(plan.cells.flatMap(({ cell: at }) => (/^Y\d/.test(at) && Number(at.slice(1)) > 6 ? [at] : []))).toEqual([
      "Y7",
      "Y9",
      "Y11",
      "Y13",
      "Y15",
      "Y17",
    ]);
  });

  it("draws a doubtful value beside the counted ones, and leaves out what is none", () => {
    const gathered = plainGathered([run(0.71), run(0.9, { trust: "? check 2" }), run("")]);
    const { first } = gathered.sheet;
    const drawn = (row: number) => [24, 25].map((column) => gathered.value(cell(row, column))).map((value) => (value instanceof CellProblem ? value.code : value)); // prettier-ignore
    expect([first, first + 2, first + 4].map(drawn)).toEqual([
      [71, "#N/A"],
      ["#N/A", 90],
      ["#N/A", "#N/A"],
    ]);
  });

  it("prints within a page's width, repeats its head, and begins a page rather than cut the chart", () => {
    const printed = plan.columnWidths.slice(0, 9).reduce((sum, width) => sum + pixelsOf(width), 0);
    // A4: 595 points less the margins of 43.2, at 82 %; a pixel is 0.75 points; 5 % slack for wider columns.
    expect(printed * 1.05 * 0.75 * 0.82).toBeLessThan(595 - 43.2);
    expect(plan.print).toMatchObject({ area: `A1:I${many(6).sheet.lastRow}`, titleRows: 6, scale: 82, breaksBefore: [] });
    const { sheet } = many(45);
    expect(sheet.breaks).toEqual([sheet.curves.heading]);
    // Letter: 792 points less the margins of 54.
    const page = (792 - 54) / 0.82;
    const points = (to: number): number => sheet.heights.slice(0, to).reduce((sum, height) => sum + height, 0);
    expect(points(sheet.curves.heading - 1)).toBeLessThan(page);
    expect(points(sheet.lastRow)).toBeGreaterThan(page);
  });

  it("begins in the first box of the band", () => {
    expect(plan.startAt).toBe(placeOf(many(6).sheet.band.from));
  });
});
