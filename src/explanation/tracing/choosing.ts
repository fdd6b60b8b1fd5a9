import type { ChoiceTold } from "../../problems/workbook/cellNotes";
import type { AstExpression } from "@borgar/fx";
import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import { quoted } from "../../problems/quoted";
import { isSingle, oneCell, valueAt, type Cells, onlyValue } from "../formula/Cells";
import { everyPart } from "../formula/everyPart";
import { certainOrder, certainTruth } from "../saved/sure/certain";
import type { Arguments, At, UnderWay, Valued } from "./Traced";

/** How a function that gives one of its parts is worked out; the parts that it does not give are passed over. */
export type Chooser = (trace: UnderWay, name: string, given: Arguments, at: At) => Valued | undefined;

/** One way that a choice can go. */
type Way = AstExpression | null | undefined;

const shown = (value: CellValue): string => (value === BLANK ? "blank" : value instanceof CellError ? value.code : quoted(value));

/** The single cells that a condition asks about, with what they hold. */
function amongAsked(trace: UnderWay, asked: Way, at: At): string[] {
  const found = new Set<string>();
  for (const part of everyPart(asked)) {
    if (part.type !== "ReferenceIdentifier") continue;
    const value = trace.value(part, at);
    const single = onlyValue(value?.cells);
    if (single !== undefined && value?.lambda === undefined) found.add(`${trace.written(part, at)} = ${shown(single)}`);
  }
  return [...found].slice(0, MOST_AMONG);
}

// More would not be read.
const MOST_AMONG = 4;

/** What a choice came to. */
interface Came {
  readonly by: string;
  readonly asked: Way;
  readonly found: string;
  readonly taken: Way;
  readonly left: readonly Way[];
  readonly row?: number;
}

// More choices than these are those of a LAMBDA that goes over a long range.
const MOST_CHOICES = 20;

/** Keeps what a choice came to, and passes over the ways that it does not take. @param isHere true of ways that other cells take */
function keep(trace: UnderWay, { by, asked, found, taken, left, row }: Came, at: At, isHere = false): void {
  const choice: ChoiceTold = {
    by,
    found,
    ...(row !== undefined && { row }),
    asked: trace.written(asked, at),
    among: amongAsked(trace, asked, at),
    taken: trace.written(taken, at),
    left: left.map((way) => trace.written(way, at)).filter((text) => text !== ""),
  };
  const isTold = trace.choices.some((one) => JSON.stringify(one) === JSON.stringify(choice));
  if (!at.isAside && !isTold && trace.choices.length < MOST_CHOICES) trace.choices.push(choice);
  for (const way of left) trace.passOver(way, choice, at, isHere);
}

/** Takes one way and passes the others over. */
function take(trace: UnderWay, came: Came, at: At): Valued | undefined {
  keep(trace, came, at);
  return came.taken === undefined ? undefined : trace.value(came.taken, at);
}

/** Every way, since it is not known which one is taken: what they give only the spreadsheet can tell. */
function everyWay(trace: UnderWay, ways: Arguments, at: At): undefined {
  for (const way of ways) if (way !== null) trace.value(way, at);
  return undefined;
}

/** Cell by cell, where what is asked is a block of cells: both ways are worked out, and each cell takes its own. */
function ofCells(trace: UnderWay, came: Omit<Came, "found" | "taken" | "left">, asked: Cells, [then, otherwise]: readonly Way[], at: At) {
  const [one, other] = [then, otherwise].map((way) => (way === undefined ? { cells: oneCell(false) } : trace.value(way, at)));
  const here = valueAt(asked, trace.position);
  const truth = here === undefined || here instanceof CellError ? undefined : certainTruth(here);
  const [taken, left] = truth === true ? [then, otherwise] : [otherwise, then];
  if (at.isByCell && truth !== undefined) keep(trace, { ...came, found: shown(truth), taken, left: [left], row: trace.position.row + 1 }, at, true);
  if (one === undefined || other === undefined) return undefined;
  const cells = asked.map((row, down) =>
    row.map((value, across) => {
      if (value instanceof CellError) return value;
      const holds = certainTruth(value);
      return holds === undefined ? undefined : valueAt(holds ? one.cells : other.cells, { row: down, column: across });
    }),
  );
  return cells.every((row) => row.every((value) => value !== undefined)) ? { cells: cells as Cells } : undefined;
}

/** The way of a condition: undefined where only the spreadsheet knows, an error where it shows one. */
function truthOf(value: CellValue | undefined): boolean | CellError | undefined {
  return value instanceof CellError ? value : value === undefined ? undefined : certainTruth(value);
}

