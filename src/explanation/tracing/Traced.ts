import type { ChoiceTold } from "../../problems/workbook/cellNotes";
import type { AstExpression } from "@borgar/fx";
import type { Lambda } from "../../sharing/plain/formula/parts";
import type { BlankForm, Cells, Position } from "../formula/Cells";
import type { RangeReference } from "../formula/references";

/** Names that LET and LAMBDA give, in small letters: letter case makes no difference. */
export type Scope = ReadonlyMap<string, Bound>;

/** Between a name and what it stands for, as told. */
export const STANDS_FOR = " = ";

/** What a name stands for. */
export interface Bound {
  readonly value: Valued | undefined;
  /** As written: "B5", "vessel+0.02". */
  readonly written: string;
}

/** What a part of a cell formula gives. */
export interface Valued {
  readonly cells: Cells;
  /** Where that stands, left out for what stands nowhere. */
  readonly place?: RangeReference;
  /** What names among the arguments stand for: "vessel = B5". */
  readonly named?: string;
  /** A LAMBDA, which is called further on; its cells hold the error that a cell shows of it. */
  readonly lambda?: { readonly of: Lambda; readonly scope: Scope; readonly source: Source };
}

/** What a formula is worked out from. */
export interface TracingSurroundings {
  /** What a reference as typed holds, "B7" or for a spill the "B7" of "B7#"; undefined where only the spreadsheet knows. */
  readonly referred: (text: string, isSpill: boolean) => Cells | undefined;
  /** Where a reference points. */
  readonly place: (text: string, isSpill: boolean) => RangeReference | undefined;
  /** What a defined name stands for, as written with its "="; undefined for one that is not known or moves with the cell. */
  readonly nameFormula: (text: string) => string | undefined;
  readonly blankAs: BlankForm;
  /** The cell that is asked about within what the formula fills, from 0. */
  readonly position: Position;
}

/** One time that a call of ours is worked out. */
export interface Made {
  /** Undefined for an argument that only the spreadsheet knows, null for one left out. */
  readonly given: readonly (Valued | undefined | null)[];
  /** Undefined where only the spreadsheet knows, or a choice goes another way. */
  readonly answer?: Cells | undefined;
}

/** What becomes of a call of ours while its formula is worked out. */
export interface Fate {
  readonly made: readonly Made[];
  /** True where each cell of its answer goes into a cell of the formula's; false where another function takes the answer as a whole. */
  readonly isByCell: boolean;
  /** Why it is not worked out, where a choice goes another way. */
  readonly passedOver?: ChoiceTold;
}

/** A formula with its calls: that of the cell, or of a defined name. */
export interface Source {
  /** "" for the formula of the cell itself. */
  readonly name: string;
  /** As written, from its "=" on: offsets count in it. */
  readonly formula: string;
}

/** Tells a call of ours apart from every other. @param end the offset behind its closing bracket, which each has to itself */
export const fateKey = ({ name }: Source, end: number): string => `${name.toLowerCase()} ${end}`;

/** A formula worked out, with what became of its calls and choices. */
export interface Traced {
  readonly value: Cells | undefined;
  /** Under fateKey of each call. */
  readonly fates: ReadonlyMap<string, Fate>;
  readonly choices: readonly ChoiceTold[];
  /** What references, names and calls of the cell's own formula come to, by the offset behind each. */
  readonly values: ReadonlyMap<number, Cells>;
}

export type Arguments = readonly (AstExpression | null)[];

/** Where a part of a formula stands. */
export interface At {
  readonly scope: Scope;
  readonly source: Source;
  /** True while arguments are worked out of a call that is passed over: nothing is kept of what happens on the way. */
  readonly isAside: boolean;
  readonly depth: number;
  /** Whether each cell that it gives goes into a cell of the formula's. */
  readonly isByCell: boolean;
}

/** A formula while it is worked out, as functions that choose or call a LAMBDA see it. */
export interface UnderWay {
  readonly choices: ChoiceTold[];
  /** @param part null for an argument left out, which counts as blank */
  value(part: AstExpression | null, at: At): Valued | undefined;
  /** As typed. */
  written(part: AstExpression | null | undefined, at: At): string;
  /** The cell that is asked about within what the formula fills, from 0. */
  readonly position: Position;
  /** Marks every call of ours within a part that a choice passes over. @param isHere true of one that other cells take */
  passOver(part: AstExpression | null | undefined, choice: ChoiceTold, at: At, isHere: boolean): void;
  /** What a LAMBDA gives. @param written what each of its parameters stands for, as written */
  applied(lambda: NonNullable<Valued["lambda"]>, given: readonly (Valued | undefined)[], written: readonly string[], at: At): Valued | undefined;
}
