import { ambiguousInForm, blankInForm, notANumberInForm } from "../../problems/paneProblems";

/** A box of a form for one number. */
export interface NumberBox {
  readonly label: string;
  /** A number that would do, for the message about a box left blank; no example: the box may stay blank. */
  readonly example?: string;
}

type MayStayBlank<B> = { [F in keyof B]: B[F] extends { readonly example: string } ? never : F }[keyof B];

/** A number for each box; those that may stay blank may be missing. */
type Numbers<B> = Readonly<Record<Exclude<keyof B, MayStayBlank<B>>, number>> & Readonly<Partial<Record<MayStayBlank<B>, number>>>;

export type NumbersRead<B> = { readonly numbers: Numbers<B> } | { readonly problem: string; readonly field: keyof B & string };

// "1,440" is a thousand and more to some and a little over one to others; "0,125" can only be the latter.
const COULD_BE_THOUSANDS = /^[1-9]\d{0,2},\d{3}$/;

export const couldBeThousands = (text: string): boolean => COULD_BE_THOUSANDS.test(text);

/** The numbers of a form as typed, a decimal comma allowed; or the first box that holds none, with the sentence to show there. */
export function readNumbers<B extends Readonly<Record<string, NumberBox>>>(
  boxes: B,
  typed: Readonly<Record<keyof B & string, string>>,
): NumbersRead<B> {
  const numbers: Partial<Record<keyof B, number>> = {};
  for (const [name, { label, example }] of Object.entries(boxes)) {
    const field = name as keyof B & string;
    const text = typed[field].trim();
    const value = Number(text.replace(",", "."));
    if (text === "" && example === undefined) continue;
    if (text === "") return { problem: blankInForm(label, example ?? ""), field };
    if (!Number.isFinite(value)) return { problem: notANumberInForm(label, text), field };
    if (couldBeThousands(text)) return { problem: ambiguousInForm(label, text), field };
    numbers[field] = value;
  }
  // Each box without a number has returned above or may stay blank, which the compiler cannot follow through a loop.
  return { numbers: numbers as Numbers<B> };
}
