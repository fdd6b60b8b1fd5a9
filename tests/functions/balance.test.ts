import fc from "fast-check";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, INTERNAL_ERROR } from "../../src/cells/CellProblem";
import { balance } from "../../src/functions/balance";
import { sense } from "../../src/functions/sense";
import { callLiteral } from "./call";

const functions = [...balance, ...sense];

/** Whatever a sheet can hold, with the sizes and words that get past the first checks made likely. */
const anything: fc.Arbitrary<unknown> = fc.oneof(
  fc.double({ min: 0, max: 40, noNaN: true }),
  fc.double(),
  fc.constantFrom<unknown>(null, undefined, "", 0, 0.5, 1.2, 20, 2700, 8000, 101_325, true, "OIML", "ash", "wood", "35,1", {}, []),
  fc.constantFrom<unknown>({ type: "Error", basicValue: "#REF!" }, { type: "FormattedNumber", basicValue: 31.5 }),
);

test.each(functions.map((definition) => [definition.name, definition] as const))(
  "%s answers whatever it is given with a finite number, words or a problem of its own",
  (_name, definition) => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 7 }), (raw) => {
        for (const answer of [callCellFunction(definition, raw)].flat(2)) {
          expect(answer instanceof CellProblem ? answer.message : "").not.toBe(INTERNAL_ERROR);
          if (typeof answer === "number") expect(Number.isFinite(answer)).toBe(true);
        }
      }),
      { numRuns: 1000 },
    );
  },
);

test("TYPICALRANGE shows an error for nothing but an error cell", () => {
  const [typicalRange] = sense;
  if (typicalRange === undefined) throw new Error("TYPICALRANGE is missing");
  // No host hands over a range without cells.
  const noErrors = anything.filter((raw) => !Array.isArray(raw) && (raw as { type?: string } | null | undefined)?.type !== "Error");
  fc.assert(
    fc.property(fc.array(noErrors, { maxLength: 3 }), (raw) => {
      expect([callCellFunction(typicalRange, raw)].flat(2).every((answer) => typeof answer === "string")).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

// Design: a blank cell arrives as 0. Where 0 is a real value it is taken as such, else as blank.
test.each([
  ["=RETORT.ZERODRIFT(31.5, 0, 0)", 31.5],
  ["=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0, 0, 0)", 31.496],
  ["=RETORT.BLANKCORRECTED(0.85, 0)", 0.85],
  ["=RETORT.HOTWEIGHING(0)", 0],
])("%s takes blank cells handed over as 0 as its help says: %s", (cell, expected) => {
  expect(callLiteral(cell)).toBeCloseTo(expected, 12);
});

test("ZERODRIFT takes clock times, which are fractions of a day", () => {
  expect(callLiteral("=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0.4, 0.402, 0.405)")).toBeCloseTo(31.4964, 9);
});

test.each(functions.map((definition) => [definition.name, definition] as const))("%s works its examples out", (_name, definition) => {
  expect(definition.working).toBeDefined();
});
