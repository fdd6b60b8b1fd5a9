import { type Call, type Cell, type Expression, type Infix, type Range } from "../../runsheet/expressions/Expression";
import { workingWords } from "../../runsheet/words/workingWords";
import { nameOf } from "./cellNames";
import { placeName, rangeName } from "./rangeNames";
import { inWorking, plainText } from "./plainText";
import { isPlace, partsOf, placesIn } from "../../runsheet/expressions/parts";
import { isError, isTable } from "./Plain";
import type { SheetCells } from "./RunCells";
import { evaluate } from "./workOut";

const BINDS: Readonly<Record<string, number>> = { "+": 2, "-": 2, "*": 3, "/": 3, "^": 4 };
const SIGNS: Readonly<Record<string, string>> = { "*": " × ", "/": " / ", "+": " + ", "-": " - ", "^": "^" };
const isArithmetic = (one: Expression): one is Infix => typeof one === "object" && one.kind === "infix" && one.operator in BINDS;

/** The arithmetic of a formula with the numbers put in, a line for each step that is no plain arithmetic or is needed twice. */
export class ArithmeticLines {
  readonly lines: string[] = [];
  private readonly repeated = new Map<string, number>();

  /** @param whole without choices, as `resolved` gives it */
  constructor(
    private readonly cells: SheetCells,
    private readonly whole: Expression,
  ) {
    this.count(whole);
  }

  /** The whole in a line; its steps stand in `lines` before it. */
  text(): string {
    if (!asksForFormulas(this.whole)) return this.put(this.whole);
    // How many cells hold no formula: term by term that is a long sum of nothings.
    const value = this.valueOf(this.whole);
    this.line(`${workingWords.withoutFormula(placesIn(this.whole).map((place) => placeName(this.cells, place)))} = ${value}`);
    return value;
  }

  /** An expression with its numbers, fit to stand beside a sign of arithmetic. */
  put(expression: Expression): string {
    if (typeof expression === "string") return `"${expression}"`;
    if (typeof expression !== "object") return typeof expression === "number" ? inWorking(expression) : expression ? "TRUE" : "FALSE";
    switch (expression.kind) {
      case "bracketed":
        return this.put(expression.inner);
      case "cell":
        return this.ofCell(expression);
      case "range":
      case "joined":
        return this.valueOf(expression);
      case "infix":
        return isArithmetic(expression) ? this.arithmetic(expression) : this.valueOf(expression);
      case "call":
        if (expression.name === "SQRT") return `sqrt(${this.put(expression.given[0] ?? 0)})`;
        if (expression.name === "ABS") return `|${this.put(expression.given[0] ?? 0)}|`;
        return this.step(expression);
    }
  }

  private arithmetic(expression: Infix): string {
    const { left, operator, right } = expression;
    const own = BINDS[operator] ?? 0;
    const isNeededAgain = expression !== this.whole && (this.repeated.get(JSON.stringify(expression)) ?? 0) > 1;
    const mustStandApart = operator === "-" || operator === "/" || operator === "^";
    const before = this.beside(left, (binds) => binds < own, false);
    const after = this.beside(right, (binds) => binds < own || (mustStandApart && binds === own), true);
    const text = `${before}${SIGNS[operator] ?? operator}${after}`;
    if (!isNeededAgain) return text;
    this.line(`${text} = ${this.valueOf(expression)}`);
    return this.valueOf(expression);
  }

  private beside(operand: Expression, standsApart: (binds: number) => boolean, isAfter: boolean): string {
    const text = this.put(operand);
    const isWhole = /^-?[\d.]+(e-?\d+)?$/.test(text);
    if (isWhole) return text.startsWith("-") && (isAfter || standsApart(BINDS["-"] ?? 0)) ? `(${text})` : text;
    return isArithmetic(operand) && standsApart(BINDS[operand.operator] ?? 0) ? `(${text})` : text;
  }

