import { BLANK } from "../../../inputs/CellValue";
import { WORKS_ON_EACH } from "../../../sharing/plain/formula/functionKinds";
import { isSingle, oneCell, valueAt, type Cells } from "../../formula/Cells";
import { each } from "../../formula/workedOut";
import type { Certain } from "./certain";
import type { Given, SureFunction } from "./Given";
import { sureArrays } from "./sureArrays";
import { sureLookups } from "./sureLookups";
import { sureNumbers } from "./sureNumbers";
import { sureTexts } from "./sureTexts";

const FUNCTIONS: ReadonlyMap<string, SureFunction> = new Map(Object.entries({ ...sureNumbers, ...sureTexts, ...sureLookups }));
const ARRAYS = new Map(Object.entries(sureArrays));

/** True for a built-in function that is worked out here wherever nothing is in doubt. */
export const isWorkedOutSurely = (name: string): boolean => FUNCTIONS.has(name) || ARRAYS.has(name);

/** Takes ranges whole wherever it stands, and what operators make of them. */
export const TAKES_ARRAYS: ReadonlySet<string> = new Set([
  ...[...ARRAYS.keys()].filter((name) => name !== "INDEX" && name !== "ROWS" && name !== "COLUMNS"),
  ...["MAP", "BYROW", "BYCOL", "REDUCE", "SCAN", "MAKEARRAY"],
]);

/** The places at which a function takes one value of several at a time; undefined for all. */
const TAKES_ONE_BY_ONE: Readonly<Record<string, readonly number[]>> = {
  ...{ MATCH: [0], VLOOKUP: [0], HLOOKUP: [0], XLOOKUP: [0], XMATCH: [0], INDEX: [1, 2], LARGE: [1], SMALL: [1] },
  ...{ COUNTIF: [1], SUMIF: [1], AVERAGEIF: [1], RANK: [0], "RANK.EQ": [0] },
};

/** What a built-in function gives, null for what is left out; undefined where that is not certain. */
export function builtInSurely(name: string, given: readonly (Given | null)[], isOverArrays: boolean): Certain<Cells> {
  if (isOverArrays) {
    const onEach = WORKS_ON_EACH.has(name) ? undefined : (TAKES_ONE_BY_ONE[name] ?? []);
    const lifted = given.filter((one, place): one is Given => one !== null && !isSingle(one.cells) && (onEach?.includes(place) ?? true));
    if (lifted.length > 0) return oneByOne(name, given, lifted);
  }
  const array = ARRAYS.get(name);
  const cells = array?.(...given.map((one) => one ?? undefined));
  if (cells !== undefined) return cells;
  const of = FUNCTIONS.get(name);
  if (of === undefined || !given.every((one) => one !== null)) return undefined;
  const answer = of(...given);
  return answer === undefined ? undefined : oneCell(answer);
}

function oneByOne(name: string, given: readonly (Given | null)[], lifted: readonly Given[]): Certain<Cells> {
  const rows = Math.max(...lifted.map(({ cells }) => cells.length));
  const columns = Math.max(...lifted.map(({ cells }) => cells[0]?.length ?? 1));
  const places = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => ({ row, column })));
  return each(places, (line) =>
    each(line, (place) => {
      const here = given.map((one) => {
        if (one === null || !lifted.includes(one)) return one;
        const value = valueAt(one.cells, place);
        return value === undefined ? undefined : { cells: oneCell(value), isReference: one.isReference };
      });
      const answer = here.every((one) => one !== undefined) ? builtInSurely(name, here, false) : undefined;
      return answer !== undefined && isSingle(answer) ? (answer[0]?.[0] ?? BLANK) : undefined;
    }),
  );
}
