import fc from "fast-check";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, INTERNAL_ERROR } from "../../src/cells/CellProblem";
import { cellFunction, tableFunction } from "../../src/functions/cellFunction";
import { choice } from "../../src/inputs/choice";
import { column } from "../../src/inputs/column";
import { fraction } from "../../src/inputs/kinds/shares";
import { mass, vesselMass, weighing } from "../../src/inputs/kinds/weighings";
import { optional } from "../../src/inputs/optional";

const described = { summary: "A test function [g].", result: { about: "Difference", unit: "g" }, examples: [], source: "definition" } as const;

const difference = cellFunction({
  ...described,
  name: "DIFFERENCE",
  inputs: { vessel: vesselMass("Vessel [g]."), gross: mass("Gross [g]."), share: optional(fraction("Share.")) },
  compute: ({ vessel, gross, share }) => (gross - vessel) * (share ?? 1),
});

const total = cellFunction({
  ...described,
  name: "TOTAL",
  inputs: { weights: column("Weights [g].", weighing), keep: optional(choice("What to keep.", ["first", "last"])) },
  compute: ({ weights, keep }) => (keep === "first" ? (weights[0] ?? 0) : weights.reduce((sum, weight) => sum + weight, 0)),
});

const repeated = tableFunction({
  ...described,
  name: "REPEATED",
  inputs: { gross: mass("Gross [g].") },
  computeTable: ({ gross }) => [["gross", gross]],
});

/** The problem with this sentence, and with what it opens with as its argument. */
const problem = (message: string, code: CellProblem["code"] = "#VALUE!"): CellProblem =>
  new CellProblem(code, message, /^[^:]+(?=: )/.exec(message)?.[0]);
const INTERNAL = new CellProblem("#VALUE!", INTERNAL_ERROR);
const INVOCATION = { address: "Sheet1!A1", functionName: "X" };

describe("a function of single cells", () => {
  test("given single values, gives one answer as a rectangle of one cell", () => {
    expect(callCellFunction(difference, [25, 35])).toEqual([[10]]);
  });

  test("ignores the invocation object that the host appends", () => {
    expect(callCellFunction(difference, [25, 35, null, INVOCATION])).toEqual([[10]]);
  });

  test("takes an invocation object in a new optional argument's place as left out", () => {
    expect(callCellFunction(difference, [25, 35, INVOCATION])).toEqual([[10]]);
  });

  test("given columns, answers row by row: blank rows stay empty and a bad row shows its own error", () => {
    expect(callCellFunction(difference, [[[25]], [[35], [0], [null], [""], ["n/a"], [-1], [36]]])).toEqual([
      [10],
      [""],
      [""],
      [""],
      [problem('gross: "n/a" is not a weighing. Give grams.')],
      [problem("gross: -1 g is below zero. Give grams.")],
      [11],
    ]);
  });

  test("a row with nothing entered stays empty although blanks arrive as 0 where 0 is a real value", () => {
    const share = cellFunction({
      ...described,
      name: "SHARE",
      inputs: { gross: mass("Gross [g]."), share: fraction("Share.") },
      compute: (read) => read.gross * read.share,
    });
    expect(
      callCellFunction(share, [
        [[10], [0], [10]],
        [[0.5], [0], [0]],
      ]),
    ).toEqual([[5], [""], [0]]);
  });

  test("a half-filled row names the argument that is missing", () => {
    expect(
      callCellFunction(difference, [
        [[25], [25]],
        [[35], [0]],
      ]),
    ).toEqual([[10], [problem("gross: nothing here (blank or 0). Give grams.")]]);
  });

  test("given two rows, leaves the one nobody has filled in empty", () => {
    expect(callCellFunction(difference, [25, [[35], [0]]])).toEqual([[10], [""]]);
  });

  test("given rows, leaves a place nobody has filled in empty, as in columns", () => {
    expect(callCellFunction(difference, [[[25, 25, 0]], [[35, 0, 0]]])).toEqual([[10, problem("gross: nothing here (blank or 0). Give grams."), ""]]);
  });

  test("a column against a row gives every pair", () => {
    expect(callCellFunction(difference, [[[1, 2]], [[10], [20]]])).toEqual([
      [9, 8],
      [19, 18],
    ]);
  });

  test("ranges of different sizes are refused, naming both", () => {
    expect(
      callCellFunction(difference, [
        [[1], [2]],
        [[10], [20], [30]],
      ]),
    ).toEqual(problem("vessel: 2 rows by 1 column does not fit gross, 3 rows by 1 column. Give ranges of one size."));
  });

  test("whole columns are answered as far as either is filled", () => {
    const whole = (...cells: number[]): unknown[][] => Array.from({ length: 1_048_576 }, (_, row) => [cells[row] ?? 0]);
    expect(callCellFunction(difference, [whole(1, 1, 1), whole(5, 6)])).toEqual([
      [4],
      [5],
      [problem("gross: nothing here (blank or 0). Give grams.")],
    ]);
  });

  test("over a column equals cell by cell", () => {
    const cell = fc.oneof(fc.double({ min: -10, max: 1000, noNaN: true }), fc.constantFrom("", null, 0, "x", true, "3,5", "tared"));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 2, maxLength: 30 }), (rows) => {
        const columns = [0, 1, 2].map((index) => rows.map((row) => [row[index]]));
        const together = callCellFunction(difference, columns) as unknown[][];
        rows.forEach((row, index) => {
          const alone = callCellFunction(difference, row) as unknown[][];
          const unfilled = [row[0], row[1]].every((value) => value === null || value === "" || value === 0);
          expect(together[index]).toEqual(unfilled ? [""] : alone[0]);
        });
      }),
    );
  });
});

