import type { InputProblem } from "../../problems/InputProblem";
import { argumentLeftOut, notOneCell, tooManyArguments } from "../../problems/inputProblems";
import { GridError, type GridValue, type HostFunction } from "../../workbook/grid/calling/HostFunction";
import type { FunctionMetadata, ParameterMetadata } from "./FunctionsMetadata";
import { HostErrorCode, HostFunctionError } from "./HostFunctionError";

export type Implementation = (...given: unknown[]) => unknown;

interface HostRules {
  readonly namespace: string;
  /** What stands for a blank cell. */
  readonly blank: () => GridValue;
  /**
   * What stands for an error cell.
   * @throws HostFunctionError where the error answers for the function, which is then not called
   */
  readonly error: (code: string) => unknown;
}

type Rectangle = readonly (readonly GridValue[])[];

/** One function as the grid calls it, its arguments and answer converted as the add-in's own host converts them. */
export function boundFunction(definition: FunctionMetadata, implementation: Implementation, rules: HostRules): HostFunction {
  const fullName = `${rules.namespace}.${definition.name}`;
  return {
    fullName,
    about: definition.description ?? "",
    parameters: definition.parameters.map(({ name, description, optional }) => ({ name, about: description ?? "", optional: optional === true })),
    call: (given, address) => {
      try {
        const handed = definition.parameters.map((parameter, index) => handedOver(parameter, index, given[index], rules));
        const most = definition.parameters.length;
        // A known difference: Excel does not take such a formula in; the grid does, so the cell says what is wrong.
        if (given.length > most) throw refused(tooManyArguments(fullName, given.length, most));
        // The runtime adds its invocation object after the last parameter.
        return answered(implementation(...handed, { address, functionName: fullName }));
      } catch (thrown) {
        return [[failure(thrown)]];
      }
    },
  };
}

/** @throws HostFunctionError when the function must not be called with this argument */
function handedOver(parameter: ParameterMetadata, index: number, given: Rectangle | undefined, rules: HostRules): unknown {
  if (given === undefined) {
    if (parameter.optional === true) return null;
    throw refused(argumentLeftOut(parameter.name, index + 1));
  }
  const rows = given.map((row) => row.map((value) => handedCell(value, rules)));
  if (parameter.dimensionality === "matrix") return rows;
  const columns = rows[0]?.length ?? 0;
  // A known difference: Excel calls the function once for each cell of the range; here the whole call is refused.
  if (rows.length !== 1 || columns !== 1) {
    throw refused(notOneCell(parameter.name, rows.length, columns));
  }
  return rows[0]?.[0];
}

const refused = ({ message }: InputProblem): HostFunctionError => new HostFunctionError(HostErrorCode.invalidValue, message);

function handedCell(value: GridValue, rules: HostRules): unknown {
  if (value === null) return rules.blank();
  return value instanceof GridError ? rules.error(value.code) : value;
}

function answered(answer: unknown): GridValue[][] {
  if (!Array.isArray(answer)) return [[cellOf(answer)]];
  return answer.map((row: unknown) => (Array.isArray(row) ? row : [row]).map(cellInArray));
}

function cellOf(value: unknown): GridValue {
  if (typeof value === "number" && !Number.isFinite(value)) return new GridError(HostErrorCode.invalidNumber);
  return cellInArray(value);
}

/** Inside an array the runtime turns null, NaN and infinity into 0 without a word. */
function cellInArray(value: unknown): GridValue {
  if (value instanceof HostFunctionError) return failure(value);
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") return Number.isFinite(value) ? value : 0;
  if (value === null || value === undefined) return 0;
  return new GridError(HostErrorCode.invalidValue);
}

const KEEPS_ITS_SENTENCE: readonly string[] = [HostErrorCode.invalidValue, HostErrorCode.notAvailable];

/** The runtime keeps the sentence of two error codes only, and shows anything unforeseen as a bare #VALUE!. */
function failure(thrown: unknown): GridError {
  if (!(thrown instanceof HostFunctionError)) return new GridError(HostErrorCode.invalidValue);
  return new GridError(thrown.code, KEEPS_ITS_SENTENCE.includes(thrown.code) ? thrown.message : "");
}
