import { explainCell } from "../../../src/explanation/explainCell";
import { CALCULATING, STAYS_PENDING, WAITS_FOR_F9 } from "../../../src/problems/workbook/cellNotes";
import { calculatesWhenAsked, StaysPending, workbookCalculating } from "../../../src/problems/sharing/sharingProblems";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
const B4 = { sheet: "Sheet1", cell: "B4" };
const noPause = async (): Promise<void> => undefined;
const share = (asShown = false) => shareAsValues(workbook, "Sheet1", "2026-03-14", { pause: noPause, asShown });

// Vessel 25 g; (moist - dry) / (moist - vessel): 10 g of sample of which 3 g leave, then 4 g.
beforeEach(() => {
  host.newBook();
  host.calculate = (_formula, _cell, look) => (35 - Number(look("B3"))) / 10;
  host.type("Sheet1", "B3", 32);
  host.type("Sheet1", "B4", "=RETORT.MOISTURE.WET(25,35,B3)");
});
const shown = () => host.book.sheet("Sheet1").value(3, 1);

describe("in manual mode, after an input has changed,", () => {
  beforeEach(() => {
    host.calculateManually();
    host.type("Sheet1", "B3", 31);
  });

  test("the host goes on showing the value from before", () => expect(shown()).toBe(0.3));

  test("sharing is refused, and goes well once the user has calculated", async () => {
    await expect(share()).rejects.toThrow(calculatesWhenAsked("Sheet1").message);
    expect(await workbook.sheetNames()).toEqual(["Sheet1"]);
    host.calculateNow();
    const { copy } = await share();
    expect(host.book.sheet(copy).value(3, 1)).toBe(0.4);
  });

  test("the cell is not explained, and is once the user has calculated", async () => {
    expect(await explainCell(workbook, B4, noPause)).toMatchObject({ calls: [], notes: [WAITS_FOR_F9] });
    host.calculateNow();
    expect((await explainCell(workbook, B4, noPause)).calls[0]?.result).toBe("0.4 (40 %)");
  });
});

describe("while Excel calculates", () => {
  beforeEach(() => {
    host.keepCalculating();
    host.type("Sheet1", "B3", 31);
  });

  test("sharing is refused and the cell is not explained", async () => {
    await expect(share()).rejects.toThrow(workbookCalculating("Sheet1").message);
    expect(await explainCell(workbook, B4, noPause)).toMatchObject({ calls: [], notes: [CALCULATING] });
  });

  test("both wait, and take the value that comes", async () => {
    const pause = async (): Promise<void> => host.calculateNow();
    const { copy } = await shareAsValues(workbook, "Sheet1", "2026-03-14", { pause });
    expect(host.book.sheet(copy).value(3, 1)).toBe(0.4);
    host.keepCalculating();
    host.type("Sheet1", "B3", 30);
    expect((await explainCell(workbook, B4, pause)).calls[0]?.result).toBe("0.5 (50 %)");
  });
});

describe("where Excel keeps saying that something waits, and nothing does,", () => {
  beforeEach(() => host.keepCalculating("Pending"));

  test("sharing is refused with the offer to go on, and goes on", async () => {
    await expect(share()).rejects.toBeInstanceOf(StaysPending);
    const { copy } = await share(true);
    expect(host.book.sheet(copy).value(3, 1)).toBe(0.3);
  });

  test("the cell is explained as it is shown now, and the doubt is said first", async () => {
    const { calls, notes } = await explainCell(workbook, B4, noPause);
    expect([calls[0]?.result, notes]).toEqual(["0.3 (30 %)", [STAYS_PENDING]]);
  });
});

test("an input that changes between the look and the reading of the inputs is explained as it is then", async () => {
  host.meanwhile = (requestsBefore) => requestsBefore === 1 && host.type("Sheet1", "B3", 31);
  const { calls, notes, shown: now } = await explainCell(workbook, B4, noPause);
  expect([calls[0]?.result, notes, now]).toEqual(["0.4 (40 %)", [], "0.4"]);
});

test("the watcher of a selected cell is told when the calculation is over, though the cell shows the same", async () => {
  host.book.select(host.book.sheet("Sheet1"), "B4");
  host.keepCalculating();
  const told: string[] = [];
  const stop = await workbook.onSelection(({ address, calculation }) => told.push(`${address.cell} ${calculation.state}`));
  host.calculateNow();
  host.type("Sheet1", "Z9", 1);
  await host.quiet();
  await stop();
  expect(told).toEqual(["B4 done"]);
});

test("what is said in the place of an explanation, or above it", () => {
  expect([CALCULATING, WAITS_FOR_F9, STAYS_PENDING]).toEqual([
    "The workbook is still calculating, so what the cell shows may be from before. Wait for it to finish, then select the cell again.",
    "The workbook calculates only when asked to, and something waits, so what the cell shows may be from before. Press F9, then select the cell again.",
    "The workbook says that something still waits to be calculated, though nothing is under way. What follows explains what the cell shows now; press F9 to be sure of it.",
  ]);
});
