import { NAMESPACE } from "../../functions/catalogue";
import type { Call, Cell, Expression, Infix, Range } from "../../runsheet/expressions/Expression";
import { formulaText } from "../../runsheet/expressions/formulaText";
import { isPlace, placesIn } from "../../runsheet/expressions/parts";
import { choiceWords } from "../../runsheet/words/choiceWords";
import { workingWords } from "../../runsheet/words/workingWords";
import { nameOf } from "./cellNames";
import { isError, isTable } from "./Plain";
import { inWorking, plainText } from "./plainText";
import { placeName, rangeName } from "./rangeNames";
import type { SheetCells } from "./RunCells";
import { evaluate } from "./workOut";

/** What tells a condition in words, for quantities that count conditions. */
type Asked = (condition: Expression) => string;

const BINDS: Readonly<Record<string, number>> = { "+": 1, "-": 1, "*": 2, "/": 2, "^": 3 };
const SIGNS: Readonly<Record<string, string>> = { "*": " × ", "/": " / ", "+": " + ", "-": " - ", "^": "^" };
const isArithmetic = (one: Expression): one is Infix => typeof one === "object" && one.kind === "infix" && one.operator in BINDS;
const isCall = <Name extends Call["name"]>(one: Expression | undefined, ...names: readonly Name[]): one is Call & { readonly name: Name } =>
  typeof one === "object" && one.kind === "call" && (names as readonly string[]).includes(one.name);

/** A place by its name alone, where what it holds is not asked. */
export const namedOnly = (cells: SheetCells, place: Cell | Range): string =>
  `${place.kind === "range" ? rangeName(cells, place).text : nameOf(cells, place).text} (${placeName(cells, place)})`;

function placeText(cells: SheetCells, place: Cell | Range): string {
  if (place.kind === "range") return namedOnly(cells, place);
  const { text, unit } = nameOf(cells, place);
  return `${text} (${placeName(cells, place)}: ${plainText(cells.at(place.row, place.column), unit, cells.planned(place.row, place.column))})`;
}

/** What a condition compares, in words: cells by name, what is done with them, and what that comes to with its unit. */
export function quantityText(cells: SheetCells, of: Expression, asked: Asked): string {
  const settled = chosen(cells, of);
  const [condition] = isCall(of, "IF") ? of.given : [];
  if (typeof settled === "number" && condition !== undefined)
    return choiceWords.chosenNumber(inWorking(settled), asked(condition), Boolean(evaluate(condition, cells.at)));
  const words = wordsOf(cells, settled, asked);
  if (typeof settled !== "object" || isPlace(settled) || isCall(settled, "ROW")) return words;
  const isTimeOfDay = isCall(settled, "MOD") && settled.given[1] === 1;
  if (isTimeOfDay || (isCall(settled, "LEFT", "RIGHT") && isPlace(settled.given[0])) || isCall(settled, "ROWS")) return words;
  const value = evaluate(settled, cells.at);
  if (isTable(value)) return words;
  if (isError(value)) return choiceWords.comesTo(words, value.code);
  // A column is told by its latest cell, that cell by its clock.
  const [place] = placesIn(settled);
  const format = isCall(settled, "INDEX", "MAX", "MIN") && place !== undefined ? cells.planned(firstOf(place).row, firstOf(place).column) : undefined;
  const shown = typeof value === "number" ? plainText(value, unitOf(cells, settled), format) : plainText(value, "", undefined);
  return words === shown ? words : choiceWords.comesTo(words, shown);
}

const firstOf = (place: Cell | Range): Cell => (place.kind === "cell" ? place : place.from);

/** The branch that gives the value, and what stands in brackets. */
function chosen(cells: SheetCells, of: Expression): Expression {
  if (typeof of !== "object") return of;
  if (of.kind === "bracketed") return chosen(cells, of.inner);
  if (of.kind !== "call") return of;
  const [first = 0, then = false, otherwise = false] = of.given;
  if (of.name === "IF") {
    const value = evaluate(first, cells.at);
    // What counts a condition is told by that condition.
    if (isTable(value) || isError(value) || isFlag(of)) return of;
    return chosen(cells, value ? then : otherwise);
  }
  if (of.name === "IFERROR") {
    const value = evaluate(first, cells.at);
    return chosen(cells, !isTable(value) && isError(value) ? then : first);
  }
  const isOfOne = of.name === "N" || (of.name === "SUM" && of.given.length === 1 && isPlace(first) && first.kind === "cell");
  return isOfOne && isPlace(first) ? first : of;
}

