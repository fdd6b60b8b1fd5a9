import { openXlsx } from "../../../src/workbench/xlsx/openXlsx";
import { damagedPart, tooMuchInFile } from "../../../src/problems/files/fileProblems";
import { DamagedFile, FileParts } from "../../../src/xlsx/parts/FileParts";
import { MOST_CELLS } from "../../../src/workbench/xlsx/readWorkbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";
import { packageOf, zipOf } from "./packageOf";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  await open.type(FIRST_SHEET, "A1", "typed before");
});
afterAll(() => open.close());

const bytes = (...parts: readonly (string | readonly number[])[]): Uint8Array<ArrayBuffer> =>
  new Uint8Array(Buffer.concat(parts.map((part) => (typeof part === "string" ? Buffer.from(part) : Buffer.from([...part])))));
const wide = (text: string): number[] => [...Buffer.from(text, "utf16le")];
const CONTAINER = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Array<number>(504).fill(0)];
const OPEN_ELSEWHERE = "Open it in the program it comes from, save it as .xlsx and open that here.";
const CHOOSE_LESS = "Nothing was changed. Take out what is not needed, in the program the file comes from, and open what is left.";
/** Which part of the file is damaged, as the command line says it. */
const inCells = (why: string): string => damagedPart("xl/worksheets/sheet1.xml", why);
const DAMAGED = "This file is not an .xlsx workbook or is damaged, so nothing was changed. Choose a file saved as .xlsx.";
const XLSX_ALONE = "Choose a file saved as .xlsx.";
const TEXT =
  "This file is text, such as a .csv list, in which nobody can tell decimal commas from separators, so nothing was changed. Open it in a spreadsheet, look at its numbers, save it as .xlsx and open that here.";
const small = packageOf({ sheets: { Kiln: '<row><c t="str"><v>Shells</v></c></row>' } });

test.each<[string, Uint8Array<ArrayBuffer>, string]>([
  ["an empty file", bytes(), "This file is empty, so nothing was changed. It may not have been downloaded to its end; fetch it again."],
  [
    "a file with a password",
    bytes(CONTAINER, wide("EncryptionInfo"), wide("EncryptedPackage")),
    "This file is locked with a password, or by rules of an organisation, so nothing was changed. Open it in the program it comes from, save a copy without the password and open that here.",
  ],
  ["an .xls file", bytes(CONTAINER, wide("Workbook")), `This file is in an older Office format (.xls), so nothing was changed. ${OPEN_ELSEWHERE}`],
  [
    "an .xls file of the first kinds",
    bytes([9, 0, 4, 0, 2, 0]),
    `This file is in an older Office format (.xls), so nothing was changed. ${OPEN_ELSEWHERE}`,
  ],
  [
    "an .ods file",
    zipOf({ mimetype: "application/vnd.oasis.opendocument.spreadsheet", "content.xml": "<x/>" }),
    `This file is an OpenDocument file (.ods), so nothing was changed. ${OPEN_ELSEWHERE}`,
  ],
  [
    "an .xlsb file",
    zipOf({ "[Content_Types].xml": "<Types/>", "xl/workbook.bin": "x" }),
    `This file is a binary workbook (.xlsb), so nothing was changed. ${OPEN_ELSEWHERE}`,
  ],
  [
    "a .numbers file",
    zipOf({ "Index/Document.iwa": "x" }),
    "This file is a document of Apple's office programs (.numbers), so nothing was changed. Export it as .xlsx and open that here.",
  ],
  [
    "a .docx file",
    zipOf({ "[Content_Types].xml": "<Types/>", "word/document.xml": "<x/>" }),
    `This file is a document or slides, not a workbook, so nothing was changed. ${XLSX_ALONE}`,
  ],
  [
    "a .zip file",
    zipOf({ "runs.xlsx": "x" }),
    "This file is a .zip archive without a workbook's parts, so nothing was changed. Unpack it and choose the .xlsx file in it.",
  ],
  ["a .csv file", bytes("Batch;Tin (g)\nShells;212,4\n"), TEXT],
  ["a text in letters of two bytes", bytes([0xff, 0xfe], wide("Batch")), TEXT],
  ["a picture", bytes([0x89, 0x50, 0x4e, 0x47, 13, 10]), `This file is a picture, so nothing was changed. ${XLSX_ALONE}`],
  ["a photograph", bytes([0xff, 0xd8, 0xff, 0xe0]), `This file is a picture, so nothing was changed. ${XLSX_ALONE}`],
  ["a PDF", bytes("%PDF-1.7"), `This file is a PDF document, so nothing was changed. ${XLSX_ALONE}`],
  [
    "a web page named .xls",
    bytes("<html><table><tr><td>1</td></tr></table></html>"),
    `This file is a web page or XML text, whatever its name ends with, so nothing was changed. ${OPEN_ELSEWHERE}`,
  ],
  ["a program", bytes([0x7f, 0x45, 0x4c, 0x46, 2, 1, 1, 0]), DAMAGED],
  ["a workbook cut off", small.slice(0, -30), DAMAGED],
  ["a workbook with a changed byte in its cells", changed(small, "xl/worksheets/sheet1.xml"), inCells("Error: Invalid CRC32")],
  ["a workbook of broken XML", packageOf({ sheets: { Kiln: "<row><c>" } }), inCells("1:42: unexpected close tag.")],
  ["a number that is none", packageOf({ sheets: { Kiln: "<row><c><v>1,5</v></c></row>" } }), inCells("1,5 is no number")],
  ["a shared text that is not there", packageOf({ sheets: { Kiln: '<row><c t="s"><v>7</v></c></row>' } }), inCells("no shared text 7")],
  ["a row below the last", packageOf({ sheets: { Kiln: '<row r="1048577"><c><v>1</v></c></row>' } }), inCells("no sheet has a row 1048577")],
  ["a row above the first", packageOf({ sheets: { Kiln: '<row r="-2"><c r="A-2"><v>1</v></c></row>' } }), inCells("no sheet has a row -2")],
  ["a row that is no number", packageOf({ sheets: { Kiln: '<row r="one"><c><v>1</v></c></row>' } }), inCells("no sheet has a row one")],
  ["a column behind the last", packageOf({ sheets: { Kiln: '<row r="1"><c r="XFE1"><v>1</v></c></row>' } }), inCells("no sheet has a cell XFE1")],
  ["a cell of another row", packageOf({ sheets: { Kiln: '<row r="1"><c r="A2"><v>1</v></c></row>' } }), inCells("a cell of row 1 is called A2")],
  ["a cell that names none", packageOf({ sheets: { Kiln: '<row r="1"><c r="kiln"><v>1</v></c></row>' } }), inCells("a cell of row 1 is called kiln")],
  [
    "two sheets of one name",
    packageOf({ sheets: { Run: "<row><c><v>1</v></c></row>", run: "<row><c><v>1</v></c></row>" } }),
    damagedPart("xl/workbook.xml", "two sheets are called run"),
  ],
  ["no sheet", packageOf({ sheets: {} }), "This workbook has no sheet with cells, so nothing was changed. Choose another file."],
  [
    "very many sheets",
    packageOf({ sheets: Object.fromEntries(Array.from({ length: 201 }, (_, index) => [`S${index}`, ""])) }),
    `This workbook has 201 sheets; 200 can be opened here. ${CHOOSE_LESS}`,
  ],
  [
    "a very long text",
    packageOf({ sheets: { Kiln: `<row><c t="inlineStr"><is><t>${"x".repeat(32_768)}</t></is></c></row>` } }),
    `This workbook holds a text of 32768 characters; a cell can hold 32767. ${CHOOSE_LESS}`,
  ],
  [
    "a very long formula",
    packageOf({ sheets: { Kiln: `<row><c><f>${"1+".repeat(5000)}1</f></c></row>` } }),
    `This workbook holds a cell formula of 10001 characters; a cell can hold 8192. ${CHOOSE_LESS}`,
  ],
  [
    "more cells than the grid can hold",
    packageOf({ sheets: { Kiln: `<row>${"<c><v>1</v></c>".repeat(1000)}</row>`.repeat(MOST_CELLS / 1000 + 1) } }),
    `This workbook holds more than 200000 filled cells. ${CHOOSE_LESS}`,
  ],
  [
    "a small file that unpacks to 310 MB",
    saying(packageOf({ sheets: { Kiln: "" }, further: { "xl/sharedStrings.xml": "<sst/>" } }), 310_000_000),
    `This file unpacks to more than a workbook can hold here. ${CHOOSE_LESS}`,
  ],
])("%s is refused in words, and what was open stays", async (_what, content, sentence) => {
  await expect(openXlsx(open.engine, content)).rejects.toThrow(expect.objectContaining({ name: "WorkbookProblem", message: sentence }) as Error);
  expect(await open.workbook.sheetNames()).toEqual([FIRST_SHEET]);
  expect((await open.workbook.read(FIRST_SHEET, "A1")).rows[0]?.[0]?.value).toBe("typed before");
});

