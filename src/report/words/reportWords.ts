/** Words of a report that do not stand on the sheet itself. */
export const reportWords = {
  title: (kind: string, material: string): string => (material === "" ? `${kind}: report` : `${kind}: ${material}`),
  notGiven: "not filled in",
  setup: { sheet: "Sheet", made: "Report made" },
  state: {
    blank: "Blank: nothing has been weighed on this sheet yet.",
    unfinished: (next: string): string => `Unfinished when this report was made. ${next}${/[.?]$/.test(next) ? "" : "."}`,
    finished: (next: string): string => `${next}.`,
    history: "A history that goes on: it stands as it was when this report was made.",
    errors: (cells: string): string =>
      `▲ ${cells} on this sheet shows an error where its answer should stand: nothing here is an answer. Calculate the sheet with Retort, then make the report again.`,
  },
  answer: "Answer",
  results: "Results",
  noResults: "No result yet.",
  plusMinusCovers: "What the ± covers",
  checks: "Checks",
  failed: (count: number, of: number): string => `${count} of ${of} checks failed`,
  allLooked: "No check failed.",
  inOrder: "In order",
  notYet: "Nothing to look at yet",
  method: "Method and settings",
  weighings: "Weighings and firings",
  charts: "Curves",
  noChart: "No curve: it needs two weighings with their times.",
  compared: "Against open burning",
  cautions: "Cautions",
  sources: "Sources",
  sourcesCut: "Sources that end in … are cut; the page of the function has them in full.",
  analysis: "Analysis of the dry sample",
  table: {
    nothing: "nothing filled in.",
    blankRows: (count: number): string => (count === 1 ? "(1 row without entries left out)" : `(${count} rows without entries left out)`),
    shortened: (count: number): string => `… ${count} rows between stand on the sheet and in the curve …`,
  },
  chart: {
    about: (title: string, x: string, y: string): string => `${title}: ${y}, against ${x}.`,
    line: (name: string, from: string, to: string, count: number): string => `${name}: ${count} points, from ${from} to ${to}.`,
    band: (name: string): string => `Band: ${name}.`,
    left: "what is left, without its vessel, g",
    leftPercent: "left, % of the dry sample",
  },
  foot: (version: string, edition: string): string =>
    `Made with Retort ${version}; atomic weights ${edition}. Values as the sheet showed them: they do not recalculate here.`,
  calculations: {
    title: (sheet: string): string => `Calculations on ${sheet}`,
    about: (count: number): string =>
      count === 1 ? "One cell of this sheet calls a Retort function." : `${count} cells of this sheet call Retort functions.`,
    errors: (count: number): string =>
      count === 1 ? "▲ One of them shows an error and has no value." : `▲ ${count} of them show an error and have no value.`,
    others: (count: number): string =>
      count === 1 ? "One cell with built-in functions only is not listed." : `${count} cells with built-in functions only are not listed.`,
    columns: ["Cell", "On the sheet", "Cell formula", "Value", "Unit"],
    older: "A run sheet of an earlier version: the report lists its calculations one by one.",
    rearranged: (missing: string, cell: string): string =>
      `A run sheet whose parts do not stand where they were made (looked for "${missing}"${cell === "" ? "" : ` in ${cell}`}): the report lists its calculations one by one.`,
    /** @param why what became of its columns, as whole sentences */
    columnsMoved: (why: string): string => `${why} Till then the report lists the calculations of the sheet one by one.`,
  },
} as const;