/** True of 1 where a condition holds and else 0. */
const isFlag = (one: Expression): boolean => isCall(one, "IF") && one.given[1] === 1 && (one.given[2] ?? 0) === 0;

/** The conditions that a sum counts; none where it is a sum of anything else. */
function counted(of: Expression): readonly Expression[] {
  if (typeof of !== "object") return of === 0 ? [] : [NaN];
  if (of.kind === "bracketed") return counted(of.inner);
  if (of.kind === "infix" && of.operator === "+") return [...counted(of.left), ...counted(of.right)];
  if (isCall(of, "IF") && isFlag(of)) return [of.given[0] ?? false];
  if (of.kind === "infix" && of.operator === "*" && of.right === 1) return counted(of.left);
  if (isCall(of, "N")) return isPlace(of.given[0]) ? [NaN] : counted(of.given[0] ?? NaN);
  if (of.kind === "infix" && of.operator === "*") {
    const both = [...counted(of.left), ...counted(of.right)];
    return both.length === 2 && both.every((one) => typeof one !== "number") ? [{ kind: "call", name: "AND", given: both }] : [NaN];
  }
  const isCondition = (of.kind === "infix" && !isArithmetic(of)) || isCall(of, "ISNUMBER", "ISTEXT", "ISBLANK", "AND", "OR", "ISFORMULA");
  return isCondition ? [of] : [NaN];
}

function wordsOf(cells: SheetCells, unsettled: Expression, asked: Asked): string {
  const of = chosen(cells, unsettled);
  if (typeof of === "string") return `"${of}"`;
  if (typeof of === "number") return inWorking(of);
  if (typeof of === "boolean") return of ? "TRUE" : "FALSE";
  if (isPlace(of)) return placeText(cells, of);
  const flags = counted(of);
  if (flags.length > 0 && flags.every((one) => typeof one !== "number")) return choiceWords.howManyHold(flags.map(asked));
  if (isArithmetic(of)) return arithmetic(cells, of, asked);
  if (of.kind !== "call") return choiceWords.textOf(allPlaces(cells, of));
  return callWords(cells, of, asked);
}

function arithmetic(cells: SheetCells, { left, operator, right }: Infix, asked: Asked): string {
  const own = BINDS[operator] ?? 0;
  const beside = (one: Expression, isAfter: boolean): string => {
    const settled = chosen(cells, one);
    const binds = isArithmetic(settled) ? (BINDS[settled.operator] ?? 0) : Infinity;
    const words = wordsOf(cells, settled, asked);
    return binds < own || (isAfter && binds === own && operator !== "+" && operator !== "*") ? `(${words})` : words;
  };
  // What is taken from 0 is the same below 0.
  return left === 0 && operator === "-" ? `-${beside(right, true)}` : `${beside(left, false)}${SIGNS[operator] ?? operator}${beside(right, true)}`;
}

