// Whether a formula that somebody put in the place of a sheet's own is named, and no other one is. The sheets are blank or invented.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { readRuns } from "../../../src/runsheet/gathering/readRuns";
import { RUN_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { formulasNotOwn } from "../../../src/runsheet/reading/formulasNotOwn";
import { sheetWords } from "../../../src/runsheet/words/sheetWords";
import { otherFormulas } from "../../../src/problems/runsheet/growingProblems";
import { cellAt } from "../../../src/workbook/cellArea";
import type { RangeReading } from "../../../src/workbook/Workbook";
import { reportHtml } from "../../../src/report/reportHtml";

const OPTIONS: RunSheetOptions = { kind: "charring", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 2 };

/** A sheet as it was made, read whole. @param written what a cell holds in place of its formula or content */
function reading(options: Partial<RunSheetOptions> = {}, written: (cell: string, held: string) => string = (_, held) => held): RangeReading {
  const { name, cells } = buildRunSheet({ ...OPTIONS, ...options });
  const held = new Map(cells.map(({ cell, content, formula }) => [cell, formula ?? content ?? null]));
  const rows = Array.from({ length: 250 }, (_, down) =>
    Array.from({ length: 26 }, (__, across) => {
      const cell = cellAt(down, across);
      const before = held.get(cell) ?? null;
      const now = typeof before === "string" ? written(cell, before) : before;
      const formula = typeof now === "string" && now.startsWith("=") ? now : "";
      return {
        cell,
        value: formula === "" ? now : "",
        error: "" as const,
        formula,
        shown: formula === "" ? String(now ?? "") : "",
        message: "",
        spill: "",
      };
    }),
  );
  return { sheet: name, range: "A1:Z250", rows };
}

const formulaCells = (options: Partial<RunSheetOptions> = {}): readonly string[] =>
  buildRunSheet({ ...OPTIONS, ...options }).cells.flatMap(({ cell, formula }) => (formula === undefined ? [] : [cell]));
const replaced =
  (...cells: readonly string[]) =>
  (cell: string, held: string): string =>
    cells.includes(cell) ? "=1+1" : held;

test.each(RUN_KINDS)("on a sheet of the kind %s each replaced formula is named, and on a whole one none", (kind) => {
  const options = { kind, replicates: kind === "balance" ? 1 : 2 } as const;
  expect(formulasNotOwn(reading(options))).toEqual([]);
  const every = formulaCells(options);
  for (const cell of [every[0], every[20], every.at(-1)] as string[]) expect(formulasNotOwn(reading(options, replaced(cell)))).toEqual([cell]);
});

test("a formula as a host or a file writes it is the same; a reference, a number or a function changed is not", () => {
  const rewritten = (_: string, held: string): string =>
    held.startsWith("=")
      ? held
          .replace(/\bFALSE\b/g, "FALSE()")
          .replace(/RETORT\.CONSTANTWEIGHT\.STEPS/g, "_xldudf_RETORT_CONSTANTWEIGHT_STEPS")
          .replace(/,/g, ", ")
      : held;
  expect(formulasNotOwn(reading({}, rewritten))).toEqual([]);
  const [cell = ""] = formulaCells().filter((name) =>
    buildRunSheet(OPTIONS).cells.some((one) => one.cell === name && /SQRT/.test(one.formula ?? "")),
  );
  for (const change of [
    (held: string) => held.replace("SQRT", "ABS"),
    (held: string) => `${held}+0`,
    (held: string) => held.replace(/\$B\$(\d+)/, "$B$9"),
  ])
    expect(formulasNotOwn(reading({}, (name, held) => (name === cell ? change(held) : held)))).toEqual([cell]);
});

test("nothing is said of a sheet whose formulas bear the mark of another version or none, of one that was moved, or written otherwise throughout", () => {
  const { formulas, madeWith } = sheetWords.workings;
  const others = formulaCells().slice(0, 3);
  const marked =
    (mark: string) =>
    (cell: string, held: string): string =>
      held.startsWith(formulas) ? mark : replaced(...others)(cell, held);
  expect(formulasNotOwn(reading({}, marked(`${formulas}aaaaaaaa`)))).toEqual([]);
  expect(formulasNotOwn(reading({}, marked("")))).toEqual([]);
  expect(formulasNotOwn(reading({}, (cell, held) => (held === "CHECKS" ? "" : replaced(...others)(cell, held))))).toEqual([]);
  expect(formulasNotOwn(reading({}, (cell, held) => (held.startsWith(madeWith) ? "" : replaced(...others)(cell, held))))).toEqual([]);
  expect(formulasNotOwn(reading({}, (_, held) => (held.startsWith("=") ? `${held}+0` : held)))).toEqual([]);
});

test("the mark follows the formulas and nothing else, and no number", () => {
  const markOf = (options: Partial<RunSheetOptions>): unknown =>
    buildRunSheet({ ...OPTIONS, ...options }).cells.find(({ content }) => String(content).startsWith(sheetWords.workings.formulas))?.content;
  expect(markOf({})).toMatch(/^Formulas [a-p]{8}$/);
  expect(markOf({ vessel: "crucible" })).toBe(markOf({}));
  expect(new Set([{}, { weighIns: 7 }, { replicates: 3 }, { kind: "ashing" } as const].map(markOf)).size).toBe(4);
});

test("cells with formulas of their own are told in words, with the remedy, and a gathered sheet leaves such a run out", () => {
  expect(otherFormulas([])).toBe("");
  expect(otherFormulas(["F12"])).toBe(
    "The formula of F12 is not the sheet's own, so its number is not vouched for. Undo, or press Mend formulas in the task pane.",
  );
  expect(otherFormulas(["F12", "G12"])).toBe(
    "The formulas of F12 and G12 are not the sheet's own, so their numbers are not vouched for. Undo, or press Mend formulas in the task pane.",
  );
  const [one = "", two = ""] = formulaCells().slice(30);
  expect(readRuns([reading({}, replaced(one))]).leftOut).toEqual([
    { sheet: "Charring run", why: `the formula of ${one} is not the sheet's own: mend it there, and gather again` },
  ]);
  expect(readRuns([reading({}, replaced(one, two))]).leftOut[0]?.why).toBe(
    `the formulas of ${one} and 1 more are not the sheet's own: mend them there, and gather again`,
  );
  expect(readRuns([reading()]).leftOut).toEqual([]);
});

test("a report says so before anything else", () => {
  const extras = { date: "2026-11-21", version: "0.2.0" };
  const [cell = ""] = formulaCells().slice(30);
  expect(reportHtml(reading(), extras)).not.toContain("not the sheet");
  expect(reportHtml(reading({}, replaced(cell)), extras)).toContain(
    `The formula of ${cell} is not the sheet&#39;s own, so its number is not vouched for.`,
  );
});
