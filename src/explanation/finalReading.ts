import { CALCULATING, inputTooLarge, KEEPS_CHANGING, STAYS_PENDING, WAITS_FOR_F9 } from "../problems/workbook/cellNotes";
import type { CellLook, InputsReading, WantedCells, Workbook } from "../workbook/Workbook";
import { expressionOf } from "./formula/expressionOf";
import { distinctReferences } from "./formula/readReferences";
import { referencesIn, type RangeReference } from "./formula/references";
import { readTogether } from "./readTogether";

/** A cell and the inputs of its formula, as they stood at one moment. */
export interface FinalReading {
  readonly look: CellLook;
  readonly references: readonly RangeReference[];
  readonly ranges: InputsReading["ranges"];
  /** The area that was to be read besides, undefined where it was not. */
  readonly around?: InputsReading["ranges"][number] | undefined;
  /** What must be said of the reading. */
  readonly notes: readonly string[];
}

/** Lets some time pass; tests let none pass. */
export type Pause = (milliseconds: number) => Promise<void>;

// A recalculation of a run sheet takes well under a second; longer ones are told to the user, who need not watch the pane.
const BETWEEN_LOOKS = 300;
const MOST_LOOKS = 6;

const waited: Pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/**
 * Reads the inputs together with the cell once more: the values are final when the cell is the same both times and nothing is to
 * be calculated. While something is, a host goes on showing the values from before.
 * @param look at the cell
 * @param area of its sheet, to be read in the same request
 * @param further cells that the names of its formula refer to
 * @returns the reading, or with it, in `refusal`, why its values may be from before
 */
export async function finalReading(
  workbook: Pick<Workbook, "readInputs">,
  look: CellLook,
  pause: Pause = waited,
  area?: WantedCells,
  further: readonly RangeReference[] = [],
): Promise<FinalReading & { readonly refusal?: string }> {
  let seen = look;
  for (let looks = 1; ; looks++) {
    const references = distinctReferences([...referencesOf(seen), ...further]);
    const { again, ranges, around } = await readTogether(workbook, seen.address, references, area);
    const notes = references.flatMap(({ range }, index) => (ranges[index] === undefined ? [inputTooLarge(range)] : []));
    const reading = { look: again, references, ranges, notes, around };
    const { state, manual } = again.calculation;
    const isSame = contentsOf(seen) === contentsOf(again);
    if (state === "done" && seen.calculation.state === "done" && isSame) return reading;
    if (state === "pending" && manual) return { ...reading, refusal: WAITS_FOR_F9 };
    if (looks >= MOST_LOOKS) {
      if (state === "calculating" || formulaOf(seen) !== formulaOf(again)) return { ...reading, refusal: CALCULATING };
      return { ...reading, notes: [state === "pending" ? STAYS_PENDING : KEEPS_CHANGING, ...notes] };
    }
    if (state !== "done") await pause(BETWEEN_LOOKS);
    seen = again;
  }
}

/** The formula that fills the cell: its own, or that of the cell whose spill it stands in. */
export const formulaOf = ({ reading, anchor }: CellLook): string => anchor?.formula ?? reading.formula;

const referencesOf = (look: CellLook): RangeReference[] => referencesIn(expressionOf(formulaOf(look)), look.address.sheet);

const contentsOf = ({ reading, anchor }: CellLook): string => JSON.stringify([reading, anchor]);
