import { LifecycleService, LifecycleStages, LocaleService, LocaleType, mergeLocales, ThemeService } from "@univerjs/core";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import dataValidationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import type { GridPreset } from "../../workbook/grid/openGrid";
import { isCalculatingPart } from "./calculatingParts";
import { boundEntries } from "./boundEntries";
import { focusCells } from "./cellEditing";
import { takeCurrentSuggestions } from "./currentSuggestions";
import { keepSpills } from "./keepSpills";
import { keepSpillsFromPaste } from "./keepSpillsFromPaste";
import { keepSpillsWhole } from "./keepSpillsWhole";
import { nameControls } from "./nameControls";
import { pasteText } from "./pasteText";
import { tellCopiedNames } from "./tellCopiedNames";
import { tellCircles } from "./tellCircles";
import { tellUnread } from "./tellUnread";
import { countPadding, drawChoicesWhole } from "./wholeTexts";

/**
 * Draws an engine that already calculates into the container: cells, a formula line and sheet tabs, no toolbar. Fetched after the
 * calculating parts, of which the engine must have all.
 * @param say tells why something was not entered
 * @returns when the cells can be seen and used
 */
export async function showGrid(engine: GridEngine, container: HTMLElement, say: (sentence: string) => void): Promise<void> {
  const { univer, injector } = engine;
  injector.get(LocaleService).load({ [LocaleType.EN_US]: mergeLocales(coreWords, dataValidationWords) });
  const presets: readonly GridPreset[] = [
    UniverSheetsCorePreset({
      container,
      toolbar: false,
      footer: { sheetBar: true, statisticBar: true, menus: false, zoomSlider: false },
      // The green corner and its warning on text such as 007 explain a thing this page keeps on purpose.
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    }),
    // The search would take the keys from the cell, and lose the letter that opened the list.
    UniverSheetsDataValidationPreset({ showSearchOnDropdown: false }),
  ];
  for (const entry of presets.flatMap(({ plugins }) => plugins)) {
    const [plugin, settings] = Array.isArray(entry) ? entry : [entry, undefined];
    if (!isCalculatingPart(plugin.pluginName)) univer.registerPlugin(plugin, settings as never);
  }
  countPadding();
  followColourScheme(injector.get(ThemeService));
  nameControls(container, () => focusCells(engine));
  await injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
  // The engine has its lists by now.
  drawChoicesWhole(injector);
  takeCurrentSuggestions(engine);
  boundEntries(engine, container, say);
  keepSpills(engine, say);
  keepSpillsWhole(engine, say);
  keepSpillsFromPaste(engine, say);
  tellCopiedNames(engine, say);
  tellUnread(engine, say);
  tellCircles(engine, say);
  // Behind what measures the text.
  pasteText(engine, container);
}

/** Dark where the page is: the engine draws every colour of a sheet, its own or a cell's, turned about in lightness. */
function followColourScheme(theme: ThemeService): void {
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  dark.addEventListener("change", () => theme.setDarkMode(dark.matches));
  theme.setDarkMode(dark.matches);
}
