import type { Injector } from "@univerjs/core";
import {
  AstTreeBuilder,
  IDefinedNamesService,
  IDependencyManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  Lexer,
  LexerTreeBuilder,
} from "@univerjs/engine-formula";

/** What the engine's own steps are called; some of them are private there. */
interface Reader {
  treeBuilder(formula: string, ...others: unknown[]): unknown;
}

interface KeepingReader {
  treeBuilder(formula: string, isWhole?: boolean, names?: unknown): unknown;
  _simpleCheckDefinedName(...given: unknown[]): boolean;
}

interface Parser {
  parse(lexed: unknown): unknown;
}

interface Edit {
  getDirtyDefinedNameMap(): Readonly<Record<string, Readonly<Record<string, unknown>> | null | undefined>>;
  getExecuteUnitId(): string | null | undefined;
}

/** A formula as the engine's generator keeps it. */
interface Formula {
  readonly formula: string;
  readonly isCache: boolean;
}

interface Generator {
  _includeTree(formula: Formula, node: unknown): boolean;
  _generateTreeList(...given: unknown[]): Promise<Formula[]>;
}

/** A formula taken apart, as the engine keeps it for its text, with what its names stood for then. */
interface Node {
  hasDefinedName(this: Node, name: string): boolean;
  [READ]?: { readonly formula: string; readonly meaning: string; asOf: number };
}

const READ = Symbol("read");
/** Asked about in place of the names that changed. */
const ANY = "any name";
/** Where the engine is to look for names: nowhere. */
const NOWHERE = { unitId: null };

/**
 * Mends a defect of engine 0.25.1: it puts what a name stands for in the place of the name once, keeps the formula so under its text, and neither reads
 * nor calculates it again when the name comes to stand for other cells: formulas went on reading the cells that a name had stood for before rows came
 * in, cells were moved, or a sheet was renamed or taken away. Every formula is read anew as soon as anything that its names stand for is different,
 * whatever brought that about, and calculated; and what it read before is forgotten.
 */
export function followNames(injector: Injector): void {
  const names = injector.get(IDefinedNamesService);
  const edit = injector.get(IFormulaCurrentConfigService) as unknown as Edit;
  const [lexer, builder, parser, generator] = [Lexer, LexerTreeBuilder, AstTreeBuilder, IFormulaDependencyGenerator].map((one) =>
    injector.get(one as never),
  ) as unknown as [Reader, KeepingReader, Parser, Generator];
  if ([builder._simpleCheckDefinedName, generator._includeTree].some((step) => typeof step !== "function"))
    throw new Error("the engine does not put what names stand for into formulas");

  const changes = { count: 0 };
  names.update$.subscribe(() => void (changes.count += 1));
  const refersTo = (name: string): string | undefined => names.getValueByName(edit.getExecuteUnitId() ?? "", name)?.formulaOrRefString;

  // What it keeps of a formula before it is parsed, whatever the names were then, is never taken.
  builder._simpleCheckDefinedName = () => true;
  const build = builder.treeBuilder.bind(builder);
  builder.treeBuilder = (formula, isWhole = true, known = isWhole ? NOWHERE : undefined) => build(formula, isWhole, known);
  const read = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, ...others) => {
    const lexed = read(formula, ...others);
    if (typeof lexed === "object" && lexed !== null) (lexed as Node)[READ] = { formula, meaning: meaningOf(formula, refersTo), asOf: changes.count };
    return lexed;
  };
  const parse = parser.parse.bind(parser);
  parser.parse = (lexed) => {
    const node = parse(lexed) as Node | null | undefined;
    const found = (lexed as Node)[READ];
    if (!node || found === undefined) return node;
    node[READ] = { ...found };
    node.hasDefinedName = isOutOfDate;
    return node;
  };
  function isOutOfDate(this: Node): boolean {
    const found = this[READ];
    if (found === undefined || found.asOf === changes.count) return false;
    if (meaningOf(found.formula, refersTo) !== found.meaning) return true;
    found.asOf = changes.count;
    return false;
  }

  const changedNames = edit.getDirtyDefinedNameMap.bind(edit);
  edit.getDirtyDefinedNameMap = () => ({ [edit.getExecuteUnitId() ?? ""]: { [ANY]: ANY } });
  const isTouched = (formula: string): boolean => {
    const changed = Object.keys(changedNames()[edit.getExecuteUnitId() ?? ""] ?? {});
    return changed.length > 0 && mentions(formula, new Set(changed.map((name) => name.toLowerCase())), refersTo);
  };
  const isIncluded = generator._includeTree.bind(generator);
  generator._includeTree = (formula, node) => isIncluded(formula, node) || isTouched(formula.formula);
  const manager = injector.get(IDependencyManagerService) as unknown as { addDependencyRTreeCache(formula: Formula): void };
  const list = generator._generateTreeList.bind(generator);
  generator._generateTreeList = async (...given) => {
    const formulas = await list(...given);
    // What entry rules read is noted once, unless it is noted here.
    for (const one of formulas) if (one.isCache && isTouched(one.formula)) manager.addDependencyRTreeCache(one);
    return formulas;
  };
}

type RefersTo = (name: string) => string | undefined;

/** Everything in a formula that may be a name, and more: what stands in texts, and sheets. */
const wordsOf = (formula: string): string[] => formula.toLowerCase().match(/[\p{L}_\\][\p{L}\p{N}_.\\?]*/gu) ?? [];

/** What all names in a formula stand for, and the names in that. */
function meaningOf(formula: string, refersTo: RefersTo, seen = new Set<string>()): string {
  return wordsOf(formula)
    .filter((word) => !seen.has(word))
    .map((word) => {
      seen.add(word);
      const found = refersTo(word);
      return found === undefined ? "" : `${word}=${found};${meaningOf(found, refersTo, seen)}`;
    })
    .join("");
}

/** True where a formula uses one of the names, by itself or through another name, or takes a name out of a text. */
function mentions(formula: string, names: ReadonlySet<string>, refersTo: RefersTo, seen = new Set<string>()): boolean {
  return wordsOf(formula).some((word) => {
    if (names.has(word) || word === "indirect") return true;
    if (seen.has(word)) return false;
    seen.add(word);
    const found = refersTo(word);
    return found !== undefined && mentions(found, names, refersTo, seen);
  });
}
