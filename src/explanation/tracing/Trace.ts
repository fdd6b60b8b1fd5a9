import type { ChoiceTold } from "../../problems/workbook/cellNotes";
import type { AstExpression } from "@borgar/fx";
import { lambdaCalled, nameCalled, type Lambda } from "../../sharing/plain/formula/parts";
import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import type { CellFunction } from "../../functions/cellFunction";
import { cellsOfCall, definitionOf } from "../formula/calledFunction";
import { isSingle, oneCell, type Cells, type Position } from "../formula/Cells";
import { everyPart, fromFirstOperand, type Binary } from "../formula/everyPart";
import { expressionOf } from "../formula/expressionOf";
import { BINARY, cellByCell, UNARY } from "../formula/operators";
import { SURE_BINARY } from "../saved/sure/sureOperators";
import { builtIn, goesByCell } from "./builtIns";
import { CHOOSING, type Chooser } from "./choosing";
import { cellWithin } from "./cellWithin";
import { HELPED, type Helped } from "./helped";
import {
  fateKey,
  STANDS_FOR,
  type Arguments,
  type At,
  type Bound,
  type Fate,
  type Traced,
  type TracingSurroundings,
  type UnderWay,
  type Valued,
} from "./Traced";

// Names of names, and LAMBDAs that call themselves, as deep as anybody follows.
const DEEPEST = 40;
// Calls of one LAMBDA over a long range: more than are shown, and quickly worked out.
const MOST_TIMES = 5000;

/**
 * Works a cell formula out as a spreadsheet does, with the names of LET, LAMBDA and the workbook, taking one branch of each choice, and keeps what
 * became of every call of ours on the way.
 * @param whole not nested too deeply
 */
export function traced(whole: AstExpression, formula: string, around: TracingSurroundings): Traced {
  const trace = new Trace(around);
  const value = trace.value(whole, { scope: new Map(), source: { name: "", formula }, depth: 0, isByCell: true, isAside: false });
  return { value: value?.cells, fates: trace.fates, choices: trace.choices, values: trace.values };
}

class Trace implements UnderWay {
  readonly fates = new Map<string, Fate>();
  readonly choices: ChoiceTold[] = [];
  readonly values = new Map<number, Cells>();
  private readonly names = new Map<string, Valued | undefined>();
  private times = 0;

  constructor(readonly around: TracingSurroundings) {}

  value(part: AstExpression | null, at: At): Valued | undefined {
    if (part === null) return { cells: oneCell(BLANK) };
    switch (part.type) {
      case "Literal":
        return { cells: oneCell(part.value) };
      case "ErrorLiteral":
        return { cells: oneCell(new CellError(part.value)) };
      case "ArrayExpression":
        return this.array(part.elements, at);
      case "ReferenceIdentifier":
        return this.kept(part, this.referred(part.value, at), at);
      case "UnaryExpression":
        return this.unary(part.operator, part.arguments[0], at);
      case "BinaryExpression":
        return this.binary(part, at);
      case "LetExpression": {
        let scope = at.scope;
        for (const { id, init } of part.declarations) {
          // Whether its cells go one by one is seen where the name is used, and that may be in several ways: over a spill each row has its own.
          const value = this.value(init, { ...at, scope });
          scope = new Map([...scope, [id.name.toLowerCase(), { value, written: this.written(init, at) }]]);
        }
        return this.value(part.body, { ...at, scope });
      }
      case "LambdaExpression":
        return { cells: oneCell(new CellError("#CALC!")), lambda: { of: part, scope: at.scope, source: at.source } };
      case "CallExpression":
        return this.kept(part, this.called(nameCalled(part), lambdaCalled(part), part, at), at);
      default:
        return undefined;
    }
  }

  written(part: AstExpression | null | undefined, { source: { formula } }: At): string {
    return part?.loc === undefined ? "" : formula.slice(part.loc[0], part.loc[1]);
  }

  get position(): Position {
    return this.around.position;
  }

