/** What sheets of version 0.2 and before print over their drying tables, by which their weighings are still found. */
export const olderSheets = {
  /** What run sheets said beside their set-up before legend of setupWords. */
  legend: "Boxes left of the heavy line: you. Right of it: the sheet.",
  number: "Weigh-in",
  sample: "Sample (g)",
  correctedSample: "Sample, drift-corrected (g)",
  /** What they print over and beside their results, by which these are gathered. */
  results: {
    heading: "Share or count",
    working: (sample: number): string => `Working, sample ${sample}`,
    shares: { moistureWet: "Moisture, wet basis", volatile: "Volatile fraction of dry sample", charYield: "Char yield of dry sample", ash: "Ash of dry sample" }, // prettier-ignore
    checks: "Checks",
    inOrder: "in order",
    material: "Sample",
  },
} as const;

/** What labels said before, by what they say now: sheets that were saved so are read, and mended, as they are. */
const SAID_BEFORE: Readonly<Record<string, string>> = {
  "Stayed after heating, g": "Left after heating, g",
  Date: "Date; who",
  Begun: "Begun; who",
  "Check weight, g": "Check weight, g; mark",
};

/** Whether a cell holds a label, in its words of now or of before. */
export const saysLabel = (held: unknown, label: string): boolean => held === label || (held !== undefined && held === SAID_BEFORE[label]);
