// What matters here about a spreadsheet's own functions, by name in capitals.

/** One value out, whatever ranges go in. */
export const GIVES_ONE: ReadonlySet<string> = new Set(
  (
    "SUM AVERAGE AVERAGEA MIN MAX MINA MAXA COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS SUMIF SUMIFS AVERAGEIF AVERAGEIFS SUMPRODUCT SUMSQ PRODUCT " +
    "MEDIAN STDEV STDEV.S STDEV.P STDEVP VAR VAR.S VAR.P VARP DEVSQ AVEDEV GEOMEAN HARMEAN LARGE SMALL PERCENTILE PERCENTILE.INC QUARTILE " +
    "QUARTILE.INC RANK RANK.EQ SLOPE INTERCEPT RSQ CORREL STEYX FORECAST FORECAST.LINEAR SUBTOTAL AGGREGATE AND OR XOR ROWS COLUMNS TEXTJOIN CONCAT " +
    "INDEX VLOOKUP HLOOKUP LOOKUP MATCH XLOOKUP XMATCH MAXIFS MINIFS NPV IRR ISREF SHEET SHEETS NA PI TODAY NOW RAND TRUE FALSE"
  ).split(" "),
);

/** Counts cells of a table whatever they hold, errors too. */
export const COUNTS_ERRORS: ReadonlySet<string> = new Set(["ROWS", "COLUMNS", "AREAS", "COUNTA"]);

/** Works on each cell of a range by itself. */
export const WORKS_ON_EACH: ReadonlySet<string> = new Set(
  (
    "IF IFERROR IFNA IFS SWITCH CHOOSE ISNUMBER ISTEXT ISBLANK ISERROR ISERR ISNA ISLOGICAL ISNONTEXT NOT ABS SIGN ROUND ROUNDUP ROUNDDOWN MROUND INT " +
    "TRUNC CEILING FLOOR MOD POWER SQRT EXP LN LOG LOG10 SIN COS TAN ATAN ASIN ACOS VALUE NUMBERVALUE TEXT FIXED TRIM CLEAN LOWER UPPER PROPER LEN " +
    "LEFT RIGHT MID FIND SEARCH SUBSTITUTE REPLACE REPT EXACT CONCATENATE CODE CHAR DATE TIME YEAR MONTH DAY HOUR MINUTE SECOND DATEVALUE TIMEVALUE"
  ).split(" "),
);

/** Gives another value each time it is calculated, so that it may be written only once. */
export const RANDOM: ReadonlySet<string> = new Set(["RAND", "RANDBETWEEN", "RANDARRAY"]);

/** Changes without any cell changing. */
export const VOLATILE: ReadonlySet<string> = new Set([...RANDOM, "NOW", "TODAY"]);

/** Refers to cells that its text does not show. */
export const REFERS_UNSEEN: ReadonlySet<string> = new Set(["INDIRECT", "OFFSET"]);

/** Takes of its third argument as many cells as another one has, whatever is written there; the place of that one. */
export const TAKES_AS_MANY: ReadonlyMap<string, number> = new Map([
  ["SUMIF", 0],
  ["AVERAGEIF", 0],
  ["LOOKUP", 1],
]);

/** Says something else in another cell. */
export const TIED_TO_ITS_CELL: ReadonlySet<string> = new Set(["ROW", "COLUMN", "CELL", "INDIRECT", "SHEET"]);

/** Asks where cells stand or whether they calculate, whatever they come to: such a formula may stand in one of them. */
export const ASKS_WHERE: ReadonlySet<string> = new Set(["ROW", "ROWS", "COLUMN", "COLUMNS", "ISFORMULA"]);

/** Newer than Excel 2016. */
export const NEWER: ReadonlySet<string> = new Set(
  (
    "LET LAMBDA XLOOKUP XMATCH FILTER SORT SORTBY UNIQUE SEQUENCE RANDARRAY MAP BYROW BYCOL REDUCE SCAN MAKEARRAY ISOMITTED TEXTJOIN CONCAT IFS SWITCH " +
    "MAXIFS MINIFS TEXTBEFORE TEXTAFTER TEXTSPLIT VSTACK HSTACK TOROW TOCOL WRAPROWS WRAPCOLS TAKE DROP CHOOSEROWS CHOOSECOLS EXPAND ARRAYTOTEXT " +
    "VALUETOTEXT GROUPBY PIVOTBY PERCENTOF TRIMRANGE REGEXTEST REGEXEXTRACT REGEXREPLACE STOCKHISTORY IMAGE TRANSLATE DETECTLANGUAGE"
  ).split(" "),
);
