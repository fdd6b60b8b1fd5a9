import {
  UniverDocsPlugin,
  UniverFormulaEnginePlugin,
  UniverSheetsFormulaPlugin,
  UniverSheetsNumfmtPlugin,
  UniverSheetsPlugin,
} from "@univerjs/preset-sheets-core";
import { UniverDataValidationPlugin, UniverSheetsDataValidationPlugin } from "@univerjs/preset-sheets-data-validation";
import { FormulaCalculationSessionController, TriggerCalculationController } from "@univerjs/sheets-formula";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import type { GridFormulas, GridPreset } from "../../workbook/grid/openGrid";

/** The engine's parts that calculate: cells, formulas, number formats and rules for entries, without anything to look at. */
export const calculatingParts = (formula: GridFormulas): readonly GridPreset[] => [
  {
    plugins: [
      UniverDocsPlugin,
      [UniverFormulaEnginePlugin, { function: formula.function }],
      UniverSheetsPlugin,
      UniverSheetsNumfmtPlugin,
      [UniverSheetsFormulaPlugin, { description: formula.description }],
      UniverDataValidationPlugin,
      UniverSheetsDataValidationPlugin,
    ],
  },
];

export const isCalculatingPart = (pluginName: string): boolean =>
  calculatingParts({ function: [], description: [] }).some(({ plugins }) =>
    plugins.some((entry) => (Array.isArray(entry) ? entry[0] : entry).pluginName === pluginName),
  );

/** Makes the engine calculate from now on. In a page it would otherwise begin once its interface has been drawn. */
export function calculateBeforeDrawn({ injector }: GridEngine): void {
  injector.get(TriggerCalculationController);
  injector.get(FormulaCalculationSessionController);
}
