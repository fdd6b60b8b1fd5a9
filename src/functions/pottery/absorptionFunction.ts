import { mass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { absorption, MOST_TAKEN_UP } from "../../pottery/absorption";
import { lighterSoaked, tooMuchWaterTaken, trayNotLess } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { KILN_PIECES } from "./cautions";

export const absorptionFunction = cellFunction({
  name: "ABSORPTION",
  summary: "Water that a fired piece takes up when boiled or soaked, as a share of its dry weight [fraction].",
  inputs: {
    dry: { ...mass("The fired piece, dried to constant weight [g]."), detail: "ASTM C373 dries at 150 °C." },
    saturated: {
      ...mass("The same after boiling and cooling in water, wiped [g]."),
      detail: "ASTM C373 boils for 5 h and soaks for 24 h more (from memory).",
    },
    tray: optional(mass("Tray or hanger that both weighings include [g]."), "the piece alone"),
  },
  result: { about: "Water absorption", unit: "fraction" },
  compute: ({ dry, saturated, tray }) => absorption(dry, saturated, tray),
  working: ({ dry, saturated, tray = 0 }) => [
    `water = ${inFigures(saturated)} - ${inFigures(dry)} = ${inFigures(saturated - dry)} g`,
    `dry piece = ${inFigures(dry)} - ${inFigures(tray)} = ${inFigures(dry - tray)} g`,
    `absorption = ${inFigures(saturated - dry)} / ${inFigures(dry - tray)} = ${inFigures(absorption(dry, saturated, tray))}`,
  ],
  refusesInCells: ({ dry, saturated, tray }) => {
    const [fired, soaked, under] = [operand(dry), operand(saturated), numberInCells(tray, 0)];
    return [
      { when: `${under}>=${fired}`, says: trayNotLess },
      { when: `${soaked}<${fired}`, says: lighterSoaked },
      { when: `(${soaked}-${fired})/(${fired}-${under})>${MOST_TAKEN_UP}`, says: tooMuchWaterTaken },
    ];
  },
  inCells: ({ dry, saturated, tray }) => `(${operand(saturated)}-${operand(dry)})/(${operand(dry)}-${numberInCells(tray, 0)})`,
  examples: [{ cell: "=RETORT.ABSORPTION(152.4, 158.5)", gives: 0.040026246719160066 }],
  source: "ASTM C373: (M - D) / D, M saturated and D dry. Soaked cold, the figure is lower and another.",
  caution: KILN_PIECES,
});
