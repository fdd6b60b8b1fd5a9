import { mergeLocales } from "@univerjs/core";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import dataValidationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import type { GridFormulas, GridPreset } from "../workbook/grid/openGrid";

/** The grid as the page shows it: cells, a formula line and sheet tabs, no toolbar. */
export const gridPresets =
  (container: HTMLElement) =>
  (formula: GridFormulas): readonly GridPreset[] => [
    UniverSheetsCorePreset({
      container,
      formula,
      toolbar: false,
      footer: { sheetBar: true, statisticBar: true, menus: false, zoomSlider: false },
      // The green corner and its warning on text such as 007 explain a thing this page keeps on purpose.
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    }),
    UniverSheetsDataValidationPreset(),
  ];

export const gridWords = mergeLocales(coreWords, dataValidationWords);
