import { ExcelHost } from "../host/ExcelHost";
import { loadClientLibrary } from "../host/loadClientLibrary";
import { countRequests, requestTable } from "../workbook/excel/requestCounts";

// Requests that a user waits for, through the real client library; the table of DEVELOPERS.md. No times are taken.
const host = new ExcelHost();
loadClientLibrary(host);
void countRequests(host).then((counts) => console.log(requestTable(counts)));
