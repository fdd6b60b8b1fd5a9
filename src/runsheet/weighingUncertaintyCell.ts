import { COLUMNS } from "./columns";
import type { Layout } from "./layout";

/** The cell of the standard uncertainty of one weighing, from anywhere on the sheet: "$B$18". */
export const weighingUncertaintyCell = (rows: Layout): string => `$${COLUMNS.value}$${rows.weighingUncertainty}`;
