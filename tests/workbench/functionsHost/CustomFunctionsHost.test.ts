import { explainCell } from "../../../src/explanation/explainCell";
import { CustomFunctionsHost, type BlankAs, type ErrorAs } from "../../../src/workbench/functionsHost/CustomFunctionsHost";
import type { FunctionsMetadata, ParameterMetadata } from "../../../src/workbench/functionsHost/FunctionsMetadata";
import { HostFunctionError } from "../../../src/workbench/functionsHost/HostFunctionError";
import { GridError, type GridValue } from "../../../src/workbook/grid/calling/HostFunction";
import { openHeadlessWorkbook, FIRST_SHEET } from "../headlessWorkbook";

jest.setTimeout(30_000);

type Given = (readonly (readonly GridValue[])[] | undefined)[];

const scalar: ParameterMetadata = { name: "reading", dimensionality: "scalar" };
const matrix: ParameterMetadata = { name: "readings", dimensionality: "matrix" };
const optional: ParameterMetadata = { name: "limit", dimensionality: "scalar", optional: true };

interface Settings {
  readonly blankAs?: BlankAs;
  readonly errorAs?: ErrorAs;
  /** What functions.json says of rich values. */
  readonly richValues?: boolean;
}

/** Calls one function of the host's as the grid would, and gives what it received and what it answered. */
function call(parameters: readonly ParameterMetadata[], given: Given, answer?: unknown, settings: Settings = {}) {
  const host = new CustomFunctionsHost();
  if (settings.blankAs !== undefined) host.blankAs = settings.blankAs;
  if (settings.errorAs !== undefined) host.errorAs = settings.errorAs;
  const global: { CustomFunctions?: { associate(id: string, run: (...values: unknown[]) => unknown): void } } = {};
  host.install(global);
  let received: unknown[] | undefined;
  global.CustomFunctions?.associate("probe", (...values) => {
    received = values;
    if (answer instanceof Error) throw answer;
    return answer;
  });
  const functions = [{ id: "PROBE", name: "PROBE", parameters }];
  const metadata: FunctionsMetadata = { allowCustomDataForDataTypeAny: settings.richValues ?? true, functions };
  const [bound] = host.functions(metadata, "OURS");
  return { result: bound?.call(given, "Sheet1!B7"), received };
}

const invocation = { address: "Sheet1!B7", functionName: "OURS.PROBE" };

describe("arguments", () => {
  test("a one-cell parameter gets the value, a range parameter rows of values, and the invocation comes last", () => {
    expect(
      call(
        [scalar, matrix],
        [
          [[2]],
          [
            [3, "x"],
            [true, 4],
          ],
        ],
      ).received,
    ).toEqual([
      2,
      [
        [3, "x"],
        [true, 4],
      ],
      invocation,
    ]);
  });

  test("a single cell given to a range parameter is one row by one column", () => {
    expect(call([matrix], [[[5]]]).received).toEqual([[[5]], invocation]);
  });

  test("an omitted optional argument is null, in the middle and at the end", () => {
    expect(call([optional, scalar], [undefined, [[1]]]).received).toEqual([null, 1, invocation]);
    expect(call([scalar, optional], [[[1]]]).received).toEqual([1, null, invocation]);
  });

  test("a missing required argument gives #VALUE! naming it and the function is not called", () => {
    const message = "reading: argument 1 is left out. Give it, with commas between the arguments.";
    expect(call([scalar], [])).toEqual({ result: [[new GridError("#VALUE!", message)]], received: undefined });
  });

  test("one argument too many gives #VALUE! saying so and the function is not called", () => {
    const message = "OURS.PROBE: 2 arguments given; it takes 1 at most. Use a decimal point, and commas only between the arguments.";
    expect(call([scalar], [[[1]], [[2]]])).toEqual({ result: [[new GridError("#VALUE!", message)]], received: undefined });
  });

  test("a range given to a one-cell parameter gives #VALUE! with its shape", () => {
    expect(call([scalar], [[[1], [2]]]).result).toEqual([
      [new GridError("#VALUE!", "reading: 2 rows by 1 column given where one cell is wanted. Give one cell.")],
    ]);
  });

  test.each([[0 as const], [null], ["" as const]])("a blank cell is handed over as %j where the host does so", (blankAs) => {
    expect(call([scalar, matrix], [[[null]], [[1], [null]]], 1, { blankAs }).received).toEqual([blankAs, [[1], [blankAs]], invocation]);
  });

  test("an error cell is a rich value with its code as basic value where the host knows data types", () => {
    const { received } = call([scalar], [[[new GridError("#N/A")]]]);
    expect(received?.[0]).toEqual({ type: "Error", basicType: "Error", basicValue: "#N/A" });
  });

  test("an error cell is the runtime's error object with its code where the host hands it over so", () => {
    const { received } = call([scalar], [[[new GridError("#N/A")]]], 1, { errorAs: "error object" });
    expect(received?.[0]).toMatchObject({ type: "Error", code: "#N/A", basicValue: "#N/A" });
  });

  test.each<[string, Settings]>([
    ["the host knows no data types", { errorAs: "not at all" }],
    ["the metadata do not allow rich values", { richValues: false }],
  ])("an error cell answers for the function where %s", (_where, settings) => {
    const { result, received } = call([matrix], [[[1], [new GridError("#N/A")]]], 1, settings);
    expect(result).toEqual([[new GridError("#N/A")]]);
    expect(received).toBeUndefined();
  });
});

