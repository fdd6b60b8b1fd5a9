import { NAMESPACE } from "../../functions/catalogue";
import type { Call, Cell, Expression, Range } from "../../runsheet/expressions/Expression";
import { formulaText } from "../../runsheet/expressions/formulaText";
import { choiceWords } from "../../runsheet/words/choiceWords";
import { nameOf } from "./cellNames";
import { placeName, rangeName } from "./rangeNames";
import { isPlace, placesIn } from "../../runsheet/expressions/parts";
import { inWorking, plainText } from "./plainText";
import { isError, isTable } from "./Plain";
import type { SheetCells } from "./RunCells";
import { evaluate } from "./workOut";

/** A condition of the sheet in words, each cell by its name with what it holds. */
export function conditionText(cells: SheetCells, condition: Expression): string {
  if (typeof condition === "boolean") return condition ? choiceWords.always : choiceWords.never;
  if (typeof condition !== "object") return String(condition);
  if (condition.kind === "bracketed") return conditionText(cells, condition.inner);
  if (condition.kind === "call") return callText(cells, condition);
  if (condition.kind !== "infix") return sideText(cells, condition);
  const { left, operator, right } = condition;
  if (isCall(left, "COUNT") || isCall(left, "COUNTA")) {
    const of = left.given.map((one) => sideText(cells, one)).join(", ");
    if (operator === "=" && right === 0) return choiceWords.noneFilled(of);
    if (operator === ">" && right === 0) return choiceWords.someFilled(of);
    if (operator === "<" && right === left.given.length && left.given.every((one) => isPlace(one) && one.kind === "cell"))
      return choiceWords.oneMissing(of, left.given.length);
  }
  const [of, what] = isCall(left, "COUNTIF") ? left.given : [];
  if (of !== undefined && what !== undefined && right === 0 && (operator === ">" || operator === "="))
    return (operator === ">" ? choiceWords.someSay : choiceWords.noneSay)(sideText(cells, of), sideText(cells, what));
  if (isCall(left, "ROUND") && operator === "=" && left.given[1] === 0 && JSON.stringify(left.given[0]) === JSON.stringify(right))
    return choiceWords.isWhole(sideText(cells, right));
  if (isCall(left, "SUMPRODUCT") && operator === ">" && right === 0) return choiceWords.anyOf(eachText(cells, left.given[0] ?? false));
  if (isCall(left, "SUMPRODUCT") && operator === "=" && right === 0) return choiceWords.noneOf(eachText(cells, left.given[0] ?? false));
  if (right === false && operator === "=") return choiceWords.not(conditionText(cells, left));
  if (right === "" && operator === "=") return choiceWords.isBlank(sideText(cells, left));
  return `${sideText(cells, left)} ${operator} ${sideText(cells, right)}`;
}

const isCall = (one: Expression, name: Call["name"]): one is Call => typeof one === "object" && one.kind === "call" && one.name === name;

function callText(cells: SheetCells, { name, given }: Call): string {
  const [first = false, then = false, otherwise = false] = given;
  // What is not asked is not told: there it may show an error.
  if (name === "IF" && otherwise === false)
    return conditionText(cells, evaluate(first, cells.at) ? (isSame(then, true) ? first : both(first, then)) : first);
  if (name === "IF") return choiceWords.chosen(...([first, then, otherwise].map((one) => conditionText(cells, one)) as [string, string, string]));
  if (name === "IFERROR") {
    const value = evaluate(first, cells.at);
    return conditionText(cells, !isTable(value) && isError(value) ? then : first);
  }
  const parts = given.map((one) => conditionText(cells, one));
  if (name === "AND") return parts.join(choiceWords.and);
  if (name === "OR") return parts.length === 1 ? (parts[0] ?? "") : parts.map((part) => `(${part})`).join(choiceWords.or);
  if (name === "ISNUMBER") return choiceWords.isNumber(sideText(cells, given[0] ?? ""));
  if (name === "ISTEXT") return choiceWords.isText(sideText(cells, given[0] ?? ""));
  if (name === "ISERROR") return choiceWords.isError(sideText(cells, given[0] ?? ""));
  if (name === "ISFORMULA") return choiceWords.isFormula(isPlace(given[0] ?? 0) ? namedOnly(cells, given[0] as Cell | Range) : (parts[0] ?? ""));
  return sideText(cells, { kind: "call", name, given });
}

const both = (one: Expression, other: Expression): Call => ({ kind: "call", name: "AND", given: [one, other] });
const isSame = (one: Expression, other: Expression): boolean => one === other;

