import { NAMESPACE } from "../functions/catalogue";
import type { CellFunction } from "../functions/cellFunction";

/** The call as typed, optional inputs in square brackets: "RETORT.MOISTURE.WET(vessel, moist, dry)". */
export const signature = (definition: CellFunction): string =>
  `${NAMESPACE}.${definition.name}(${Object.entries(definition.inputs)
    .map(([name, input]) => (input.optional ? `[${name}]` : name))
    .join(", ")})`;
