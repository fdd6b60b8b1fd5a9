import { oddBook, type OddCell } from "../odd/oddBook";

interface NamedFormula {
  /** As a file holds it. */
  readonly formula: string;
  /** Left out for an error. */
  readonly value?: number | string;
  readonly isArray?: true;
}

const WET = "_xldudf_RETORT_MOISTURE_WET";
const LEFT = "_xldudf_RETORT_AIRLEFT";
// (35 - 31.5) / (35 - 25), (36 - 30) / (36 - 25), (37 - 33) / (37 - 25)
const [FIRST, SECOND, THIRD] = [0.35, 6 / 11, 1 / 3] as const;
const SUM = FIRST + SECOND + THIRD;
const ANCHOR = "_xlfn.ANCHORARRAY";

/** Calls behind defined names, names for values as arguments, and references to spills, with what each comes to. By cell. */
export const NAMED_FORMULAS: Readonly<Record<string, NamedFormula>> = {
  T1: { formula: "WETSHARE(A1,B1,C1)", value: FIRST },
  T2: { formula: "IFERROR(WETSHARE(A2,B2,C2),0)", value: SECOND },
  T3: { formula: "DOUBLED(A1,B1,C1)", value: 2 * FIRST },
  T4: { formula: "SUM(WETSHARE(A1:A3,B1:B3,C1:C3))", value: SUM, isArray: true },
  T5: { formula: "WETSHARE(A1,MAX(IF(C1:C3<31,B1:B3)),C1)", value: 4.5 / 11, isArray: true },
  T6: { formula: "SUM(wets)", value: SUM },
  T7: { formula: "SUM(twice)", value: 2 * SUM },
  T8: { formula: 'VLOOKUP("Ash",shares,2,FALSE)', value: 0.02 },
  T9: { formula: 'IF(wet>limit,"moist","ok")', value: "moist" },
  T10: { formula: `${LEFT}(changes)`, value: Math.exp(-2) },
  T11: { formula: `${LEFT}(half)`, value: Math.exp(-0.5) },
  T12: { formula: `${LEFT}(-below)`, value: Math.exp(-2) },
  T13: { formula: `${LEFT}(below)` },
  T14: { formula: `${LEFT}(yes)` },
  T15: { formula: `${LEFT}(A1>2)` },
  T16: { formula: `${LEFT}(word)` },
  T17: { formula: `${LEFT}(sum)`, value: Math.exp(-26) },
  T18: { formula: `${WET}("tared",changes,1)`, value: 0.5 },
  T19: { formula: '_xldudf_RETORT_MOISTURE_CONVERT(0.2,basis,"dry")', value: 0.25 },
  T20: { formula: "_xldudf_RETORT_MOLARMASS(lime)/changes", value: 50.043 },
  T21: { formula: "_xldudf_RETORT_CONSTANTWEIGHT(weighings)", value: 5 },
  T22: { formula: "_xldudf_RETORT_CONSTANTWEIGHT(listed)", value: 5 },
  T23: { formula: "_xldudf_RETORT_CONSTANTWEIGHT(E1:E5 D1:F9)", value: 5 },
  T24: { formula: `${WET}(A1,B1:B3 A1:C1,C1)`, value: FIRST },
  T25: { formula: `SUM(${ANCHOR}(L1))`, value: SUM },
  T26: { formula: `IF(MAX(${ANCHOR}($L$1))>0.3,"moist","ok")`, value: "moist" },
  T27: { formula: `INDEX(${ANCHOR}(P1),2,2)`, value: FIRST },
  T28: { formula: `IFERROR(SUM(${ANCHOR}(Tray!L1)),0)`, value: SUM },
  T29: { formula: "SUM(spilled)", value: SUM },
  T30: { formula: `SUM(${ANCHOR}(begun)*B1:B3)`, value: FIRST * 35 + SECOND * 36 + THIRD * 37, isArray: true },
  T31: { formula: `_xldudf_RETORT_BUOYANCY(SUM(A1:A3*B1:B3),2700)`, value: 2700.7953534904404, isArray: true },
  T32: { formula: `${WET}(A1,MAX(IF(C1:C3<31,B1:B3)),C1)`, value: 4.5 / 11, isArray: true },
  T33: { formula: `IF(SUM((B1:B3>34)*1)=3,IF(${WET}(A1,B1,C1)<0.4,"in order","too moist"),"heavier needed")`, value: "in order", isArray: true },
  T34: { formula: "WETSHARE(A1,B1)" },
};

