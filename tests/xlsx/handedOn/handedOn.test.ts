import { plainBanner, valuesBanner } from "../../../src/problems/sharing/sharedCopyWords";
import { shareInFile, type FileKind } from "../../../src/sharing/shareInFile";
import { saveXlsx } from "../../../src/workbench/xlsx/saveXlsx";
import { openFile } from "../../../src/workbench/xlsx/openXlsx";
import type { CellContent } from "../../../src/workbook/Workbook";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { plainFile } from "../../../src/xlsx/handedOn/plainFile";
import { valuesFile } from "../../../src/xlsx/handedOn/valuesFile";
import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { partsIn } from "../package/partsIn";

jest.setTimeout(60_000);

const DATE = "2027-01-15";

// Invented: hazel shells from the orchard's char kiln.
const tins: SheetPlan = {
  name: "Tin's run",
  cells: [
    { cell: "A1", content: "Vessel, g" },
    { cell: "B1", content: 25, style: "input" },
    { cell: "A2", content: "Moist, g" },
    { cell: "B2", content: 35, style: "input" },
    { cell: "A3", content: "Dry, g" },
    { cell: "B3", content: 31.5, style: "input" },
    { cell: "A4", content: "Moisture" },
    { cell: "B4", formula: "=RETORT.MOISTURE.WET(B1,B2,B3)" },
    { cell: "A5", content: "Equation" },
    { cell: "B5", formula: '=RETORT.BURN.EQUATION("CH4")' },
    { cell: "A6", content: "Text" },
    { cell: "B6", content: "=1+1" },
    { cell: "A7", content: "Twice" },
    { cell: "B7", formula: "=B4*2" },
    { cell: "B9", formula: "=RETORT.MOISTURE.WET(Other!A1,B2,B3)" },
  ],
  columnWidths: [12, 12],
  entryRules: [
    { range: "B1:B3", allow: { kind: "number", atLeast: 0, atMost: 500 }, promptTitle: "Grams", prompt: "With the vessel.", refusal: "A mass." },
    { range: "C1", allow: { kind: "words", words: ["a", "b"] }, promptTitle: "", prompt: "", refusal: "One of the two." },
  ],
  frozenRows: 0,
  startAt: "B1",
};
const other: SheetPlan = { ...tins, name: "Other", cells: [{ cell: "A1", content: 25 }], entryRules: [] };

let live: HeadlessWorkbook;
let whole: Uint8Array<ArrayBuffer>;
beforeAll(async () => {
  live = await openHeadlessWorkbook();
  await live.workbook.addSheet(other);
  await live.workbook.addSheet(tins);
  await live.settled();
  whole = await saveXlsx(live.engine);
});
afterAll(() => live.close());

async function shared(as: FileKind, sheets: readonly string[] = [tins.name]): Promise<Uint8Array<ArrayBuffer>> {
  const make = as === "values" ? valuesFile : plainFile;
  const files = {
    make: async (wanted: Parameters<typeof make>[1]) => ({ ...(await make(whole, wanted)), fileName: "x.xlsx" }),
    handOut: async () => "",
  };
  return (await shareInFile(live.workbook, files, { as, sheets, date: DATE })).content;
}

async function opened(content: Uint8Array<ArrayBuffer>): Promise<HeadlessWorkbook> {
  const book = await openHeadlessWorkbook();
  await openFile(book.engine, content);
  await book.settled();
  return book;
}

const valueOf = async ({ workbook }: HeadlessWorkbook, sheet: string, cell: string): Promise<CellContent> =>
  (await workbook.read(sheet, cell)).rows[0]?.[0]?.value ?? null;

