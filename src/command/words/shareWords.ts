import { WHY_FIXED } from "../../problems/sharing/plainCellProblems";
import { counted } from "../../problems/quoted";
import { whatTaken, type RULE_KINDS } from "../../problems/sharing/sharedCopyWords";

/** How a file is named where no name was given. */
export const VALUES_FILE = " values";
export const PLAIN_FILE = " plain cells";

export const SHEET_WITH_VALUES = "--sheet goes with --as values. Plain cells keep the whole workbook, because formulas read one another's sheets.";
export const NEWER_WITH_PLAIN = "--newer-functions goes with --as plain-cells: values hold no functions.";

// More are for the JSON answer.
const MOST_FIXED = 20;

/** What is said of cells that hold a value now. */
export const fixedCells = (fixed: readonly { readonly cell: string; readonly why: string }[]): string[] =>
  fixed.length === 0
    ? []
    : [
        `${fixed.length} cannot be written so and ${fixed.length === 1 ? "is" : "are"} fixed; each says so as soon as an input changes:`,
        ...fixed.slice(0, MOST_FIXED).map(({ cell, why }) => `  ${cell}: ${why}`),
        ...(fixed.length > MOST_FIXED ? [`  and ${fixed.length - MOST_FIXED} more`] : []),
      ];

/** What is said of cells whose answer may come to fill other cells. */
export const sizedCells = (cells: readonly string[]): string[] =>
  cells.length === 0
    ? []
    : [
        `${counted(cells.length, "answer")} may come to fill other cells and ${cells.length === 1 ? "is" : "are"} fixed from then on, with all that is calculated from ${cells.length === 1 ? "it" : "them"}:`,
        ...cells.slice(0, MOST_FIXED).map((cell) => `  ${cell}`),
        ...(cells.length > MOST_FIXED ? [`  and ${cells.length - MOST_FIXED} more`] : []),
      ];

/** What is said of rules for colouring and entries, and of defined names. */
export const rulesLines = ({ rewritten, guarded = 0, takenOut }: RulesSaid): string[] => [
  ...(rewritten === 0 ? [] : [`${counted(rewritten, "rule")} for colouring or entries in built-in functions`]),
  ...(guarded === 0
    ? []
    : [
        `${counted(guarded, "rule")} for colouring or entries ${guarded === 1 ? "holds" : "hold"} for nothing once a cell that ${guarded === 1 ? "it reads" : "they read"} is fixed`,
      ]),
  ...takenLines(
    takenOut.filter(({ why }) => ![WHY_FIXED.notShared, WHY_FIXED.connection, WHY_FIXED.ruleStale].some((apart) => apart === why)),
    "calls Retort, has no plain form",
    "call Retort, have no plain form",
  ),
  ...takenLines(
    takenOut.filter(({ why }) => why === WHY_FIXED.notShared),
    "reads or leads to a sheet that is not in the file",
    "read or lead to sheets that are not in the file",
  ),
  ...takenLines(
    takenOut.filter(({ why }) => why === WHY_FIXED.connection),
    "reads through a connection",
    "read through a connection",
  ),
  ...takenLines(
    takenOut.filter(({ why }) => why === WHY_FIXED.ruleStale),
    "reads a cell that may come to be fixed",
    "read cells that may come to be fixed",
  ),
];

const takenLines = (taken: RulesSaid["takenOut"], does: string, doing: string): string[] =>
  taken.length === 0
    ? []
    : [
        `${taken.length} ${taken.length === 1 ? does : doing} and ${taken.length === 1 ? "was" : "were"} taken out:`,
        ...taken.map(({ what, where, why }) => `  ${whatTaken(where, what)}: ${why}`),
      ];

interface RulesSaid {
  readonly rewritten: number;
  readonly guarded?: number;
  readonly takenOut: readonly { readonly what: keyof typeof RULE_KINDS; readonly where: string; readonly why: string }[];
}
