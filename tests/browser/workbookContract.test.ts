import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { workbookContract, type ContractSubject } from "../workbook/contract";
import { LocalWorkbook } from "./localWorkbook";
import { pageWorkbook } from "./pageWorkbook";

jest.setTimeout(60_000);

let local: LocalWorkbook;
let subject: ContractSubject;
beforeAll(async () => {
  local = await LocalWorkbook.open();
  subject = {
    workbook: pageWorkbook(local.page, { name: "the local workbook", drawsCharts: false }),
    type: (sheet, cell, content) =>
      local.page.evaluate(([address, typed]) => (window as WorkbenchWindow).retortWorkbench?.type(address, typed), [
        { sheet, cell },
        content,
      ] as const),
    settled: () => local.settled(),
  };
});
afterAll(() => local?.close());

describe("GridWorkbook keeps the workbook contract in a browser:", () => {
  test.each(workbookContract.map((promise) => [promise.title, promise] as const))("%s", (_title, promise) => promise.check(subject));
});

test("no check of the contract made the page complain", () => {
  expect(local.complaints).toEqual([]);
});
