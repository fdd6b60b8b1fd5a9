// Every calculated cell of every kind of sheet, typed over as by a paste that passes the entry rules: some cell must name it.
import { everyBlock } from "../../src/runsheet/buildRunSheet";
import { balanceBlocks } from "../../src/runsheet/blocks/balance/planBalanceSheet";
import type { BlockCell } from "../../src/runsheet/blocks/Block";
import { cell, type Cell } from "../../src/runsheet/expressions/Expression";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { watchCells } from "../../src/runsheet/formulas/typedOver";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import { RUN_KINDS, type RunKind } from "../../src/runsheet/options/RunSheetOptions";
import { balanceSheet } from "../../src/runsheet/sheet/BalanceSheet";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import { runSheet } from "../../src/runsheet/sheet/RunSheet";
import { plainCells } from "./plainCells";
import { USUAL } from "./plainRun";

function opened(kind: RunKind) {
  const options = checkOptions({ ...USUAL, kind, weighIns: 4, ...(kind === "balance" ? {} : { replicates: 2, panZeros: true, temperatures: true }) });
  const sheet = options.kind === "balance" ? balanceSheet(options) : runSheet(options);
  const { cells } = "drying" in sheet ? everyBlock(sheet) : balanceBlocks(sheet);
  const { below, head } = watchCells(sheet);
  const [line, next, finding] = [cell(sheet.rows.head.checks, 0), cell(sheet.rows.head.title, 3), cell(below.row, CLOCK + 1)];
  return { cells, below, head, line, next, finding, formulas: cells.filter(({ formula }) => formula !== undefined) };
}

const isAt =
  ({ row, column }: Cell) =>
  ({ at }: BlockCell): boolean =>
    at.row === row && at.column === column;

describe.each(RUN_KINDS)("on a sheet of the kind %s", (kind) => {
  const { cells, formulas, below, head, line, next, finding } = opened(kind);
  const said = (at: Cell): string => `? ${placeOf(at)} was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.`;

  test("whatever calculated cell is typed over, another names it, and none while all hold their formulas", () => {
    const untouched = plainCells(cells);
    for (const at of [line, next, finding]) expect(untouched.value(at)).not.toMatch(/typed over/);
    const unnamed = formulas.filter(({ at }) => {
      const plain = plainCells(cells);
      plain.type(at, 7);
      const by = [finding, line, next].filter((one) => !isAt(one)({ at } as BlockCell));
      return !by.some((one) => plain.value(one) === said(at));
    });
    expect(unnamed.map(({ at }) => placeOf(at))).toEqual([]);
    expect(formulas.length).toBeGreaterThan(60);
  });

  test("no cell rests on itself, but for the next step and the watch of it, which only ask for each other's formulas", () => {
    const of = new Map(formulas.map(({ at, formula }) => [placeOf(at), formula]));
    const reads = new Map([...of].map(([at, formula]) => [at, cellsIn(JSON.stringify(formula)).filter((one) => of.has(one))]));
    const [nextAt, headAt] = [placeOf(next), placeOf(head)];
    reads.set(headAt, (reads.get(headAt) ?? []).filter((one) => one !== nextAt)); // prettier-ignore
    const state = new Map<string, "on the way" | "done">();
    const circles: string[] = [];
    const walk = (at: string): void => {
      if (state.get(at) === "done") return;
      if (state.get(at) === "on the way") return void circles.push(at);
      state.set(at, "on the way");
      for (const one of reads.get(at) ?? []) walk(one);
      state.set(at, "done");
    };
    for (const at of reads.keys()) walk(at);
    expect(circles).toEqual([]);
    expect(of.has(placeOf(below))).toBe(true);
  });
});

/** Every cell that stands in an expression written as JSON, those within its ranges too. */
function cellsIn(json: string): string[] {
  const found = new Set<string>();
  JSON.parse(json, (_, value: unknown) => {
    const one = value as { kind?: string; row: number; column: number; from: Cell; to: Cell } | null;
    if (one?.kind === "cell") found.add(placeOf(cell(one.row, one.column)));
    if (one?.kind === "range")
      for (let row = one.from.row; row <= one.to.row; row++)
        for (let column = one.from.column; column <= one.to.column; column++) found.add(placeOf(cell(row, column)));
    return value;
  });
  return [...found];
}
