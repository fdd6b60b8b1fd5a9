/** Words by which cells of a run sheet are called that have no label of their own. */
export const cellNameWords = {
  head: {
    title: "Next step",
    answer: "Answer",
    checks: "Checks, in a line",
    covers: "What the ± covers",
  },
  /** The last line of the head, by what it tells on each kind of run. */
  lastLine: {
    openFire: "Open burning",
    caught: "Products",
    stages: "Where most left",
    compound: "Beside theory",
    drying: "What counts as water",
  },
  /** What the heading over a sample's boxes begins with. */
  sample: "Sample ",
  /** What a label of workings ends with that stands for each sample and for all together. */
  eachAndAll: ", each and all",
  allSamples: "all samples",
  /** What the heading over the grams of a sample is called. */
  grams: "grams",
  beside: "What stands beside",
  note: "Note",
  verdict: "Verdict",
  finding: "Finding",
  /** Columns of one table, by their headings. */
  columns: (first: string, last: string): string => `columns "${first}" to "${last}"`,
  fromTo: (first: string, last: string): string => `${first} to ${last}`,
} as const;
