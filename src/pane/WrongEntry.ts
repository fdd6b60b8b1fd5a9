/** What is in the way of a form: a sentence and the box it belongs to, undefined for the form's own. */
export interface WrongEntry<F extends string> {
  readonly problem: string;
  readonly field: F | undefined;
}