describe("an error in an input cell", () => {
  test.each(["#N/A", "#DIV/0!", "#NUM!", "#NULL!", "#VALUE!"] as const)("%s passes through as itself", (code) => {
    const answer = callCellFunction(difference, [25, { type: "Error", basicValue: code }]);
    expect(answer).toEqual([[problem(`gross: the cell given here shows ${code}. Mend that cell first.`, code)]]);
  });

  test("#REF!, which a function may not return, becomes #VALUE! and is named", () => {
    const answer = callCellFunction(difference, [25, { code: "#REF!" }]);
    expect(answer).toEqual([[problem("gross: the cell given here shows #REF!. Mend that cell first.")]]);
  });

  test("comes before what else is wrong with the call", () => {
    expect(callCellFunction(difference, [0, { code: "#N/A" }])).toEqual([
      [problem("gross: the cell given here shows #N/A. Mend that cell first.", "#N/A")],
    ]);
  });

  test("in a column is named with its row", () => {
    expect(callCellFunction(total, [[[1], [{ code: "#N/A" }]]])).toEqual(
      problem("weights: row 2: the cell given here shows #N/A. Mend that cell first.", "#N/A"),
    );
  });
});

describe("a function of a column", () => {
  test("reads a column, or a row, up to its last weighing", () => {
    expect(callCellFunction(total, [[[1], [2], [0], [null]]])).toBe(3);
    expect(callCellFunction(total, [[[1, 2, 0]]])).toBe(3);
  });

  test.each([
    ["a gap", [[1], [0], [2]], "weights: row 2 is blank. Fill the gap or remove the row."],
    ["text", [[1], ["n/a"]], 'weights: row 2 holds "n/a", not a weighing. Clear the cell or give grams.'],
    ["a number typed as text", [[1], ["2,5"]], 'weights: row 2 holds "2,5", text, not a number. Retype it as a number.'],
    ["a negative weighing", [[1], [-2]], "weights: row 2 holds -2 g, below zero. Clear the cell or give grams."],
    ["TRUE", [[true]], "weights: row 1 holds TRUE, not a weighing. Clear the cell or give grams."],
    ["nothing", [[0], [0]], "weights: nothing here (blank or 0). Give grams."],
    [
      "two columns",
      [
        [1, 2],
        [3, 4],
      ],
      "weights: 2 rows by 2 columns given. Give one column, or one row.",
    ],
  ])("refuses %s", (_title, weights, message) => {
    expect(callCellFunction(total, [weights])).toEqual(problem(message));
  });

  test("takes a choice in any letter case and refuses other words with the list", () => {
    expect(callCellFunction(total, [[[1], [2]], " First "])).toBe(1);
    expect(callCellFunction(total, [[[1], [2]], "middle"])).toEqual(problem('keep: "middle" is not one of "first", "last".'));
  });

  test("refuses a range where one cell is wanted", () => {
    expect(callCellFunction(total, [[[1]], [["first", "last"]]])).toEqual(
      problem("keep: 1 row by 2 columns given where one cell is wanted. Give one cell."),
    );
    expect(callCellFunction(total, [[[1]], [["first"], ["last"]]])).toEqual(
      problem("keep: 2 rows by 1 column given where one cell is wanted. Give one cell."),
    );
  });
});

test("a rich value is taken by its basic value", () => {
  expect(callCellFunction(difference, [{ type: "FormattedNumber", basicValue: 25 }, 35])).toEqual([[10]]);
  expect(callCellFunction(difference, [{ basicValue: 25 }, 35])).toEqual([[10]]);
  expect(callCellFunction(difference, [25, 35, { type: "Entity" }])).toEqual([[10]]);
});

test("a table function gives its rows", () => {
  expect(callCellFunction(repeated, [5])).toEqual([["gross", 5]]);
});

test("NaN and infinity never leave, alone or inside a table", () => {
  const leaking = (value: number) => ({ ...described, name: "LEAK", inputs: {}, compute: () => value });
  expect(callCellFunction(cellFunction(leaking(NaN)), [])).toEqual([[INTERNAL]]);
  expect(callCellFunction(cellFunction(leaking(Infinity)), [])).toEqual([[INTERNAL]]);
  const table = tableFunction({ ...described, name: "LEAKS", inputs: {}, computeTable: () => [[1, NaN]] });
  expect(callCellFunction(table, [])).toEqual([[1, INTERNAL]]);
});

test("an unforeseen exception becomes an internal error, not a crash", () => {
  const broken = tableFunction({
    ...described,
    name: "BROKEN",
    inputs: {},
    computeTable: () => {
      throw new TypeError("boom");
    },
  });
  expect(callCellFunction(broken, [])).toEqual(INTERNAL);
});

test("no host value makes a call throw", () => {
  fc.assert(
    fc.property(fc.array(fc.anything(), { maxLength: 5 }), (raw) => {
      for (const definition of [difference, total, repeated]) expect(() => callCellFunction(definition, raw)).not.toThrow();
    }),
    { numRuns: 500 },
  );
});
