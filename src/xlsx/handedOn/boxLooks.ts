import { sheetStyles } from "../../workbook/sheetStyles";
import { openStyles } from "../package/sheets/addSheets";
import { attributeOf, childNamed } from "../package/parts/markup";
import type { LookChange } from "../package/StylesPart";
import type { WorkbookPackage } from "../package/WorkbookPackage";

const BOX_FILLS: readonly string[] = [sheetStyles.input, sheetStyles.runBox].map(({ fill = "" }) => fill.replace("#", "FF").toUpperCase());

/** A cell that was to be filled in, and no longer is. */
const PRINTED: LookChange = {
  fill: "",
  colour: sheetStyles.label.fontColour,
  border: { left: null, right: null, top: null, bottom: null },
};

/** For the look of each of our boxes to fill in, the same look without the box. */
export async function boxLooks(file: WorkbookPackage): Promise<ReadonlyMap<number, number>> {
  const { styles } = await openStyles(file.parts);
  const isBox = styles.items("fills").map((fill) => {
    const pattern = childNamed(fill, "patternFill");
    const colour = pattern && childNamed(pattern, "fgColor");
    return BOX_FILLS.includes((colour && attributeOf(colour, "rgb"))?.toUpperCase() ?? "");
  });
  const boxes = styles.items("cellXfs").flatMap((look, index) => (isBox[Number(attributeOf(look, "fillId"))] === true ? [index] : []));
  const printed = await file.addLooks(boxes.map((look) => [look, PRINTED]));
  return new Map(boxes.map((look, index) => [look, printed[index] ?? look]));
}