  passOver(part: AstExpression | null | undefined, choice: ChoiceTold, at: At, isHere: boolean): void {
    if (at.isAside) return;
    for (const one of everyPart(part)) {
      if (one.type !== "CallExpression" || definitionOf(nameCalled(one)) === undefined) continue;
      const key = fateKey(at.source, endOf(one));
      const known = this.fates.get(key);
      if (known === undefined) this.fates.set(key, { made: [{ given: this.quietly(one.arguments, at) }], isByCell: at.isByCell, passedOver: choice });
      else if (isHere) this.fates.set(key, { ...known, passedOver: choice });
    }
  }

  /** What stands in the arguments of a call that is not worked out. */
  private quietly(given: Arguments, at: At): readonly (Valued | undefined | null)[] {
    return given.map((one) => one && this.value(one, { ...at, isAside: true }));
  }

  applied(lambda: NonNullable<Valued["lambda"]>, given: readonly (Valued | undefined)[], written: readonly string[], at: At): Valued | undefined {
    if (at.depth >= DEEPEST || ++this.times > MOST_TIMES) return undefined;
    const bound = lambda.of.params.map(({ name }, place): [string, Bound] => [
      name.toLowerCase(),
      { value: given[place] ?? (place < given.length ? undefined : { cells: oneCell(BLANK) }), written: written[place] ?? "" },
    ]);
    return this.value(lambda.of.body, { ...at, source: lambda.source, scope: new Map([...lambda.scope, ...bound]), depth: at.depth + 1 });
  }

  private kept(part: AstExpression, value: Valued | undefined, at: At): Valued | undefined {
    if (value !== undefined && value.lambda === undefined && at.source.name === "" && !at.isAside) this.values.set(endOf(part), value.cells);
    return value;
  }

  private array(elements: readonly (readonly AstExpression[])[], at: At): Valued | undefined {
    const rows = elements.map((row) => row.map((one) => this.value(one, at)?.cells[0]?.[0]));
    return rows.every((row) => row.every((value) => value !== undefined)) ? { cells: rows as Cells } : undefined;
  }

  private referred(text: string, at: At): Valued | undefined {
    const bound = at.scope.get(text.toLowerCase());
    if (bound !== undefined) return bound.value && { ...bound.value, named: chained(text, bound) };
    const cells = this.around.referred(text, false);
    const place = this.around.place(text, false);
    if (cells !== undefined) return { cells, ...(place && { place }) };
    return place === undefined ? this.nameMeant(text, at) : undefined;
  }

  private nameMeant(text: string, at: At): Valued | undefined {
    const key = text.toLowerCase();
    if (this.names.has(key)) return this.names.get(key);
    const formula = at.depth >= DEEPEST ? undefined : this.around.nameFormula(text);
    const expression = formula === undefined ? undefined : expressionOf(formula);
    // Until it is known a name that stands for itself is not.
    this.names.set(key, undefined);
    const value =
      expression && this.value(expression, { ...at, scope: new Map(), source: { name: text, formula: formula ?? "" }, depth: at.depth + 1 });
    const meant = value && { ...value, named: `${text}${STANDS_FOR}${(formula ?? "").replace(/^=/, "").replaceAll("$", "")}` };
    this.names.set(key, meant);
    return meant;
  }

  private unary(operator: string, operand: AstExpression | undefined, at: At): Valued | undefined {
    if (operator === "#") {
      if (operand?.type !== "ReferenceIdentifier") return undefined;
      const [cells, place] = [this.around.referred(operand.value, true), this.around.place(operand.value, true)];
      return cells && { cells, ...(place && { place }) };
    }
    const value = operand && this.value(operand, at);
    if (value === undefined) return undefined;
    if (operator === "@") return isSingle(value.cells) ? value : undefined;
    return UNARY[operator] && { cells: cellByCell(UNARY[operator], [value.cells]) };
  }

