import { ownFiles } from "../../src/addin/ownFiles";
import {
  downloadedAsLarge,
  downloadedInstead,
  fileBroken,
  fileNotHandedOver,
  fileOlder,
  noFileHere,
  openedAsWorkbook,
} from "../../src/problems/files/ownFileWords";
import { plainBanner, valuesBanner } from "../../src/problems/sharing/sharedCopyWords";
import { shareInFile, type FileHandedOut, type FileKind } from "../../src/sharing/shareInFile";
import { ExcelWorkbook } from "../../src/workbook/excel/ExcelWorkbook";
import { openAsWorkbook } from "../../src/workbook/excel/file/openAsWorkbook";
import { wholeFile } from "../../src/workbook/excel/file/wholeFile";
import { NoOwnFile } from "../../src/workbook/NoOwnFile";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { WorkbookPackage } from "../../src/xlsx/package/WorkbookPackage";
import { ExcelHost } from "../host/ExcelHost";
import { OTHER_KIND } from "../host/Faults";
import { loadClientLibrary } from "../host/loadClientLibrary";
import { contentsOf } from "../workbook/excel/faults/Scene";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../workbench/headlessWorkbook";

jest.setTimeout(60_000);

const DATE = "2027-01-15";

// Invented: walnut shells from the orchard's char kiln.
const shells: SheetPlan = {
  name: "Shells",
  cells: [
    { cell: "A1", content: "Vessel, g" },
    { cell: "B1", content: 25 },
    { cell: "A2", content: "Moist, g" },
    { cell: "B2", content: 35 },
    { cell: "A3", content: "Dry, g" },
    { cell: "B3", content: 31.5 },
    { cell: "A4", content: "Moisture" },
    { cell: "B4", formula: "=RETORT.MOISTURE.WET(B1,B2,B3)" },
  ],
  columnWidths: [12, 12],
  entryRules: [],
  frozenRows: 0,
  startAt: "B1",
};

const host = new ExcelHost();
host.calculate = (formula) => (formula.includes("MOISTURE") ? 0.35 : "");
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
const downloads: string[] = [];
const files = ownFiles(
  (fileName) => void downloads.push(fileName),
  async () => undefined,
);

let live: HeadlessWorkbook;
let whole: Uint8Array<ArrayBuffer>;
let older: Uint8Array<ArrayBuffer>;
beforeAll(async () => {
  live = await openHeadlessWorkbook();
  await live.workbook.addSheet(shells);
  await live.type("Shells", "B2", 34);
  older = await saveXlsx(live.engine);
  await live.type("Shells", "B2", 35);
  await live.settled();
  whole = await saveXlsx(live.engine);
});
afterAll(() => live.close());

beforeEach(() => {
  host.newBook();
  host.book.rename(host.book.sheet("Sheet1"), "Shells");
  for (const { cell, content, formula } of shells.cells) host.type("Shells", cell, formula ?? content ?? null);
  Object.assign(host.file, { content: whole, fault: undefined, open: 0 });
  host.file.next.length = 0;
  host.file.asked.length = 0;
  downloads.length = 0;
});

const share = (as: FileKind): Promise<FileHandedOut> =>
  shareInFile(workbook, files, { as, sheets: ["Shells"], date: DATE, pause: async () => undefined });

/** Every cell of a sheet of a file that holds anything. */
async function cellsIn(content: Uint8Array<ArrayBuffer>, sheet: string): Promise<ReadonlyMap<string, { value: unknown; formula: string }>> {
  const found = new Map<string, { value: unknown; formula: string }>();
  await (await WorkbookPackage.of(content)).readCells(sheet, ({ cell, value, formula }) => void found.set(cell, { value, formula }));
  return found;
}

const bytesOf = (base64: string | undefined): Uint8Array<ArrayBuffer> => Uint8Array.from(Buffer.from(base64 ?? "", "base64"));

