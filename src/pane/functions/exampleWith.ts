import type { CellFunction, Example, Shown } from "../../functions/cellFunction";
import { expressionOf } from "../../explanation/formula/expressionOf";
import { evaluate } from "../../explanation/formula/evaluate";
import { CellError, type CellValue } from "../../inputs/CellValue";
import { findCalls } from "../../sharing/findCalls";
import type { NamedSubstance } from "./search/substanceNamed";
import type { Substance } from "./substances/Substance";

/** What a search named, to be put into an example. */
export interface NamedInSearch {
  readonly substances: readonly NamedSubstance[];
  /** Symbols of elements. */
  readonly elements: readonly string[];
}

const REFERENCE = /\b\$?[A-Z]{1,3}\$?\d+\b/;

/** The example to show first: one that refers to no cells where there is such a one. */
export function chosenExample({ examples, name }: CellFunction): Example {
  const withoutText = (cell: string): string => cell.replace(/"[^"]*"/g, "");
  const chosen = examples.find(({ cell }) => !REFERENCE.test(withoutText(cell))) ?? examples[0];
  if (chosen === undefined) throw new Error(`${name} has no example`);
  return chosen;
}

/** The cell formula to start from: the function's example. */
export const callTemplate = (definition: CellFunction): string => chosenExample(definition).cell;

/**
 * The function's example with the substance or element that was searched for in the place of its own, and what it gives.
 * @returns the example unchanged where the function takes no formula, or gives no answer for this one
 */
export function exampleWith(definition: CellFunction, named: NamedInSearch): Example {
  const example = chosenExample(definition);
  const [call] = findCalls(example.cell);
  if (call === undefined) return example;
  const inputs = Object.keys(definition.inputs);
  const put = putIn(inputs, named);
  if (inputs.every((input) => put[input] === undefined)) return example;
  const texts = call.argumentTexts.map((text, at) => put[inputs[at] ?? ""] ?? text);
  const cell = `=RETORT.${definition.name}(${texts.join(", ")})`;
  const gives = valueOf(cell);
  return gives === undefined ? example : { cell, gives };
}

/** The arguments that what was named gives, by the input's name. */
function putIn(inputs: readonly string[], { substances, elements }: NamedInSearch): Readonly<Record<string, string | undefined>> {
  const [substance, second] = substances.map((named) => named.substance);
  const [element] = elements;
  if (inputs.includes("symbol")) return { symbol: quoted(element) };
  if (substance === undefined) return {};
  const { formula, residue } = substance;
  if (inputs.includes("anhydrous")) return substance.kind === "hydrate" ? { anhydrous: quoted(residue), after: afterDrying(substance) } : {};
  if (inputs.includes("start1")) return mixture(substance, second);
  if (inputs.includes("start"))
    return residue === undefined ? {} : { start: quoted(formula), residue: quoted(residue), loss: share(lossOf(substance), ALMOST_PURE) };
  if (inputs.includes("part"))
    return { formula: quoted(formula), part: quoted(element ?? (formula.endsWith("H2O") ? "H2O" : firstElement(formula))) };
  return { formula: quoted(formula), molarMass: `RETORT.MOLARMASS("${formula}")` };
}

const quoted = (text: string | undefined): string | undefined => (text === undefined ? undefined : `"${text}"`);

const firstElement = (formula: string): string | undefined => /[A-Z][a-z]?/.exec(formula)?.[0];

const ALMOST_PURE = 0.95; // of what the pure substance loses, as a sample of the trade might
const EVENLY_MIXED = 0.5;

function mixture(first: Substance, second: Substance | undefined): Readonly<Record<string, string | undefined>> {
  if (second === undefined || first.residue === undefined || second.residue === undefined) return {};
  const [one, other] = [lossOf(first), lossOf(second)];
  if (one === undefined || other === undefined) return {};
  return {
    loss: share(one + other, EVENLY_MIXED),
    start1: quoted(first.formula),
    residue1: quoted(first.residue),
    start2: quoted(second.formula),
    residue2: quoted(second.residue),
  };
}

const lossOf = ({ formula, residue }: Substance): number | undefined => {
  const loss = valueOf(`=RETORT.THEORETICALLOSS("${formula}", "${residue ?? ""}")`);
  return typeof loss === "number" ? loss : undefined;
};

const DECIMALS = 3;
const share = (loss: number | undefined, part: number): string | undefined =>
  loss === undefined ? undefined : String(Number((loss * part).toFixed(DECIMALS)));

// The example of HYDRATEWATER weighs 5 g of hydrate in a vessel of 20 g.
const [VESSEL, HYDRATE] = [20, 5];
function afterDrying(substance: Substance): string | undefined {
  const loss = lossOf(substance);
  return loss === undefined ? undefined : String(Number((VESSEL + HYDRATE * (1 - loss)).toFixed(DECIMALS)));
}

/** What a cell formula without references gives; undefined for an error. */
function valueOf(cell: string): Example["gives"] | undefined {
  const expression = expressionOf(cell);
  const cells = expression && evaluate(expression, { referred: () => undefined, blankAs: 0 });
  if (cells === undefined || cells.flat().some((value) => value instanceof CellError)) return undefined;
  const rows = cells.map((row) => row.map(shown));
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

const shown = (value: CellValue): Shown => (typeof value === "symbol" || value instanceof CellError ? "" : value);
