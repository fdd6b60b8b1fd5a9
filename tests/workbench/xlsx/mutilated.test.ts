// Archives in every shape that writers give them, and with every part of them damaged: each is opened with the values it holds or refused in a
// sentence, and soon. Jest fails a test in which a promise is rejected where nobody listens.
import type { ICellData } from "@univerjs/core";
import { Uint8ArrayReader, Uint8ArrayWriter, ZipWriter, type ZipWriterAddDataOptions } from "@zip.js/zip.js";
import { damagedPart, notAWorkbookFile, noSheetsInFile, otherFile, tooMuchInFile } from "../../../src/problems/files/fileProblems";
import { readWorkbook } from "../../../src/workbench/xlsx/readWorkbook";
import { WorkbookProblem } from "../../../src/workbook/Workbook";
import { packageOf, partsOf, zipOf } from "./packageOf";

jest.setTimeout(60_000);

const MOST_MS = 10_000;
const SENTENCES: readonly string[] = [notAWorkbookFile, noSheetsInFile, tooMuchInFile, ...Object.values(otherFile)];
const OPENED = "opened";
/** A sentence that names the damaged part, and may say anything of why. */
const NAMED = damagedPart("PART", "WHY");
const PIECES = NAMED.split(/PART|WHY/);
const asNamed = (said: string): string =>
  said.startsWith(PIECES[0] ?? "") && said.includes(PIECES[1] ?? "") && said.endsWith(PIECES[2] ?? "") ? NAMED : said;

const workbook = {
  sheets: { Kiln: '<row><c t="s"><v>0</v></c><c><v>212.4</v></c></row>', Salts: "<row><c><v>3</v></c></row>" },
  further: { "xl/sharedStrings.xml": `<sst><si><t>Shells</t></si></sst>${"<!-- a comment that packs well -->".repeat(50)}` },
};
const whole = packageOf(workbook);
const parts = partsOf(workbook);

/** "opened" with every value right, or the sentence. */
async function outcome(content: Uint8Array<ArrayBuffer>): Promise<string> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<string>((resolve) => (timer = setTimeout(resolve, MOST_MS, "still reading")));
  const read = readWorkbook(content).then(
    ({ sheets }) => {
      const values = sheets.map(({ sheet }) =>
        Object.values(sheet.data.cellData ?? {}).map((row) => Object.values(row as Readonly<Record<number, ICellData>>).map(({ v }) => v)),
      );
      return JSON.stringify(values) === '[[["Shells",212.4]],[[3]]]' ? OPENED : `opened with ${JSON.stringify(values)}`;
    },
    (problem: unknown) => (problem instanceof WorkbookProblem ? problem.message : `thrown: ${String(problem)}`),
  );
  const found = await Promise.race([read, late]);
  clearTimeout(timer);
  return found;
}

async function written(how: ZipWriterAddDataOptions, more: Readonly<Record<string, string>> = {}): Promise<Uint8Array<ArrayBuffer>> {
  const writer = new ZipWriter(new Uint8ArrayWriter(), { useWebWorkers: false });
  for (const [name, content] of Object.entries({ ...parts, ...more }))
    await writer.add(name, name.endsWith("/") ? undefined : new Uint8ArrayReader(Buffer.from(content)), how);
  return new Uint8Array(await writer.close());
}

