import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";

// A class that does not exist; the weighings are made up to lie near what the formulas say.
const FIRST = 6;
const HYDRATES = [
  { name: "copper(II) sulfate, blue", formula: "CuSO4·5H2O", waters: 5, crucible: 21.34, before: 24.83, after: 23.58 },
  { name: "magnesium sulfate, Epsom salt", formula: "MgSO4·7H2O", waters: 7, crucible: 20.87, before: 24.02, after: 22.43 },
  { name: "barium chloride dihydrate", formula: "BaCl2·2H2O", waters: 2, crucible: 22.05, before: 25.61, after: 25.09 },
  { name: "gypsum", formula: "CaSO4·2H2O", waters: 2, crucible: 21.76, before: 24.7, after: 24.1 },
  { name: "alum", formula: "KAl(SO4)2·12H2O", waters: 12, crucible: 20.11, before: 23.9, after: 22.18 },
  { name: "copper(II) sulfate, mistyped", formula: "CuSO4·5H20", waters: 5, crucible: 0, before: 0, after: 0 },
] as const;
const LAST = FIRST + HYDRATES.length - 1;
const LAST_WEIGHED = LAST - 1;

const GRAMS = "0.00";
const SHARE = "0.0%";

const row = (index: number): PlannedCell[] => {
  const hydrate = HYDRATES[index];
  const at = FIRST + index;
  if (hydrate === undefined) return [];
  const isWeighed = at <= LAST_WEIGHED;
  return [
    { cell: `A${at}`, content: hydrate.name, style: "label" },
    { cell: `B${at}`, content: hydrate.formula, style: "input" },
    { cell: `C${at}`, style: "computed", format: "0.000", ...(index === 0 && { formula: `=RETORT.MOLARMASS(B${FIRST}:B${LAST})` }) },
    { cell: `D${at}`, style: "input", ...(isWeighed && { content: hydrate.waters }) },
    { cell: `E${at}`, style: "computed", format: SHARE, ...(isWeighed && { formula: `=D${at}*RETORT.MOLARMASS("H2O")/C${at}` }) },
    { cell: `F${at}`, style: "input", format: GRAMS, ...(isWeighed && { content: hydrate.crucible }) },
    { cell: `G${at}`, style: "input", format: GRAMS, ...(isWeighed && { content: hydrate.before }) },
    { cell: `H${at}`, style: "input", format: GRAMS, ...(isWeighed && { content: hydrate.after }) },
    {
      cell: `I${at}`,
      style: "result",
      format: SHARE,
      ...(index === 0 && { formula: `=RETORT.VOLATILEFRACTION(F${FIRST}:F${LAST_WEIGHED},G${FIRST}:G${LAST_WEIGHED},H${FIRST}:H${LAST_WEIGHED})` }),
    },
  ];
};

const KINDS_OF_ATOM = 4;

/** One formula that fills a table: an element a row under a row of headings. */
const atomsTable = (at: number): PlannedCell[] => [
  { cell: `A${at}`, content: "Atoms of the first salt", style: "label" },
  { cell: `B${at}`, formula: `=RETORT.ATOMS(B${FIRST})`, style: "columnHeading" },
  ...[..."CDE"].map((column): PlannedCell => ({ cell: `${column}${at}`, style: "columnHeading" })),
  ...Array.from({ length: KINDS_OF_ATOM }, (_, index) => at + 1 + index).flatMap((below): PlannedCell[] => [
    { cell: `B${below}`, style: "computed" },
    { cell: `C${below}`, style: "computed" },
    { cell: `D${below}`, style: "computed", format: "0.000" },
    { cell: `E${below}`, style: "computed", format: SHARE },
  ]),
];

const HEADINGS = [
  "Salt",
  "Formula",
  "Molar mass (g/mol)",
  "Waters",
  "Water by formula",
  "Crucible (g)",
  "With hydrate (g)",
  "After heating (g)",
  "Weight lost",
] as const;
const BELOW = LAST + 2;

export const demoSalts: SheetPlan = {
  name: "Salts class",
  cells: [
    { cell: "A1", content: "Water of crystallisation, by formula and by weighing", style: "title" },
    { cell: "A2", content: "Invented: the class and every weighing here are made up, to try Retort on.", style: "note" },
    {
      cell: "A3",
      content: "One formula in C6 gives the whole column of molar masses, and one in I6 the weights lost.",
      style: "note",
    },
    ...HEADINGS.map((content, index): PlannedCell => ({ cell: `${"ABCDEFGHI"[index]}${FIRST - 1}`, content, style: "columnHeading" })),
    ...HYDRATES.flatMap((_, index) => row(index)),
    { cell: `A${BELOW}`, content: `What is wrong in B${LAST}, from RETORT.FORMULA.CHECK in A${BELOW + 1}:`, style: "label" },
    { cell: `A${BELOW + 1}`, formula: `=RETORT.FORMULA.CHECK(B${LAST})`, style: "note" },
    ...atomsTable(BELOW + 3),
    { cell: `A${BELOW + 9}`, content: "Burning limonene, from orange peel", style: "label" },
    { cell: `B${BELOW + 9}`, formula: '=RETORT.BURN.EQUATION("C10H16")', style: "label" },
    { cell: `A${BELOW + 10}`, content: "Oxygen for 1 g of limonene (g)", style: "label" },
    { cell: `B${BELOW + 10}`, formula: '=RETORT.OXYGENDEMAND("C10H16")', style: "result", format: "0.000" },
  ],
  columnWidths: [35, 19, 13, 11, 12, 12, 12, 12, 10],
  entryRules: [
    {
      range: `B${FIRST}:B${LAST}`,
      allow: { kind: "anything" },
      promptTitle: "Chemical formula",
      prompt: "As in a textbook: CuSO4·5H2O. A full stop or * may stand for the dot.",
      refusal: "",
    },
  ],
  frozenRows: FIRST - 1,
  startAt: `B${LAST}`,
};
