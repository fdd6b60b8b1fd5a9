import { everyFunction } from "../../src/functions/catalogue";
import type { CellFunction } from "../../src/functions/cellFunction";
import { hostileArguments } from "../functions/hostileCalls";
import { literalArguments, nameIn } from "../functions/call";
import { everyRefusal } from "../functions/refusals/everyRefusal";
import { everyPublished } from "../published/everyPublished";
import { argumentCases } from "./argumentCases";

/** Arguments as a host hands them over: a value, null for a blank cell, rows of a column, or an error. */
export interface PlainCase {
  readonly name: string;
  readonly raw: readonly unknown[];
}

export const hasPlainForm = ({ inCells, inManyCells }: CellFunction): boolean => inCells !== undefined || inManyCells !== undefined;

const WRONG: readonly unknown[] = [
  ...[null, "", "  ", 0, -1, -0.001, 1, 2, 35, 293.15, 1e300, "n/a", "35,1", "35.1", "0", true, false, "wet", "tared ", " TARED", "as  received"],
  ...[
    { type: "Error", basicValue: "#DIV/0!" },
    { type: "Error", basicValue: "#N/A" },
  ],
];

/** Good and bad arguments of every function with a plain form: examples, published values, refusals, hostile values in each place, and swaps. */
export function plainCases(): PlainCase[] {
  const withForm = everyFunction.filter(hasPlainForm);
  const literal = [
    ...everyRefusal.map(([cell]) => cell),
    ...everyPublished.map(({ cell }) => cell),
    ...everyFunction.flatMap(({ examples }) => examples.map(({ cell }) => cell)),
  ];
  return withForm.flatMap((definition) => {
    const typed = literal.filter((cell) => isCallOf(cell, definition.name)).map((cell) => literalArguments(cell).map(emptyAsBlank));
    const hostile = Object.keys(definition.inputs).flatMap((_, index) => hostileArguments(definition, index));
    const drawn = drawnFor(definition.name);
    return [...typed, ...hostile, ...drawn, ...drawn.slice(0, DRAWN_SPOILT).flatMap(spoilt), ...drawn.slice(0, DRAWN_SPOILT).flatMap(swapped)]
      .filter((_, index) => index % (hasSeries(definition) ? EVERY_OF_SERIES : 1) === 0)
      .filter((raw) => raw.length <= Object.keys(definition.inputs).length && raw.every(isInCells))
      .map((raw) => ({ name: definition.name, raw }));
  });
}

const DRAWN_SPOILT = 4;

// Each cell of a series has a dozen steps on the sheet of workings; a fifth of the cases keeps a run to minutes.
const EVERY_OF_SERIES = 5;

const hasSeries = ({ inputs }: CellFunction): boolean => Object.values(inputs).some(({ shape }) => shape === "column");

const emptyAsBlank = (value: unknown): unknown => (value === "" ? null : value);

const isCallOf = (cell: string, name: string): boolean => {
  try {
    return nameIn(cell) === name;
  } catch {
    return false;
  }
};

const drawnFor = (name: string): readonly (readonly unknown[])[] => {
  try {
    return argumentCases(name);
  } catch {
    return [];
  }
};

const isColumn = (value: unknown): value is readonly (readonly unknown[])[] => Array.isArray(value);

/** A wrong value in each place in turn. */
const spoilt = (good: readonly unknown[]): unknown[][] =>
  good.flatMap((value, place) =>
    (isColumn(value) ? WRONG.map((wrong) => value.map((row, index) => (index === 1 ? [wrong] : row))) : WRONG).map((wrong) =>
      good.map((one, index) => (index === place ? wrong : one)),
    ),
  );

/** Each two arguments in each other's place. */
const swapped = (good: readonly unknown[]): unknown[][] =>
  good.flatMap((first, place) =>
    good
      .slice(place + 1)
      .map((second, further) => good.map((one, index) => (index === place ? second : index === place + 1 + further ? first : one))),
  );

/** What no cell can hold is left aside. */
const isInCells = (value: unknown): boolean =>
  isColumn(value) ? value.flat().every(isInCells) : value !== Infinity && value !== -Infinity && !Number.isNaN(value);
