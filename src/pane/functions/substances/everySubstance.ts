import { fuels } from "./fuels";
import { hydrates } from "./hydrates";
import { minerals } from "./minerals";
import { otherCompounds } from "./otherCompounds";
import type { Substance } from "./Substance";

/** Every substance that a search knows by name. */
export const everySubstance: readonly Substance[] = [...minerals, ...hydrates, ...fuels, ...otherCompounds];
