/**
 * Kinds of values, a letter each: n a number, b a blank cell, t a text, d a text that reads as a number, e an empty text, w a text with a sign that stands
 * for others, l TRUE or FALSE, x an error.
 */
export type Kinds = string;

/** A place of a function. */
export interface Place {
  /** What a single value may be; several are taken one by one, where the formula is over arrays. */
  readonly one: Kinds;
  /** What the cells of a range may hold, where a range is taken whole; left out where a single value is wanted. */
  readonly among?: Kinds;
}

export interface ProvenFunction {
  readonly places: readonly Place[];
  /** True where the last place may be given again and again. */
  readonly repeats: boolean;
  /** True where the last digits, which decide for certain in none, were compared too: halves that no binary number holds, and 15 figures in a text. */
  readonly isComparedAtEdges: boolean;
  /** True where ranges must be of one size. */
  readonly alike: boolean;
  readonly gives: Kinds;
}

const ANY = "nbtdewlx";
const NUMBER = "nbtelx";
// A truth stands in a text as 1 in one program and as TRUE in another.
const TEXT = "nbtdewx";
const IN_RANGE = "nbtex";

const one = (kinds: Kinds): Place => ({ one: kinds });
const range = (among: Kinds, direct: Kinds = "nx"): Place => ({ one: direct, among });

type Further = Partial<Pick<ProvenFunction, "repeats" | "alike" | "isComparedAtEdges">>;
const each = (names: string, places: readonly Place[], gives: Kinds, further: Further = {}): [string, ProvenFunction][] =>
  names.split(" ").map((name) => [name, { places, gives, repeats: false, alike: false, isComparedAtEdges: false, ...further }]);

const [number, text, numbers] = [one(NUMBER), one(TEXT), range(IN_RANGE)];
const repeats: Further = { repeats: true };
const alike: Further = { alike: true };
const atEdges: Further = { isComparedAtEdges: true };

/**
 * Built-in functions that the grid's engine answers as LibreOffice and Gnumeric do, with what was compared (`npm run check:spreadsheets` compares them):
 * single values of each kind, signs, exponents, ranges with blanks, texts and errors, lists. What is not here is not believed, unless `sure` works it out.
 */
export const PROVEN: ReadonlyMap<string, ProvenFunction> = new Map([
  ...each("ABS SIGN SQRT EXP LN LOG10 SIN COS TAN ATAN DEGREES RADIANS NORMSDIST NORMSINV NORM.S.INV", [number], "nx"),
  ...each("INT", [number], "nx", atEdges),
  ...each("ROUND ROUNDUP ROUNDDOWN", [number, number], "nx", atEdges),
  ...each("SUM COUNT MIN MAX MEDIAN SUMSQ PRODUCT STDEV.P STDEVP VAR.P VARP", [numbers], "nx", repeats),
  ...each("AVERAGE", [range("nbte")], "nx", repeats),
  // Of one number and none spreadsheets give other errors than the engine.
  ...each("STDEV STDEV.S VAR VAR.S DEVSQ", [range("nx")], "nx", repeats),
  ...each("COUNTA", [range(ANY, ANY)], "n", repeats),
  ...each("LARGE SMALL PERCENTILE PERCENTILE.INC QUARTILE QUARTILE.INC", [numbers, number], "nx"),
  ...each("SUMPRODUCT", [range("nbtex", "nx")], "nx", { repeats: true, alike: true }),
  ...each("SLOPE INTERCEPT CORREL PEARSON RSQ COVAR COVARIANCE.P COVARIANCE.S", [range(IN_RANGE, ""), range(IN_RANGE, "")], "nx", alike),
  ...each("FORECAST", [number, range(IN_RANGE, ""), range(IN_RANGE, "")], "nx", alike),
  ...each("NORM.DIST NORMDIST", [number, number, number, number], "nx"),
  ...each("NORM.INV NORMINV STANDARDIZE", [number, number, number], "nx"),
  ...each("TINV T.INV.2T T.INV", [number, one("n")], "nx"),
  ...each("COUNTIF", [range("nbtelx", ""), one("nt")], "n"),
  ...each("AND OR", [range("nbtelx", "nblx")], "lx", repeats),
  ...each("NOT", [one("nblx")], "lx"),
  ...each("ISNUMBER", [one(TEXT)], "l"),
  ...each("ISTEXT ISNONTEXT ISBLANK ISLOGICAL ISERROR ISERR ISNA", [one(ANY)], "l"),
  ...each("N", [one("ntelx")], "nx"),
  ...each("LEN", [text], "nx"),
  ...each("LEFT RIGHT", [text, one("n")], "tdewx"),
  ...each("MID", [text, one("n"), one("n")], "tdewx"),
  ...each("TRIM UPPER LOWER", [text], "tdewx"),
  ...each("CONCATENATE", [text], "tdewx", { ...repeats, ...atEdges }),
  ...each("SUBSTITUTE", [text, text, text], "tdewx"),
  ...each("FIND", [one("tnd"), one("nbtdex")], "nx"),
  ...each("SEARCH", [one("tnd"), one("nbtdex")], "nx"),
  ...each("EXACT", [one(ANY), one(ANY)], "lx"),
  ...each("VALUE", [one("nx")], "nx"),
  // The clock and chance, which no two calculations share.
  ...each("TODAY NOW RAND", [], "n"),
]);
