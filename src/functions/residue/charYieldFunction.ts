import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { nothingBurntAway, weighingsOutOfOrder } from "../../problems/sharing/plainCellProblems";
import { charYield } from "../../residue/charYield";
import { cellFunction } from "../cellFunction";
import { orderInCells, SLACK } from "../inCells/orderInCells";
import { isTypedNumber } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { CLOSED_HEATING } from "./cautions";

export const charYieldFunction = cellFunction({
  name: "CHARYIELD",
  summary: "Char per gram of dry sample [fraction]; with the ash weighed as well, ash-free char per gram of ash-free dry sample.",
  inputs: {
    vessel: vesselMass('Empty vessel [g], or "tared".'),
    dry: mass("Vessel with the dry sample [g]."),
    char: mass("Vessel with the char after cooling closed [g]."),
    ash: optional(mass("Vessel with the ash of that char [g]."), "the yield includes ash"),
  },
  result: { about: "Char yield", unit: "fraction" },
  compute: ({ vessel, dry, char, ash }) => charYield(vessel, dry, char, ash),
  working: ({ vessel, dry, char, ash }) => {
    const [base, called] = ash === undefined ? [vessel, ""] : [ash, ", ash-free"];
    return [
      `char${called} = ${inFigures(char)} - ${inFigures(base)} = ${inFigures(char - base)} g`,
      `dry sample${called} = ${inFigures(dry)} - ${inFigures(base)} = ${inFigures(dry - base)} g`,
      `char yield${called} = ${inFigures(char - base)} / ${inFigures(dry - base)} = ${inFigures(charYield(vessel, dry, char, ash))}`,
    ];
  },
  refusesInCells: ({ vessel, dry, char, ash }) => {
    const base = baseInCells(vessel, ash);
    const order = orderInCells({ vessel, dry, char });
    if (ash === "") return [order];
    const when = `(${base}<${numberInCells(vessel, 0)})+(${base}>${operand(char)})`;
    return [
      order,
      { when, says: weighingsOutOfOrder(["vessel", "ash", "char"]) },
      { when: `${operand(dry)}-${base}<=${SLACK}`, says: nothingBurntAway },
    ];
  },
  inCells: ({ vessel, dry, char, ash }) => {
    const base = baseInCells(vessel, ash);
    return `(${operand(char)}-${base})/(${operand(dry)}-${base})`;
  },
  examples: [
    { cell: "=RETORT.CHARYIELD(25, 35, 27.5)", gives: 0.25 },
    { cell: '=RETORT.CHARYIELD("tared", 10, 2.5, 0.1)', gives: 0.24242424242424243, about: "Ash-free: 2.4 g of 9.9 g." },
  ],
  source: "Definition: char over dry sample. Char takes up 6 to 8 % of water from room air (Lin et al.): weigh it as soon as it is cold.",
  caution: CLOSED_HEATING,
});

/** What is taken off both weighings: the ash where there is one, else the vessel. */
function baseInCells(vessel: string, ash: string): string {
  const empty = numberInCells(vessel, 0);
  if (ash === "") return empty;
  return isTypedNumber(ash) ? ash : `IF(ISNUMBER(${ash}),IF(${ash}>0,${ash},${empty}),${empty})`;
}
