import { cell } from "../expressions/Expression";
import { LABEL } from "../sheet/Columns";
import type { Sheet } from "../sheet/RunSheet";
import { cautions, cautionWords } from "../words/cautions";
import { band, ofCells, type Block } from "./Block";

/** What hurt the work can do, as the foot of page one. */
export function cautionsBlock(sheet: Sheet): Block {
  const { heading, first } = sheet.rows.cautions;
  return ofCells(
    ...band(sheet, heading, "runBand", { [LABEL]: cautionWords.heading, [LABEL + 2]: cautionWords.about }),
    ...cautions[sheet.options.kind].map((line, index) => ({ at: cell(first + index, LABEL), content: line, style: "runCaution" }) as const),
  );
}
