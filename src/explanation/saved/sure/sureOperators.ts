import { CellError, type CellValue } from "../../../inputs/CellValue";
import { certainNumber, certainOrder, certainSum, certainText, type Certain } from "./certain";

type Operation = (one: CellValue, other: CellValue) => Certain<CellValue>;

const PERCENT = 100;

/** The operators as far as every spreadsheet works them alike; errors pass through before any of them. */
export const SURE_BINARY: Readonly<Record<string, Operation>> = {
  "+": arithmetic((one, other) => certainSum([one, other])),
  "-": arithmetic((one, other) => certainSum([one, -other])),
  "*": arithmetic((one, other) => one * other),
  "/": arithmetic((one, other) => (other === 0 ? new CellError("#DIV/0!") : one / other)),
  // Of a number below 0 programs take other roots than whole ones differently, and of 0 the power 0.
  "^": arithmetic((one, other) => (one > 0 || (Number.isInteger(other) && other > 0) ? one ** other : undefined)),
  "&": (one, other) => {
    const [before, behind] = [certainText(one), certainText(other)];
    return before === undefined || behind === undefined ? undefined : before + behind;
  },
  "=": compared((order) => order === 0, true),
  "<>": compared((order) => order !== 0, true),
  "<": compared((order) => order < 0),
  ">": compared((order) => order > 0),
  "<=": compared((order) => order <= 0),
  ">=": compared((order) => order >= 0),
};

export const SURE_UNARY: Readonly<Record<string, (value: CellValue) => Certain<CellValue>>> = {
  "+": (value) => value,
  "-": (value) => scaled(value, -1),
  "%": (value) => scaled(value, 1 / PERCENT),
};

const scaled = (value: CellValue, by: number): Certain<CellValue> => {
  const number = certainNumber(value);
  return number === undefined ? undefined : number * by;
};

function arithmetic(compute: (one: number, other: number) => Certain<number | CellError>): Operation {
  return (one, other) => {
    const [left, right] = [certainNumber(one), certainNumber(other)];
    const answer = left === undefined || right === undefined ? undefined : compute(left, right);
    return typeof answer === "number" && !Number.isFinite(answer) ? undefined : answer;
  };
}

function compared(holds: (order: number) => boolean, isForEquality = false): Operation {
  return (one, other) => {
    const order = certainOrder(one, other, isForEquality);
    return order === undefined ? undefined : holds(order);
  };
}
