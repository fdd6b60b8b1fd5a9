import { ExcelWorkbook } from "../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../host/ExcelHost";
import { loadClientLibrary } from "../host/loadClientLibrary";
import { contractFormulas } from "./contractFormulas";
import { workbookContract, type ContractSubject } from "./contract";

const host = new ExcelHost();
host.calculate = contractFormulas;
loadClientLibrary(host, "Mac");
beforeEach(() => host.newBook());

const subject: ContractSubject = {
  workbook: new ExcelWorkbook(),
  type: async (sheet, cell, content) => host.type(sheet, cell, content),
  settled: () => host.quiet(),
};

describe("ExcelWorkbook keeps the workbook contract with the library for Mac:", () => {
  test.each(workbookContract.map((promise) => [promise.title, promise] as const))("%s", async (_title, promise) => {
    await promise.check(subject);
    await host.quiet();
  });
});
