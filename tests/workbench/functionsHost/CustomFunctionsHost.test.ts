import { CustomFunctionsHost, type BlankAs } from "../../../src/workbench/functionsHost/CustomFunctionsHost";
import type { FunctionsMetadata, ParameterMetadata } from "../../../src/workbench/functionsHost/FunctionsMetadata";
import { HostFunctionError } from "../../../src/workbench/functionsHost/HostFunctionError";
import { GridError, type GridValue } from "../../../src/workbook/grid/HostFunction";
import { openHeadlessWorkbook, FIRST_SHEET } from "../headlessWorkbook";

jest.setTimeout(30_000);

type Given = (readonly (readonly GridValue[])[] | undefined)[];

const scalar: ParameterMetadata = { name: "reading", dimensionality: "scalar" };
const matrix: ParameterMetadata = { name: "readings", dimensionality: "matrix" };
const optional: ParameterMetadata = { name: "limit", dimensionality: "scalar", optional: true };

/** Calls one function of the host's as the grid would, and gives what it received and what it answered. */
function call(parameters: readonly ParameterMetadata[], given: Given, answer?: unknown, settings: { blankAs?: BlankAs; errors?: boolean } = {}) {
  const host = new CustomFunctionsHost();
  if (settings.blankAs !== undefined) host.blankAs = settings.blankAs;
  const global: { CustomFunctions?: { associate(id: string, run: (...values: unknown[]) => unknown): void } } = {};
  host.install(global);
  let received: unknown[] | undefined;
  global.CustomFunctions?.associate("probe", (...values) => {
    received = values;
    if (answer instanceof Error) throw answer;
    return answer;
  });
  const metadata: FunctionsMetadata = { allowErrorForDataTypeAny: settings.errors ?? true, functions: [{ id: "PROBE", name: "PROBE", parameters }] };
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

  test("an error cell is an object with its code where the metadata allow it", () => {
    const { received } = call([scalar], [[[new GridError("#N/A")]]]);
    expect(received?.[0]).toMatchObject({ type: "Error", code: "#N/A", basicValue: "#N/A" });
  });

  test("an error cell answers for the function where the metadata do not allow it", () => {
    const { result, received } = call([matrix], [[[1], [new GridError("#N/A")]]], 1, { errors: false });
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

  test("a function named in functions.json that nothing is associated to is refused", () => {
    expect(() => new CustomFunctionsHost().functions({ functions: [{ id: "LOST", name: "LOST", parameters: [] }] }, "OURS")).toThrow(
      "functions.json names LOST, which functions.js does not associate",
    );
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
