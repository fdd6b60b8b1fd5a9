import type { CellContent } from "../../../../src/workbook/Workbook";
import { openHeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(60_000);

test("a ruled cell that reads what stands as far from A1 as it from the first of its rule does not put the order of calculation wrong", async () => {
  const open = await openHeadlessWorkbook();
  // H27 stands in its rule as B7 nearly does on the sheet, and depends on B7 through a chain; the rule itself reads H27.
  const chain = { C1: "=B7+1", D1: "=C1*2", H27: "=IF(ISNUMBER(D1),D1,0)+C1", I27: "=IF(COUNT(H27)=1,10/H27,0)", J1: "=I27*H27" };
  const name = await open.workbook.addSheet({
    name: "Ruled",
    cells: Object.entries(chain).map(([cell, formula]) => ({ cell, formula, style: "runReckoned" as const })),
    columnWidths: [],
    entryRules: [
      {
        range: "F20:H29",
        allow: { kind: "condition", condition: "=AND(ISFORMULA(F20))" },
        promptTitle: "",
        prompt: "",
        refusal: "Nothing to type here.",
      },
    ],
    frozenRows: 0,
    startAt: "A1",
  });
  const shown = async (): Promise<CellContent[]> =>
    Promise.all(Object.keys(chain).map(async (cell) => (await open.workbook.read(name, cell)).rows[0]?.[0]?.value ?? null));
  for (const [typed, c1] of [
    [5, 6],
    [1, 2],
    [9, 10],
  ] as const) {
    await open.type(name, "B7", typed);
    await open.settled();
    expect(await shown()).toEqual([c1, 2 * c1, 3 * c1, expect.closeTo(10 / (3 * c1), 12), expect.closeTo(10, 12)]);
  }
  open.close();
});
