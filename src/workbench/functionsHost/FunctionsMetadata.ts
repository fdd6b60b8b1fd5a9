/** The parts of functions.json that a host needs to call the functions. */
export interface FunctionsMetadata {
  /** True where rich values may be handed over, errors among them. */
  readonly allowCustomDataForDataTypeAny?: boolean;
  readonly functions: readonly FunctionMetadata[];
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterMetadata[];
}

export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly dimensionality?: "scalar" | "matrix";
  readonly optional?: boolean;
}
