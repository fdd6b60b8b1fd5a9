import type { GridValue, HostFunction } from "../../workbook/grid/HostFunction";
import { boundFunction, type Implementation } from "./boundFunction";
import type { FunctionsMetadata } from "./FunctionsMetadata";
import { HostErrorCode, HostFunctionError } from "./HostFunctionError";

/** What a blank cell is handed over as. Hosts differ: 0 on the desktop, null in a browser, "" from a formula cell that looks empty. */
export type BlankAs = 0 | null | "";

/**
 * Stands in for the spreadsheet's custom-functions runtime: gives the built functions.js the global it expects, then
 * binds what was associated to functions.json.
 */
export class CustomFunctionsHost {
  blankAs: BlankAs = 0;
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

  /**
   * Every function of functions.json with the implementation associated to its id.
   * @throws Error when one was never associated
   */
  functions(metadata: FunctionsMetadata, namespace: string): readonly HostFunction[] {
    return metadata.functions.map((definition) => {
      const implementation = this.implementations.get(definition.id.toUpperCase());
      if (implementation === undefined) throw new Error(`functions.json names ${definition.id}, which functions.js does not associate`);
      return boundFunction(definition, implementation, {
        namespace,
        blank: (): GridValue => this.blankAs,
        errorsReachFunctions: metadata.allowErrorForDataTypeAny === true,
      });
    });
  }
}
