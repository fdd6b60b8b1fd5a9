/** What has to be known beside a formula that takes as many cells as its answer needs. */
export interface Growth {
  /** True where an answer of so many rows and columns would find room. */
  isFree(rows: number, columns: number): boolean;
  /** True where a formula asks one of these cells, the first left aside, in a way that tells an empty text from a blank cell. */
  isAsked(rows: number, columns: number): boolean;
}