describe("sharing in a file of its own from Excel", () => {
  test("opens a new workbook with the values and the record alone, and leaves the open one as it is", async () => {
    const before = host.book.sheets.map(contentsOf);
    const { fileName, cells, whereItIs } = await share("values");
    expect([fileName, cells, whereItIs]).toEqual(["Shells values.xlsx", 1, openedAsWorkbook("Shells values.xlsx")]);
    expect(host.book.sheets.map(contentsOf)).toEqual(before);
    const content = bytesOf(host.book.opened[0]);
    expect((await (await WorkbookPackage.of(content)).sheets()).map(({ name }) => name)).toEqual(["Shells", "Shells record"]);
    const held = await cellsIn(content, "Shells");
    expect(held.get("B4")).toEqual({ value: 0.35, formula: "" });
    expect(held.get("A5")?.value).toBe(valuesBanner(DATE));
    expect([host.book.opened.length, downloads, host.file.open]).toEqual([1, [], 0]);
  });

  test("opens plain cells that hold no call of ours", async () => {
    await share("plain");
    const held = await cellsIn(bytesOf(host.book.opened[0]), "Shells");
    expect(held.get("B4")?.formula).not.toBe("");
    expect([...held.values()].filter(({ formula }) => /RETORT/i.test(formula))).toEqual([]);
    expect(held.get("A5")?.value).toBe(plainBanner(DATE, 0));
  });

  test("takes a file in many slices, and closes it", async () => {
    expect(Buffer.from(await wholeFile()).equals(Buffer.from(whole))).toBe(true);
    const large = new Uint8Array(3_000_001).map((_, index) => index % 251);
    host.file.content = large;
    expect(Buffer.from(await wholeFile()).equals(Buffer.from(large))).toBe(true);
    expect(host.file.asked.slice(-5)).toEqual(["getFileAsync", "getSliceAsync 0", "getSliceAsync 1", "getSliceAsync 2", "closeAsync"]);
    expect(host.file.open).toBe(0);
  });

  test("waits for a file that follows what was typed, and takes none that never does", async () => {
    host.file.next.push(older, older);
    await share("values");
    expect(host.book.opened).toHaveLength(1);
    host.file.content = older;
    await expect(share("values")).rejects.toThrow(new NoOwnFile(fileOlder("Shells", "B2")));
    expect([host.book.opened.length, downloads, host.file.open]).toEqual([1, [], 0]);
  });

  test.each([
    ["a platform without such files", undefined, fileNotHandedOver("Excel", "A network problem has prevented retrieval of the file.")],
    ["a refusal", { at: "getFileAsync", how: "failed" }, fileNotHandedOver("Excel", "An internal error has occurred.")],
    ["a document that is gone", { at: "getFileAsync", how: "throws" }, fileNotHandedOver("Excel", "The document is gone.")],
    ["a slice refused", { at: "getSliceAsync", how: "failed" }, fileNotHandedOver("Excel", "An internal error has occurred.")],
    ["a slice cut short", { at: "getSliceAsync", how: "short" }, fileBroken("Excel")],
  ] as const)("with %s makes and opens nothing, leaves no file open, and says why", async (_, fault, why) => {
    if (fault === undefined) host.file.content = undefined;
    else host.file.fault = fault;
    await expect(share("values")).rejects.toThrow(new NoOwnFile(why));
    expect([host.book.opened, downloads, host.book.sheets.length, host.file.open]).toEqual([[], [], 1, 0]);
  });

  test("a callback that never comes is not waited for for ever", async () => {
    host.file.fault = { at: "getFileAsync", how: "silent" };
    await expect(wholeFile(0.01)).rejects.toThrow(NoOwnFile);
    host.file.fault = { at: "closeAsync", how: "silent" };
    expect(Buffer.from(await wholeFile(0.05)).equals(Buffer.from(whole))).toBe(true);
  });

  test("an Excel without files of that kind is not asked", async () => {
    const asked = jest.spyOn(Office.context.requirements, "isSetSupported").mockReturnValue(false);
    await expect(wholeFile()).rejects.toThrow(new NoOwnFile(noFileHere("Excel")));
    expect(asked).toHaveBeenCalledWith("CompressedFile");
    expect(host.file.asked).toEqual([]);
    asked.mockRestore();
  });

  test("what is no workbook file at all is refused as no file", async () => {
    host.file.content = Uint8Array.from([1, 2, 3]);
    await expect(share("values")).rejects.toThrow(NoOwnFile);
  });

  // Reading a sheet takes 3 requests, and so does comparing it again; the last opens the file.
  const requestsOfSharing = async (): Promise<number> => {
    const before = host.requests.length;
    await share("values");
    return host.requests.filter(({ Actions }) => Actions.every(({ Name }) => Name !== "_RemoveReference")).length - before;
  };

  test("whatever fails between any two requests, nothing is changed, and nothing is called opened that Excel did not say it opened", async () => {
    const requests = await requestsOfSharing();
    expect(requests).toBeGreaterThan(3);
    for (let after = 0; after < requests; after++)
      for (const code of ["GeneralException", "AccessDenied", "ServiceNotAvailable", OTHER_KIND])
        for (const answerLost of [false, true]) {
          host.book.opened.length = 0;
          downloads.length = 0;
          const before = host.book.sheets.map(contentsOf);
          host.startCounting(() => undefined);
          host.faults.plan({ code, after, answerLost, forGood: false });
          const outcome = await share("values").then(
            ({ whereItIs }) => whereItIs,
            () => "refused",
          );
          host.faults.none();
          expect(host.book.sheets.map(contentsOf)).toEqual(before);
          const opening = after === requests - 1;
          expect([code, after, outcome]).toEqual([code, after, opening ? downloadedInstead("Excel", "Shells values.xlsx") : "refused"]);
          expect(downloads).toEqual(opening ? ["Shells values.xlsx"] : []);
        }
  });

  test("what is larger than a request may be is given as a download", async () => {
    expect(await openAsWorkbook(new Uint8Array(3_500_001))).toBe("too large");
    const made = { content: new Uint8Array(3_500_001), fileName: "Large values.xlsx", cells: 1, fixed: 0, takenOut: [] };
    expect(await files.handOut(made)).toBe(downloadedAsLarge("Excel", "Large values.xlsx"));
    expect(downloads).toEqual(["Large values.xlsx"]);
  });
});