/** The names of the workbook, as a file holds them. */
export const NAMES: Readonly<Record<string, string>> = {
  ...{ basis: '"wet"', begun: "Tray!$L$1", below: "-2", changes: "2", half: "50%", lime: '"CaCO3"', limit: "0.3", word: '"ab"', yes: "TRUE" },
  ...{ listed: "{10;9.2;8.95;8.9;8.893}", spilled: `${ANCHOR}(Tray!$L$1)`, sum: "1+Tray!$A$1", weighings: "Tray!$E$1:$E$5" },
  DOUBLED: "_xlfn.LAMBDA(_xlpm.p,_xlpm.q,_xlpm.r,2*WETSHARE(_xlpm.p,_xlpm.q,_xlpm.r))",
  WETSHARE: `_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.c,${WET}(_xlpm.a,_xlpm.b,_xlpm.c))`,
  shares: "_xldudf_RETORT_PROXIMATE(Tray!$A$1,Tray!$B$1,Tray!$C$1,28,25.2)",
  twice: "2*wets",
  wet: `${WET}(Tray!$A$1,Tray!$B$1,Tray!$C$1)`,
  wets: `${WET}(Tray!$A$1:$A$3,Tray!$B$1:$B$3,Tray!$C$1:$C$3)`,
};

const array = (area: string): string => ` t="array" ref="${area}"`;

/** A workbook of them all. Rules of entry and of colour refer to a spill too. */
export function namedBook(): Uint8Array<ArrayBuffer> {
  const cells: Record<string, OddCell> = { E1: 10, E2: 9.2, E3: 8.95, E4: 8.9, E5: 8.893 };
  for (const [row, [moist, dry]] of [
    [35, 31.5],
    [36, 30],
    [37, 33],
  ].entries())
    // prettier-ignore
    Object.assign(cells, { [`A${row + 1}`]: 25, [`B${row + 1}`]: moist, [`C${row + 1}`]: dry });
  const spill = { formula: `${WET}(A1:A3,B1:B3,C1:C3)`, value: FIRST, about: array("L1:L3") };
  Object.assign(cells, { L1: spill, L2: SECOND, L3: THIRD });
  cells.P1 = { formula: "_xldudf_RETORT_PROXIMATE(A1,B1,C1,28,25.2)", value: "Share", about: array("P1:R6") };
  // Of 10 g received and 6.5 g dry: 3.5 g water, 3.5 g volatile, 2.8 g fixed carbon, 0.2 g ash.
  const shares: readonly (readonly [string, number, number])[] = [
    ["Moisture", 0.35, 0],
    ["Volatile matter", 0.35, 3.5 / 6.5],
    ["Fixed carbon", 0.28, 2.8 / 6.5],
    ["Ash", 0.02, 0.2 / 6.5],
    ["Sum", 1, 1],
  ];
  Object.assign(cells, { Q1: "As received", R1: "Dry" });
  for (const [index, [share, received, dry]] of shares.entries())
    Object.assign(cells, { [`P${index + 2}`]: share, [`Q${index + 2}`]: received, [`R${index + 2}`]: dry });
  for (const [cell, { formula, value = { error: "#VALUE!" }, isArray }] of Object.entries(NAMED_FORMULAS))
    cells[cell] = { formula, value, ...(isArray ? { about: array(cell) } : {}) };
  const defined = Object.entries(NAMES).map(([name, refersTo]) => `<definedName name="${name}">${refersTo}</definedName>`);
  const behind =
    `<conditionalFormatting sqref="A1:A3"><cfRule type="expression" priority="1"><formula>A1&gt;SUM(${ANCHOR}($L$1))</formula></cfRule>` +
    `</conditionalFormatting><dataValidations count="1"><dataValidation type="list" sqref="S1"><formula1>${ANCHOR}($L$1)</formula1>` +
    "</dataValidation></dataValidations>";
  return oddBook({ sheets: [{ name: "Tray", cells, behind }], behind: `<definedNames>${defined.join("")}</definedNames>` });
}