const joined = (...pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => new Uint8Array(Buffer.concat(pieces));

/** The file with a number written over what stands so many bytes behind each of these marks, or behind the one of that index. */
function over(mark: string, offset: number, value: number, bytes = 2, only?: number): Uint8Array<ArrayBuffer> {
  const copy = Buffer.from(whole);
  let index = 0;
  for (let at = copy.indexOf(mark); at >= 0; at = copy.indexOf(mark, at + 1), index++)
    if (only === undefined || only === index) copy.writeUIntLE(value, at + offset, bytes);
  return new Uint8Array(copy);
}
const [FILE, ENTRY, END] = ["PK\u0003\u0004", "PK\u0001\u0002", "PK\u0005\u0006"];
const SHEET_ENTRY = Object.keys(parts).indexOf("xl/worksheets/sheet1.xml");

describe("archives as writers make them", () => {
  test.each<[string, () => Promise<Uint8Array<ArrayBuffer>> | Uint8Array<ArrayBuffer>]>([
    ["packed", () => whole],
    ["stored", () => written({ level: 0 })],
    ["with sizes behind the data, as streaming writers do", () => written({ dataDescriptor: true })],
    ["with sizes behind the data and no mark before them", () => written({ dataDescriptor: true, dataDescriptorSignature: false })],
    ["stored, with sizes behind the data", () => written({ level: 0, dataDescriptor: true })],
    ["with sizes of 64 bits", () => written({ zip64: true })],
    ["with sizes of 64 bits behind the data", () => written({ zip64: true, dataDescriptor: true })],
    ["with folders", () => written({}, { "xl/": "", "xl/worksheets/": "", "_rels/": "" })],
    ["with times and comments", () => written({ extendedTimestamp: true, comment: "from the kiln" })],
    ["with names from the root", () => zipOf(Object.fromEntries(Object.entries(parts).map(([name, content]) => [`/${name}`, content])))],
    [
      "with backslashes and capitals",
      () => zipOf(Object.fromEntries(Object.entries(parts).map(([name, content]) => [name.toUpperCase().replaceAll("/", "\\"), content]))),
    ],
    ["with a file whose name leads out of it", () => zipOf({ ...parts, "../../outside.xml": "<x/>", "C:\\outside.xml": "<x/>" })],
    ["with a comment", () => joined(over(END, 20, 4), Buffer.from("kiln"))],
    ["with something before it that is a program", () => joined(Buffer.from("PK--"), whole)],
    ["with a few bytes behind it", () => joined(whole, Buffer.from("\r\n"))],
    ["with an empty part that nobody reads", () => zipOf({ ...parts, "docProps/thumbnail.jpeg": "" })],
  ])("%s", async (_what, make) => {
    expect(await outcome(await make())).toBe(OPENED);
  });
});

describe("archives that are refused", () => {
  test.each<[string, () => Promise<Uint8Array<ArrayBuffer>> | Uint8Array<ArrayBuffer>, string]>([
    ["one part locked", () => over(ENTRY, 8, 1, 2, SHEET_ENTRY), damagedPart("xl/worksheets/sheet1.xml", "it is locked")],
    ["every part locked", () => written({ password: "kiln" }), damagedPart("[Content_Types].xml", "it is locked")],
    ["every part locked in the older way", () => written({ password: "kiln", zipCrypto: true }), damagedPart("[Content_Types].xml", "it is locked")],
    [
      "one name twice",
      () => zipOf({ ...parts, "XL/Worksheets/sheet1.xml": "<worksheet/>" }),
      damagedPart("XL/Worksheets/sheet1.xml", "it is there twice"),
    ],
    [
      "one name twice, once with a backslash",
      () => zipOf({ ...parts, "xl\\workbook.xml": "<workbook/>" }),
      damagedPart("xl\\workbook.xml", "it is there twice"),
    ],
    ["one part marked as a folder", () => over(ENTRY, 38, 0x10, 1, SHEET_ENTRY), damagedPart("xl/worksheets/sheet1.xml", "it is marked as a folder")],
    ["packed in a way that is not known", () => over(ENTRY, 10, 12), damagedPart("_rels/.rels", "Error: Compression method not supported")],
    ["packed parts that say they are stored", () => over(ENTRY, 10, 0), damagedPart("_rels/.rels", "Error: Invalid CRC32")],
    ["a wrong checksum", () => over(ENTRY, 16, 0x12345678, 4), damagedPart("_rels/.rels", "Error: Invalid CRC32")],
    ["packed sizes that are too small", () => over(ENTRY, 20, 5, 4), damagedPart("_rels/.rels", "Error: Invalid CRC32")],
    ["packed sizes that are too large", () => over(ENTRY, 20, 100_000, 4), damagedPart("_rels/.rels", "Error: Entry data out of bounds")],
    ["packed sizes of 4 GB", () => over(ENTRY, 20, 0xfffffffe, 4), damagedPart("_rels/.rels", "Error: Entry data out of bounds")],
    [
      "sizes that stand elsewhere, and nowhere",
      () => over(ENTRY, 20, 0xffffffff, 4),
      damagedPart("_rels/.rels", "Error: Zip64 extra field not found"),
    ],
    ["sizes of nothing", () => over(ENTRY, 24, 0, 4), damagedPart("_rels/.rels", "Error: Invalid uncompressed size")],
    ["sizes of 4 GB", () => over(ENTRY, 24, 0xfffffffe, 4), tooMuchInFile],
    ["places of nothing", () => over(ENTRY, 42, 1, 4), damagedPart("_rels/.rels", "Error: Local file header not found")],
    ["places behind the end", () => over(ENTRY, 42, 0x7fffffff, 4), damagedPart("_rels/.rels", "Error: Local file header not found")],
    ["no mark before the files", () => over(FILE, 0, 0x2020, 2), notAWorkbookFile],
    ["no mark before the directory's entries", () => over(ENTRY, 0, 0x2020, 2), notAWorkbookFile],
    ["names longer than the file", () => over(ENTRY, 28, 0xffff), notAWorkbookFile],
    ["more entries than there are", () => over(END, 10, 40), notAWorkbookFile],
    ["a directory that begins behind the end", () => over(END, 16, 0x7fffffff, 4), OPENED],
    ["a directory without an end", () => over(END, 0, 0x2020, 2), notAWorkbookFile],
    ["one of several disks", () => over(END, 4, 3), notAWorkbookFile],
    ["nothing in it", () => whole.slice(-22).fill(0, 4), otherFile["archive"] ?? ""],
    ["so many entries that their number stands elsewhere, and nowhere", () => over(END, 10, 0xffff), notAWorkbookFile],
    ["two archives one behind the other", () => joined(whole, whole), OPENED],
    ["ten parts that are one and the same", () => over(ENTRY, 42, 0, 4), damagedPart("_rels/.rels", "Error: Invalid CRC32")],
  ])("%s", async (_what, make, sentence) => {
    expect(await outcome(await make())).toBe(sentence);
  });

  test("more parts than a workbook has", async () => {
    const many = Object.fromEntries(Array.from({ length: 20_001 }, (_, index) => [`xl/media/image${index}.png`, ""]));
    expect(await outcome(zipOf({ ...parts, ...many }))).toBe(tooMuchInFile);
  });
});

test("cut off at any place, it is refused", async () => {
  for (let length = 1; length < whole.length; length += length < whole.length - 40 ? 13 : 1)
    expect([length, [NAMED, ...SENTENCES]]).toEqual([length, expect.arrayContaining([asNamed(await outcome(whole.slice(0, length)))])]);
});

test("with any byte changed, it is opened with its values or refused", async () => {
  for (let at = 0; at < whole.length; at += 5) {
    const copy = whole.slice();
    copy[at] = (copy[at] ?? 0) ^ (1 << (at % 8));
    expect([at, [OPENED, NAMED, ...SENTENCES]]).toEqual([at, expect.arrayContaining([asNamed(await outcome(copy))])]);
  }
});
