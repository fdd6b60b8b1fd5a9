import Ajv from "ajv";
import { functionsMetadata } from "../../src/cells/metadata";
import { everyFunction } from "../../src/functions/catalogue";
import contract from "./contract.json";
import schema from "./functionsJson.schema.json";

interface Parameter {
  name: string;
  optional?: boolean;
  dimensionality: string;
}
interface Metadata {
  functions: { id: string; name: string; description: string; parameters: Parameter[]; result: { dimensionality: string } }[];
}

const metadata = functionsMetadata(everyFunction, (name) => `https://localhost:3000/help/${name.toLowerCase()}.html`) as Metadata;

test("functions.json keeps to the host's published structure and limits", () => {
  const validate = new Ajv({ allErrors: true }).compile(schema);
  validate(metadata);
  expect(validate.errors ?? []).toEqual([]);
});

test("no two functions share a name", () => {
  const names = metadata.functions.map(({ name }) => name);
  expect(names).toEqual([...new Set(names)]);
});

// A1 to XFD1048576 and R1C1 are cell references, which a name may not look like (Office add-ins naming rules).
test.each(metadata.functions.map(({ name }) => [name]))("%s does not read as a cell reference", (name) => {
  expect(name).not.toMatch(/^[A-Z]{1,3}[0-9]{1,7}$/);
  expect(name).not.toMatch(/^R[0-9]*C[0-9]*$/);
});

test.each(metadata.functions.map((entry) => [entry.name, entry] as const))(
  "%s takes no required input after an optional one",
  (_name, { parameters }) => {
    const firstOptional = parameters.findIndex(({ optional }) => optional === true);
    const after = firstOptional < 0 ? [] : parameters.slice(firstOptional);
    expect(after.filter(({ optional }) => optional !== true)).toEqual([]);
  },
);

// The host's function dialog cuts a description that runs over one line.
test.each(everyFunction.map((definition) => [definition.name, definition] as const))(
  "%s is described in one line with its unit",
  (_name, { summary, result, inputs }) => {
    expect(summary.length).toBeLessThanOrEqual(250);
    if (result.unit !== "") expect(summary).toContain(`[${result.unit}]`);
    for (const input of Object.values(inputs)) if (input.unit !== "") expect(input.about).toContain(`[${input.unit}`);
  },
);

/** `vessel, moist, dry` with optional inputs in brackets and columns marked: what saved workbooks rely on. */
const promised = Object.fromEntries(
  metadata.functions.map(({ id, parameters, result }) => [
    id,
    `${parameters.map(({ name, optional, dimensionality }) => `${optional === true ? `[${name}]` : name}:${dimensionality}`).join(", ")} -> ${result.dimensionality}`,
  ]),
);

const lineToAdd = (id: string, line: string, held: Readonly<Record<string, string>>): string[] =>
  held[id] === undefined ? [`add this line to tests/functions/contract.json: ${JSON.stringify(id)}: ${JSON.stringify(line)},`] : [];

test("ids, argument order and shapes are those that saved workbooks rely on (tests/functions/contract.json)", () => {
  expect(Object.entries(promised).flatMap(([id, line]) => lineToAdd(id, line, contract))).toEqual([]);
  expect(promised).toEqual(contract);
});

test("a function that the contract lacks is told with the line to paste, and one whose promise changed is not", () => {
  expect(lineToAdd("NAIVE", "a:matrix -> matrix", contract)).toEqual([
    'add this line to tests/functions/contract.json: "NAIVE": "a:matrix -> matrix",',
  ]);
  expect(lineToAdd("MOLARMASS", "a:matrix -> matrix", contract)).toEqual([]);
});
