/** The boxes of the planning form, in the order in which they are read. */
export const PLAN_FIELDS = [
  ...(["wantedUncertainty", "expectedMoisture", "expectedLoss", "dryingHours"] as const),
  ...(["kiln", "heatingRate", "holdMinutes", "coolingHours"] as const),
  ...(["repeatability", "methodScatter", "bulkDensity", "molarMass", "vesselMaterial", "beginAt"] as const),
] as const;
export type PlanFieldName = (typeof PLAN_FIELDS)[number];
