import { tokenize, tokenTypes, type Token } from "@borgar/fx";
import { NAMESPACE } from "../../functions/catalogue";
import { catalogueName } from "../../sharing/catalogueName";

const NEWER = "_xlfn.";
const NEWER_ON_WORKSHEETS = "_xlfn._xlws.";
const OWN_VARIABLE = "_xlpm.";

/** A cell formula as a workbook file holds it: no "=", functions of add-ins and newer functions under their stored names. */
export function storedFormula(cellFormula: string): string {
  if (!mayDiffer(cellFormula)) return cellFormula.replace(/^=/, "");
  const tokens = tokenize(cellFormula, { mergeRefs: false });
  const variables = variablesIn(tokens);
  return tokens.map((token) => stored(token, variables)).join("").replace(/^=/, ""); // prettier-ignore
}

/** True where a name in it may be stored otherwise. Taking a formula apart takes most of the time of a long file. */
function mayDiffer(cellFormula: string): boolean {
  for (const [called] of cellFormula.matchAll(/[\w.]+\(?/g)) {
    // A variable stands in a call of LET or LAMBDA.
    if (!called.endsWith("(")) continue;
    const name = called.slice(0, -1);
    const capitals = name.toUpperCase();
    const isOwn = capitals === "LET" || capitals === "LAMBDA" || catalogueName(name) !== undefined;
    if (isOwn || WORKSHEET_FUNCTIONS.has(capitals) || NEWER_FUNCTIONS.has(capitals)) return true;
  }
  return false;
}

// Names of newer functions and variables, and texts or sheets in which a name of ours stands.
const OTHER_STORED = /_xlfn|_xlpm|_xlws|["'][^"']*retort/i;
const STORED_CALL = /(?<![\w.])_xldudf_RETORT_\w+(?=\()/gi;

/** The cell formula as typed, from the form a workbook file holds. */
export function typedFormula(inFile: string): string {
  if (!OTHER_STORED.test(inFile)) return `=${inFile.replace(STORED_CALL, (name) => `${NAMESPACE}.${catalogueName(name)}`)}`;
  const tokens = tokenize(`=${inFile}`, { mergeRefs: false });
  return tokens.map(typed).join("");
}

function stored({ type, value }: Token, variables: ReadonlySet<string>): string {
  if (type === tokenTypes.REF_NAMED && variables.has(value.toUpperCase())) return `${OWN_VARIABLE}${value}`;
  if (type !== tokenTypes.FUNCTION) return value;
  const name = value.toUpperCase();
  const ours = catalogueName(value);
  if (ours !== undefined) return `_xldudf_${NAMESPACE}_${ours.replaceAll(".", "_")}`;
  if (WORKSHEET_FUNCTIONS.has(name)) return `${NEWER_ON_WORKSHEETS}${name}`;
  return NEWER_FUNCTIONS.has(name) ? `${NEWER}${name}` : value;
}

function typed({ type, value }: Token): string {
  if (type === tokenTypes.REF_NAMED) return value.replace(/^_xlpm\./i, "");
  if (type !== tokenTypes.FUNCTION) return value;
  const ours = catalogueName(value);
  return ours === undefined ? value.replace(/^_xlfn\.(_xlws\.)?/i, "") : `${NAMESPACE}.${ours}`;
}

/** The names that LET and LAMBDA give to their own variables, in capitals: single names between a bracket or comma and a comma. */
function variablesIn(tokens: readonly Token[]): ReadonlySet<string> {
  const found = new Set<string>();
  const solid = tokens.filter(({ type }) => type !== tokenTypes.WHITESPACE && type !== tokenTypes.NEWLINE);
  const open: string[] = [];
  solid.forEach(({ type, value }, index) => {
    const previous = solid[index - 1];
    if (value === "(" || value === "{") open.push(previous?.type === tokenTypes.FUNCTION ? previous.value.toUpperCase() : "");
    if (value === ")" || value === "}") open.pop();
    const isAlone = (previous?.value === "(" || previous?.value === ",") && solid[index + 1]?.value === ",";
    const declares = ["LET", "LAMBDA"].includes(open.at(-1) ?? "");
    if (type === tokenTypes.REF_NAMED && isAlone && declares) found.add(value.toUpperCase());
  });
  return found;
}

/**
 * Built-in functions newer than the file format. In a file each is written after a prefix, else the spreadsheet shows
 * #NAME? until the cell is entered again. The "future functions" of [MS-XLSX] 2.2.2, and those added since; from memory.
 */
export const NEWER_FUNCTIONS: ReadonlySet<string> = new Set(
  `ACOT ACOTH AGGREGATE ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND BITLSHIFT BITOR
   BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS
   COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ENCODEURL
   ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FILTERXML FLOOR.MATH FORECAST.ETS
   FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV
   GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC IMSECH IMSINH IMTAN ISFORMULA ISOMITTED
   ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST
   NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC
   PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC
   SECH SEQUENCE SHEET SHEETS SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE
   TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK WEBSERVICE
   WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST`.split(/\s+/),
);

/** Two of them have a second prefix. */
export const WORKSHEET_FUNCTIONS: ReadonlySet<string> = new Set(["FILTER", "SORT"]);
