/** What a cell of a file can show. Text is text whatever it looks like; null is blank. */
export type FileValue = number | string | boolean | null | { readonly error: string };

/** What is to become of one cell. */
export type NewContent =
  /** A value in place of whatever is there. */
  | {
      readonly kind: "value";
      readonly value: FileValue;
      /** True where a what-if table that begins in the cell is to end as the values it shows. */
      readonly endsTable?: boolean;
    }
  /** The value beside a formula that stays, or in a cell that an array formula fills. */
  | { readonly kind: "recalculated"; readonly value: FileValue }
  /** What is there, where its look alone is to be another one. */
  | { readonly kind: "kept" }
  | {
      readonly kind: "formula";
      /** As a file holds it: no "=", newer functions and those of add-ins under their stored names. */
      readonly formula: string;
      /** What it gives; null where that is not known. */
      readonly value: FileValue;
      /** The cells that it fills as an array formula, "B2:B9"; the values of all but the first are changes of their own. */
      readonly array?: string;
      /** True where the array is as large as the answer, as in newer programs; it keeps its size otherwise. */
      readonly spills?: boolean;
    };

export interface CellChange {
  /** "B7" */
  readonly cell: string;
  readonly content: NewContent;
  /** The number of a look in the file's list; left out: the one it has. */
  readonly look?: number;
}
