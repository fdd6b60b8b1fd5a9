import fc from "fast-check";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, INTERNAL_ERROR } from "../../src/cells/CellProblem";
import { drying } from "../../src/functions/drying";
import { residue } from "../../src/functions/residue";
import { answerOf, column } from "./call";

/** Cells of a weighing column as they come: mostly weighings, some out of order, blank, text or an error. */
const cell = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 25_000, max: 40_000 }).map((milligrams) => milligrams / 1000) },
  { weight: 1, arbitrary: fc.constantFrom<unknown>(0, null, "", "35,1", "n/a", true, -1, { type: "Error", basicValue: "#N/A" }) },
);

test("MOISTURE.WET over columns answers as it does cell by cell", () => {
  fc.assert(
    fc.property(fc.array(fc.record({ moist: cell, dry: cell }), { minLength: 2, maxLength: 12 }), (rows) => {
      const isBlank = (raw: unknown): boolean => raw === 0 || raw === null || raw === "";
      const lifted = answerOf("MOISTURE.WET", 25, column(rows.map(({ moist }) => moist)), column(rows.map(({ dry }) => dry)));
      const single = rows.map(({ moist, dry }) => (isBlank(moist) && isBlank(dry) ? [""] : [answerOf("MOISTURE.WET", 25, moist, dry)]));
      expect(lifted).toEqual(single);
    }),
  );
});

const weights = fc.array(
  fc.integer({ min: 9000, max: 9900 }).map((milligrams) => milligrams / 1000),
  { minLength: 1, maxLength: 10 },
);

test.each(["CONSTANTWEIGHT", "CONSTANTWEIGHT.STEPS"])("%s takes blanks at the end as weighings not yet made", (name) => {
  fc.assert(
    fc.property(weights, fc.array(fc.constantFrom<unknown>(0, null, ""), { maxLength: 5 }), (made, blanks) => {
      const planned = [...made, ...blanks].map((_, index) => 30 * index);
      const call = (cells: readonly unknown[]): unknown =>
        answerOf(name, column(cells), 0.002, "of last", column(planned.slice(0, cells.length)), null, 0.001, 60);
      expect(call([...made, ...blanks])).toEqual(call(made));
    }),
  );
});

test("CONSTANTWEIGHT reads a row of cells as it reads a column", () => {
  fc.assert(
    fc.property(weights, (made) => {
      expect(answerOf("CONSTANTWEIGHT", [made])).toEqual(answerOf("CONSTANTWEIGHT", column(made)));
    }),
  );
});

/** Whatever a sheet can hold, with the words and sizes that get past the first checks made likely. */
const anything: fc.Arbitrary<unknown> = fc.oneof(
  fc.double({ min: 0, max: 40, noNaN: true }),
  fc.double(),
  fc.constantFrom<unknown>(null, undefined, "", 0, 0.001, 2, 60, true, "tared", "wet", "dry", "of last", "per hour", "readability", "35,1", {}, []),
  fc.constantFrom<unknown>({ type: "Error", basicValue: "#REF!" }, { type: "FormattedNumber", basicValue: 31.5 }),
);
const argument = fc.oneof(anything, fc.array(fc.array(anything, { minLength: 1, maxLength: 1 }), { minLength: 1, maxLength: 6 }));

test.each([...drying, ...residue].map((definition) => [definition.name, definition] as const))(
  "%s answers whatever it is given with a finite number, words or a problem of its own",
  (_name, definition) => {
    fc.assert(
      fc.property(fc.array(argument, { maxLength: 8 }), (raw) => {
        for (const answer of [callCellFunction(definition, raw)].flat(2)) {
          expect(answer instanceof CellProblem ? answer.message : "").not.toBe(INTERNAL_ERROR);
          if (typeof answer === "number") expect(Number.isFinite(answer)).toBe(true);
        }
      }),
      { numRuns: 1000 },
    );
  },
);
