import type { CellReading } from "../../workbook/Workbook";
import type { FileValue } from "../../xlsx/package/cells/CellChange";

/** What a cell shows, as a file holds it. */
export const fileValue = ({ error, value }: Pick<CellReading, "error" | "value">): FileValue => (error === "" ? value : { error });
