import { shareAsPlainCells } from "../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../src/sharing/shareAsValues";
import { ExcelWorkbook } from "../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../host/ExcelHost";
import { loadClientLibrary } from "../host/loadClientLibrary";

// How large the largest request and answer are when a sheet of many calls is shared in Excel, through the real client library, and that four times
// the calls take four times as long. Excel on the web takes 5 MB. The time is that of the in-memory host too.
const SIZES = [1_000, 5_000, 20_000, 50_000];
const KINDS = { values: shareAsValues, "plain cells": shareAsPlainCells };
const BYTES_A_MEGABYTE = 1e6;

const host = new ExcelHost();
loadClientLibrary(host);

async function share(kind: keyof typeof KINDS, calls: number): Promise<void> {
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
  const before = process.cpuUsage();
  const refused = await KINDS[kind](new ExcelWorkbook(), "Sheet1", "2027-01-15").then(
    () => "",
    (problem: Error) => `, refused: ${problem.message}`,
  );
  const [request, answer] = [host.longest.request, host.longest.answer].map((bytes) => (bytes / BYTES_A_MEGABYTE).toFixed(2));
  const each = (process.cpuUsage(before).user / calls).toFixed(0);
  console.log(
    `${calls} calls as ${kind}: ${host.requests.length} requests, the largest ${request} MB, the largest answer ${answer} MB, ${each} µs each${refused}`,
  );
}

void (async () => {
  for (const kind of ["values", "plain cells"] as const) for (const calls of SIZES) await share(kind, calls);
})();