/** What holds of a cell of a block: factors are "and", terms "or", one less what is asked is "not"; that a sum of both is above 0 is the sum. */
function eachText(cells: SheetCells, each: Expression): string {
  if (typeof each !== "object") return conditionText(cells, each);
  if (each.kind === "bracketed") return eachText(cells, each.inner);
  if (isCall(each, "ABS")) {
    const [one, other] = alikeIn(each.given[0] ?? 0);
    if (one !== undefined && other !== undefined) return choiceWords.areAlike(sideText(cells, one), sideText(cells, other));
  }
  if (each.kind !== "infix") return conditionText(cells, each);
  if (each.operator === ">" && each.right === 0 && !isPlace(each.left) && isTable(evaluate(each.left, cells.at))) return eachText(cells, each.left);
  if (each.operator === "+") return [each.left, each.right].map((one) => `(${eachText(cells, one)})`).join(choiceWords.or);
  if (each.operator === "*")
    return [each.left, each.right]
      .filter((one) => one !== 1)
      .map((one) => eachText(cells, one))
      .join(choiceWords.and);
  if (each.operator === "-" && each.left === 1) return choiceWords.not(eachText(cells, each.right));
  return conditionText(cells, each);
}

/** The two blocks of (one < 1) + (other < 1) - 1, whose size is 1 where both have a date or neither. */
function alikeIn(of: Expression): readonly Expression[] {
  const inner = bare(of);
  const sum = typeof inner === "object" && inner.kind === "infix" && inner.operator === "-" && inner.right === 1 ? bare(inner.left) : 0;
  if (typeof sum !== "object" || sum.kind !== "infix" || sum.operator !== "+") return [];
  return [sum.left, sum.right]
    .map(bare)
    .flatMap((one) => (typeof one === "object" && one.kind === "infix" && one.operator === "<" && one.right === 1 ? [one.left] : []));
}

const bare = (of: Expression): Expression => (typeof of === "object" && of.kind === "bracketed" ? bare(of.inner) : of);

// More would not be read; the inputs list them.
const MOST_PLACES = 3;

/** One side of a comparison: a cell by name with its value, anything else by what it gives. */
function sideText(cells: SheetCells, side: Expression): string {
  if (isPlace(side)) return placeText(cells, side);
  if (typeof side === "string") return `"${side}"`;
  if (typeof side !== "object") return String(side);
  if (side.kind === "bracketed") return sideText(cells, side.inner);
  if (side.kind === "call" && side.name === "N") return sideText(cells, side.given[0] ?? 0);
  if (side.kind === "call" && side.name === "ROW") return choiceWords.row(String(evaluate(side, cells.at) as number));
  const [inner, what] = side.kind === "call" ? side.given : [];
  if ((isCall(side, "LEFT") || isCall(side, "RIGHT")) && inner !== undefined && isPlace(inner))
    return (side.name === "LEFT" ? choiceWords.startOf : choiceWords.endOf)(placeText(cells, inner));
  const value = evaluate(side, cells.at);
  const places = placesIn(side);
  const of = places.slice(0, MOST_PLACES).map((place) => placeText(cells, place));
  if (isTable(value)) return choiceWords.cellByCell(`${of.join(", ")}${places.length > MOST_PLACES ? ", …" : ""}`);
  if (isCall(side, "COUNTIF") && inner !== undefined && what !== undefined && typeof value === "number")
    return choiceWords.howManySay(inWorking(value), sideText(cells, inner), sideText(cells, what));
  const shown = typeof value === "number" ? inWorking(value) : plainText(value, "", undefined);
  const isCount = isCall(side, "COUNT") || isCall(side, "COUNTA");
  const from = `${of.join(", ")}${places.length > MOST_PLACES ? ", …" : ""}`;
  const written = formulaText(side).slice(1);
  if (of.length === 0 && written.startsWith(`${NAMESPACE}.`)) return choiceWords.worked(shown, written);
  return of.length === 0 ? shown : (isCount ? choiceWords.filled : choiceWords.worked)(shown, from);
}

/** A place by its name alone, where what it holds is not asked. */
const namedOnly = (cells: SheetCells, place: Cell | Range): string =>
  `${place.kind === "range" ? rangeName(cells, place).text : nameOf(cells, place).text} (${placeName(cells, place)})`;

function placeText(cells: SheetCells, place: Cell | Range): string {
  if (place.kind === "range") return `${rangeName(cells, place).text} (${placeName(cells, place)})`;
  const { text, unit } = nameOf(cells, place);
  return `${text} (${placeName(cells, place)}: ${plainText(cells.at(place.row, place.column), unit, cells.planned(place.row, place.column))})`;
}
