import { fromBefore } from "../../../src/problems/sharing/sharingProblems";
import { finalValues } from "../../../src/sharing/finalValues";
import { withDoubts } from "../../../src/workbench/withDoubts";
import { openFile } from "../../../src/workbench/xlsx/openXlsx";
import type { CellContent } from "../../../src/workbook/Workbook";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";
import { packageOf } from "./packageOf";

jest.setTimeout(120_000);

// Day 43101 from 1904 is 2 January 2022, a Sunday (43101 + 1462 = 44563 from 1900); 1904 itself begins with day 0.
const DAY = 43_101;
const SHARE = (65.2 - 51.21) / (65.2 - 25);

/** B1 to B3 are weighings, B4 shows a day, B5 is the same day as a plain number. */
function fileWith(formula: string, value: number | string, look = 0): Uint8Array<ArrayBuffer> {
  const text = typeof value === "string" ? ' t="str"' : "";
  return packageOf({
    sheets: {
      Run: `<row r="1"><c r="A1" s="${look}"${text}><f>${formula.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;")}</f><v>${value}</v></c><c r="B1"><v>25</v></c></row><row r="2"><c r="A2"><f>RETORT.MOISTURE.WET(B1,B2,B3)</f><v>${SHARE}</v></c><c r="B2"><v>65.2</v></c></row><row r="3"><c r="B3"><v>51.21</v></c></row><row r="4"><c r="B4" s="1"><v>${DAY}</v></c></row><row r="5"><c r="B5"><v>${DAY}</v></c></row>`,
    },
    before: '<workbookPr date1904="1"/>',
    further: {
      "xl/styles.xml":
        '<styleSheet><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>',
    },
  });
}

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

const shown = async (cell: string): Promise<CellContent> => (await open.workbook.read("Run", cell)).rows[0]?.[0]?.value ?? null;

test.each([
  ["YEAR(43101)+B1", 2047],
  ["MONTH(B5)+B1", 26],
  ["IF(B1>30,YEAR(B5),B1)", 25],
  ["B4+B1", DAY + 25],
  ["B4*1", DAY],
  ["DATE(2022,1,2)+B1*0", DAY],
  ["IF(B4>50000,B1,0)", 0],
  ['TEXT(B5,"mmm")&B1', "Jan25"],
  ["WEEKDAY(B5)+B1", 26],
] as const)("%s keeps what a file that counts from 1904 holds, and is from before after an edit", async (formula, value) => {
  const { opened } = await openFile(open.engine, fileWith(formula, value));
  const workbook = withDoubts(open.workbook, { kept: opened.kept, lacking: [] });
  expect(await shown("A1")).toBe(value);
  await expect(finalValues(workbook, "Run")).resolves.toBeDefined();
  await open.type("Run", formula.includes("B1") ? "B1" : "B4", 31);
  await open.settled();
  expect(await shown("A1")).toBe(value);
  expect(opened.kept?.fromBefore()).toEqual(["Run!A1"]);
  await expect(finalValues(workbook, "Run", { asShown: true })).rejects.toThrow(fromBefore("Run", [{ cell: "A1" }]).message);
});

test.each([
  ["YEAR(B4)+B1", 2047, 2052, 0],
  ["B4-DATE(2022,1,1)+B1", 26, 31, 0],
  ["IF(B4>DATE(2021,1,1),B1,0)", 25, 30, 0],
  ['TEXT(B1,"0.0")', "25.0", "30.0", 0],
  ["B1*2", 50, 60, 0],
  ["B4+B1", DAY + 25, DAY + 30 + 1462, 1],
] as const)("%s means the same however days are counted, and goes on calculating", async (formula, inFile, after, look) => {
  const { opened } = await openFile(open.engine, fileWith(formula, inFile, look));
  await open.type("Run", "B1", 30);
  await open.settled();
  expect(await shown("A1")).toBe(after);
  expect(opened.kept?.fromBefore()).toEqual([]);
});