/** The file with one bit of that part turned over. */
function changed(file: Uint8Array<ArrayBuffer>, part: string): Uint8Array<ArrayBuffer> {
  const copy = file.slice();
  const at = Buffer.from(copy.buffer).indexOf(part) + part.length + 12;
  copy[at] = (copy[at] ?? 0) ^ 4;
  return copy;
}

/** The file, which now says of every part that it unpacks to so many bytes. */
function saying(file: Uint8Array<ArrayBuffer>, size: number): Uint8Array<ArrayBuffer> {
  const copy = Buffer.from(file);
  for (let at = copy.indexOf("PK\u0001\u0002"); at >= 0; at = copy.indexOf("PK\u0001\u0002", at + 1)) copy.writeUInt32LE(size, at + 24);
  return new Uint8Array(copy);
}

const SHEET = "xl/worksheets/sheet1.xml";

test("what parts unpack to is counted, all together, and by what comes out of them", async () => {
  const lengthOf = async (parts: FileParts): Promise<number> => {
    let length = 0;
    for await (const piece of parts.pieces(SHEET)) length += piece.length;
    return length;
  };
  await expect(lengthOf(await FileParts.of(small, 84))).rejects.toThrow(tooMuchInFile);
  expect(await lengthOf(await FileParts.of(small, 85))).toBe(85);
  const twice = await FileParts.of(small, 169);
  expect(await lengthOf(twice)).toBe(85);
  await expect(lengthOf(twice)).rejects.toThrow(tooMuchInFile);
  const atOnce = await FileParts.of(small, 169);
  const both = await Promise.allSettled([lengthOf(atOnce), lengthOf(atOnce)]);
  expect(both.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
});

test.each([0, 84, 86])("a part of 85 bytes that says it has %d is refused as damaged", async (size) => {
  const parts = await FileParts.of(saying(small, size));
  const read = async (): Promise<void> => {
    for await (const piece of parts.pieces(SHEET)) expect(piece.length).toBeLessThanOrEqual(85);
  };
  await expect(read()).rejects.toThrow(DamagedFile);
});
