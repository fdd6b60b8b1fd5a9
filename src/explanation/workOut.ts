import type { AstExpression } from "@borgar/fx";
import { CellProblem, type Answer } from "../cells/CellProblem";
import type { CellFunction } from "../functions/cellFunction";
import { CellError, type CellValue } from "../inputs/CellValue";
import type { CellReading } from "../workbook/Workbook";
import { answerOf } from "./formula/calledFunction";
import { handedOver, type BlankForm, type Cells, type Position } from "./formula/Cells";
import type { RangeReference } from "./formula/references";

/** One argument of a call, read from the cell formula. */
export interface Argument {
  /** As typed; "" where it is left out. */
  readonly text: string;
  readonly expression: AstExpression | undefined;
  /** Its values; undefined where it is left out or only the spreadsheet can work it out. */
  readonly cells: Cells | undefined;
  /** Where these stand, left out for what stands nowhere or as typed. */
  readonly place?: RangeReference | undefined;
  /** What a name stands for: "vessel = B5". */
  readonly named?: string | undefined;
}

/** True for an argument that is there but whose value only the spreadsheet knows. */
export const isUnknown = (argument: Argument | undefined): boolean => argument !== undefined && argument.text !== "" && argument.cells === undefined;

/** A call to explain, and the cell it is explained for. */
export interface CallInCell {
  readonly definition: CellFunction;
  readonly argumentTexts: readonly string[];
  readonly homeSheet: string;
  /** Its arguments, for each form of a blank cell. */
  readonly given: (blankAs: BlankForm) => readonly Argument[];
  /** The form of a blank cell that the cell's own value speaks for. */
  readonly blankAs: BlankForm;
  /** The selected cell's place in the spill, from 0. */
  readonly position: Position;
  /** True where the cell shows nothing because its formula tests for inputs first. */
  readonly waiting: boolean;
  /** False where another function takes all of its answer, so that no row of it is that of the selected cell. */
  readonly isByCell: boolean;
  /** Why it is not worked out, where a choice of the formula goes another way. */
  readonly passedOver?: string | undefined;
  /** The defined name that it stands in; left out for one that stands in the cell itself. */
  readonly inName?: string | undefined;
  /** Which time it is, from 1, of several that the formula works it out, with what each gave. */
  readonly time?: { readonly number: number; readonly gave: readonly (Cells | undefined)[] } | undefined;
  /** The selected cell, where its value is the value of this call. */
  readonly shownIn?: CellReading;
}

/** A call worked out. */
export interface Worked {
  readonly given: readonly Argument[];
  readonly blankAs: BlankForm;
  /** Undefined where an argument's value only the spreadsheet knows. */
  readonly answer: Answer | Answer[][] | undefined;
}

/** Works the call out as the host would. Where the host's form of a blank cell matters, the one that agrees with the cell is taken. */
export function workOut(call: CallInCell): Worked {
  const likely = workOutWith(call, call.blankAs);
  const { shownIn } = call;
  if (shownIn === undefined || agrees(answerAt(likely.answer, call.position), shownIn)) return likely;
  const other = workOutWith(call, call.blankAs === 0 ? null : 0);
  return agrees(answerAt(other.answer, call.position), shownIn) ? other : likely;
}

function workOutWith({ definition, given: givenAs }: CallInCell, blankAs: BlankForm): Worked {
  const given = givenAs(blankAs);
  return { given, blankAs, answer: given.some(isUnknown) ? undefined : answerOf(definition, rawArguments({ given, blankAs })) };
}

/** The arguments in the form a host hands them over. */
export const rawArguments = ({ given, blankAs }: Pick<Worked, "given" | "blankAs">): unknown[] =>
  given.map(({ cells }) => (cells ? handedOver(cells, blankAs) : null));

/** The answer for one cell of a spill. */
export const answerAt = (answer: Answer | Answer[][] | undefined, { row, column }: Position): Answer | undefined =>
  Array.isArray(answer) ? answer[row]?.[column] : answer;

// A host may store a result with one rounding more than we compute; a cell keeps 15 digits.
const RELATIVE_DIFFERENCE = 1e-12;

/** True where an answer worked out here is what the cell holds. */
export function agrees(answer: Answer | CellValue | undefined, { value, error }: CellReading): boolean {
  if (answer instanceof CellProblem || answer instanceof CellError) return error === answer.code;
  if (error !== "") return false;
  if (typeof answer === "number" && typeof value === "number") return Math.abs(answer - value) <= RELATIVE_DIFFERENCE * Math.max(1, Math.abs(value));
  return answer === (value ?? "");
}
