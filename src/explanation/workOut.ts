import type { Answer } from "../cells/CellProblem";
import type { CellFunction } from "../functions/cellFunction";
import type { CellReading } from "../workbook/Workbook";
import { agrees } from "./agrees";
import { answerOf } from "./answerOf";
import { isUnknown, type Argument } from "./Argument";
import { evaluate } from "./evaluate";
import { expressionOf } from "./expressionOf";
import { handedOver, type BlankForm } from "./handedOver";
import type { Position } from "./inputRows";
import type { ReadCells } from "./readReferences";

/** A call to explain, and the cell it is explained for. */
export interface CallInCell {
  readonly definition: CellFunction;
  readonly argumentTexts: readonly string[];
  readonly homeSheet: string;
  readonly cells: ReadCells;
  /** The selected cell's place in the spill, from 0. */
  readonly position: Position;
  /** True where the cell shows nothing because its formula tests for inputs first. */
  readonly waiting: boolean;
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
  const withZeros = workOutWith(call, 0);
  const { shownIn } = call;
  if (shownIn === undefined || agrees(answerAt(withZeros.answer, call.position), shownIn)) return withZeros;
  const withNulls = workOutWith(call, null);
  return agrees(answerAt(withNulls.answer, call.position), shownIn) ? withNulls : withZeros;
}

function workOutWith({ definition, argumentTexts, homeSheet, cells }: CallInCell, blankAs: BlankForm): Worked {
  const given = argumentTexts.map((text): Argument => {
    const expression = text === "" ? undefined : expressionOf(text);
    return { text, expression, cells: expression && evaluate(expression, { homeSheet, cells, blankAs }) };
  });
  return { given, blankAs, answer: given.some(isUnknown) ? undefined : answerOf(definition, rawArguments({ given, blankAs })) };
}

/** The arguments in the form a host hands them over. */
export const rawArguments = ({ given, blankAs }: Pick<Worked, "given" | "blankAs">): unknown[] =>
  given.map(({ cells }) => (cells ? handedOver(cells, blankAs) : null));

/** The answer for one cell of a spill. */
export const answerAt = (answer: Answer | Answer[][] | undefined, { row, column }: Position): Answer | undefined =>
  Array.isArray(answer) ? answer[row]?.[column] : answer;
