import { changedMeanwhile, noSuchSheet, textTooLong } from "../../src/problems/workbook/workbookProblems";
import type { RowsIn, SheetGrowth } from "../../src/workbook/SheetGrowth";
import type { PlannedCell, SheetPlan } from "../../src/workbook/SheetPlan";
import type { CellContent, Workbook } from "../../src/workbook/Workbook";
import type { ContractPromise } from "./contract";

/** What every workbook adapter keeps when a sheet grows. The formulas used are =A1*2 and =SUM(A2:A4), wherever rows move them to. */
export const growContract: readonly ContractPromise[] = [
  {
    title: "growSheet(sheet, growth) moves what was typed with its rows, and formulas on every sheet follow",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(table("Grown"));
      const other = await workbook.addSheet({ ...table("Onlooker"), cells: [{ cell: "A1", formula: `=SUM(Grown!A2:A4)` }] });
      await type(sheet, "F4", "beside");
      await type(sheet, "B9", 12.5);
      await growSheet(workbook, sheet, { steps: [{ above: 4, count: 2 }] });
      await settled();
      expect(await held(workbook, sheet)).toEqual([
        ["A1", "heading"],
        ["A2", 1],
        ["A3", 2],
        ["A6", "total"],
        ["B6", "=SUM(A2:A6)"],
        ["F6", "beside"],
        ["B11", 12.5],
      ]);
      expect(await held(workbook, other)).toEqual([["A1", "=SUM(Grown!A2:A6)"]]);
    },
  },
  {
    title: "growSheet(sheet, growth) puts rows in one step after another, each counted on what the ones before left",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(table("Twice"));
      await growSheet(workbook, sheet, { steps: [{ above: 2, count: 1 }, { above: 5, count: 1 }] }); // prettier-ignore
      await settled();
      expect(await held(workbook, sheet)).toEqual([
        ["A1", "heading"],
        ["A3", 1],
        ["A4", 2],
        ["A6", "total"],
        ["B6", "=SUM(A3:A6)"],
      ]);
    },
  },
  {
    title: "growSheet(sheet, growth) writes what it is to write, text as text, and leaves every other cell",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(table("Written"));
      await type(sheet, "C3", 7);
      const written: PlannedCell[] = [
        { cell: "A4", content: "=1+1" },
        { cell: "C4", formula: "=A2*2" },
      ];
      const { kept } = await growSheet(workbook, sheet, { steps: [{ above: 4, count: 1 }], written, ended: { cell: "H1", content: "made larger" } });
      await settled();
      expect(kept).toEqual([]);
      expect((await workbook.read(sheet, "A4:C4")).rows[0]?.map(({ value, formula }) => [value, formula])).toEqual([
        ["=1+1", ""],
        [null, ""],
        [2, "=A2*2"],
      ]);
      expect((await workbook.read(sheet, "C3")).rows[0]?.[0]?.value).toBe(7);
      expect((await workbook.read(sheet, "H1")).rows[0]?.[0]?.value).toBe("made larger");
    },
  },
  {
    title: "growSheet(sheet, growth) without rows to put in writes in place",
    async check({ workbook, settled }) {
      const sheet = await workbook.addSheet(table("In place"));
      await growSheet(workbook, sheet, { written: [{ cell: "A3", content: 5 }] });
      await settled();
      expect((await held(workbook, sheet))[2]).toEqual(["A3", 5]);
    },
  },
  {
    title: "growSheet(sheet, growth) does nothing where something else stands there than was read",
    async check({ workbook, type, settled }) {
      const sheet = await workbook.addSheet(table("Changed"));
      const read = await workbook.readUsed(sheet);
      await type(sheet, "B2", 3);
      await settled();
      const before = await held(workbook, sheet);
      const growing = workbook.growSheet(sheet, { ...grow(read, table("Changed")), steps: [{ above: 2, count: 1 }] });
      await expect(growing).rejects.toThrow(changedMeanwhile(sheet));
      expect(await held(workbook, sheet)).toEqual(before);
    },
  },
  {
    title: "growSheet(sheet, growth) refuses a sheet that is not there, and a plan that no sheet can take",
    async check({ workbook }) {
      const sheet = await workbook.addSheet(table("Refused"));
      const read = await workbook.readUsed(sheet);
      await expect(workbook.growSheet("No such", grow(read, table("Refused")))).rejects.toThrow(noSuchSheet("No such"));
      const rule = { range: "A2", allow: { kind: "anything" }, promptTitle: "Grams", prompt: "x".repeat(256), refusal: "" } as const;
      const growing = workbook.growSheet(sheet, { ...grow(read, { ...table("Refused"), entryRules: [rule] }), steps: [{ above: 2, count: 1 }] });
      await expect(growing).rejects.toThrow(textTooLong("entry prompt", 256, 255));
      expect(await held(workbook, sheet)).toHaveLength(5);
    },
  },
];

const table = (name: string): SheetPlan => ({
  name,
  cells: [
    { cell: "A1", content: "heading" },
    { cell: "A2", content: 1 },
    { cell: "A3", content: 2 },
    { cell: "A4", content: "total" },
    { cell: "B4", formula: "=SUM(A2:A4)" },
  ],
  columnWidths: [20, 12, 12],
  entryRules: [],
  frozenRows: 0,
  startAt: "A2",
});

const grow = (read: SheetGrowth["read"], plan: SheetPlan): SheetGrowth => ({
  read,
  begun: undefined,
  steps: [],
  written: [],
  dressed: [],
  plan,
  ended: undefined,
});

async function growSheet(workbook: Workbook, sheet: string, part: Partial<SheetGrowth> & { readonly steps?: readonly RowsIn[] }) {
  return workbook.growSheet(sheet, { ...grow(await workbook.readUsed(sheet), table(sheet)), ...part });
}

async function held(workbook: Workbook, sheet: string): Promise<[string, CellContent][]> {
  const { rows } = await workbook.readUsed(sheet);
  return rows.flat().flatMap(({ cell, formula, value }) => (formula !== "" || value !== null ? [[cell, formula === "" ? value : formula]] : []));
}
