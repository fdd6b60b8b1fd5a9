import { textInCells } from "../../functions/inCells/sentenceInCells";
import { fixedOn, fixedUnfollowed, type WhyFixed } from "../../problems/sharing/plainCellProblems";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, rangeOf, type CellArea } from "../../workbook/cellArea";
import { freeNameBeside, freeSheetName } from "../../workbook/freeSheetName";
import type { CellContent, CellReading } from "../../workbook/Workbook";
import { numberText } from "../../inputs/numberText";
import { ERROR_NUMBERS, LONGEST_IN_FORMULA } from "./change/changed";
import { changeFlags, type FlagSheet } from "./change/changeFlags";
import { followedAsRead, inputsOf } from "./change/followedAsRead";
import { STALE } from "./change/flagText";
import type { FormulaSources } from "./change/FormulaSources";
import { tangledUnseen } from "./change/unseen";
import { namesOf, ReadSheets, type ReadFormula } from "./reading/ReadSheets";
import { branchWithoutCalls } from "./change/branchWithoutCalls";
import { circularFormulas, sourcesOutside, type Circle } from "./change/circularFormulas";
import { FilledDownFormulas } from "./FilledDownFormulas";
import type { PlainFormula } from "./plainFormula";
import { plainNames, type PlainNames } from "./plainNames";
import type { NameReading, PlainReading } from "./reading/PlainReading";
import { sheetText } from "./formula/reference";
import type { Sizes } from "./change/Sizes";
import { RoomToGrow } from "./size/RoomToGrow";
import { calculatedFrom, stalenessOf, type FormsHeld, type Staleness } from "./change/staleness";
import { namesAnew, spillsAnew, type WithAreas } from "./spillsAnew";
import type { PlainOptions } from "./reading/Surroundings";
import { MARK, WorkingsSheet, type WorkingsCell } from "./WorkingsSheet";

/**
 * What becomes of one formula cell; a cell that is not named stays as it is.
 *
 * - "plain": its calls of ours are written in built-in functions; where that is for what a cell held, such as a chemical formula, behind a guard.
 *   Or it referred to a spill that is written anew, and now refers to its area.
 * - "fixed": its value, behind a guard that says so as soon as an input changed.
 * - "watched": it calculates on, behind the guard of the fixed cells that it is calculated from.
 */
export interface PlainCell {
  readonly kind: "plain" | "fixed" | "watched";
  readonly sheet: string;
  /** The cell with the formula: "B7". */
  readonly cell: string;
  /** The cells that the formulas go into: "B7", or all that a spill fills, "B7:B20". */
  readonly area: string;
  /** One formula for the whole area, over arrays where the area or the formula asks for it; or one for each cell, row by row. */
  readonly formulas: { readonly one: string; readonly isArray: boolean } | { readonly each: readonly (readonly string[])[] };
  /** The formula that stood there. */
  readonly before: string;
  /** For a fixed cell. */
  readonly why?: WhyFixed;
  /** True where it says that it is fixed as soon as its answer would fill other cells. */
  readonly keepsSize?: boolean;
  /** True where it may come to say that it is fixed. */
  readonly isGuarded?: boolean;
}

/** A workbook for people without the add-in. */
export interface PlainSheets {
  readonly cells: readonly PlainCell[];
  /** Defined names whose formulas have to change. */
  readonly names: readonly NameReading[];
  /** Those that have no such formula and go, each as it was and why. */
  readonly namesGone: PlainNames["gone"];
  /** For what else refers to spills, such as rules and charts. */
  readonly withAreas: WithAreas;
  /** The sheet on which long forms put their steps, where any did. */
  readonly workings: { readonly name: string; readonly cells: readonly WorkingsCell[] } | undefined;
  /** Sheets of flags, for hiding: one for each shared sheet that has a fixed cell, an input of one, or a cell calculated from one. */
  readonly flags: readonly FlagSheet[];
}

export interface PlainSheetsOptions extends PlainOptions {
  /** The day of sharing, as it is to be printed. */
  readonly date: string;
  /** Names of sheets that are there besides and that no new sheet may take. */
  readonly taken?: readonly string[];
}

const WORKINGS = "Workings";
const FLAGS = " changes";

/**
 * Every formula cell of a workbook without our functions: written in built-in functions where that can be, else its value. Nothing vouches for
 * something that changed: a fixed cell, and every cell calculated from one at any distance, be it through SUM, COUNT or IF, says
 * "fixed on DATE: inputs changed" once any input that the fixed value came from is no longer what it was, and where those do not show, such as
 * behind OFFSET, that they cannot be followed. Pure: nothing is written here.
 * Takes time in proportion to the cells; 100,000 formulas take a few seconds.
 */
