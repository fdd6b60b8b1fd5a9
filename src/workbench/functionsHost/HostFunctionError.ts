/** The error codes under the names the custom-functions runtime gives them. */
export const HostErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

/** What the runtime calls CustomFunctions.Error: thrown or returned by a function, and handed over for an error cell. */
export class HostFunctionError extends Error {
  readonly type = "Error";
  readonly basicValue: string;

  constructor(
    readonly code: string,
    message = "",
  ) {
    super(message);
    this.name = "CustomFunctions.Error";
    this.basicValue = code;
  }
}
