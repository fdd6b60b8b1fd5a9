import { generateRandomId, LocaleType, LogLevel, Univer, type ILocales, type IWorkbookData, type Plugin, type PluginCtor } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel, FunctionType, type BaseFunction, type IFunctionInfo } from "@univerjs/engine-formula";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-data-validation/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets/facade";
import type { Theme } from "@univerjs/themes";
import { gatherSteps } from "./engine/asOneStep";
import { bracketNames } from "./engine/bracketNames";
import { calculateMovedCells } from "./engine/calculateMovedCells";
import { calculateWhatDepends } from "./engine/calculateWhatDepends";
import { checkEntriesAnew } from "./engine/checkEntriesAnew";
import { followNames } from "./engine/followNames";
import { calculationWatch } from "./calculationWatch";
import { ErrorMessages } from "./calling/ErrorMessages";
import { executorFor } from "./calling/executorFor";
import type { GridEngine } from "./GridEngine";
import type { HostFunction } from "./calling/HostFunction";
import { keepBoxes } from "./engine/keepBoxes";
import { keepTimes } from "./engine/keepTimes";
import { keepLineLooks } from "./engine/keepLineLooks";
import { keepDependencies } from "./engine/keepDependencies";
import { answerWhateverIsTyped, compareWhatCellsHold, keepRulesOffTheSheet, readNumberLiterals, sortACopy } from "./engine/mendEngine";
import { compareAsSpreadsheets, keepAreasApart, mendFunctions } from "./engine/mendFunctions";
import { loseSheets } from "./engine/loseSheets";
import { moveReferences } from "./engine/moveReferences";
import { giveZeroForBlank, keepEmptyTexts, linkNumbers, refuseTextConditions } from "./engine/readAsSpreadsheets";
import { readSigns } from "./engine/readSigns";
import { answerPlainRules } from "./engine/plainRules";
import { rememberFormulas, tellFormulasApart } from "./engine/rememberFormulas";

/** What a preset of the engine brings: plugins, alone or with their settings. */
export interface GridPreset {
  readonly plugins: readonly (PluginCtor<Plugin> | [PluginCtor<Plugin>, unknown])[];
}

/** The custom functions in the engine's own terms. */
export interface GridFormulas {
  readonly function: [typeof BaseFunction, string][];
  readonly description: IFunctionInfo[];
}

export interface GridSetup {
  readonly functions: readonly HostFunction[];
  readonly presets: (formula: GridFormulas) => readonly GridPreset[];
  /** The page's words; none in Node, where there is no page. */
  readonly words?: ILocales[LocaleType];
  /** The page's colours; none in Node. */
  readonly theme?: Theme;
  readonly data: Omit<Partial<IWorkbookData>, "id">;
}

/** Starts the engine with our functions and opens one workbook in it, in a page or in Node. */
export function openGrid(setup: GridSetup): GridEngine {
  readNumberLiterals();
  compareWhatCellsHold();
  keepEmptyTexts();
  compareAsSpreadsheets();
  keepAreasApart();
  tellFormulasApart();
  gatherSteps();
  const messages = new ErrorMessages();
  const opened: { engine?: GridEngine } = {};
  const sheetName = (sheetId: string): string => opened.engine?.book.getSheetBySheetId(sheetId)?.getSheetName() ?? "";
  const univer = new Univer({
    logLevel: LogLevel.ERROR,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: setup.words ?? {} },
    ...(setup.theme && { theme: setup.theme }),
  });
  const formulas: GridFormulas = {
    function: setup.functions.map((host) => [executorFor(host, messages, sheetName), host.fullName]),
    description: setup.functions.map(described),
  };
  registerEachOnce(univer, setup.presets(formulas));
  const injector = univer.__getInjector();
  const api = FUniver.newAPI(univer);
  // The engine keeps parsed formulas under the workbook's id for all of a program, so two workbooks with one id would calculate in each other.
  const book = api.createWorkbook({ ...setup.data, id: generateRandomId() });
  // The engine's own functions and services are in place only once a workbook is open.
  sortACopy(injector);
  mendFunctions(injector);
  refuseTextConditions(injector);
  giveZeroForBlank(injector);
  linkNumbers(injector);
  keepRulesOffTheSheet(injector);
  readSigns(injector);
  answerWhateverIsTyped(injector);
  bracketNames(injector);
  calculateMovedCells(injector);
  calculateWhatDepends(injector);
  followNames(injector);
  loseSheets(injector);
  rememberFormulas(injector);
  keepDependencies(injector);
  answerPlainRules(injector);
  keepBoxes(injector);
  keepTimes(injector);
  keepLineLooks(injector);
  checkEntriesAnew(injector);
  const calculations = calculationWatch(api, injector);
  calculations.onStart(() => messages.beginCalculation());
  const engine: GridEngine = {
    univer,
    injector,
    api,
    book,
    spills: injector.get(FormulaDataModel),
    references: moveReferences(injector),
    messages,
    settled: calculations.settled,
    isCalculating: calculations.isUnderWay,
  };
  opened.engine = engine;
  return engine;
}

/** Presets share plugins; the settings of the last one to name a plugin count. */
function registerEachOnce(univer: Univer, presets: readonly GridPreset[]): void {
  const plugins = new Map<string, [PluginCtor<Plugin>, unknown]>();
  for (const entry of presets.flatMap((preset) => preset.plugins)) {
    const [plugin, settings] = Array.isArray(entry) ? entry : [entry, undefined];
    plugins.delete(plugin.pluginName);
    plugins.set(plugin.pluginName, [plugin, settings]);
  }
  for (const [plugin, settings] of plugins.values()) univer.registerPlugin(plugin, settings as never);
}

/** For the list of functions that opens while a cell formula is typed. */
const described = (host: HostFunction): IFunctionInfo => ({
  functionName: host.fullName,
  functionType: FunctionType.User,
  description: host.about,
  abstract: host.about,
  functionParameter: host.parameters.map(({ name, about, optional }) => ({
    name,
    detail: about,
    example: name,
    require: optional ? 0 : 1,
    repeat: 0,
  })),
});
