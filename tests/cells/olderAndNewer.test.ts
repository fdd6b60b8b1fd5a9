import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import type { CellFunction } from "../../src/functions/cellFunction";
import { functionNamed, literalArguments } from "../functions/call";
import { ExcelHost } from "../host/ExcelHost";
import type { CallResult } from "../host/FunctionCalls";
import { loadClientLibrary } from "../host/loadClientLibrary";

// A client keeps functions.json for a day and functions.js for as long as its own cache says, so that either may be the older.
const VALUE = 7;
const NOT_AVAILABLE = 1;
// As in register.test.ts: the runtime looks once more after the last result.
const LAST_LOOK_MS = 600;

const host = new ExcelHost();
loadClientLibrary(host);
jest.requireActual("../../src/cells/register"); // after the library, as in the functions page

afterAll(() => new Promise((resolve) => setTimeout(resolve, LAST_LOOK_MS)));

/** What the runtime sends for an answer. */
function sent(answer: Answer | Answer[][]): unknown {
  const rows = Array.isArray(answer) ? answer : [[answer]];
  const [[only]] = rows as [[Answer]];
  if (rows.length === 1 && rows[0]?.length === 1 && only instanceof CellProblem) {
    return { worked: false, value: only.message, errorCode: only.code === "#N/A" ? NOT_AVAILABLE : VALUE };
  }
  const cell = (value: Answer) =>
    value instanceof CellProblem ? (expect.objectContaining({ type: "Error", basicValue: value.code }) as unknown) : value;
  return { worked: true, value: rows.map((row) => row.map(cell)) };
}

const asRows = (result: CallResult): CallResult => (result.worked && !Array.isArray(result.value) ? { ...result, value: [[result.value]] } : result);

interface Call {
  readonly called: string;
  readonly name: string;
  readonly given: readonly unknown[];
}

const exampleCalls = (definition: CellFunction): Call[] =>
  definition.examples.map(({ cell }) => ({ called: cell, name: definition.name, given: literalArguments(cell) }));

/** Every example as a client with older metadata would make it: with the inputs up to each that metadata may end with. */
const withFewerInputs = everyFunction.flatMap((definition) => {
  const inputs = Object.values(definition.inputs);
  const required = inputs.filter(({ optional }) => !optional).length;
  const known = inputs.flatMap((_, index) => (index >= required ? [index] : []));
  return exampleCalls(definition).flatMap(({ called, name, given }) =>
    known.map((count) => ({
      called: `${called}, ${count} inputs known`,
      name,
      given: Array.from({ length: count }, (_, index) => given[index] ?? null),
    })),
  );
});

test("newer code, older metadata: each optional input that the client does not know is taken as left out, in every function", async () => {
  expect(new Set(withFewerInputs.map(({ name }) => name)).size).toBeGreaterThan(15);
  const came = await Promise.all(withFewerInputs.map(async ({ called, name, given }) => [called, asRows(await host.functions.call(name, given))]));
  const wanted = withFewerInputs.map(({ called, name, given }) => {
    const definition = functionNamed(name);
    const leftOut = Object.keys(definition.inputs).map((_, index) => given[index] ?? null);
    return [called, sent(callCellFunction(definition, leftOut))];
  });
  expect(came).toEqual(wanted);
});

/** Every example as a client with newer metadata would make it: with one input more. */
const withOneMore = everyFunction.flatMap((definition) => {
  const count = Object.keys(definition.inputs).length;
  return exampleCalls(definition).map(({ called, name, given }) => ({
    called,
    name,
    given: Array.from({ length: count }, (_, index) => given[index] ?? null),
  }));
});

test("older code, newer metadata: an input that the code does not know is never left out in silence, in no function", async () => {
  const came = await Promise.all(withOneMore.map(async ({ called, name, given }) => [called, await host.functions.call(name, [...given, "dry"])]));
  const advice = "Close the spreadsheet and open it again to load the newer ones.";
  const wanted = withOneMore.map(({ called, name, given }) => {
    const value = `RETORT.${name}: argument ${given.length + 1} is newer than the functions loaded here. ${advice}`;
    return [called, { worked: false, value, errorCode: VALUE }];
  });
  expect(came).toEqual(wanted);
});

test("older code, newer metadata: an input that the code does not know and that is left out changes nothing", async () => {
  const came = await Promise.all(
    withOneMore.map(async ({ called, name, given }) => [called, asRows(await host.functions.call(name, [...given, null]))]),
  );
  const wanted = withOneMore.map(({ called, name, given }) => [called, sent(callCellFunction(functionNamed(name), given))]);
  expect(came).toEqual(wanted);
});
