import { notCheckedHere, notWhatFormulasGive } from "../../src/command/words/refusals";
import { CommandFolder, ran } from "./inFolder";
import { bookOf } from "./longBook";

jest.setTimeout(120_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

// (moist - dry) / (moist - vessel) of 25 g vessels: 3.5/10 = 0.35, 9/25 = 0.36, 12/40 = 0.3, worked by hand.
const ROWS = [[35, 31.5], [50, 41], [65, 53]] as const; // prettier-ignore
const SHARES = [0.35, 0.36, 0.3];
const CALL = "_xldudf_RETORT_MOISTURE_WET(A1:A3,B1:B3,C1:C3)";

const number = (cell: string, value: number): string => `<c r="${cell}"><v>${value}</v></c>`;
const formula = (cell: string, text: string, value: number): string => `<c r="${cell}"><f>${text}</f><v>${value}</v></c>`;
const array = (cell: string, area: string, text: string, value: number): string =>
  `<c r="${cell}" cm="1"><f t="array" ref="${area}">${text}</f><v>${value}</v></c>`;

/** A sheet with a spill of moistures in D1:D3, and further cells by row. */
const tray = (further: Readonly<Record<number, string>>, hidden: readonly number[] = []): string =>
  `<sheetData>${[1, 2, 3, 4, 5].map((row) => {
    const [moist = 0, dry = 0] = ROWS[row - 1] ?? [];
    const weighed = row > 3 ? "" : number(`A${row}`, 25) + number(`B${row}`, moist) + number(`C${row}`, dry);
    const share = row === 1 ? array("D1", "D1:D3", CALL, 0.35) : row > 3 ? "" : number(`D${row}`, SHARES[row - 1] ?? 0);
    return `<row r="${row}"${hidden.includes(row) ? ' hidden="1"' : ""}>${weighed}${share}${further[row] ?? ""}</row>`;
  }).join("")}</sheetData>`; // prettier-ignore

const put = async (inside: string, names = ""): Promise<string> => files.put("run.xlsx", await bookOf([["Tray", inside]], { names }));
const said = async (...words: readonly string[]): Promise<string> => {
  const { code, notes } = await ran(...words);
  return code === 0 ? "done" : notes.replace(/^retort: |\n$/g, "");
};
const everyWay = async (book: string, ...flags: readonly string[]): Promise<readonly string[]> => [
  await said("share", book, "--as", "values", "-o", files.at("v.xlsx"), "--overwrite", ...flags),
  await said("share", book, "--as", "plain-cells", "-o", files.at("p.xlsx"), "--overwrite", ...flags),
  await said("record", book, ...flags),
];

const NAMES =
  '<definedNames><definedName name="\\p">Tray!$A$1</definedName><definedName name="shares">_xlfn.ANCHORARRAY(Tray!$D$1)</definedName></definedNames>';

describe("what a spreadsheet saves of formulas over spills, sorted arrays, LET, @, names and what-if tables", () => {
  test.each<[what: string, cell: string, sheet: (value: number) => string, right: number]>([
    ["SUM of a spill", "E1", (value) => tray({ 1: formula("E1", "SUM(_xlfn.ANCHORARRAY(D1))", value) }), 1.01],
    ["a spill times 100", "E1", (value) => tray({ 1: array("E1", "E1:E3", "_xlfn.ANCHORARRAY(D1)*100", 35), 2: number("E2", 36), 3: number("E3", value) }), 30], // prettier-ignore
    ["SORT", "E1", (value) => tray({ 1: array("E1", "E1:E3", "_xlfn._xlws.SORT(D1:D3,,-1)", 0.36), 2: number("E2", 0.35), 3: number("E3", value) }), 0.3], // prettier-ignore
    ["@", "E2", (value) => tray({ 2: formula("E2", "_xlfn.SINGLE(D1:D3)*2", value) }), 0.72],
    ["LET", "E1", (value) => tray({ 1: formula("E1", "_xlfn.LET(_xlpm.w,_xldudf_RETORT_MOISTURE_WET(A1,B1,C1),_xlpm.w*2)", value) }), 0.7],
    ["MAP", "E1", (value) => tray({ 1: formula("E1", "SUM(_xlfn.MAP(B1:B3,C1:C3,_xlfn.LAMBDA(_xlpm.b,_xlpm.c,_xldudf_RETORT_MOISTURE_WET(25,_xlpm.b,_xlpm.c))))", value) }), 1.01], // prettier-ignore
    ["a name with a backslash", "E1", (value) => tray({ 1: formula("E1", "_xldudf_RETORT_MOISTURE_WET(\\p,B2,C2)", value) }), 0.36],
    ["a name of a spill", "E1", (value) => tray({ 1: formula("E1", "MAX(shares)", value) }), 0.36],
    // 18.5/25 = 0.74, worked by hand: 50 g in the place of B1.
    ["a what-if table", "F5", (value) => tray({ 4: formula("F4", "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)", 0.35), 5: `${number("E5", 50)}<c r="F5"><f t="dataTable" ref="F5" dt2D="0" dtr="0" r1="B1"/><v>${value}</v></c>` }), 0.74], // prettier-ignore
    ["what reads a call and is known to the grid alone", "E1", (value) => tray({ 1: formula("E1", "RANK(D1,D1:D3)+LCM(2,3)", value) }), 8],
  ])("%s: right passes, and from before is refused by name", async (_, cell, sheet, right) => {
    expect(await everyWay(await put(sheet(right), NAMES))).toEqual(["done", "done", "done"]);
    const refused = [notWhatFormulasGive([`Tray!${cell}`]), notCheckedHere([`Tray!${cell}`])];
    for (const says of await everyWay(await put(sheet(right + 0.05), NAMES))) expect(refused).toContain(says);
  });

  test("subtotals, of all rows or of those shown", async () => {
    const sheet = (shown: number, all: number): string =>
      tray({ 4: formula("E4", "SUBTOTAL(109,D1:D3)", shown), 5: formula("E5", "SUBTOTAL(9,D1:E4)", all) }, [2]);
    for (const all of [1.01, 0.65]) expect((await everyWay(await put(sheet(0.65, all))))[0]).toBe("done");
    expect((await everyWay(await put(sheet(1.01, 1.01))))[0]).toBe(notWhatFormulasGive(["Tray!E4"]));
    expect((await everyWay(await put(sheet(0.65, 0.9))))[0]).toBe(notCheckedHere(["Tray!E5"]));
  });
});

describe("what cannot be checked here", () => {
  const inside = tray({ 1: formula("E1", "UNHEARD(D1)", 7) });

  test("is refused by name, and shared by choice", async () => {
    expect(await everyWay(await put(inside))).toEqual(Array(3).fill(notCheckedHere(["Tray!E1"])));
    expect(await everyWay(await put(inside), "--keep-errors")).toEqual(["done", "done", "done"]);
    expect(notCheckedHere(["Tray!E1"])).toBe(
      "Whether Tray!E1 holds what its cell formula gives cannot be checked here, and it is calculated from a Retort function, so what the file holds may be from before. Give --recalculate, or let the spreadsheet with the add-in calculate and save the workbook, and give --keep-errors to share that value as saved.",
    );
    expect(notCheckedHere(["Tray!E1", "Tray!E2"], true)).toBe(
      "Whether Tray!E1 and Tray!E2 hold what their cell formulas give cannot be checked here, and they are calculated from a Retort function, so what the file holds may be from before. Let the spreadsheet with the add-in calculate and save the workbook, and give --keep-errors to share those values as saved.",
    );
  });

  test("on another sheet counts where it is read", async () => {
    const sum = (reads: string): string => `<sheetData><row r="1">${formula("A1", reads, 7)}${formula("B1", "_xldudf_RETORT_MOISTURE_WET(25,35,31.5)", 0.35)}</row></sheetData>`; // prettier-ignore
    const share = async (reads: string): Promise<string> =>
      said("share", files.put("two.xlsx", await bookOf([["Sum", sum(reads)], ["Tray", inside]])), "--as", "values", "--sheet", "Sum", "-o", files.at("v.xlsx"), "--overwrite"); // prettier-ignore
    expect(await share("Tray!E1")).toBe(notCheckedHere(["Tray!E1"]));
    expect(await share("3+4")).toBe("done");
  });

  test("is left alone where no call of ours is behind it", async () => {
    expect(await everyWay(await put(tray({ 1: formula("E1", "UNHEARD(B1)", 7) })))).toEqual(["done", "done", "done"]);
  });
});

test("a what-if table keeps what the file holds when formulas are calculated here, and is refused where that is from before", async () => {
  const table = (asked: string, value: number): string =>
    tray({ 4: formula("F4", asked, 0.35), 5: `${number("E5", 50)}<c r="F5"><f t="dataTable" ref="F5" dt2D="0" dtr="0" r1="B1"/><v>${value}</v></c>` }); // prettier-ignore
  const wet = "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)";
  expect((await everyWay(await put(table(wet, 0.74)), "--recalculate"))[0]).toBe("done");
  expect(await everyWay(await put(table(wet, 0.7)), "--recalculate")).toEqual(Array(3).fill(notWhatFormulasGive(["Tray!F5"], true)));
  expect((await everyWay(await put(table(`${wet}+0*NOW()`, 0.7)), "--recalculate"))[0]).toBe(notCheckedHere(["Tray!F5"], true));
});

describe("what cannot be calculated here beside a call of ours", () => {
  test.each(['GETPIVOTDATA("x",A1)', "MYUDF(A1)", "FORECAST.ETS(A1,B1:B3,C1:C3)", 'CUBEVALUE("x",A1)', 'RTD("x",,"y")'])(
    "%s is handed on by choice alone, calculated anew or not, and what needs it too",
    async (strange) => {
      const cell = formula("E1", `${strange}+_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)`, 0.5);
      const book = await put(tray({ 1: cell + formula("F1", "E1*2", 1) }));
      for (const says of await everyWay(book)) expect(says).toBe(notCheckedHere(["Tray!E1"]));
      expect(await everyWay(book, "--keep-errors")).toEqual(["done", "done", "done"]);
      for (const says of await everyWay(book, "--recalculate")) expect(says).toBe(notCheckedHere(["Tray!E1"], true));
      expect(await everyWay(book, "--recalculate", "--keep-errors")).toEqual(["done", "done", "done"]);
    },
  );
});
