/**
 * At which of its arguments, counted from 0, a built-in function takes a range as a whole; "*" for every one, "2.." from the third on,
 * "0+2" for the first and each second one after it. Everywhere else, and at functions that are not here, it takes one value.
 * ROW and COLUMN are left out: what they give of a range is one number a row. (ECMA-376 Part 1, 18.17.7, and the functions added since; from
 * memory.)
 */
const PLACES: Readonly<Record<string, string>> = {
  "*": `AND AREAS ARRAYTOTEXT AVEDEV AVERAGE AVERAGEA BYCOL BYROW CHISQ.TEST CHITEST COLUMNS CONCAT CORREL COUNT COUNTA COUNTBLANK COVAR COVARIANCE.P
    COVARIANCE.S DAVERAGE DCOUNT DCOUNTA DEVSQ DGET DMAX DMIN DPRODUCT DSTDEV DSTDEVP DSUM DVAR DVARP F.TEST FREQUENCY FTEST GCD GEOMEAN GROWTH
    HARMEAN HSTACK INTERCEPT ISREF KURT LCM LINEST LOGEST MAP MAX MAXA MDETERM MEDIAN MIN MINA MINVERSE MMULT MODE MODE.MULT MODE.SNGL
    MULTINOMIAL N OR PEARSON PRODUCT REDUCE ROWS RSQ SCAN SHEET SHEETS SKEW SKEW.P SLOPE STDEV STDEV.P STDEV.S STDEVA STDEVP STDEVPA STEYX SUM
    SUMPRODUCT SUMSQ SUMX2MY2 SUMX2PY2 SUMXMY2 T TRANSPOSE TREND TYPE VAR VAR.P VAR.S VARA VARP VARPA VSTACK XIRR XOR`,
  "0": `CHOOSECOLS CHOOSEROWS COUNTIF DROP EXPAND FORMULATEXT INDEX IRR ISFORMULA LARGE MIRR OFFSET PERCENTILE PERCENTILE.EXC PERCENTILE.INC
    PERCENTRANK PERCENTRANK.EXC PERCENTRANK.INC QUARTILE QUARTILE.EXC QUARTILE.INC SMALL SORT TAKE TOCOL TOROW TRIMMEAN UNIQUE WRAPCOLS WRAPROWS
    Z.TEST ZTEST`,
  "1": "CELL HLOOKUP MATCH RANK RANK.AVG RANK.EQ VLOOKUP XMATCH",
  "2": "NETWORKDAYS WORKDAY",
  "3": "NETWORKDAYS.INTL SERIESSUM WORKDAY.INTL",
  "0,1": "FILTER PROB SORTBY T.TEST TTEST",
  "0,2": "AVERAGEIF SUMIF",
  "1,2": "FORECAST FORECAST.ETS FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR IF LOOKUP XLOOKUP XNPV",
  "1..": "CHOOSE FVSCHEDULE NPV SUBTOTAL TEXTJOIN",
  "2..": "AGGREGATE",
  "0+2": "COUNTIFS",
  "0,1+2": "AVERAGEIFS MAXIFS MINIFS SUMIFS",
};

const TAKES = new Map(Object.entries(PLACES).flatMap(([places, names]) => names.split(/\s+/).map((name) => [name, places] as const)));

/** @param name in capitals */
export const takesRange = (name: string, place: number): boolean => (TAKES.get(name)?.split(",") ?? []).some((places) => isAmong(places, place));

function isAmong(places: string, place: number): boolean {
  if (places === "*") return true;
  const first = Number.parseInt(places, 10);
  if (places.endsWith("..")) return place >= first;
  return places.endsWith("+2") ? place >= first && (place - first) % 2 === 0 : place === first;
}

/** Functions that give several values whatever they are given, or may do so. */
export const GIVES_SEVERAL: ReadonlySet<string> = new Set(
  `BYCOL BYROW CHOOSECOLS CHOOSEROWS DROP EXPAND FILTER FREQUENCY GROWTH HSTACK INDIRECT LINEST LOGEST MAKEARRAY MAP MINVERSE MMULT MODE.MULT MUNIT
   RANDARRAY SCAN SEQUENCE SORT SORTBY TAKE TEXTSPLIT TOCOL TOROW TRANSPOSE TREND UNIQUE VSTACK WRAPCOLS WRAPROWS`.split(/\s+/),
);
