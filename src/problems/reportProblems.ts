import { InputProblem } from "./InputProblem";
import { quoted } from "./quoted";

/** A sheet of which no report can be made. */
export const nothingToReport = (sheet: string): InputProblem =>
  new InputProblem(
    "sheet",
    `${quoted(sheet)} is no run sheet, and no cell on it calls a Retort function`,
    "Show the sheet with the run or the calculations, then make its report.",
  );