export function plainSheets(reading: PlainReading, options: PlainSheetsOptions): PlainSheets {
  const sheets = new ReadSheets(reading);
  const taken = [...sheets.names, ...(options.taken ?? [])];
  const workings = new WorkingsSheet(nowTaken(freeSheetName(WORKINGS, taken), taken));
  const flagNames = new Map(sheets.names.map((name) => [name, nowTaken(freeNameBeside(name, FLAGS, taken), taken)]));
  const flagSheetOf = (sheet: string): string => flagNames.get(sheet) ?? sheet;

  const names = plainNames(reading.names ?? [], sheets, options);
  const [nameAsRead, nameNow] = [namesOf(reading.names ?? []), namesOf(names.inCells)];
  const filledDown = new FilledDownFormulas(sheets, options, workings);
  const sources = sheets.formulas.map((formula) => filledDown.sourcesOf(formula, nameAsRead));
  const room = new RoomToGrow(sheets, sources, reading.tables);
  const circles = circularFormulas(sheets, sources);
  const rewritten = new Map<number, Rewritten>();
  const fixed = new Map<number, WhyFixed>();
  const untold = new Set<number>();
  const everyInput = inputsOf(sheets);
  const fixCircle = (circle: Circle): void => {
    const outside = sourcesOutside(circle, sources);
    for (const { id } of circle) {
      fixed.set(id, "circular");
      const source = sources[id] as FormulaSources;
      sources[id] = { ...source, precedents: outside ?? [], isVolatile: false, isUnseen: source.isUnseen || outside === undefined };
    }
  };
  for (const circle of circles) if (circle.some(({ id }) => sources[id]?.isOurs)) fixCircle(circle);
  sheets.formulas.forEach((formula) => {
    if (fixed.has(formula.id)) return;
    const source = sources[formula.id] as FormulaSources;
    const { isOurs, isBeyond } = source;
    const mayLose = !isBeyond && source.isAnywhere && reading.going !== undefined;
    if (isBeyond || mayLose) {
      fixed.set(formula.id, isBeyond ? "notShared" : "unseen");
      sources[formula.id] = followedAsRead(source, everyInput);
      if (source.isUnseen && source.asRead === undefined) untold.add(formula.id);
    }
    if (!isOurs || isBeyond || mayLose) return;
    const plain = filledDown.plainFormula(formula, nameNow, room.around(formula));
    if (plain.kind === "none") fixed.set(formula.id, plain.why);
    else rewritten.set(formula.id, plain);
  });

  const isHeld = (id: number): boolean => (rewritten.get(id)?.held.length ?? 0) > 0 || rewritten.get(id)?.resized !== undefined;
  const heldNow = (): FormsHeld => new Map([...rewritten].flatMap(([id, { held }]) => (held.length === 0 || fixed.has(id) ? [] : [[id, held]])));
  const reaches = new Map<number, CellArea>();
  const reachOf = (formula: ReadFormula): CellArea => {
    const plain = rewritten.get(formula.id);
    if (!fixed.has(formula.id)) return plain?.reach ?? areaOf(formula, plain);
    const reach = reaches.get(formula.id) ?? room.reachOf(formula);
    reaches.set(formula.id, reach);
    return reach;
  };
  const sizesNow = (): Sizes => {
    const resized = [...rewritten].flatMap(([id, plain]) => (plain.resized === undefined || fixed.has(id) ? [] : [[id, plain.resized] as const]));
    return { resized: new Map(resized), reachOf };
  };
  const stalenessNow = (): Staleness => stalenessOf(sheets, sources, new Set(fixed.keys()), heldNow(), sizesNow());
  let staleness = stalenessNow();
  // The flags of a circle would be one as well.
  const flagged = circles.filter((circle) => circle.some(({ id }) => !fixed.has(id) && (staleness.after.has(id) || staleness.before.has(id))));
  flagged.forEach(fixCircle);
  if (flagged.length > 0) staleness = stalenessNow();
  const cannotGoOn = (): readonly (readonly [number, WhyFixed])[] => [
    ...tangledUnseen({ sheets, sources, fixed: new Set(fixed.keys()), held: heldNow(), sizes: sizesNow(), staleness }).map(
      (id) => [id, "unseen"] as const,
    ),
    ...[...staleness.after, ...heldNow().keys(), ...sizesNow().resized.keys()]
      .filter((id) => bodyLength(sheets.formulas[id] as ReadFormula, rewritten.get(id)) > LONGEST_WATCHED)
      .map((id) => [id, "tooLong"] as const),
  ];
  for (let further = cannotGoOn(); further.length > 0; further = cannotGoOn()) {
    for (const [id, why] of further) fixed.set(id, why);
    staleness = stalenessNow();
  }

  const isAnew = ({ id }: ReadFormula): boolean => fixed.has(id) || rewritten.has(id) || staleness.after.has(id);
  const areaNow = (formula: ReadFormula): CellArea => areaOf(formula, fixed.has(formula.id) ? undefined : rewritten.get(formula.id));
  const withAreas = spillsAnew(sheets, nameAsRead, (formula) => (isAnew(formula) ? areaNow(formula) : undefined));
  const withoutCalls = (formula: ReadFormula): string | undefined => {
    const { reading: own, area, id } = formula;
    const isCall = fixed.get(id) === "noForm" || fixed.get(id) === "argumentForm";
    // An error of its own would be taken for the #N/A of a branch that only our functions can give.
    return isCall && !isSeveral(area) && own.error === "" ? branchWithoutCalls(own.formula, sheets.around(formula, nameNow), options) : undefined;
  };
  const flags = { withoutCalls, held: heldNow(), sizes: sizesNow(), staleness, flagSheetOf, workings };
  const changes = changeFlags({ sheets, sources, fixed: new Set(fixed.keys()), ...flags });
  // Their flags stand from the start, and nothing has changed by then.
  const unfollowed = new Set([...fixed.keys()].filter((id) => sources[id]?.isUnseen === true || untold.has(id)));
  const withUnfollowed = new Set([...unfollowed, ...calculatedFrom(sheets, sources, unfollowed, [], sizesNow())]);
  const cells = sheets.formulas.flatMap((formula): PlainCell[] => {
    const flag = changes.guards.get(formula.id) ?? `${sheetText(flagSheetOf(formula.sheet))}!${cellAt(formula.area.row, formula.area.column)}`;
    const says = textInCells((withUnfollowed.has(formula.id) ? fixedUnfollowed : fixedOn)(options.date));
    const behind = (text: string): string => `=IF(${flag}=${STALE},${says},${text})`;
    const why = fixed.get(formula.id);
    const [sheet, cell, area, before] = [formula.sheet, formula.reading.cell, rangeOf(areaNow(formula)), formula.reading.formula];
    if (why !== undefined)
      return [
        {
          ...{ kind: "fixed", sheet, cell, area, why, before, isGuarded: true },
          formulas: { each: valuesOf(formula, sheets, workings).map((row) => row.map((value) => behind(value))) },
        },
      ];
    const plain = rewritten.get(formula.id);
    const isWatched = staleness.after.has(formula.id);
    const respelled = plain === undefined ? withAreas(before, sheet) : before;
    if (plain === undefined && !isWatched && respelled === before) return [];
    const isGuarded = isWatched || isHeld(formula.id);
    const body = (text: string): string => (isGuarded ? behind(text.slice(1)) : text);
    const kind = isWatched ? "watched" : "plain";
    const common = {
      kind,
      sheet,
      cell,
      area,
      before,
      ...(isGuarded && { isGuarded }),
      ...(plain?.resized !== undefined && { keepsSize: true }),
    } as const;
    if (plain?.kind === "cells") return [{ ...common, formulas: { each: plain.formulas.map((row) => row.map(body)) } }];
    const one = plain?.kind === "formula" ? plain : { formula: respelled, isArray: isSeveral(formula.area) };
    return [{ ...common, formulas: { one: body(one.formula), isArray: one.isArray } }];
  });
  return {
    ...{ cells, withAreas, namesGone: names.gone, flags: changes.sheets },
    names: namesAnew(reading.names ?? [], names.changed, withAreas, sheets.names[0] ?? ""),
    workings: workings.cells.length === 0 ? undefined : { name: workings.name, cells: workings.cells },
  };
}

