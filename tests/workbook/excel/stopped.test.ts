import { sharingStopped } from "../../../src/problems/sharing/sharedCopyWords";
import { shareAsPlainCells } from "../../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

jest.setTimeout(60_000);

const host = new ExcelHost();
host.calculate = () => 0.35;
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
beforeEach(() => {
  host.newBook();
  [25, 35, 31.5].forEach((grams, column) => host.type("Sheet1", `${"ABC".charAt(column)}1`, grams));
  host.type("Sheet1", "D1", "=RETORT.MOISTURE.WET(A1,B1,C1)");
  host.type("Sheet1", "D2", "=TEXT(RETORT.MOISTURE.WET(A1,B1,C1)*100,A1)");
});

test.each([
  ["values", shareAsValues],
  ["plain cells", shareAsPlainCells],
])("Stop at whichever step of a copy as %s takes back what was made of it", async (_, share) => {
  let stops = 0;
  for (; ; stops++) {
    let asked = 0;
    const stopped = share(workbook, "Sheet1", "2027-01-15", { isStopped: () => asked++ >= stops });
    const outcome = await stopped.then(() => "made", (problem: Error) => problem.message); // prettier-ignore
    if (asked <= stops) break;
    expect([stops, outcome, host.book.sheets.map(({ name }) => name)]).toEqual([stops, sharingStopped, ["Sheet1"]]);
  }
  expect([stops > 3, host.book.sheets.length > 1]).toEqual([true, true]);
});
