import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { planGrowth } from "../../../src/runsheet/growing/planGrowth";
import { readRunSheet } from "../../../src/runsheet/reading/readRunSheet";
import { balanceSheet } from "../../../src/runsheet/sheet/BalanceSheet";
import { runSheet, type RunSheet } from "../../../src/runsheet/sheet/RunSheet";
import { cellArea, cellAt, rangeOf } from "../../../src/workbook/cellArea";
import type { RangeReading } from "../../../src/workbook/Workbook";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import { reading as cellReading } from "../../sharing/MemoryWorkbook";

const usual: RunSheetOptions = { kind: "ashing", weighIns: 6, intervalMinutes: 20, readability: 0.01, vessel: "tin; lid 2, a=b", replicates: 3 };
const options: RunSheetOptions[] = SAMPLE_KINDS.flatMap((kind) => [
  { ...usual, kind },
  { ...usual, kind, replicates: 1, panZeros: true, temperatures: true, ovenCelsius: 105, degrees: "F", timing: "minutes", samplesAre: "different" },
  {
    ...usual,
    kind,
    replicates: 6,
    weighIns: 60,
    charFirings: 4,
    ashFirings: 1,
    ...(kind === "liquids" ? { receivers: 4 } : {}),
    ...(kind === "staged" ? { stages: 12 } : {}),
    ...(kind === "salt" ? { formula: "CaSO4·2H2O", residue: "CaSO4·½H2O" } : {}),
  },
  { ...usual, kind, plan: { moistGrams: 45, wantedUncertainty: 0.005, vesselMaterial: "mild steel", kilnSetPoint: 450 } },
]);

/** What a workbook would read of a sheet made by a plan, with rows put in above some of its rows. */
function readingOf(plan: SheetPlan, putIn: readonly number[] = []): RangeReading {
  const cells = plan.cells.map(({ cell, content = null }) => {
    const { row, column } = cellArea(cell) ?? { row: 0, column: 0 };
    return { row: row + putIn.filter((at) => at <= row + 1).length, column, content };
  });
  const [rows, columns] = [Math.max(...cells.map(({ row }) => row)) + 1, Math.max(...cells.map(({ column }) => column)) + 1];
  const read = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_cell, column) => cellReading(cellAt(row, column), {})));
  for (const { row, column, content } of cells) read[row]?.splice(column, 1, cellReading(cellAt(row, column), { value: content }));
  return { sheet: "Run", range: rangeOf({ row: 0, column: 0, rows, columns }), rows: read };
}

const sheetIn = (reading: RangeReading): RunSheet => {
  const read = readRunSheet(reading);
  if (read.is !== "whole") throw new Error(JSON.stringify(read));
  return read.sheet;
};

test.each(options.map((one) => [`${one.kind}, ${one.replicates} samples, ${one.weighIns} rounds`, one] as const))(
  "a sheet for %s is read as what it was made with",
  (_, one) => {
    const { cautionsAfter, ...read } = sheetIn(readingOf(buildRunSheet(one))).options;
    expect(read).toEqual(checkOptions(one));
    const made = runSheet(checkOptions(one));
    expect(sheetIn(readingOf(buildRunSheet(one))).rows).toEqual(made.rows);
    expect(made.rows.order[made.rows.order.indexOf("cautions") - 1]).toBe(cautionsAfter);
  },
);

test("rows put in by hand above the totals count as rounds and firings, wherever the cautions would stand on a sheet made so", () => {
  const { rows } = runSheet(checkOptions(usual));
  const { drying, charring, ashing } = rows;
  if (charring === undefined || ashing === undefined) throw new Error("an ashing sheet has both");
  const added = [
    ...Array.from({ length: 9 }, () => drying.total),
    charring.heading,
    charring.total,
    ashing.heading,
    ashing.heading,
    ashing.total,
    ashing.total,
  ];
  const { options: read } = sheetIn(readingOf(buildRunSheet(usual), added));
  expect([read.weighIns, read.charFirings, read.ashFirings]).toEqual([15, 4, 4]);
});

test("rows put in by hand above the totals count as stages, receivers and rounds of a balance check", () => {
  const staged = { ...usual, kind: "staged", stages: 3 } as const;
  const { stages, results } = runSheet(checkOptions(staged)).rows;
  if (stages === undefined) throw new Error("a staged sheet has stages");
  // Each stage has a row of results too.
  const stage = [stages.heading, stages.total, results.shares.lostInAll ?? 0];
  expect(sheetIn(readingOf(buildRunSheet(staged), [...stage, ...stage])).options.stages).toBe(5);
  const liquids = { ...usual, kind: "liquids", receivers: 2 } as const;
  const { caught } = runSheet(checkOptions(liquids)).rows;
  if (caught === undefined) throw new Error("a liquids sheet has receivers");
  expect(sheetIn(readingOf(buildRunSheet(liquids), [caught.heading, caught.total])).options.receivers).toBe(3);
  const balance = { ...usual, kind: "balance", replicates: 1 } as const;
  const { rounds } = balanceSheet(checkOptions(balance)).rows;
  const read = readRunSheet(readingOf(buildRunSheet(balance), [rounds.total, rounds.total]));
  expect(read.is === "balance" && read.sheet.options.weighIns).toBe(8);
});

test("a salt's sheet whose total says what it said before is read, and mended in today's words; so are the labels of the date", () => {
  const plan = buildRunSheet({ ...usual, kind: "salt" });
  const before: Readonly<Record<string, string>> = { "Stayed after heating, g": "Left after heating, g", Date: "Date; who" };
  const older = { ...plan, cells: plan.cells.map((one) => ({ ...one, content: before[String(one.content)] ?? one.content })) } as typeof plan;
  expect(older.cells.filter(({ content }) => Object.values(before).includes(String(content)))).toHaveLength(2);
  const reading = readingOf(older);
  expect(readRunSheet(reading).is).toBe("whole");
  const options = checkOptions({ ...usual, kind: "salt" });
  const { growth } = planGrowth(reading, { from: options, to: options }, true);
  expect(growth.written.map(({ content }) => content)).toEqual(expect.arrayContaining(Object.keys(before)));
});

test("a sheet with a row put in elsewhere is read as rearranged, from the first heading that is not found", () => {
  const { rows } = runSheet(checkOptions(usual));
  const read = readRunSheet(readingOf(buildRunSheet(usual), [rows.results.heading]));
  expect(read).toEqual({ is: "rearranged", missing: "RESULTS (shares)", cell: `A${rows.results.heading}` });
});

test("a record that was changed, a sheet of an earlier version and any other sheet are told apart", () => {
  const plan = buildRunSheet(usual);
  const changed = (change: (content: string) => string | undefined): SheetPlan => ({
    ...plan,
    cells: plan.cells.flatMap((cell) => {
      if (typeof cell.content !== "string" || !cell.content.startsWith("Retort run sheet 1")) return [cell];
      const content = change(cell.content);
      return content === undefined ? [] : [{ ...cell, content }];
    }),
  });
  expect(readRunSheet(readingOf(changed(() => undefined)))).toEqual({ is: "older" });
  for (const change of [(text: string) => text.slice(0, -9), (text: string) => text.replace('"ashing"', '"melting"')])
    expect(readRunSheet(readingOf(changed(change))).is).toBe("rearranged");
  expect(readRunSheet({ sheet: "Other", range: "", rows: [] })).toEqual({ is: "other" });
  expect(readRunSheet(readingOf({ ...plan, cells: [{ cell: "A1", content: 5 }] }))).toEqual({ is: "other" });
});
