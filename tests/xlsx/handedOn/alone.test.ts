import { fixedOn, fixedUnfollowed } from "../../../src/problems/sharing/plainCellProblems";
import { readBook } from "../../../src/command/book/Book";
import { openFile } from "../../../src/workbench/xlsx/openXlsx";
import type { CellContent } from "../../../src/workbook/Workbook";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import { escapedText } from "../../../src/xlsx/package/parts/markup";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { packageOf } from "../../workbench/xlsx/packageOf";

jest.setTimeout(60_000);

const DATE = "2027-01-15";
const SHARE = (65.2 - 51.21) / 40.2;

type Held = Readonly<Record<string, number | string | readonly [formula: string, value: number | string]>>;

/** The rows of a sheet: values, and formulas with what they give. */
function rows(held: Held): string {
  const byRow = new Map<number, string[]>();
  for (const [cell, content] of Object.entries(held)) {
    const row = Number(/\d+/.exec(cell)?.[0]);
    const [formula, value] = Array.isArray(content) ? (content as readonly [string, number | string]) : ["", content as number | string];
    const inside = `${formula === "" ? "" : `<f>${escapedText(formula)}</f>`}<v>${escapedText(String(value))}</v>`;
    byRow.set(row, [...(byRow.get(row) ?? []), `<c r="${cell}"${typeof value === "string" ? ' t="str"' : ""}>${inside}</c>`]);
  }
  return [...byRow].sort(([one], [other]) => one - other).map(([row, cells]) => `<row r="${row}">${cells.join("")}</row>`).join(""); // prettier-ignore
}

const tin: Held = { B1: 25, B2: 65.2, B3: 51.21, B4: ["RETORT.MOISTURE.WET(B1,B2,B3)", SHARE] };

// Every way in which the tray reads the tin, and what it gives.
const reading: Record<string, readonly [string, number | string]> = {
  E1: ["'Tin (a)'!B4*2", 2 * SHARE],
  E2: ["vess*2", 50],
  E3: ["nest+B1", 76],
  E4: ["called*2", 2 * SHARE],
  E5: ["loc+1", 66.2],
  E6: ["SUM(many)", 141.41],
  E7: ["INDIRECT(\"'Tin (a)'!B1\")+1", 26],
  E8: ['INDIRECT("\'"&A1&"\'!B"&A2)', 65.2],
  E9: ["INDIRECT(A3)*2", 50],
  E10: ['INDIRECT("\'"&A1&"\'!B"&ROW()-9)', 25],
  E11: ["INDIRECT(\"'Tin (a)'!R2C2\",FALSE)", 65.2],
  E12: ["OFFSET('Tin (a)'!B1,A2,0)", 51.21],
  E13: ["IF(B1>20,called,0)", SHARE],
  E14: ["IFERROR(vess/0,1)", 1],
  E15: ["RETORT.MOISTURE.WET(vess,B2,B3)", SHARE],
  E16: ["RETORT.MOISTURE.WET(INDIRECT(\"'Tin (a)'!B1\"),B2,B3)", SHARE],
  E17: ['HYPERLINK("#\'Tin (a)\'!A1","go")', "go"],
  E18: ["INDIRECT(Far!A1)", 51.21],
  E19: ["SUM(span)", 90.2],
  E20: ["SUM(Tray:Far!B1)", 50],
  E21: ["E1+E2", 50 + 2 * SHARE],
};
// Where nothing says to which cells it refers.
const untold = { F1: ['INDIRECT(LOWER("B1"))', 25] } as const;
const staying: Record<string, readonly [string, number]> = {
  G1: ["RETORT.MOISTURE.WET(B1,B2,B3)", SHARE],
  G2: ["here*2", 50],
  G3: ["half*2", 1],
  G4: ["OFFSET(B1,1,0)", 65.2],
};

const content = packageOf({
  sheets: {
    Tray: rows({ A1: "Tin (a)", B1: 25, A2: 2, B2: 65.2, A3: "vess", B3: 51.21, ...reading, ...untold, ...staying }),
    "Tin (a)": rows(tin),
    Far: rows({ A1: "'Tin (a)'!B3" }),
  },
  after: `<definedNames>${Object.entries({
    called: "RETORT.MOISTURE.WET('Tin (a)'!$B$1,'Tin (a)'!$B$2,'Tin (a)'!$B$3)",
    half: "0.5",
    here: "Tray!$B$1",
    many: "OFFSET('Tin (a)'!$B$1,0,0,COUNT('Tin (a)'!$B$1:$B$3),1)",
    nest: "vess*2+1",
    span: "'Tin (a)'!$B$1:INDEX('Tin (a)'!$B:$B,2)",
    vess: "'Tin (a)'!$B$1",
  })
    .map(([name, formula]) => `<definedName name="${name}">${formula}</definedName>`)
    .join("")}<definedName name="loc" localSheetId="0">'Tin (a)'!$B$2</definedName></definedNames>`,
});

let copy: HeadlessWorkbook;
beforeAll(async () => {
  const sheets = (await readBook(content)).sheets.filter(({ name }) => name === "Tray").map((sheet) => sheet.reading);
  const made = await plainFile(content, { sheets, date: DATE });
  copy = await openHeadlessWorkbook();
  await openFile(copy.engine, made.content);
  await copy.settled();
});
afterAll(() => copy.close());

const shown = async (cell: string): Promise<CellContent> => (await copy.workbook.read("Tray", cell)).rows[0]?.[0]?.value ?? null;
const near = (value: number | string): unknown => (typeof value === "number" ? expect.closeTo(value, 12) : value);

test.each(Object.entries({ ...reading, ...untold, ...staying }))("taken out of its workbook, %s = %s keeps what it gave", async (cell, [, value]) => {
  expect(await shown(cell)).toEqual(near(value));
});

test("what is fixed says so once what it read on its own sheet changed, and nothing else does", async () => {
  const fixed = fixedOn(DATE);
  await copy.type("Tray", "A2", 3);
  await copy.settled();
  for (const cell of ["E8", "E12"]) expect([cell, await shown(cell)]).toEqual([cell, fixed]);
  for (const cell of ["E1", "E2", "E7", "E9", "E15", "G1"])
    expect([cell, await shown(cell)]).toEqual([cell, near(({ ...reading, ...staying }[cell] ?? [])[1] as number)]);
  // It may have read any of them.
  expect(await shown("F1")).toBe(fixedUnfollowed(DATE));
  await copy.type("Tray", "A2", 2);
  await copy.type("Tray", "B1", 30);
  await copy.settled();
  for (const cell of ["E3", "E13", "E20"]) expect([cell, await shown(cell)]).toEqual([cell, fixed]);
  expect(await shown("E8")).toBe(65.2);
  expect(await shown("G1")).toBeCloseTo((65.2 - 51.21) / 35.2, 12);
});