/** What is given instead of an error. */
const unless =
  (isSuch: (code: string) => boolean): Chooser =>
  (trace, name, [first = null, second], at) => {
    const value = trace.value(first, at);
    if (value === undefined) return everyWay(trace, [second ?? null], at);
    const single = onlyValue(value?.cells);
    if (single === undefined) {
      const isAny = value.cells.some((row) => row.some((one) => one instanceof CellError && isSuch(one.code)));
      return isAny ? everyWay(trace, [second ?? null], at) : value;
    }
    const isError = single instanceof CellError && isSuch(single.code);
    const found = single instanceof CellError ? single.code : "";
    if (isError) return take(trace, { by: name, asked: first, found, taken: second, left: [first] }, at);
    keep(trace, { by: name, asked: first, found, taken: first, left: [second] }, at);
    return value;
  };

const IF: Chooser = (trace, name, [asked = null, then = null, otherwise], at) => {
  const condition = trace.value(asked, at);
  if (condition !== undefined && !isSingle(condition.cells)) return ofCells(trace, { by: name, asked }, condition.cells, [then, otherwise], at);
  const truth = truthOf(onlyValue(condition?.cells));
  if (truth === undefined) return everyWay(trace, [then, otherwise ?? null], at);
  if (truth instanceof CellError) {
    keep(trace, { by: name, asked, found: truth.code, taken: undefined, left: [then, otherwise] }, at);
    return { cells: oneCell(truth) };
  }
  const [taken, left] = truth ? [then, otherwise] : [otherwise, then];
  const value = take(trace, { by: name, asked, found: shown(truth), taken, left: [left] }, at);
  return taken === undefined ? { cells: oneCell(false) } : value;
};

const IFS: Chooser = (trace, name, given, at) => {
  for (let place = 0; place + 1 < given.length; place += 2) {
    const condition = given[place] ?? null;
    const truth = truthOf(onlyValue(trace.value(condition, at)?.cells));
    if (truth === undefined) return everyWay(trace, given.slice(place + 1), at);
    if (truth instanceof CellError) return { cells: oneCell(truth) };
    const values = given.filter((_, index) => index % 2 === 1);
    const taken = given[place + 1];
    if (truth) {
      const left = [...values.filter((one) => one !== taken), ...given.slice(place + 2).filter((_, index) => index % 2 === 0)];
      return take(trace, { by: name, asked: condition, found: shown(truth), taken, left }, at);
    }
  }
  return { cells: oneCell(new CellError("#N/A")) };
};

const SWITCH: Chooser = (trace, name, [what = null, ...given], at) => {
  const wanted = onlyValue(trace.value(what, at)?.cells);
  if (wanted === undefined) return everyWay(trace, given, at);
  if (wanted instanceof CellError) return { cells: oneCell(wanted) };
  const ways = given.filter((_, index) => index % 2 === 1 || (index === given.length - 1 && index % 2 === 0));
  const chosen = (taken: Way): Valued | undefined =>
    take(trace, { by: name, asked: what, found: shown(wanted), taken, left: ways.filter((one) => one !== taken) }, at);
  for (let place = 0; place + 1 < given.length; place += 2) {
    const one = given[place];
    const against = onlyValue(trace.value(one ?? null, at)?.cells);
    const order = against === undefined ? undefined : certainOrder(wanted, against, true);
    if (order === undefined) return everyWay(trace, given.slice(place + 1), at);
    if (order === 0) return chosen(given[place + 1]);
  }
  return given.length % 2 === 1 ? chosen(given.at(-1)) : { cells: oneCell(new CellError("#N/A")) };
};

const CHOOSE: Chooser = (trace, name, [which = null, ...choices], at) => {
  const place = onlyValue(trace.value(which, at)?.cells);
  if (place instanceof CellError) return { cells: oneCell(place) };
  if (typeof place !== "number") return everyWay(trace, choices, at);
  const taken = choices[Math.floor(place) - 1];
  if (taken === undefined) return { cells: oneCell(new CellError("#VALUE!")) };
  return take(trace, { by: name, asked: which, found: shown(place), taken, left: choices.filter((one) => one !== taken) }, at);
};

/** Functions that give one of their parts, and work out no other. */
export const CHOOSING: Readonly<Record<string, Chooser>> = {
  IF,
  IFS,
  SWITCH,
  CHOOSE,
  IFERROR: unless(() => true),
  IFNA: unless((code) => code === "#N/A"),
};
