import { handsOnCell } from "../../../inputs/handsOnCell";
import { nameCalled, type Part } from "../formula/parts";
import { areaReferred } from "../writing/areaReferred";
import { CannotWrite } from "../writing/CannotWrite";
import { namedFormula } from "../writing/named";
import { within, type Scope } from "../writing/Scope";
import { scopeOfLet } from "../writing/variables";
import type { WritingTo } from "./WritingTo";

/** A reference to cells and where it is read. */
interface Cells {
  readonly part: Part;
  readonly scope: Scope;
}

// A longer range is asked for what its cells show alone.
const MOST_FORMULAS_READ = 10_000;

/**
 * Two cells of workings, 1 and 0 where the cells of a range hold TRUE and FALSE for a program whose truths are numbers, and else empty texts.
 * LibreOffice is one: over a range within an array formula its ISLOGICAL is FALSE for each cell, so that no condition on each cell tells TRUE from 1.
 * What a cell shows does, and where its format shows a number, the formula that LibreOffice makes of a truth in a file, =TRUE(). Who types 1 beside a
 * TRUE is then refused too. No other program works out more than the question whether a truth is a number.
 * @returns the reference of the two; undefined where nothing hands on cells or no sheet of workings is there
 */
export function truthsAmong(part: Part, scope: Scope, to: WritingTo): string | undefined {
  if (to.workings === undefined) return undefined;
  const areas = cellsHandedOn(part, scope);
  if (areas.length === 0) return undefined;
  const texts = areas.map((one) => ({ area: to.write(one.part, within(one.scope, { isQualified: true, isOnEach: false })), isLong: isLong(one) }));
  const key = `truths among ${texts.map(({ area }) => area).join()}`;
  const known = to.elsewhere.byText.get(key);
  if (known !== undefined) return known;
  const cell = (truth: 0 | 1): string => {
    const counts = texts.map(({ area, isLong: isShownAlone }) => shown(area, truth) + (isShownAlone ? "" : `+${made(area, truth)}`));
    return `IF(ISNUMBER(1=1),IF(${counts.join("+")}>0,${truth},""),"")`;
  };
  const place = to.workings(scope).block("Truths among numbers", 1, 2, () => [[cell(1), cell(0)]]);
  to.elsewhere.byText.set(key, place);
  return place;
}

/** How many cells worth a truth show no such number: a 0 may show as a dash in the formats of accounts, or not at all. */
const shown = (area: string, truth: 0 | 1): string =>
  truth === 1 ? `COUNTIFS(${area},1,${area},"<>*1*",${area},"<>*0*")` : `COUNTIFS(${area},0,${area},"?*",${area},"<>*0*",${area},"<>*-*")`;

/** How many cells worth a truth calculate it from nothing. */
const made = (area: string, truth: 0 | 1): string => `SUMPRODUCT((RIGHT(IFERROR(FORMULATEXT(${area}),""),2)="()")*IFERROR(${area}=${truth},0))`;

function isLong({ part, scope }: Cells): boolean {
  if (part === undefined || part === null) return true;
  const { rows, columns } = areaReferred(part, scope).area;
  return rows * columns > MOST_FORMULAS_READ;
}

/** The references whose cells an expression gives as they are: of a range, a name for one, or what IF and its like choose among. */
function cellsHandedOn(part: Part, scope: Scope): readonly Cells[] {
  switch (part?.type) {
    case "ReferenceIdentifier": {
      if (part.kind !== "name") return isKnown(part, scope) ? [{ part, scope }] : [];
      const variable = scope.variables.get(part.value.toLowerCase());
      if (variable !== undefined) return variable.given === undefined ? cellsHandedOn(variable.value, variable.scope) : [];
      if (isKnown(part, scope)) return [{ part, scope }];
      const named = namedFormula(scope.tree.textOf(part), scope);
      return cellsHandedOn(named.tree.root, named);
    }
    case "UnaryExpression":
      if (part.operator === "#") return isKnown(part, scope) ? [{ part, scope }] : [];
      return part.operator === "+" || part.operator === "@" ? cellsHandedOn(part.arguments[0], scope) : [];
    case "BinaryExpression":
      return (part.operator === ":" || part.operator === " ") && isKnown(part, scope) ? [{ part, scope }] : [];
    case "LetExpression":
      return cellsHandedOn(part.body, scopeOfLet(part, scope));
    case "CallExpression":
      return handsOnCell(`${nameCalled(part)}()`) ? part.arguments.flatMap((one) => cellsHandedOn(one, scope)) : [];
    default:
      return [];
  }
}

function isKnown(part: NonNullable<Part>, scope: Scope): boolean {
  try {
    return areaReferred(part, scope).sheet !== undefined;
  } catch (thrown) {
    if (thrown instanceof CannotWrite) return false;
    throw thrown;
  }
}