function callWords(cells: SheetCells, { name, given }: Call, asked: Asked): string {
  const [first = 0, second = 0] = given;
  const of = given.map((one) => (isPlace(one) && name.startsWith("COUNT") ? namedOnly(cells, one) : wordsOf(cells, one, asked)));
  const [one = "", two = ""] = of;
  switch (name) {
    case "MAX":
      return workingWords.largest(of, of.length);
    case "MIN":
      return workingWords.smallest(of, of.length);
    case "AVERAGE":
      return workingWords.mean(of);
    case "STDEV":
      return workingWords.deviation(of);
    case "MEDIAN":
      return workingWords.median(of);
    case "SUM":
      return workingWords.sum(of);
    case "COUNT":
    case "COUNTA":
      return workingWords.count(of);
    case "COUNTIF":
      return workingWords.countIf(one, two);
    case "ROUND":
      return workingWords.rounded(one, two);
    case "INT":
      return workingWords.wholePart(one);
    case "MOD":
      if (second === 1 && isPlace(first) && cells.planned(firstOf(first).row, firstOf(first).column)?.format === "hh:mm")
        return choiceWords.timeOfDay(one);
      return workingWords.remainder(one, two);
    case "ABS":
      return choiceWords.sizeOf(one);
    case "LARGE":
      return choiceWords.nthLargest(one, two);
    case "SMALL":
      return choiceWords.nthSmallest(one, two);
    case "LEN":
      return choiceWords.lengthOf(one);
    case "LEFT":
      return choiceWords.startOf(one);
    case "RIGHT":
      return choiceWords.endOf(one);
    case "ROWS":
      return choiceWords.rows(Number(evaluate({ kind: "call", name, given }, cells.at)));
    case "ROW":
      return choiceWords.row(String(evaluate({ kind: "call", name, given }, cells.at) as number));
    case "INDEX":
      if (!isPlace(first)) return workingWords.tableEntry(isCall(first) ? "" : calledIn(first));
      return isCountOf(second, first) ? choiceWords.latestOf(namedOnly(cells, first)) : workingWords.entry(two, namedOnly(cells, first));
    default: {
      const places = allPlaces(cells, { kind: "call", name, given });
      const written = formulaText({ kind: "call", name, given }).slice(1);
      if (places === "") return written.startsWith(`${NAMESPACE}.`) ? written : inWorking(Number(evaluate({ kind: "call", name, given }, cells.at)));
      return name.startsWith(`${NAMESPACE}.`) ? choiceWords.givenBy(name, places) : choiceWords.cellByCell(places);
    }
  }
}

const calledIn = (one: Expression): string => (typeof one === "object" && one.kind === "call" ? one.name : "a table");

/** True where the place asked for is how many are filled: the latest of a column without gaps. */
const isCountOf = (which: Expression, column: Cell | Range): boolean =>
  isCall(which, "COUNT") && which.given.length === 1 && JSON.stringify(which.given[0]) === JSON.stringify(column);

// More would not be read; the inputs list them.
const MOST_PLACES = 3;

function allPlaces(cells: SheetCells, of: Expression): string {
  const places = placesIn(of);
  return `${places.slice(0, MOST_PLACES).map((place) => placeText(cells, place)).join(", ")}${places.length > MOST_PLACES ? ", …" : ""}`; // prettier-ignore
}

const PERCENT = 100;

/** The unit of what an expression comes to: that of its cells, as far as they share one. */
function unitOf(cells: SheetCells, unsettled: Expression): string {
  const of = chosen(cells, unsettled);
  if (typeof of !== "object") return "";
  if (isPlace(of)) {
    const at = firstOf(of);
    const isShare = cells.planned(at.row, at.column)?.format?.includes("%") === true;
    return isShare ? "fraction" : (of.kind === "range" ? rangeName(cells, of) : nameOf(cells, of)).unit;
  }
  if (isArithmetic(of)) {
    const [left, right] = [unitOf(cells, of.left), unitOf(cells, of.right)];
    if (of.operator === "+" || of.operator === "-") return left === right || right === "" ? left : left === "" ? right : "";
    // A share times a hundred is a percentage and no share any longer.
    if (of.operator === "*" && [left, right].includes("fraction"))
      return [of.left, of.right].some((one) => typeof one === "number" && one >= PERCENT) ? "" : "fraction";
    if (of.operator === "*") return left === "" ? right : right === "" ? left : "";
    return of.operator === "/" && right === "" && left !== "fraction" ? left : "";
  }
  if (isCall(of, "MAX", "MIN", "AVERAGE", "MEDIAN", "STDEV", "SUM", "ABS", "ROUND", "LARGE", "SMALL", "INDEX", "INT"))
    return of.given.map((one) => unitOf(cells, one)).find((unit) => unit !== "") ?? "";
  return "";
}
