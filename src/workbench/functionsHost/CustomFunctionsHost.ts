import { functionNotLoaded } from "../../problems/inputProblems";
import type { GridValue, HostFunction } from "../../workbook/grid/calling/HostFunction";
import { boundFunction, type Implementation } from "./boundFunction";
import type { FunctionsMetadata } from "./FunctionsMetadata";
import { HostErrorCode, HostFunctionError } from "./HostFunctionError";

/** What a blank cell is handed over as. Hosts differ: 0 on the desktop, null in a browser, "" from a formula cell that looks empty. */
export type BlankAs = 0 | null | "";

/**
 * How an error cell is handed over. Hosts differ: as a rich value where they know data types, as the runtime's own error object,
 * or not at all, where the host answers with that error and does not call the function (Office LTSC 2021).
 */
export type ErrorAs = "rich value" | "error object" | "not at all";

/**
 * Stands in for the spreadsheet's custom-functions runtime: gives the built functions.js the global it expects, then
 * binds what was associated to functions.json.
 */
export class CustomFunctionsHost {
  blankAs: BlankAs = 0;
  errorAs: ErrorAs = "rich value";
  private readonly implementations = new Map<string, Implementation>();

  /** Puts the global `CustomFunctions` in place. Call before functions.js runs. */
  install(target: object): void {
    Object.assign(target, {
      CustomFunctions: {
        Error: HostFunctionError,
        ErrorCode: HostErrorCode,
        associate: (id: string, implementation: Implementation) => this.implementations.set(id.toUpperCase(), implementation),
      },
    });
  }

  /** Every function of functions.json with the implementation associated to its id; one that nothing is associated to says so. */
  functions(metadata: FunctionsMetadata, namespace: string): readonly HostFunction[] {
    return metadata.functions.map((definition) => {
      const implementation = this.implementations.get(definition.id.toUpperCase()) ?? notLoaded(`${namespace}.${definition.name}`);
      return boundFunction(definition, implementation, {
        namespace,
        blank: (): GridValue => this.blankAs,
        error: (code) => errorCell(code, metadata.allowCustomDataForDataTypeAny === true ? this.errorAs : "not at all"),
      });
    });
  }
}

/** @throws HostFunctionError where the host answers for itself */
function errorCell(code: string, as: ErrorAs): unknown {
  if (as === "rich value") return { type: "Error", basicType: "Error", basicValue: code };
  const error = new HostFunctionError(code);
  if (as === "not at all") throw error;
  return error;
}

// A host shows #N/A for a function that is registered and not associated (Office add-ins documentation, troubleshooting).
const notLoaded =
  (fullName: string): Implementation =>
  () => {
    throw new HostFunctionError(HostErrorCode.notAvailable, functionNotLoaded(fullName).message);
  };
