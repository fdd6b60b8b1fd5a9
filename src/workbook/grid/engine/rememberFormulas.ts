import type { Injector } from "@univerjs/core";
import { FORMULA_REF_TO_ARRAY_CACHE, IFormulaDependencyGenerator, IFormulaRuntimeService, Interpreter } from "@univerjs/engine-formula";

/**
 * A part of a formula as the engine keeps it; private there. The engine keeps one for each text, whatever cells hold it. What is found out is
 * noted on it: maps with weak keys take the garbage collector longer than what they save, where tens of thousands of formulas come and go.
 */
interface Node {
  [noted: symbol]: unknown;
  readonly nodeType: number;
  getToken(): string;
  getChildren(): readonly Node[];
}

interface RangeOfSheet {
  readonly range: { readonly startRow: number };
}

interface Asked {
  readonly node: Node | null;
  readonly refOffsetX: number;
  readonly refOffsetY: number;
}

interface Formula {
  readonly addressFunctionNodes: readonly Node[];
}

/** The steps of the engine's generator that are taken over; private there. */
interface Generator {
  _detectForcedRecalculationNode(formula: Formula, node: Node | null): boolean;
  _getAddressFunctionNodeList(node: Node | null): Node[];
  _nodeTraversalRef(node: Node, found: Node[]): void;
  _getRangeListByNode(asked: Asked): Promise<RangeOfSheet[]>;
  _calculateListByFunctionRefNode(formulas: readonly Formula[]): Promise<void>;
  readonly _executedAddressFunctionNodeIds: Set<unknown>;
}

/**
 * Mends a cost of engine 0.25.1: at every calculation it goes through the whole of each formula again and again to find what follows from
 * its text alone: whether it changes by itself, whether it waits for anything, which references it works out, and which cells it reads.
 */
export function rememberFormulas(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
  const interpreter = injector.get(Interpreter) as unknown as { checkAsyncNode(node: Node | null): boolean };
  if (typeof generator._getRangeListByNode !== "function") throw new Error("the engine does not find what formulas read");
  generator._detectForcedRecalculationNode = onceFor(generator._detectForcedRecalculationNode.bind(generator), (_formula, node) => node);
  generator._getAddressFunctionNodeList = onceFor(generator._getAddressFunctionNodeList.bind(generator), (node) => node);
  interpreter.checkAsyncNode = onceFor(interpreter.checkAsyncNode.bind(interpreter), (node) => node);
  rememberRanges(injector, generator);
  const calculateReferences = generator._calculateListByFunctionRefNode.bind(generator);
  generator._calculateListByFunctionRefNode = async (formulas) => {
    if (formulas.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0)) return calculateReferences(formulas);
    generator._executedAddressFunctionNodeIds.clear();
  };
}

/** The same function, asked once for each node. */
function onceFor<G extends unknown[], R>(find: (...given: G) => R, nodeOf: (...given: G) => Node | null): (...given: G) => R {
  const noted = Symbol(find.name);
  return (...given) => {
    const node = nodeOf(...given);
    if (node === null) return find(...given);
    // No answer of these is undefined.
    return (node[noted] ??= find(...given)) as R;
  };
}

/** Where the formula stands that is worked on. */
interface Place {
  readonly currentSubUnitId: string;
  readonly currentRowCount: number;
  readonly currentColumnCount: number;
}

/** What a formula read when it was last asked, where it stood on a sheet of so many rows and columns. */
interface Known {
  readonly sheet: string;
  readonly rows: number;
  readonly columns: number;
  readonly ranges: RangeOfSheet[];
}

function rememberRanges(injector: Injector, generator: Generator): void {
  const place = injector.get(IFormulaRuntimeService) as unknown as Place;
  const original = generator._getRangeListByNode.bind(generator);
  const known = Symbol("ranges");
  const isPlain = onceFor(
    (node: Node) => {
      const found: Node[] = [];
      generator._nodeTraversalRef(node, found);
      return found.every(isOwnCells);
    },
    (node) => node,
  );
  generator._getRangeListByNode = async (asked) => {
    const { node, refOffsetX, refOffsetY } = asked;
    if (node === null || refOffsetX !== 0 || refOffsetY !== 0 || !isPlain(node)) return original(asked);
    const { currentSubUnitId: sheet, currentRowCount: rows, currentColumnCount: columns } = place;
    const before = node[known] as Known | undefined;
    if (before?.sheet === sheet && before.rows === rows && before.columns === columns) return before.ranges;
    const ranges = await original(asked);
    // What lies beyond the sheet is found anew: rows may come in.
    if (ranges.every(({ range }) => range.startRow >= 0)) node[known] = { sheet, rows, columns, ranges } satisfies Known;
    return ranges;
  };
}

// As in the engine's NodeType (0.25.1).
const REFERENCE = 1;
const UNION = 10;
const CELL_COLUMN_OR_ROW = /^\s*\$?(?:[A-Z]{1,3}\$?\d+|[A-Z]{1,3}|\d+)\s*$/i;

/** True for cells of the formula's own sheet, one or from one to another: what they are follows from the text and the sheet. */
function isOwnCells(node: Node): boolean {
  if (node.nodeType === REFERENCE) return CELL_COLUMN_OR_ROW.test(node.getToken());
  return node.nodeType === UNION && node.getChildren().every(isOwnCells);
}

/**
 * Mends a defect of engine 0.25.1: it keeps what it found out about formulas under a number of 32 bits made of the text, and never looks at
 * the text again, so that of two long formulas with one number the second is calculated as the first. Keeps it under the text.
 */
export function tellFormulasApart(): void {
  const kept = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE) as { _hash?: (text: string) => string };
  if (typeof kept._hash !== "function") throw new Error("the engine keeps formulas under no number of theirs");
  kept._hash = (text) => text;
}