describe("answers", () => {
  test("a blank cell is handed over as 0 unless the host is told otherwise", () => {
    expect(new CustomFunctionsHost().blankAs).toBe(0);
  });

  test.each<[unknown, GridValue]>([
    [2.5, 2.5],
    ["", ""],
    [false, false],
    [undefined, 0],
    [NaN, new GridError("#NUM!")],
    [new HostFunctionError("#N/A", "none: no answer."), new GridError("#N/A", "none: no answer.")],
    [new HostFunctionError("#NUM!", "dropped"), new GridError("#NUM!")],
    [new Error("a defect"), new GridError("#VALUE!")],
  ])("%p becomes %p", (answer, cell) => {
    expect(call([], [], answer).result).toEqual([[cell]]);
  });

  test("an array becomes a rectangle, each cell its own error; NaN and nothing become 0 in it, as in the real host", () => {
    const answer = [
      [1, NaN],
      [null, new HostFunctionError("#VALUE!", "weights: row 2 is blank. Fill the gap or remove the row.")],
    ];
    expect(call([], [], answer).result).toEqual([
      [1, 0],
      [0, new GridError("#VALUE!", "weights: row 2 is blank. Fill the gap or remove the row.")],
    ]);
  });

  test("a function named in functions.json that nothing is associated to answers #N/A and says so", () => {
    const [lost] = new CustomFunctionsHost().functions({ functions: [{ id: "LOST", name: "LOST", parameters: [scalar] }] }, "OURS");
    const message = "OURS.LOST: it is newer than the functions loaded here. Close the spreadsheet and open it again to load the newer ones.";
    expect(lost?.call([[[1]]], "Sheet1!B7")).toEqual([[new GridError("#N/A", message)]]);
  });
});

test.each([[0 as const], [null], ["" as const]])(
  "VOLATILEFRACTION names a blank weighing whether the host hands it over as 0, null or text (%j)",
  async (blankAs) => {
    const open = await openHeadlessWorkbook();
    open.host.blankAs = blankAs;
    await open.type(FIRST_SHEET, "A1", "=RETORT.VOLATILEFRACTION(25, B1, 28)");
    const { rows } = await open.workbook.read(FIRST_SHEET, "A1");
    expect(rows[0]?.[0]).toMatchObject({ error: "#VALUE!", message: "before: nothing here (blank or 0). Give grams." });
    open.close();
  },
);

test.each<[ErrorAs]>([["rich value"], ["error object"], ["not at all"]])(
  "an error in an input cell comes out as itself, and its sentence is told, where the host hands it over as: %s",
  async (errorAs) => {
    const open = await openHeadlessWorkbook();
    open.host.errorAs = errorAs;
    await open.type(FIRST_SHEET, "B1", "=1/0");
    await open.type(FIRST_SHEET, "A1", "=RETORT.VOLATILEFRACTION(25, B1, 28)");
    const { rows } = await open.workbook.read(FIRST_SHEET, "A1");
    expect(rows[0]?.[0]).toMatchObject({ error: "#DIV/0!" });
    const { calls } = await explainCell(open.workbook, { sheet: FIRST_SHEET, cell: "A1" });
    expect(calls[0]?.problem).toEqual({ code: "#DIV/0!", message: "before: the cell given here shows #DIV/0!. Mend that cell first." });
    open.close();
  },
);
