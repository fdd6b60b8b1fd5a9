import { joined, text, type Expression } from "../expressions/Expression";

/** Words of the sheet that gathers runs. */
export const gatherWords = {
  sheetName: "Gathered runs",
  title: "Several runs, one row a sample",
  answer: {
    none: "No vapour share is counted yet: see the marks below.",
    tooFew: (count: Expression) => text`Vapour shares counted: ${count}. Too few for a median and a scatter: three are needed.`,
    median: (median: Expression, scatter: Expression, count: Expression) =>
      text`Median ${median} % of the dry sample left as vapour; scatter ${scatter} % (1.4826 MAD); ${count} samples counted.`,
    alike: (median: Expression, count: Expression) =>
      text`Median ${median} % of the dry sample left as vapour; ${count} samples counted, at least half of them alike: no scatter.`,
  },
  apart: {
    tooFew: "None can be told to stand apart.",
    alike: "? No robust z: half of the counted samples or more are alike to the last figure (MAD 0).",
    threeCannotTell: "· Three samples cannot tell whether one of them stands apart: four are needed.",
    none: (z: Expression) => text`✓ None stands apart: robust z within ${z}, which chance alone passes on one sheet in 20.`,
    some: (count: Expression, z: Expression) =>
      text`? Standing apart: ${count} of the counted, robust z beyond ${z}, as by chance on one sheet in 20. Look for a cause first.`,
    notCounted: (count: Expression, rows: number) => text` Not counted: ${count} of ${rows} rows.`,
  },
  band: {
    from: "Target band, from %",
    to: "to %",
    invite: "of the vapour, as percent: 70 to 75",
    notPercent: "? Type percent, such as 70: no fraction, no sign.",
    swapped: "? From is above to: swap them.",
    outside: (outside: Expression, count: Expression) => text`${outside} of ${count} counted samples outside the band`,
    box: {
      title: "Target band",
      prompt: "Percent of the dry sample that is to leave as vapour, such as 70. One end may stay blank. What lies outside is marked.",
      refusal: "Type percent from 1 to 100 as a plain number, such as 70 for 70 %.",
    },
  },
  about: "Live: numbers and marks follow the run sheets; names of sheets are those of the gathering. Medians are of rows marked ✓.",
  columns: ["Run (sheet)", "Trust", "Sample", "Water", "Vapour", "Char", "Ash", "± 95 %", "Mark"],
  sample: (sample: number): string => `sample ${sample}`,
  sampleOf: (material: Expression, sample: number) => text`${material} ${String(sample)}`,
  /** Before the name of one of several samples that a person named alike. */
  oneOf: (number: Expression, count: Expression) => text`${number} of ${count}: `,
  /** Before the name of a sample of the opening workbook's run, whose notes say this. */
  demo: "demo: ",
  demoNote: "Invented: the community orchard, its kiln and every weighing here are made up, to try Retort on.",
  marks: {
    counted: "counted",
    gone: '▲ gone, or its name holds "!"',
    error: "? an error on its sheet",
    withheld: "▲ withheld: not counted",
    unfinished: "· not finished: not counted",
    inDoubt: "? in doubt: not counted",
    noVapour: "water only: no vapour share",
    lost: (percent: Expression) => text`lost ${percent} %, not vapour`,
    lossInDoubt: (percent: Expression) => text`? in doubt: lost ${percent} %`,
    lossWithheld: "▲ loss withheld",
    lossUnfinished: "· not finished: no loss yet",
    apart: (z: Expression, within: Expression) => text`? apart, z ${z}${within}`,
    withinPlusMinus: ", within ±",
    below: ", below band",
    above: ", above band",
  },
  /** The trust of a run of an older sheet, which has no mark of its own. */
  olderDoubt: "? its checks",
  /** In place of a scatter where half of the values or more are one and the same. */
  alike: "alike",
  median: "Median",
  scatter: "Scatter, 1.4826 MAD",
  leftOut: {
    heading: "LEFT OUT",
    balance: "a balance check: it weighs no samples",
    copy: "a copy with values: it follows no correction",
    otherFormulas: (cells: readonly string[]): string =>
      cells.length === 1
        ? `the formula of ${cells[0] ?? ""} is not the sheet's own: mend it there, and gather again`
        : `the formulas of ${cells[0] ?? ""} and ${cells.length - 1} more are not the sheet's own: mend them there, and gather again`,
    // The local workbook reads a reference up to the first "!" as the name of a sheet.
    unreadName: 'its name holds "!", which not every spreadsheet reads in a formula: rename the sheet, then gather again',
    columnsMoved: "a column, or cells, were put in, taken out or moved: undo that, and gather again",
    noShares: "no table of shares was found on it",
    demo: "demo data: its notes say that every weighing is made up; clear them to have it counted",
    heldAgain: (other: string): string => `all its weighings stand on "${other}" too, as after adding a sample: counted there`,
  },
  /** Kinds of run with a loss and no vapour share, and why. */
  without: {
    heading: "NO VAPOUR SHARE",
    kinds: { lossOnHeating: "Salt or mineral", lostInAll: "Staged heating" },
    lossOnHeating:
      "what leaves a salt or mineral is told by its equation, not by closed charring: its loss stands in its mark, its water in no median",
    lostInAll: "what left in stages may be water of crystals as well as vapour: its loss in all stands in its mark, its water in no median",
  },
  curves: { heading: "VAPOUR BY ROW", about: "of the dry sample, in percent; median and target band as lines; drawn in Excel and in the saved file" },
  chart: { title: "Vapour by row", x: "row of this sheet", y: "vapour, % of dry" },
  series: { counted: "counted", doubted: "not counted", median: "median", from: "band from", to: "band to" },
  workings: {
    title: "WORKINGS. Nothing to type here; not printed.",
    count: "vapour shares counted; median; MAD; apart; beyond z",
    band: "band counted, from and to",
    columns: ["vapour counted", "from median", "robust z", "stands apart", "outside band"],
    others: ["water counted", "from median", "char counted", "from median", "ash counted", "from median"],
    chart: ["row", "counted", "not counted", "row", "median", "band from", "band to"],
    name: "named",
    chartAbout: "for the chart; #N/A is not drawn",
  },
  print: { left: "&10&A, &D", centre: "&10Page &P of &N", right: "&10Retort gathered runs" },
} as const;

/** A mark with what the band says of it. */
export const markWithBand = (mark: Expression, band: Expression) => joined(mark, band);
