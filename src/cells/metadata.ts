import { takesRanges, type CellFunction } from "../functions/cellFunction";
import { aboutInput } from "../inputs/aboutInput";
import type { Input } from "../inputs/Input";

/**
 * The content of functions.json: what the host is told about every cell function.
 * @param helpAddress gives the reference page of a function, https
 */
export function functionsMetadata(functions: readonly CellFunction[], helpAddress: (name: string) => string): object {
  return {
    // Rich values reach the functions and are unwrapped, error cells among them, which pass through as themselves. Never beside
    // allowErrorForDataTypeAny: the two together crash Office LTSC 2021 (office-js, issue 4385).
    allowCustomDataForDataTypeAny: true,
    functions: functions.map((definition) => ({
      id: definition.name,
      name: definition.name,
      description: definition.summary,
      helpUrl: helpAddress(definition.name),
      parameters: Object.entries(definition.inputs).map(([name, input]) => parameter(definition, name, input)),
      result: givesRectangle(definition) ? { dimensionality: "matrix" } : { dimensionality: "scalar" },
    })),
  };
}

/** Type any everywhere: the host then converts nothing and every message is ours. */
function parameter(definition: CellFunction, name: string, input: Input<unknown>): object {
  const matrix = input.shape === "column" || takesRanges(definition);
  return {
    name,
    description: aboutInput(input),
    type: "any",
    dimensionality: matrix ? "matrix" : "scalar",
    ...(input.optional ? { optional: true } : {}),
  };
}

const givesRectangle = (definition: CellFunction): boolean => definition.gives === "table" || takesRanges(definition);
