import type { RunSheet } from "../sheet/RunSheet";

/** The share that the answer is about: what left as vapour, in all stages or on heating, or of a run that ends with drying what was water. */
export function headline({ charring, stages, heating }: RunSheet): "volatile" | "moistureWet" | "lostInAll" | "lossOnHeating" {
  if (charring !== undefined) return "volatile";
  if (stages !== undefined) return "lostInAll";
  return heating === undefined ? "moistureWet" : "lossOnHeating";
}
