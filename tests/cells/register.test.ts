import { INTERNAL_ERROR } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import type { CellFunction } from "../../src/functions/cellFunction";
import { ExcelHost } from "../host/ExcelHost";
import { BOTH_FLAGS, errorCell, errorObjectCell } from "../host/FunctionCalls";
import { loadClientLibrary } from "../host/loadClientLibrary";
import { testFunctions } from "./testFunctions";

// Numbers of the custom-functions runtime for a failed call.
const NOT_AVAILABLE = 1;
const DIVISION_BY_ZERO = 5;
const VALUE = 7;

// The runtime sends results at most every half second and looks once more after the last (its own source); calls made at
// once share a look, hence the concurrent tests.
const LAST_LOOK_MS = 600;

const LOAD_NEWER = "Close the spreadsheet and open it again to load the newer ones.";

const host = new ExcelHost();
loadClientLibrary(host);
(everyFunction as CellFunction[]).push(...testFunctions);
jest.requireActual("../../src/cells/register"); // after the library, as in the functions page

afterAll(() => new Promise((resolve) => setTimeout(resolve, LAST_LOOK_MS)));

const call = (id: string, ...given: unknown[]) => host.functions.call(id, given);
const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const error = (code: string, message: string) => expect.objectContaining({ type: "Error", basicValue: code, message }) as unknown;

