/** What sheets of version 0.2 and before print over their drying tables, by which their weighings are still found. */
export const olderSheets = { number: "Weigh-in", sample: "Sample (g)", correctedSample: "Sample, drift-corrected (g)" } as const;
