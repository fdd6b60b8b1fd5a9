import { shareAsValues } from "../../src/sharing/shareAsValues";
import { ExcelWorkbook } from "../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../host/ExcelHost";
import { loadClientLibrary } from "../host/loadClientLibrary";

// How large the largest request and answer are when a sheet of many calls is shared in Excel, through the real client library. Excel on the web
// takes 5 MB. No times are taken.
const SIZES = [1_000, 5_000, 20_000];
const BYTES_A_MEGABYTE = 1e6;

const host = new ExcelHost();
loadClientLibrary(host);

async function share(calls: number): Promise<void> {
  host.newBook();
  host.calculate = () => 0.35;
  const sheet = host.book.sheet("Sheet1");
  for (let row = 0; row < calls; row++) {
    [25, 35, 31.5].forEach((grams, column) => sheet.write(row, column, grams));
    sheet.write(row, 3, `=RETORT.MOISTURE.WET(A${row + 1},B${row + 1},C${row + 1})`);
  }
  host.calculateAgain();
  await host.quiet();
  host.requests.length = 0;
  Object.assign(host.longest, { request: 0, answer: 0 });
  const refused = await shareAsValues(new ExcelWorkbook(), "Sheet1", "2027-01-15").then(
    () => "",
    (problem: Error) => `, refused: ${problem.message}`,
  );
  const [request, answer] = [host.longest.request, host.longest.answer].map((bytes) => (bytes / BYTES_A_MEGABYTE).toFixed(2));
  console.log(`${calls} calls shared: ${host.requests.length} requests, the largest ${request} MB, the largest answer ${answer} MB${refused}`);
}

void (async () => {
  for (const calls of SIZES) await share(calls);
})();