type Rewritten = Exclude<PlainFormula, { readonly kind: "none" }>;

function nowTaken(name: string, taken: string[]): string {
  taken.push(name);
  return name;
}

const isSeveral = ({ rows, columns }: CellArea): boolean => rows * columns > 1;

// Room for the guard in front, within 8,192 characters (Excel specifications and limits).
const LONGEST_WATCHED = 8000;

/** The cells that a formula goes into. */
const areaOf = ({ area }: ReadFormula, plain: Rewritten | undefined): CellArea => (plain?.area === undefined ? area : areaNamed(plain.area));

const bodyLength = ({ reading }: ReadFormula, plain: PlainFormula | undefined): number =>
  plain?.kind === "formula"
    ? plain.formula.length
    : plain?.kind === "cells"
      ? Math.max(...plain.formulas.flat().map(({ length }) => length))
      : reading.formula.length;

/** What a formula and its spill show, each as a cell formula holds it. */
function valuesOf({ sheet, area }: ReadFormula, sheets: ReadSheets, workings: WorkingsSheet): string[][] {
  const found = sheets.sheet(sheet);
  return Array.from({ length: area.rows }, (_, down) =>
    Array.from({ length: area.columns }, (_, across) => valueText(found?.at(area.row + down, area.column + across), sheet, workings)),
  );
}

function valueText(reading: CellReading | undefined, sheet: string, workings: WorkingsSheet): string {
  const value: CellContent = reading?.value ?? null;
  // Codes of a program of its own have no place in a formula.
  if (reading !== undefined && reading.error !== "") return ERROR_NUMBERS[reading.error] === undefined ? "#VALUE!" : reading.error;
  if (typeof value === "number") return numberText(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === null || value.length <= LONGEST_IN_FORMULA) return textInCells(value ?? "");
  const kept = workings.text(`${sheetText(sheet)}!${reading?.cell ?? ""} at sharing`, value);
  return kept.map(({ reference, length }) => `MID(${reference},${MARK.length + 1},${length})`).join("&");
}
