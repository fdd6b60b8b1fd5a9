import { DocumentSkeleton } from "@univerjs/preset-sheets-core";

let isMended = false;

/**
 * Mends a defect of engine 0.25.1: it lays the text of the formula line and of the cell editor out by recursion, and where thousands of places to
 * break at run its stack out, the error takes the whole grid off the page. Lets such a text stand as it was last laid out; what was typed is entered.
 */
export function keepGridOnLongText(): void {
  if (isMended) return;
  isMended = true;
  const skeleton = DocumentSkeleton.prototype;
  if (typeof skeleton.calculate !== "function") throw new Error("the engine has no layout to mend");
  const original = skeleton.calculate;
  skeleton.calculate = function calculate(this: DocumentSkeleton, ...given) {
    try {
      original.apply(this, given);
    } catch (problem) {
      if (!(problem instanceof RangeError)) throw problem;
      // Else it would be tried again with every frame.
      this.makeDirty(false);
    }
  };
}