describe("valuesFile(content, wanted)", () => {
  let content: Uint8Array<ArrayBuffer>;
  beforeAll(async () => void (content = await shared("values")));

  test("holds the sheet and its record alone, the sheet first", async () => {
    expect((await (await WorkbookPackage.of(content)).sheets()).map(({ name }) => name)).toEqual(["Tin's run", "Tin's run record"]);
  });

  test("holds no formula, no rule for entries and no box, and says so in view", async () => {
    const texts = [...(await partsIn(content))].filter(([part]) => /worksheets\/sheet/.test(part)).map(([, bytes]) => bytes.toString("utf8"));
    expect(texts.join("")).not.toMatch(/<f[ >]|dataValidation/);
    const book = await opened(content);
    expect(await valueOf(book, tins.name, "C1")).toBe(valuesBanner(DATE));
    const looks = ["B1", "B2", "B3"].map((cell) => book.engine.book.getSheetByName(tins.name)?.getRange(cell).getBackground());
    expect(looks.map((colour) => colour?.toUpperCase())).not.toContain("#FFF8DC");
    expect(await Promise.all(["B1", "B4", "B6", "B7", "B9"].map((cell) => valueOf(book, tins.name, cell)))).toEqual([25, 0.35, "=1+1", 0.7, 0.35]);
    book.close();
  });
});

describe("plainFile(content, wanted)", () => {
  test("calculates on without a function of ours, and a fixed cell says so once an input changes", async () => {
    const content = await shared("plain");
    const texts = [...(await partsIn(content))].filter(([part]) => /worksheets\/sheet/.test(part)).map(([, bytes]) => bytes.toString("utf8"));
    expect(texts.join("").match(/<f[^>]*>[^<]*RETORT[^<]*<\/f>/g)).toBeNull();
    const sheets = await (await WorkbookPackage.of(content)).sheets();
    expect(sheets.slice(0, 2).map(({ name }) => name)).toEqual(["Tin's run", "Tin's run record"]);
    expect(sheets.filter(({ isHidden }) => isHidden).map(({ name }) => name)).toEqual(["Tin's run changes"]);
    const book = await opened(content);
    expect(await valueOf(book, tins.name, "C1")).toBe(plainBanner(DATE, 1));
    expect(await valueOf(book, tins.name, "B4")).toBe(0.35);
    expect(await valueOf(book, tins.name, "B9")).toBe(0.35);
    await book.type(tins.name, "B2", 45);
    await book.settled();
    expect(await valueOf(book, tins.name, "B4")).toBeCloseTo(13.5 / 20, 12);
    expect(await valueOf(book, tins.name, "B7")).toBeCloseTo(13.5 / 10, 12);
    expect(await valueOf(book, tins.name, "B9")).toBe(`fixed on ${DATE}: inputs changed`);
    book.close();
  });

  test("of every sheet, refers to the sheets of its own file and fixes less", async () => {
    const book = await opened(await shared("plain", ["Other", tins.name]));
    await book.type("Other", "A1", 20);
    await book.settled();
    expect(await valueOf(book, tins.name, "B9")).toBeCloseTo(3.5 / 15, 12);
    expect(await valueOf(book, tins.name, "C1")).toBe(plainBanner(DATE, 0));
    book.close();
  });
});

describe("shareInFile(workbook, files, wanted)", () => {
  const files = (handedOut: string[]) => ({
    make: async () => ({ content: new Uint8Array(), fileName: "x.xlsx", cells: 0, fixed: 0, takenOut: [] }),
    handOut: async ({ fileName }: { fileName: string }) => (handedOut.push(fileName), "It is there."),
  });

  test("tells each step, and hands nothing out once it is stopped", async () => {
    const [steps, handedOut]: [string[], string[]] = [[], []];
    const wanted = { as: "values", sheets: [tins.name], date: DATE, told: (step: string) => void steps.push(step) } as const;
    await shareInFile(live.workbook, files(handedOut), wanted);
    await expect(shareInFile(live.workbook, files(handedOut), { ...wanted, isStopped: () => true })).rejects.toThrow("Stopped. Nothing was made.");
    expect(steps.slice(0, 2)).toEqual(["Reading Tin's run (1 of 1)", "Writing the file"]);
    expect(handedOut).toEqual(["x.xlsx"]);
  });

  test("hands nothing out where the sheet was changed while the file was made", async () => {
    const handedOut: string[] = [];
    const changing = {
      ...files(handedOut),
      make: async () => (await live.type("Other", "A9", "new"), { content: new Uint8Array(), fileName: "x.xlsx", cells: 0, fixed: 0, takenOut: [] }),
    };
    await expect(shareInFile(live.workbook, changing, { as: "values", sheets: ["Other"], date: DATE })).rejects.toThrow(
      "was changed while it was copied",
    );
    expect(handedOut).toEqual([]);
  });
});
