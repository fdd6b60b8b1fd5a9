import type { Layout } from "./layout";
import type { SampleCells } from "./sampleCells";

/** The verdict of the latest weigh-in, whatever it holds; only where there is one. */
export const newestVerdict = (cells: SampleCells, { table }: Layout): string =>
  `INDEX(${cells.stretch(table.letters.steady)},COUNTA(${cells.stretch(table.letters.loaded)}))`;
