import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import type { CellAddress } from "../../../src/workbook/Workbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
let told: CellAddress[] = [];
let stop: () => Promise<void>;

beforeEach(async () => {
  host.newBook();
  host.calculate = () => 1;
  told = [];
  stop = await workbook.onSelection(({ address }) => told.push(address));
});
afterEach(() => stop());

describe("onSelection(listener) in Excel", () => {
  test("tells when the selected formula gets its answer late", async () => {
    host.type("Sheet1", "A1", "=1+1");
    await host.quiet();
    told = [];
    host.calculate = () => 2;
    host.calculateAgain();
    await host.quiet();
    expect(told).toEqual([{ sheet: "Sheet1", cell: "A1" }]);
  });

  test("tells when another sheet comes to the front", async () => {
    const sheet = host.book.add("Other");
    host.book.activate(sheet);
    host.calculateAgain();
    await host.quiet();
    expect(told).toEqual([{ sheet: "Other", cell: "A1" }]);
  });

  test("looks at most twice for a hundred events at once", async () => {
    host.requests.length = 0;
    for (let row = 1; row <= 100; row++) host.type("Sheet1", "A1", row);
    await host.quiet();
    const looks = host.requests.filter(({ Actions }) => Actions.some(({ ActionType }) => ActionType === 2));
    expect(looks.length).toBeLessThanOrEqual(2);
    expect(told.length).toBeGreaterThan(0);
  });

  test("goes on after a look that Excel refused", async () => {
    host.failNext("GeneralException");
    host.type("Sheet1", "A1", 1);
    await host.quiet();
    expect(told).toEqual([]);
    host.type("Sheet1", "A1", 2);
    await host.quiet();
    expect(told).toEqual([{ sheet: "Sheet1", cell: "A1" }]);
  });

  describe("while it is not wanted", () => {
    let isWanted: boolean;
    let seen: CellAddress[];
    let end: () => Promise<void>;
    beforeEach(async () => {
      await stop();
      [isWanted, seen] = [true, []];
      end = await workbook.onSelection(
        ({ address }) => seen.push(address),
        () => isWanted,
      );
      isWanted = false;
      host.requests.length = 0;
    });
    afterEach(() => end());

    test("asks nothing of Excel, whatever is selected, typed or calculated", async () => {
      host.book.select(host.book.sheet("Sheet1"), "B2");
      host.type("Sheet1", "B2", "=1+1");
      host.calculateAgain();
      await host.quiet();
      expect([host.requests, seen]).toEqual([[], []]);
    });

    test("tells of the next change once it is wanted again, also where that leads back to the cell told last", async () => {
      host.book.select(host.book.sheet("Sheet1"), "B2");
      host.calculateAgain();
      await host.quiet();
      isWanted = true;
      host.book.select(host.book.sheet("Sheet1"), "A1");
      host.calculateAgain();
      await host.quiet();
      expect(seen).toEqual([{ sheet: "Sheet1", cell: "A1" }]);
    });
  });
});
