/** Cells that an expression refers to. */
export interface RangeReference {
  readonly sheet: string;
  /** "B7", "B7:C12", "B:C" or "3:9", no dollar signs. */
  readonly range: string;
  /** True for the spill of the cell: "B7#". */
  readonly spill: boolean;
}

export const referenceKey = ({ sheet, range, spill }: RangeReference): string => `${sheet}!${range}${spill ? "#" : ""}`;
