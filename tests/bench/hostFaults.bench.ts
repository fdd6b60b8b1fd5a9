import { ExcelHost } from "../host/ExcelHost";
import { loadClientLibrary } from "../host/loadClientLibrary";
import { brokenPromises, faultCases, faultTable } from "../workbook/excel/faults/faultTable";

// What comes of every fault at every request, through the real client library; the table of DEVELOPERS.md. No times are taken.
const host = new ExcelHost();
loadClientLibrary(host);
void faultCases(host).then((cases) => {
  console.log(faultTable(cases));
  console.log(JSON.stringify(brokenPromises(cases)));
});
