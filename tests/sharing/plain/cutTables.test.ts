import type { CellContent } from "../../../src/workbook/Workbook";
import { fixedUnfollowed } from "../../../src/problems/sharing/plainCellProblems";
import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import { WorkingsSheet } from "../../../src/sharing/plain/WorkingsSheet";
import { FIRST_SHEET, openHeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { functionNamed } from "../../functions/call";
import { callCellFunction } from "../../../src/cells/callCellFunction";
import { DATE, liveAndPlain } from "./liveAndPlain";

jest.setTimeout(60_000);

const RESULTS = [0.352, 0.349, 0.355, 0.351, 0.372];
const results: Record<string, CellContent> = Object.fromEntries(RESULTS.map((value, index) => [`L${index + 5}`, value]));

/** What a call entered into an area shows in plain cells. */
async function shownIn(area: string, call: string): Promise<CellContent[][]> {
  const [cell = area] = area.split(":");
  const place = { sheet: FIRST_SHEET, cell, area, nameOf: () => undefined, tableOf: () => undefined, spillOf: () => undefined };
  const workings = new WorkingsSheet("Workings");
  const plain = plainFormula(call, place, {}, workings);
  if (plain.kind !== "cells") throw new Error(plain.kind);
  const open = await openHeadlessWorkbook();
  open.engine.book.create(workings.name, 300, 80);
  for (const [at, content] of Object.entries(results)) await open.type(FIRST_SHEET, at, content);
  for (const { cell: at, content } of workings.cells) await open.type(workings.name, at, content);
  for (const [down, line] of plain.formulas.entries())
    for (const [across, formula] of line.entries())
      await open.type(FIRST_SHEET, `${String.fromCharCode(cell.charCodeAt(0) + across)}${Number(cell.slice(1)) + down}`, formula);
  await open.settled();
  const read = (await open.workbook.read(FIRST_SHEET, area.includes(":") ? area : `${area}:${area}`)).rows;
  open.close();
  return read.map((row) => row.map(({ value, error }) => (error === "" ? value : error)));
}

test.each([
  ["A5", "GRUBBS"],
  ["D1:D3", "GRUBBS"],
  ["D1:E3", "GRUBBS"],
  ["D1:E9", "REPLICATES"],
  ["D1:D1", "REPLICATES"],
  ["D1:E10", "REPLICATES"],
])("a table entered into %s shows as much of %s as there is room for", async (area, name) => {
  const shown = await shownIn(area, `=RETORT.${name}(L5:L9)`);
  const whole = callCellFunction(functionNamed(name), [RESULTS.map((value) => [value])]) as CellContent[][];
  const wanted = shown.map((row, down) => row.map((_, across) => whole[down]?.[across]));
  expect(shown.map((row) => row.map((value) => (typeof value === "number" ? value.toPrecision(9) : value)))).toEqual(
    wanted.map((row) => row.map((value) => (typeof value === "number" ? value.toPrecision(9) : value))),
  );
});

test("what refers to cells that its text does not show is fixed, and says that and not that something changed, as does what is calculated from it", async () => {
  const sheet = {
    ...{ A1: 0.135, B1: 0.2, C1: '=RETORT.AIRLEFT(INDIRECT("A1"))', C2: "=RETORT.AIRLEFT(OFFSET(A1,0,1))", C3: "=C1*2", C4: "=SUM(C1:C3)" },
    ...{ D1: "=RETORT.AIRLEFT(A1)", E1: "=RETORT.DRYING.END(C4)", F1: "=A1*2" },
  };
  const both = await liveAndPlain({ Sheet1: sheet });
  const shown = new Map((await both.shown()).map(({ cell, plain }) => [cell, plain]));
  both.close();
  for (const cell of ["C1", "C2", "C3", "C4", "E1"]) expect([cell, shown.get(cell)]).toEqual([cell, fixedUnfollowed(DATE)]);
  expect([typeof shown.get("D1"), shown.get("F1")]).toEqual(["number", 0.27]);
});