  /** What a function gives, told in a line of its own. */
  private step(call: Call): string {
    const value = this.valueOf(call);
    const [alone] = call.given;
    // The largest, smallest or sum of one number is that number.
    if (
      call.given.length === 1 &&
      alone !== undefined &&
      ["MAX", "MIN", "SUM"].includes(call.name) &&
      !isPlace(alone) &&
      !isTable(evaluate(alone, this.cells.at))
    )
      return this.put(alone);
    // What is worked out cell by cell has no numbers to put in: its ranges stand among the inputs.
    if (this.isOfCells(call)) return this.toldOfCells(call, value);
    const [first, second] = call.given;
    const tell = (text: string): string => {
      this.line(`${text} = ${value}`);
      return value;
    };
    const named = (one: Expression | undefined): string => {
      if (one === undefined) return "";
      return isPlace(one) && (one.kind === "range" || call.name.startsWith("COUNT")) ? this.named(one) : this.simple(one);
    };
    switch (call.name) {
      case "N":
        return this.put(first ?? 0);
      case "MAX":
        return tell(workingWords.largest(call.given.map(named), call.given.length));
      case "MIN":
        return tell(workingWords.smallest(call.given.map(named), call.given.length));
      case "AVERAGE":
        return tell(workingWords.mean(call.given.map(named)));
      case "STDEV":
        return tell(workingWords.deviation(call.given.map(named)));
      case "MEDIAN":
        return tell(workingWords.median(call.given.map(named)));
      case "SUM":
        // A blank cell counts as 0, which is no sum.
        if (call.given.length === 1 && isPlace(first) && first.kind === "cell") return this.put(first);
        return tell(workingWords.sum(call.given.map(named)));
      case "COUNT":
      case "COUNTA":
        return tell(workingWords.count(call.given.map(named)));
      case "COUNTIF":
        return tell(workingWords.countIf(named(first), named(second)));
      case "TINV":
        return tell(workingWords.student(named(second)));
      case "ROUND":
        return tell(workingWords.rounded(named(first), named(second)));
      case "INT":
        return tell(workingWords.wholePart(named(first)));
      case "MOD":
        return tell(workingWords.remainder(named(first), named(second)));
      case "INDEX":
        return isPlace(first) ? tell(workingWords.entry(named(second), this.named(first))) : tell(workingWords.tableEntry(calledIn(first)));
      case "ISFORMULA":
        return tell(workingWords.formulaIn(placesIn(call).map((place) => placeName(this.cells, place))));
      case "ROW":
      case "COLUMN":
        return value;
      default:
        return tell(workingWords.call(call.name, call.given.map(named)));
    }
  }

  /** Arithmetic within a function has its own line. */
  private simple(one: Expression): string {
    const text = this.put(one);
    const value = this.valueOf(one);
    if (text !== value && (isArithmetic(one) || text.includes("("))) {
      this.line(`${text} = ${value}`);
      return value;
    }
    return text;
  }

  private named(place: Cell | Range): string {
    const name = place.kind === "cell" ? nameOf(this.cells, place) : rangeName(this.cells, place);
    return `${name.text} (${placeName(this.cells, place)})`;
  }

  /** Whether any part of it is a table that stands nowhere on the sheet. */
  private isOfCells(call: Call): boolean {
    if (isOurs(call)) return false;
    return call.given.some((one) => !isPlace(one) && typeof one === "object" && isTable(evaluate(one, this.cells.at)) && !isOurs(one));
  }

  private toldOfCells(call: Call, value: string): string {
    if (isTable(evaluate(call, this.cells.at))) return value;
    this.line(`${workingWords.cellByCell(placesIn(call).map((place) => placeName(this.cells, place)))} = ${value}`);
    return value;
  }

  private valueOf(expression: Expression): string {
    const value = evaluate(expression, this.cells.at);
    if (isTable(value)) return isPlace(expression) ? this.named(expression) : "…";
    if (isError(value)) return value.code;
    if (value === null) return "0";
    return typeof value === "number" ? inWorking(value) : typeof value === "boolean" ? (value ? "1" : "0") : `"${value}"`;
  }

  /** What a cell holds; arithmetic takes a clock as a part of a day. */
  private ofCell(at: Cell): string {
    const [value, held] = [this.valueOf(at), this.cells.at(at.row, at.column)];
    const planned = this.cells.planned(at.row, at.column);
    if (planned?.format === "hh:mm" && typeof held === "number" && held > 0) this.line(workingWords.clock(plainText(held, "", planned), value));
    return value;
  }

  private line(text: string): void {
    if (!this.lines.includes(text)) this.lines.push(text);
  }

  private count(expression: Expression): void {
    if (typeof expression !== "object") return;
    if (isArithmetic(expression)) {
      const key = JSON.stringify(expression);
      this.repeated.set(key, (this.repeated.get(key) ?? 0) + 1);
    }
    for (const part of partsOf(expression)) this.count(part);
  }
}

const asksForFormulas = (one: Expression): boolean =>
  typeof one === "object" && ((one.kind === "call" && one.name === "ISFORMULA") || partsOf(one).some(asksForFormulas));

/** A table that a function of ours gives, or takes, is told by the name of the function. */
const isOurs = (one: Expression): boolean => typeof one === "object" && one.kind === "call" && one.name.startsWith("RETORT.");

const calledIn = (one: Expression | undefined): string => (typeof one === "object" && one.kind === "call" ? one.name : "a table");
