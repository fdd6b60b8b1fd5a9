import { readingUncertainty } from "../../confidence/readingUncertainty";
import { balanceDeviation, readability } from "../../inputs/kinds/weighings";
import { truth } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";

export const readingUFunction = cellFunction({
  name: "READING.U",
  summary: "Standard uncertainty of one weighing, from the balance's readability, repeatability and linearity [g].",
  inputs: {
    readability: readability("Smallest display step of the balance [g]."),
    repeatability: optional(
      balanceDeviation("Standard deviation of repeated weighings of one load, done as the work is [g]."),
      "rounding alone counts",
    ),
    linearity: optional(balanceDeviation("Largest deviation from linearity, the plus-or-minus figure of the balance [g]."), "none"),
    tared: optional(truth("TRUE where the balance was zeroed before the weighing: zero and load are both rounded."), "FALSE"),
  },
  result: { about: "Standard uncertainty of one weighing (k = 1)", unit: "g" },
  compute: readingUncertainty,
  working: (read) => {
    const { readability: step, repeatability = 0, linearity = 0, tared = false } = read;
    const [times, said] = tared ? ["2 x ", " for a tared mass: zero and load are both rounded"] : ["", " for one reading"];
    return [
      `u^2 = repeatability^2 + ${times}readability^2 / 12 + ${times}linearity^2 / 3${said}`,
      `u^2 = ${inFigures(repeatability)}^2 + ${times}${inFigures(step)}^2 / 12 + ${times}${inFigures(linearity)}^2 / 3 = ${inFigures(readingUncertainty(read) ** 2)} g^2`,
      `u = ${inFigures(readingUncertainty(read))} g (k = 1); k = 2, about 95 %: ${inFigures(2 * readingUncertainty(read))} g`,
    ];
  },
  inCells: ({ readability: step, repeatability, linearity, tared }) => {
    const readings = tared === "" ? "1" : `IF(${isTyped(tared) ? tared : `${operand(tared)}=TRUE`},2,1)`;
    return `SQRT(${numberInCells(repeatability, 0)}^2+${readings}*(${operand(step)}^2/12+${numberInCells(linearity, 0)}^2/3))`;
  },
  examples: [
    { cell: "=RETORT.READING.U(0.01)", gives: 0.002886751345948129, about: "Rounding alone: a bench balance that shows 0.01 g." },
    { cell: "=RETORT.READING.U(0.01, 0.01)", gives: 0.010408329997330663 },
    { cell: '=RETORT.READING.U(0.01, "", "", TRUE)', gives: 0.004082482904638631, about: "Zeroed and read: two roundings, 0.41 of a step." },
  ],
  source:
    "GUM (JCGM 100:2008) 4.3.7 for rectangular distributions; Eurachem/CITAC CG 4 example A2 counts linearity twice and prints 0.13 mg for 0.1225 mg, having rounded early; USP <41> for the 0.41 of a step. For a mean of n readings give the repeatability over sqrt(n); rounding is not averaged away.",
});

/** A cell may hold empty text, which IF takes for no condition. */
const isTyped = (text: string): boolean => ["TRUE", "FALSE"].includes(text.toUpperCase());
