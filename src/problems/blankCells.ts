// The one rule for blank cells and zeros, in words. A host hands a blank cell over as 0, as nothing or as empty text, so a blank cell
// is a 0 where 0 cannot be told from it, and nothing given where it can.

/** What the rule hangs on, of an input. */
export interface BlankKind {
  readonly optional: boolean;
  /** As `Zero` of inputs/Input names them. */
  readonly zero: "nothing" | "none" | "value" | "refused" | "in words" | "first row" | "asked";
  /** True for a column. */
  readonly isColumn: boolean;
  /** What happens when it is left out, without a full stop. */
  readonly leftOut?: string;
}

const MAY_BE_ZERO = "0 is 0. So is a blank cell where the spreadsheet hands it over as 0, which most do; where it does not, it is";

/** What a blank cell and a 0 do, one or two sentences for the reference page. */
export function blankRule({ optional, zero, isColumn }: BlankKind): string {
  if (isColumn) return columnRule(optional, zero);
  if (zero === "in words") return "A blank cell is answered in words, and so is a 0 where 0 cannot be.";
  if (zero === "refused") return `A 0, and a blank cell handed over as 0, is refused: weigh it, type "tared", or leave the argument out.`;
  if (optional) return zero === "value" ? `${MAY_BE_ZERO} the same as left out.` : "Blank or 0 is the same as left out.";
  return zero === "nothing" ? "Blank or 0 is refused as missing." : `${MAY_BE_ZERO} refused as missing.`;
}

function columnRule(optional: boolean, zero: BlankKind["zero"]): string {
  if (zero === "none") return `A blank or a 0 is none.${optional ? " All blank or 0 is the same as left out." : ""}`;
  const atTheEnd = "Blanks at the end are readings not yet made; one in between is refused with its row.";
  const zeros =
    zero === "asked"
      ? " A 0 is refused until zeros says what it is."
      : zero === "first row"
        ? " 0 is a time in the first row; below it, a blank."
        : zero === "value"
          ? " 0 is 0, and so is a blank cell that the spreadsheet hands over as 0; 0 beside 0 at the end is a blank row."
          : " A 0 is a blank.";
  return `${atTheEnd}${zeros}${optional ? " All blank or 0 is the same as left out." : ""}`;
}

/** The same in a few words behind what an input is; "" where nothing need be said. */
export function blankInShort({ optional, zero, isColumn, leftOut }: BlankKind): string {
  if (isColumn && zero === "asked") return "Blanks at the end are left off; a 0 is refused until zeros says what it is.";
  if (!optional) return !isColumn && (zero === "value" || zero === "none") ? "0 counts; a blank cell may read as 0." : "";
  if (leftOut === undefined) return "";
  if (zero === "value") return `Left out: ${leftOut}. 0 counts.`;
  if (zero === "refused") return `Left out: ${leftOut}; 0 is refused.`;
  return `Left out, blank or 0: ${leftOut}.`;
}
