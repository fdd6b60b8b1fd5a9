import { circularFormulas } from "../../../../src/sharing/plain/change/circularFormulas";
import { plainSheets } from "../../../../src/sharing/plain/plainSheets";
import { sourcesOf } from "../../../../src/sharing/plain/change/precedents";
import { ReadSheets } from "../../../../src/sharing/plain/reading/ReadSheets";
import { cellAt } from "../../../../src/workbook/cellArea";
import type { CellReading, RangeReading } from "../../../../src/workbook/Workbook";
import { seededUniform } from "../../../numerics/seededUniform";

const reading = (cell: string, formula: string, spill = ""): CellReading => ({
  ...{ cell, formula: formula.startsWith("=") ? formula : "", value: formula.startsWith("=") ? 1 : formula },
  ...{ shown: "", error: "", message: "", spill },
});
const sheetOf = (sheet: string, formulas: Readonly<Record<string, string>>): RangeReading => ({
  ...{ sheet, range: "" },
  rows: [Object.entries(formulas).map(([cell, formula]) => reading(cell, formula))],
});

function circlesIn(readings: readonly RangeReading[]): string[][] {
  const sheets = new ReadSheets({ sheets: readings });
  const sources = sheets.formulas.map((formula) =>
    sourcesOf(
      formula.reading.formula,
      sheets.around(formula, () => undefined),
      sheets.names,
    ),
  );
  return circularFormulas(sheets, sources).map((circle) => circle.map(({ sheet, reading: { cell } }) => `${sheet}!${cell}`).sort());
}

test.each<[string, Record<string, string>, string[][]]>([
  ["nothing circular", { A1: "1", B1: "=A1+1", C1: "=SUM(A1:B1)" }, []],
  ["a cell of itself", { A1: "=A1+1" }, [["S!A1"]]],
  ["a range that holds the cell", { A1: "=SUM(A1:A9)", B1: "=A1" }, [["S!A1"]]],
  ["whole columns", { A5: "=SUM(A:A)", B1: "=A5" }, [["S!A5"]]],
  ["two cells", { A1: "=B1", B1: "=A1", C1: "=A1" }, [["S!A1", "S!B1"]]],
  ["a circle reached again from one of its own cells", { A1: "=B1+C1", B1: "=A1", C1: "=B1", D1: "=C1" }, [["S!A1", "S!B1", "S!C1"]]],
  [
    "two circles one behind the other",
    { A1: "=A2", A2: "=A1", B1: "=B2+A1", B2: "=B1" },
    [
      ["S!A1", "S!A2"],
      ["S!B1", "S!B2"],
    ],
  ],
])("circularFormulas finds %s", (_, formulas, circles) => {
  expect(circlesIn([sheetOf("S", formulas)]).sort()).toEqual(circles);
});

test("circularFormulas sees a circle through a spill and across sheets", () => {
  const first: RangeReading = { sheet: "S", range: "", rows: [[reading("A1", "=T!B2:B4", "A1:A3")]] };
  expect(circlesIn([first, sheetOf("T", { B3: "=S!A2*2" })])).toEqual([["S!A1", "T!B3"]]);
});

/** Every cell from which one gets back to itself, looked for along each way. */
function naively(references: readonly (readonly number[])[]): number[] {
  const reaches = (from: number): Set<number> => {
    const [found, ahead] = [new Set<number>(), [...(references[from] ?? [])]];
    for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
      if (found.has(next)) continue;
      found.add(next);
      ahead.push(...(references[next] ?? []));
    }
    return found;
  };
  return references.flatMap((_, cell) => (reaches(cell).has(cell) ? [cell] : []));
}

test("circularFormulas finds what looking along every way finds, on many random sheets", () => {
  const uniform = seededUniform(1972);
  let circular = 0;
  for (let round = 0; round < 300; round++) {
    const cells = 3 + Math.floor(uniform() * 9);
    const ranges = Array.from({ length: cells }, () =>
      Array.from({ length: Math.floor(uniform() * 2.2) }, () => {
        const first = Math.floor(uniform() * cells);
        return [first, Math.min(cells - 1, first + Math.floor(uniform() * 3))] as const;
      }),
    );
    const formulas = Object.fromEntries(
      ranges.map((own, row) => [cellAt(row, 0), `=1${own.map(([from, to]) => `+SUM(A${from + 1}:A${to + 1})`).join("")}`]),
    );
    const references = ranges.map((own) => own.flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, index) => from + index)));
    const expected = naively(references).map((row) => `S!A${row + 1}`);
    circular += expected.length;
    expect({
      round,
      found: circlesIn([sheetOf("S", formulas)])
        .flat()
        .sort(),
    }).toEqual({ round, found: expected.sort() });
  }
  expect(circular).toBeGreaterThan(300);
});

test("a column of running sums is no circle, and takes no longer than its length", () => {
  const rows = 20_000;
  const formulas = Object.fromEntries(Array.from({ length: rows }, (_, index) => [`B${index + 1}`, `=SUM(A$1:A${index + 1})+SUM(B$1:B${index})`]));
  expect(circlesIn([sheetOf("S", { ...formulas, B1: "=A1" })])).toEqual([]);
});

describe("plainSheets of circular formulas", () => {
  const formulas = {
    ...{
      A1: "25",
      A2: "35",
      A3: "31.5",
      C1: "=RETORT.MOISTURE.WET(A1,A2,A3)+C2*0",
      C2: "=C1+SUM(A1:C1)",
      C3: "=C2*2",
      C4: "=RETORT.MOISTURE.WET(A1,A2,A3)",
    },
    ...{ E1: "=E2", E2: "=E1+C2", E3: "=E2", G1: "=G2", G2: "=G1" },
  };
  const shared = plainSheets({ sheets: [sheetOf("S", formulas)] }, { date: "2027-01-15" });

  test("fixes those with a call, and those calculated from them, and says why", () => {
    const fixed = shared.cells.filter(({ kind }) => kind === "fixed").map(({ cell, why }) => [cell, why]);
    expect(fixed).toEqual([
      ["C1", "circular"],
      ["C2", "circular"],
      ["E1", "circular"],
      ["E2", "circular"],
    ]);
    expect(shared.cells.filter(({ kind }) => kind === "watched").map(({ cell }) => cell)).toEqual(["C3", "E3"]);
    expect(shared.cells.filter(({ kind }) => kind === "plain").map(({ cell }) => cell)).toEqual(["C4"]);
  });

  test("makes no circle of its own, in cells or flags", () => {
    const now = new Map<string, string>(Object.entries(formulas));
    for (const { cell, formulas: made } of shared.cells) now.set(cell, "one" in made ? made.one : (made.each[0]?.[0] ?? ""));
    const flags = shared.flags.map(({ name, cells }) => sheetOf(name, Object.fromEntries(cells.map(({ cell, content }) => [cell, content]))));
    expect(flags).toHaveLength(1);
    expect(circlesIn([sheetOf("S", Object.fromEntries(now)), ...flags])).toEqual([["S!G1", "S!G2"]]);
  });
});
