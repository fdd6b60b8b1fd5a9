import { bannerPlace } from "../../sharing/bannerPlace";
import { sheetStyles } from "../../workbook/sheetStyles";
import type { RangeReading } from "../../workbook/Workbook";
import type { LookChange } from "../package/StylesPart";
import type { WorkbookPackage } from "../package/WorkbookPackage";

const BANNER_LOOK: LookChange = { bold: true, italic: false, colour: sheetStyles.caution.fontColour };
// Points.
const TITLE_PLACE_SIZE = 8;

/** Where a banner stands on a sheet of the file whose reading may leave blank cells out: where somebody sees it. */
export const bannerPlaceIn = async (file: WorkbookPackage, sheet: string, reading: RangeReading, isStill: boolean): Promise<string> =>
  bannerPlace(reading, isStill, await file.outOfView(sheet));

/** @param inTitlePlace true where the line stands behind a run sheet's title, in its cell, and ends where the next step begins */
export async function putBanner(file: WorkbookPackage, sheet: string, cell: string, words: string, inTitlePlace = false): Promise<void> {
  const [look] = await file.addLooks([[0, inTitlePlace ? { ...BANNER_LOOK, size: TITLE_PLACE_SIZE } : BANNER_LOOK]]);
  await file.changeCells(sheet, [{ cell, content: { kind: "value", value: words }, ...(look !== undefined && { look }) }]);
}
