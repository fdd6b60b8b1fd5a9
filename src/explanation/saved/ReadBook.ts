import type { NameReading } from "../../sharing/plain/reading/PlainReading";
import type { RuleReading } from "../../sharing/plain/reading/RuleReading";
import type { TablePlace } from "../../sharing/plain/reading/Surroundings";
import type { RangeReading } from "../../workbook/Workbook";

/** What is known of a workbook, for whoever follows what its cells are calculated from. */
export interface ReadBook {
  readonly sheets: readonly { readonly name: string; readonly reading: RangeReading }[];
  readonly names: readonly NameReading[];
  readonly tables: readonly TablePlace[];
  /** The rules by which its sheets colour cells. */
  readonly colouring: readonly RuleReading[];
}
