import { type Call, type Cell, type Expression, type Range } from "../../runsheet/expressions/Expression";
import { formulaText } from "../../runsheet/expressions/formulaText";
import { choiceWords } from "../../runsheet/words/choiceWords";
import { nameOf } from "./cellNames";
import { placeName, rangeName } from "./rangeNames";
import { isPlace, placesIn } from "../../runsheet/expressions/parts";
import { inWorking, plainText } from "./plainText";
import { isTable } from "./Plain";
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
  if (isCall(left, "SUMPRODUCT") && operator === ">" && right === 0) return choiceWords.anyOf(eachText(cells, left.given[0] ?? false));
  if (isCall(left, "SUMPRODUCT") && operator === "=" && right === 0) return choiceWords.noneOf(eachText(cells, left.given[0] ?? false));
  if (right === false && operator === "=") return choiceWords.not(conditionText(cells, left));
  if (right === "" && operator === "=") return choiceWords.isBlank(sideText(cells, left));
  return `${sideText(cells, left)} ${operator} ${sideText(cells, right)}`;
}

const isCall = (one: Expression, name: Call["name"]): one is Call => typeof one === "object" && one.kind === "call" && one.name === name;

function callText(cells: SheetCells, { name, given }: Call): string {
  const parts = given.map((one) => conditionText(cells, one));
  if (name === "AND") return parts.join(choiceWords.and);
  if (name === "OR") return parts.length === 1 ? (parts[0] ?? "") : parts.map((part) => `(${part})`).join(choiceWords.or);
  if (name === "ISNUMBER") return choiceWords.isNumber(sideText(cells, given[0] ?? ""));
  if (name === "ISTEXT") return choiceWords.isText(sideText(cells, given[0] ?? ""));
  if (name === "ISERROR") return choiceWords.isError(sideText(cells, given[0] ?? ""));
  if (name === "IF") return choiceWords.chosen(parts[0] ?? "", parts[1] ?? "", parts[2] ?? "");
  return sideText(cells, { kind: "call", name, given });
}

/** What holds of a cell of a block: factors are "and", one less what is asked is "not". */
function eachText(cells: SheetCells, each: Expression): string {
  if (typeof each !== "object" || each.kind !== "infix") return conditionText(cells, each);
  if (each.operator === "*")
    return [each.left, each.right]
      .filter((one) => one !== 1)
      .map((one) => eachText(cells, one))
      .join(choiceWords.and);
  if (each.operator === "-" && each.left === 1) return choiceWords.not(eachText(cells, each.right));
  return conditionText(cells, each);
}

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
  const value = evaluate(side, cells.at);
  if (isTable(value)) return formulaText(side).slice(1);
  const places = placesIn(side);
  const of = places.slice(0, MOST_PLACES).map((place) => placeText(cells, place));
  const shown = typeof value === "number" ? inWorking(value) : plainText(value, "", undefined);
  const isCount = isCall(side, "COUNT") || isCall(side, "COUNTA");
  const from = `${of.join(", ")}${places.length > MOST_PLACES ? ", …" : ""}`;
  return of.length === 0 ? shown : (isCount ? choiceWords.filled : choiceWords.worked)(shown, from);
}

function placeText(cells: SheetCells, place: Cell | Range): string {
  if (place.kind === "range") return `${rangeName(cells, place).text} (${placeName(cells, place)})`;
  const { text, unit } = nameOf(cells, place);
  return `${text} (${placeName(cells, place)}: ${plainText(cells.at(place.row, place.column), unit, cells.planned(place.row, place.column))})`;
}