describe("through the custom-functions runtime of the client library", () => {
  test("every function of the catalogue is registered under its name", () => {
    const { mappings } = (CustomFunctions as unknown as { _association: { mappings: object } })._association;
    expect(Object.keys(mappings).sort()).toEqual(everyFunction.map(({ name }) => name).sort());
    expect(everyFunction.length).toBeGreaterThan(testFunctions.length);
  });

  test.concurrent("a call on single cells gives one value", async () => {
    expect(await call("VOLATILEFRACTION", [[25]], [[35]], [[28]])).toEqual({ worked: true, value: [[0.7]] });
  });

  test.concurrent("a call on columns spills: blank rows stay empty, and a bad row shows its own error with its sentence", async () => {
    const result = await call("VOLATILEFRACTION", column(25, 0, 25), column(35, 0, 35), column(28, 0, 36.2));
    const gained = "after: 36.2 g is more than before, 35 g. Check for swapped cells or regained moisture.";
    expect(result).toEqual({ worked: true, value: [[0.7], [""], [error("#VALUE!", gained)]] });
  });

  test.concurrent("a problem with the inputs as a whole fails the call with #VALUE! and its sentence", async () => {
    const result = await call("VOLATILEFRACTION", column(25, 25), column(35, 35, 35), column(28, 28));
    const misfit = "vessel: 2 rows by 1 column does not fit before, 3 rows by 1 column. Give ranges of one size.";
    expect(result).toEqual({ worked: false, value: misfit, errorCode: VALUE });
  });

  test.concurrent("no answer shows as #N/A with its sentence, alone or inside a spill", async () => {
    expect(await call("TEST.NOTABLE", [[1]])).toEqual({ worked: false, value: "grams: nothing to tabulate. Weigh again.", errorCode: NOT_AVAILABLE });
    const noAnswer = "grams: nothing follows from one weighing. Weigh again.";
    expect(await call("TEST.NOANSWER", [[1]])).toEqual({ worked: false, value: noAnswer, errorCode: NOT_AVAILABLE });
    expect((await call("TEST.NOANSWER", column(1, 1))).value).toEqual(column(error("#N/A", noAnswer), error("#N/A", noAnswer)));
  });

  test.concurrent("a problem that is the whole answer fails the call; it does not travel in a rectangle of one cell", async () => {
    const gained = "after: 36.2 g is more than before, 35 g. Check for swapped cells or regained moisture.";
    const alone = { worked: false, value: gained, errorCode: VALUE };
    expect(await call("VOLATILEFRACTION", [[25]], [[35]], [[36.2]])).toEqual(alone);
    expect(await call("VOLATILEFRACTION", 25, 35, 36.2)).toEqual(alone);
    expect(await call("VOLATILEFRACTION", [[25, 25]], [[35, 35]], [[36.2, 28]])).toEqual({ worked: true, value: [[error("#VALUE!", gained), 0.7]] });
  });

  test.concurrent("an argument beyond those it knows, as with newer metadata, is named: its answer would leave that argument out", async () => {
    const beyond = (position: number) => `RETORT.TEST.SUM: argument ${position} is newer than the functions loaded here. ${LOAD_NEWER}`;
    expect(await call("TEST.SUM", [[1]], [[2]], [[3]])).toEqual({ worked: false, value: beyond(3), errorCode: VALUE });
    expect(await call("TEST.SUM", [[1]], null, null, "dry")).toEqual({ worked: false, value: beyond(4), errorCode: VALUE });
    expect((await call("TEST.SUM", [[1]], [[2]], null)).value).toEqual([[3]]);
  });

  test.concurrent("a function that the metadata have and the code has not never answers", async () => {
    expect(await call("TEST.NEWER", [[1]])).toMatchObject({ worked: false });
  });

  test.concurrent("an error in an input cell comes out as that same error", async () => {
    const { value } = await call("VOLATILEFRACTION", column(25, 25), column(35, errorCell("#DIV/0!")), column(28, 28));
    expect(value).toEqual([[0.7], [expect.objectContaining({ type: "Error", basicValue: "#DIV/0!" })]]);
    expect(await call("TEST.HOLES", errorCell("#DIV/0!"))).toMatchObject({ worked: false, errorCode: DIVISION_BY_ZERO });
    expect(await call("TEST.HOLES", errorCell("#N/A"))).toMatchObject({ worked: false, errorCode: NOT_AVAILABLE });
  });

  test.concurrent("an error cell comes out the same where a host still holds metadata with both flags", async () => {
    const both = (id: string, ...given: unknown[]) => host.functions.call(id, given, BOTH_FLAGS);
    for (const cell of [errorCell, errorObjectCell]) {
      const { value } = await both("VOLATILEFRACTION", column(25, 25), column(35, cell("#DIV/0!")), column(28, 28));
      expect(value).toEqual([[0.7], [expect.objectContaining({ type: "Error", basicValue: "#DIV/0!" })]]);
      const passed = "grams: the cell given here shows #REF!. Mend that cell first.";
      expect(await both("TEST.HOLES", cell("#REF!"))).toEqual({ worked: false, value: passed, errorCode: VALUE });
    }
  });

  test.concurrent("an error that no function may return comes out as #VALUE! with a sentence that names it", async () => {
    const passed = "grams: the cell given here shows #REF!. Mend that cell first.";
    expect(await call("TEST.HOLES", errorCell("#REF!"))).toEqual({ worked: false, value: passed, errorCode: VALUE });
  });

  test.concurrent("the invocation object that the runtime adds after the last argument changes nothing", async () => {
    expect((await call("TEST.SUM", [[1]], [[2]])).value).toEqual([[3]]);
    expect((await call("TEST.SUM", [[1]], null)).value).toEqual([[1]]);
  });

  test.concurrent("the invocation object in the place of an optional argument, as with older metadata, counts as left out", async () => {
    expect((await call("TEST.SUM", [[1]])).value).toEqual([[1]]);
  });

  test.concurrent("a rich value is taken by its basic value", async () => {
    expect((await call("TEST.SUM", [[{ type: "FormattedNumber", basicValue: 4, numberFormat: "0.0" }]], null)).value).toEqual([[4]]);
  });

  test.concurrent("NaN and infinity never leave, not even inside a spill, where they would show as 0", async () => {
    const hole = error("#VALUE!", INTERNAL_ERROR);
    expect(await call("TEST.HOLES", [[1]])).toEqual({
      worked: true,
      value: [
        [1, hole],
        [hole, "text"],
      ],
    });
  });

  test.concurrent("what nobody foresaw shows as #VALUE! with one sentence and no detail", async () => {
    expect(await call("TEST.UNFORESEEN", [[1]])).toEqual({ worked: false, value: INTERNAL_ERROR, errorCode: VALUE });
    expect((await call("TEST.UNFORESEEN", column(1, 1))).value).toEqual(column(error("#VALUE!", INTERNAL_ERROR), error("#VALUE!", INTERNAL_ERROR)));
  });
});
