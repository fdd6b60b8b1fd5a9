import { workbookContract } from "../workbook/contract";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "./headlessWorkbook";

jest.setTimeout(30_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
});
afterAll(() => open.close());

describe("GridWorkbook keeps the workbook contract without a page:", () => {
  test.each(workbookContract.map((promise) => [promise.title, promise] as const))("%s", (_title, promise) => promise.check(open));
});
