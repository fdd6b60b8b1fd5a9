import { ambiguousInForm, blankInForm, notANumberInForm } from "../problems/paneProblems";

/** A box of a form for one number. */
export interface NumberBox {
  readonly label: string;
  /** A number that would do, for the message about a box left blank; no example: the box may stay blank. */
  readonly example?: string;
}

export type NumbersRead<F extends string> =
  { readonly numbers: Readonly<Partial<Record<F, number>>> } | { readonly problem: string; readonly field: F };

// "1,440" is a thousand and more to some and a little over one to others; "0,125" can only be the latter.
const COULD_BE_THOUSANDS = /^[1-9]\d{0,2},\d{3}$/;

/** The numbers of a form as typed, a decimal comma allowed; or the first box that holds none, with the sentence to show there. */
export function readNumbers<F extends string>(boxes: Readonly<Partial<Record<F, NumberBox>>>, typed: Readonly<Record<F, string>>): NumbersRead<F> {
  const numbers: Partial<Record<F, number>> = {};
  for (const [field, { label, example }] of Object.entries(boxes) as [F, NumberBox][]) {
    const text = typed[field].trim();
    const value = Number(text.replace(",", "."));
    if (text === "" && example === undefined) continue;
    if (text === "") return { problem: blankInForm(label, example ?? ""), field };
    if (!Number.isFinite(value)) return { problem: notANumberInForm(label, text), field };
    if (COULD_BE_THOUSANDS.test(text)) return { problem: ambiguousInForm(label, text), field };
    numbers[field] = value;
  }
  return { numbers };
}
