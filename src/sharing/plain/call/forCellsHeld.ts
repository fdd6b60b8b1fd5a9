import { refusal } from "../../../functions/inCells/problemInCells";
import { BLANK } from "../../../inputs/CellValue";
import type { Input } from "../../../inputs/Input";
import { changedSinceShared } from "../../../problems/sharing/plainCellProblems";
import type { CellReading } from "../../../workbook/Workbook";
import { CannotWrite } from "../writing/CannotWrite";
import { changed } from "../change/changed";
import { settled, valueHeld, type Argument, type Held, type NamedInput } from "./Argument";
import { askedOf, unlessUnfilled } from "./guardedForm";
import type { AskedCall, WrittenCall } from "./WritingTo";

export type IsKnown = (input: Input<unknown>) => boolean;

/** Of which inputs the cells' own content is taken, the least of them first: what only the program reads, then all that are no column. */
export const KNOWN: readonly IsKnown[] = [
  (input) => input.shape === "cell" && input.takes?.kind === "text",
  (input) => input.shape === "cell" && (input.takes?.kind === "text" || input.takes?.kind === "choice" || input.takes?.kind === "anything"),
  ({ shape }) => shape === "cell",
];

// Each other content of the cells has a form of its own in the formula.
const MOST_CONTENTS = 20;

/** Writes a call once its arguments are settled or asked. */
export type WriteAsked = (call: AskedCall, given: readonly Argument[]) => WrittenCall;

/** The call for what the cells held; undefined where they were blank, or held too many things. */
export function forCellsHeld(written: AskedCall, isKnown: IsKnown, write: WriteAsked): WrittenCall | undefined {
  const { definition, inputs, given, to, misfit } = written;
  const known = given.flatMap((one, index) => {
    const input = inputs[index]?.[1];
    const cells = one.kind === "asked" && input !== undefined && isKnown(input) ? one.held() : undefined;
    return one.kind === "asked" && cells !== undefined ? [{ index, one, held: cells }] : [];
  });
  if (known.length === 0 || misfit !== undefined) return undefined;
  const contents = contentsOf(known.map(({ held }) => held));
  if (contents.length === 0 || contents.length > MOST_CONTENTS) return undefined;
  if (written.scope.place.isUnfilled === true && contents.some((content) => content.some((one) => valueHeld(one) === BLANK))) return undefined;
  const forms = contents.flatMap((content) => {
    const settledHere = content.map((reading) => settled(valueHeld(reading)));
    // A required cell that is blank may be filled in yet, with whatever.
    if (settledHere.some(({ value }, index) => value === BLANK && !isOptional(inputs[known[index]?.index ?? 0]))) return [];
    const here = given.map((one, index) => settledHere[known.findIndex((other) => other.index === index)] ?? one);
    const isChanged = known.map(({ one }, index) => `(${changed(one.text, content[index])})`).join("+");
    return [{ isChanged, form: formOrNone(written, here, write) }];
  });
  if (forms.length === 0 || forms.some(({ form }) => form === undefined)) return undefined;
  const says = refusal(changedSinceShared(known.map(({ index }) => inputs[index]?.[0] ?? "")));
  const note = (): void => void to.held.push(...known.flatMap(({ held: { cells } }) => cells ?? []));
  const [only] = forms;
  if (only?.form !== undefined && forms.length === 1 && contents.length === 1) {
    note();
    const ofNames = known.filter(({ held: { cells } }) => cells === undefined);
    return unlessNamesChanged(only.form, ofNames.map(({ one, held }) => `(${changed(one.text, held.at(0, 0))})`), says); // prettier-ignore
  }
  if (forms.some(({ form }) => form !== undefined && "table" in form)) return undefined;
  note();
  const text = forms.reduceRight(
    (rest, { isChanged, form }) => `IF(${isChanged},${rest},${form !== undefined && "text" in form ? form.text : ""})`,
    says,
  );
  return { text: unlessUnfilled(askedOf(inputs, given), definition, given, text) };
}

/** What a name stands for is asked in the formula itself: the flags watch cells alone. */
function unlessNamesChanged(form: WrittenCall, areChanged: readonly string[], says: string): WrittenCall {
  if (areChanged.length === 0) return form;
  const unless = (text: string): string => `IF(${areChanged.join("+")},${says},${text})`;
  return "text" in form ? { text: unless(form.text) } : { ...form, guard: (first) => unless(form.guard(first)) };
}

function formOrNone(written: AskedCall, given: readonly Argument[], write: WriteAsked): WrittenCall | undefined {
  try {
    return write(written, given);
  } catch (thrown) {
    if (thrown instanceof CannotWrite && thrown.why === "argumentForm") return undefined;
    throw thrown;
  }
}

const isOptional = (input: NamedInput | undefined): boolean => input?.[1].shape === "cell" && input[1].optional;

/** The different rows of contents that stand beside one another, a single cell beside each. */
function contentsOf(cells: readonly Held[]): readonly (readonly (CellReading | undefined)[])[] {
  const [rows, columns] = (["rows", "columns"] as const).map((side) => Math.max(...cells.map((one) => one[side]))) as [number, number];
  const found = new Map<string, readonly (CellReading | undefined)[]>();
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const content = cells.map((one) => one.at(one.rows === 1 ? 0 : row, one.columns === 1 ? 0 : column));
      const key = JSON.stringify(content.map((one) => [one?.value ?? null, one?.error ?? ""]));
      if (!found.has(key)) found.set(key, content);
      if (found.size > MOST_CONTENTS) return [...found.values()];
    }
  return [...found.values()];
}
