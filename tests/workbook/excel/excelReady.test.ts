import { hostDidNotAnswer, hostTooOld, libraryOutOfReach, openedOutside } from "../../../src/problems/workbook/workbookProblems";
import { excelReady } from "../../../src/workbook/excel/excelReady";

interface OfficeAnswer {
  readonly host: string | null;
}

/** An Office library that answers so, or never. */
function givenOffice(answer: Promise<OfficeAnswer>, apiVersion = 9): void {
  const isSetSupported = (_set: string, version: string): boolean => Number(version.split(".")[1]) <= apiVersion;
  Object.assign(globalThis, { Office: { onReady: () => answer, HostType: { Excel: "Excel" }, context: { requirements: { isSetSupported } } } });
}

describe("excelReady()", () => {
  afterEach(() => Reflect.deleteProperty(globalThis, "Office"));

  test("says nothing when Excel is there", async () => {
    givenOffice(Promise.resolve({ host: "Excel" }));
    expect(await excelReady()).toBe("");
  });

  test("says so at once when the library could not be loaded", async () => {
    expect(await excelReady()).toBe(libraryOutOfReach("Excel"));
  });

  test("says so after a while when Excel never answers", async () => {
    givenOffice(new Promise(() => undefined));
    expect(await excelReady(0.02)).toBe(hostDidNotAnswer("Excel", 0.02));
  });

  test("waits long enough for a slow network and not so long that the pane seems dead", async () => {
    jest.useFakeTimers();
    try {
      givenOffice(new Promise(() => undefined));
      const answered = jest.fn();
      const ready = excelReady().then(answered);
      await jest.advanceTimersByTimeAsync(10_000);
      expect(answered).not.toHaveBeenCalled();
      await jest.advanceTimersByTimeAsync(10_000);
      await ready;
      expect(answered).toHaveBeenCalledWith(hostDidNotAnswer("Excel", 15));
    } finally {
      jest.useRealTimers();
    }
  });

  test.each([null, "Word"])("says so when the page was opened in %s instead of Excel", async (host) => {
    givenOffice(Promise.resolve({ host }));
    expect(await excelReady()).toBe(openedOutside("Excel"));
  });

  test("says so when Excel is older than ExcelApi 1.9", async () => {
    givenOffice(Promise.resolve({ host: "Excel" }), 8);
    expect(await excelReady()).toBe(hostTooOld("Excel"));
  });
});
