import { cellArea } from "../../../workbook/cellArea";
import { formulaTree, type FormulaTree } from "../formula/formulaTree";
import { nameCalled, type Part } from "../formula/parts";
import { cellsReferred } from "../formula/reference";
import type { Surroundings } from "../reading/Surroundings";

/** A formula and what is around it. */
export interface Standing {
  readonly tree: FormulaTree;
  readonly place: Surroundings;
}

export type Held = string | number | boolean;

// A name that leads round in a circle is none.
const MOST_NAMES = 20;
/** Characters of a text, in a cell or on the way (Excel specifications and limits). */
const LONGEST_TEXT = 32_767;

/** What names came to, each worked out once: names of names would be asked again and again. */
interface Names {
  readonly depth: number;
  readonly known: Map<string, Held | undefined>;
}

/**
 * What a part of a formula came to as the workbook was read, where that is put together from texts, numbers and single cells: enough for what people
 * hand to INDIRECT and OFFSET. Undefined for anything else.
 */
export const heldValue = (part: Part, standing: Standing): Held | undefined => held(part, standing, { depth: 0, known: new Map() });

function held(part: Part, standing: Standing, names: Names): Held | undefined {
  const value = (one: Part): Held | undefined => held(one, standing, names);
  switch (part?.type) {
    case "Literal":
      return literal(standing.tree.textOf(part));
    case "ReferenceIdentifier":
      return part.kind === "name" ? named(standing.tree.textOf(part), standing, names) : cellHeld(standing.tree.textOf(part), standing.place);
    case "UnaryExpression": {
      const number = numberIn(value(part.arguments[0]));
      return number === undefined ? undefined : part.operator === "-" ? -number : part.operator === "+" ? number : undefined;
    }
    case "BinaryExpression": {
      const [left, right] = part.arguments.map(value);
      return left === undefined || right === undefined ? undefined : joined(part.operator, left, right);
    }
    case "CallExpression":
      return called(nameCalled(part).toUpperCase(), part.arguments, standing.place, value);
    default:
      return undefined;
  }
}

function literal(text: string): Held | undefined {
  if (text.startsWith('"')) return text.slice(1, -1).replaceAll('""', '"');
  if (/^true$/i.test(text)) return true;
  if (/^false$/i.test(text)) return false;
  return text === "" ? undefined : numberIn(Number(text));
}

function named(text: string, { place }: Standing, { depth, known }: Names): Held | undefined {
  const name = text.toLowerCase();
  if (known.has(name) || depth > MOST_NAMES) return known.get(name);
  // Until it is worked out it is none, so that a circle ends.
  known.set(name, undefined);
  const formula = place.nameOf(text, place.sheet);
  const tree = formula === undefined ? undefined : formulaTree(formula.startsWith("=") ? formula : `=${formula}`);
  const value = tree && held(tree.root, { tree, place }, { depth: depth + 1, known });
  known.set(name, value);
  return value;
}

function cellHeld(text: string, { sheet: home, heldAt }: Surroundings): Held | undefined {
  const found = cellsReferred(text, home);
  if (found?.sheet === undefined || found.lastSheet !== undefined || heldAt === undefined || found.area.rows * found.area.columns > 1)
    return undefined;
  const cell = heldAt(found.sheet, found.area.row, found.area.column);
  return cell === undefined ? "" : cell.error === "" ? (cell.value ?? "") : undefined;
}

const numberIn = (value: Held | undefined): number | undefined =>
  typeof value === "number" && Number.isFinite(value) ? value : value === "" ? 0 : undefined;

/** A number with decimals would stand in a text as the language of the spreadsheet has it. */
export const textIn = (value: Held | undefined): string | undefined =>
  typeof value === "number" ? (Number.isSafeInteger(value) ? String(value) : undefined) : typeof value === "string" ? value : undefined;

function joined(operator: string, left: Held, right: Held): Held | undefined {
  if (operator === "&") {
    const [one, other] = [textIn(left), textIn(right)];
    return one === undefined || other === undefined || one.length + other.length > LONGEST_TEXT ? undefined : one + other;
  }
  const [one, other] = [numberIn(left), numberIn(right)];
  if (one === undefined || other === undefined) return undefined;
  return { "+": one + other, "-": one - other, "*": one * other }[operator];
}

/** Where the cell stands, and texts one behind the other. */
function called(name: string, given: readonly Part[], place: Surroundings, value: (part: Part) => Held | undefined): Held | undefined {
  const own = cellArea(place.cell);
  if (given.length === 0 && own !== undefined) return name === "ROW" ? own.row + 1 : name === "COLUMN" ? own.column + 1 : undefined;
  if (name !== "CONCATENATE") return undefined;
  const texts = given.map((one) => textIn(value(one)));
  const joinedUp = texts.includes(undefined) ? undefined : texts.join("");
  return joinedUp === undefined || joinedUp.length > LONGEST_TEXT ? undefined : joinedUp;
}
