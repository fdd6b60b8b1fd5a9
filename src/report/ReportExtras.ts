/** What a report says of itself. */
export interface ReportExtras {
  /** The day it is made, as it is to be printed. */
  readonly date: string;
  /** Of the add-in: "0.2.0". */
  readonly version: string;
}
