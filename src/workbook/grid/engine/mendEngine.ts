import type { Injector } from "@univerjs/core";
import {
  AstTreeBuilder,
  CELL_INVERTED_INDEX_CACHE,
  ErrorType,
  ErrorValueObject,
  IFormulaDependencyGenerator,
  IFunctionService,
  Interpreter,
  Lexer,
  NumberValueObject,
  ValueObjectFactory,
  type ArrayValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { isBeyondGrid } from "../typing/nesting";

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

const NUMBER = /^\s*[-+]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?\s*$/i;

let isMended = false;

/**
 * Mends a defect of engine 0.25.1: numbers in a cell formula that are not written the shortest way, such as 1.0, 0.10
 * and 1E-3, are read as text, so that =A1>=1.0 is FALSE for 1, and so is 0>-1E-3. Only numbers in formulas come with a second argument;
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

/** What the engine's own reading and working out of formulas is called; some of it is private there. */
interface Steps {
  treeBuilder(formula: string, ...others: unknown[]): unknown;
  parse(lexed: unknown): unknown;
  execute(data: unknown): unknown;
  executeAsync(data: unknown): Promise<unknown>;
  checkAsyncNode(node: unknown): boolean;
}

const CANNOT = "#VALUE!";

/**
 * Mends a defect of engine 0.25.1: a formula that it stumbles over, be it that the stack runs out or that it takes one part of a tree for another,
 * as in LET(x,1,LET(x,1,x)), ends the calculation of all cells for good. Such a formula gives #VALUE!, and so does one that is known to be too long
 * or too deep before anything is tried.
 */
export function answerWhateverIsTyped(injector: Injector): void {
  const [lexer, parser, interpreter] = [Lexer, AstTreeBuilder, Interpreter].map((one) => injector.get(one as never) as unknown as Steps) as [
    Steps,
    Steps,
    Steps,
  ];
  const [lex, parse] = [lexer.treeBuilder.bind(lexer), parser.parse.bind(parser)];
  const failed = (): unknown => parse(lex(`=${CANNOT}`));
  lexer.treeBuilder = (formula, ...others) => (isBeyondGrid(formula) ? CANNOT : orElse(() => lex(formula, ...others), () => CANNOT)); // prettier-ignore
  parser.parse = (lexed) => orElse(() => parse(lexed), failed);
  const [execute, executeAsync, isAsync] = [interpreter.execute, interpreter.executeAsync, interpreter.checkAsyncNode].map((one) =>
    one.bind(interpreter),
  ) as [Steps["execute"], Steps["executeAsync"], Steps["checkAsyncNode"]];
  const error = (): unknown => ErrorValueObject.create(ErrorType.VALUE);
  interpreter.execute = (data) => orElse(() => execute(data), error);
  interpreter.executeAsync = (data) => executeAsync(data).catch(error);
  interpreter.checkAsyncNode = (node) => orElse(() => isAsync(node), () => false); // prettier-ignore
}

function orElse<T>(work: () => T, otherwise: () => T): T {
  try {
    return work();
  } catch {
    return otherwise();
  }
}