  private binary(expression: Binary, at: At): Valued | undefined {
    const { first, steps } = fromFirstOperand(expression);
    let value = first && this.value(first, at)?.cells;
    for (const { operator, arguments: operands } of steps) {
      const right = operands[1] && this.value(operands[1], at)?.cells;
      value = value && right && operated(operator, value, right);
    }
    return value && { cells: value };
  }

  private called(name: string, lambda: Lambda | undefined, part: Extract<AstExpression, { type: "CallExpression" }>, at: At): Valued | undefined {
    const given: Arguments = part.arguments;
    const definition = definitionOf(name);
    if (definition !== undefined) return this.ours(definition, given, endOf(part), at);
    const bound = at.scope.get(name.toLowerCase())?.value ?? (lambda === undefined ? undefined : this.value(lambda as AstExpression, at));
    if (bound?.lambda !== undefined) return this.lambdaCalled(bound.lambda, given, at);
    const capitals = name.toUpperCase();
    const chooser: Chooser | undefined = CHOOSING[capitals];
    if (chooser !== undefined) return chooser(this, capitals, given, at);
    const helped: Helped | undefined = HELPED[capitals];
    if (helped !== undefined) return helped(this, given, at);
    if (!isKnownBuiltIn(capitals)) {
      const named = this.nameMeant(name, at);
      if (named?.lambda !== undefined) return this.lambdaCalled(named.lambda, given, at);
    }
    const inside = goesByCell(capitals) ? at : { ...at, isByCell: false };
    const values = given.map((one) => this.value(one, inside));
    if (!values.every((value) => value !== undefined)) return undefined;
    const cells = builtIn(capitals, values.map((one) => ({ cells: one.cells, isReference: one.place !== undefined }))); // prettier-ignore
    const place = capitals === "INDEX" ? cellWithin(values) : undefined;
    return cells && { cells, ...(place && { place }) };
  }

  private lambdaCalled(lambda: NonNullable<Valued["lambda"]>, given: Arguments, at: At): Valued | undefined {
    const values = given.map((one) => this.value(one, at));
    return this.applied(lambda, values, given.map((one) => this.written(one, at)), at); // prettier-ignore
  }

  private ours(definition: CellFunction, given: Arguments, end: number, at: At): Valued | undefined {
    const shapes = Object.values(definition.inputs);
    const values = given.map((one, place) =>
      one === null ? null : this.value(one, shapes[place]?.shape === "column" ? { ...at, isByCell: false } : at),
    );
    const answer = values.every((value) => value !== undefined)
      ? cellsOfCall(
          definition,
          values.map((value) => value && value.cells),
          this.around.blankAs,
        )
      : undefined;
    if (!at.isAside) {
      const key = fateKey(at.source, end);
      this.fates.set(key, { made: [...(this.fates.get(key)?.made ?? []), { given: values, answer }], isByCell: at.isByCell });
    }
    return answer && { cells: answer };
  }
}

/** The offset behind a part, which tells calls apart: each has a closing bracket of its own. */
const endOf = ({ loc }: AstExpression): number => loc?.[1] ?? 0;

const isKnownBuiltIn = (name: string): boolean => builtIn(name, []) !== undefined || goesByCell(name);

const chained = (name: string, { value, written }: Bound): string => `${name}${STANDS_FOR}${value?.named ?? written}`;

function operated(operator: string, left: Cells, right: Cells): Cells | undefined {
  const own = BINARY[operator];
  if (own !== undefined) return cellByCell(own, [left, right]);
  const compare = SURE_BINARY[operator];
  if (compare === undefined) return undefined;
  let isKnown = true;
  const cells = cellByCell(
    (one = BLANK, other = BLANK): CellValue => {
      const error = [one, other].find((value) => value instanceof CellError);
      const answer = error ?? compare(one, other);
      if (answer === undefined) isKnown = false;
      return answer ?? BLANK;
    },
    [left, right],
  );
  return isKnown ? cells : undefined;
}
