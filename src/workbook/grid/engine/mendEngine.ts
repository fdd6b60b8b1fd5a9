import type { Injector } from "@univerjs/core";
import {
  CELL_INVERTED_INDEX_CACHE,
  IFormulaDependencyGenerator,
  IFunctionService,
  NumberValueObject,
  ValueObjectFactory,
  type ArrayValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";

/**
 * Mends a defect of engine 0.25.1: while it calculates it keeps, column by column, what each cell is found to hold, for comparisons to
 * look up instead of looking at the cell. What was worked out from a range stands at the place of the range there: after
 * 1-ISFORMULA(B8:E20), B8 seems to hold 1, and where =B8="" then asks, the text in B8 is not found. Lets every comparison look at cells.
 */
export function compareWhatCellsHold(): void {
  const kept = CELL_INVERTED_INDEX_CACHE;
  kept.set = () => undefined;
  kept.setContinueBuildingCache = () => undefined;
  kept.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
}

const NUMBER = /^\s*(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?\s*$/i;

let isMended = false;

/**
 * Mends a defect of engine 0.25.1: numbers in a cell formula that are not written the shortest way, such as 1.0, 0.10
 * and 1E-3, are read as text, so that =A1>=1.0 is FALSE for 1. Only numbers in formulas come with a second argument;
 * the text of cells does not. Inside an array constant, {1.0,2}, they are still text.
 */
export function readNumberLiterals(): void {
  if (isMended) return;
  isMended = true;
  const factory = ValueObjectFactory as { create: (typeof ValueObjectFactory)["create"] };
  const original = factory.create;
  factory.create = (raw, ignoresPattern) =>
    typeof raw === "string" && ignoresPattern !== undefined && NUMBER.test(raw)
      ? NumberValueObject.create(Number(raw))
      : original.call(ValueObjectFactory, raw, ignoresPattern);
}

const SORT = "SORT";

/**
 * Mends a defect of engine 0.25.1: SORT reorders the cached cells of its range in place, and every other formula on
 * that range then sees them reordered. Gives it a copy.
 */
export function sortACopy(injector: Injector): void {
  const sort = injector.get(IFunctionService).getExecutor(SORT);
  if (sort === undefined || sort === null) throw new Error("the engine has no SORT to mend");
  const original = sort.calculate.bind(sort);
  sort.calculate = (first, ...others) => original(isArray(first) ? first.mapValue((value) => value) : first, ...others);
}

const isArray = (value: unknown): value is ArrayValueObject => (value as BaseValueObject).isArray();

/** A formula as the engine's generator keeps it; private there. */
interface Dependent {
  readonly formulaId?: string | null;
  readonly isVirtual?: boolean;
  row: number;
}

interface RuleGenerator {
  _registerOtherFormulas(...given: unknown[]): void;
  readonly _dependencyTreeCache: ReadonlyMap<unknown, Dependent>;
}

// Rows above the first; no rule reaches over as many.
const OFF_THE_SHEET = 10_000_000;

/**
 * Mends a defect of engine 0.25.1: it takes the formula of an entry rule for a cell formula that stands as far from A1 as the ruled
 * cell stands from the first of its rule. What reads a cell there seems to depend on what the rule reads, and where that depends on it
 * in turn, the seeming circle leaves cells calculated in a wrong order. Keeps rules off the sheet, where nothing reads them.
 */
export function keepRulesOffTheSheet(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as RuleGenerator;
  if (typeof generator._registerOtherFormulas !== "function") throw new Error("the engine has no entry rules to keep apart");
  const original = generator._registerOtherFormulas.bind(generator);
  generator._registerOtherFormulas = (...given) => {
    original(...given);
    for (const formula of generator._dependencyTreeCache.values())
      if (formula.formulaId != null && formula.isVirtual !== true && formula.row > -OFF_THE_SHEET) formula.row -= OFF_THE_SHEET;
  };
}
