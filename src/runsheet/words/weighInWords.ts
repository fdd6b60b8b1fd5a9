import { text, type Cell, type Expression } from "../expressions/Expression";

/** Words of a sample's weighings from the empty vessel to the dry sample. */
export const weighInWords = {
  emptyVessel: {
    label: "Empty vessel (g)",
    title: "Empty vessel",
    about: "Weigh the empty, cold vessel with everything that stays on it, lid included.",
    zeros: { before: "Pan zero before vessel (g)", after: "Pan zero after vessel (g)", corrected: "Empty vessel, drift-corrected (g)" },
  },
  /** Heading of each column of the table. */
  columns: {
    number: "Weigh-in",
    clock: "Clock",
    elapsed: "Elapsed (min)",
    zeroBefore: "Pan zero before (g)",
    loaded: "Vessel + sample (g)",
    zeroAfter: "Pan zero after (g)",
    room: "Room (°C)",
    warmth: "Sample when weighed (°C)",
    sample: "Sample (g)",
    change: "Change since last (g)",
    steady: "Steady yet",
    cold: "Cold enough",
    notes: "Notes",
    chartElapsed: "For the chart (min)",
    chartSample: "For the chart (g)",
    corrected: "Vessel + sample, drift-corrected (g)",
    warmer: "Above the room (°C)",
  },
  correctedSample: "Sample, drift-corrected (g)",
  clock: {
    title: "Clock",
    prompt: "The time of this weighing, such as 14:30; midnight is understood. For gaps of a day or more type date and time in every row.",
  },
  loaded: {
    title: "Vessel + sample",
    about: "Weigh-in 1 is the moist sample before the oven. Weigh cold each time, with the same lid, on the same balance. Fill row by row.",
  },
  room: { title: "Room", prompt: "Temperature beside the balance, in degrees Celsius." },
  warmth: {
    title: "Sample when weighed",
    prompt:
      "In degrees Celsius, held near the vessel. A warm vessel reads light; by how much, yours alone can tell. Published case: a 17 g porcelain crucible, up to 0.19 mg a degree (Blade, Anal. Chem.). Only flagged.",
  },
  cold: { enough: "yes", warm: "too warm: reads light", chilled: "colder than the room" },
  /** Verdicts of CONSTANTWEIGHT.STEPS that the sheet itself acts on. */
  verdicts: { first: "first", steady: "steady", notYet: "not yet" },
  /** What stands in for a verdict while none can be had. */
  noVerdict: {
    rowMissing: "a row is missing",
    clockIsText: "clock is not a time",
    weightIsText: "weight is not a number",
    detailsMissing: "run details missing",
  },
  prediction: "Still to dry (a prediction)",
  oneMore: "about 1 more weighing",
  more: (count: Cell) => text`about ${count} more weighings`,
  byTheCurve: (weighings: Expression) => text`${weighings} by the curve: a prediction, never the dry weight`,
  dry: "Vessel + dry sample (g)",
} as const;
