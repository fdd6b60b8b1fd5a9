import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "./headlessWorkbook";

jest.setTimeout(30_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
});
afterAll(() => open.close());

async function cellAfter(typed: Record<string, string | number | boolean>, cell: string) {
  for (const [address, content] of Object.entries(typed)) await open.type(FIRST_SHEET, address, content);
  return (await open.workbook.read(FIRST_SHEET, cell)).rows[0]?.[0];
}

test("a Retort function computes in a cell", async () => {
  expect(await cellAfter({ A1: "=RETORT.VOLATILEFRACTION(25, 35, 28)" }, "A1")).toEqual({
    cell: "A1",
    formula: "=RETORT.VOLATILEFRACTION(25, 35, 28)",
    value: 0.7,
    shown: "0.7",
    error: "",
    message: "",
    spill: "",
  });
});
