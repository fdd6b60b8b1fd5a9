/** Words of the sheet as a whole. */
export const sheetWords = {
  unnamedVessel: "vessel",
  sample: (number: number): string => `Sample ${number}`,
  says: "What the sheet says",
  workings: {
    title: "WORKINGS. Nothing to type here; not printed.",
    /** Begins the record of what a sheet was made with, by which it is read again. */
    madeWith: "Retort run sheet 1, made with ",
    u: "u of one weighing, g; change two explain, g",
    next: "row of the next box; 0: all is weighed",
    inUse: "samples under way",
    start: "round 1 was at (days)",
    steadyRound: "steady since round, each and all",
    weighingsLeft: "more rounds, by the curve",
    contradiction: "weights that contradict",
    vessel: "empty vessel counted, g",
    corrected: "counted, g with the vessel",
    together: "± 95 % together",
    steadyFiring: "steady since firing, each and all",
    firedVessel: "vessel counted here, g",
    before: "before the first firing, g",
  },
  /** Heading of the minutes, by which the pane finds a run sheet's weighings. */
  elapsed: "Elapsed (min)",
  chart: { title: "Drying", x: "minutes since round 1", y: "vessel and sample, g", net: "sample, g" },
  curves: { heading: "CURVES", about: "weight against time; lines told apart by their markers" },
  print: { left: "&10&A, printed &D", centre: "&10Page &P of &N", right: "&10Retort run sheet" },
} as const;
