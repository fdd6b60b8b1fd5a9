import { cell, type Cell } from "../../src/runsheet/expressions/Expression";
import type { PlainRun } from "./plainRun";

/** Cells of a run sheet and of its first sample, by name. Throws where the sheet has no such cell. */
export function namedCells({ sheet, first }: PlainRun) {
  const { details, columns } = sheet;
  const there = <T>(part: T | undefined): T => {
    if (part === undefined) throw new Error("this sheet has no such cell");
    return part;
  };
  const inTable = (number: number, column: number | undefined): Cell => cell(first.rows.first + number - 1, there(column));
  const { charring, ashing, emptyVessel, shares } = first;
  return {
    readability: () => details.readability,
    repeatability: () => details.repeatability,
    wanted: () => details.wanted,
    limit: () => details.limit,
    material: () => details.material,
    oven: () => details.oven,
    u: () => sheet.weighingUncertainty,
    vessel: () => emptyVessel.box,
    moist: () => first.moist,
    dry: () => first.dry,
    char: () => there(charring).weighing.box,
    ash: () => there(ashing).weighing.box,
    kilnSet: () => there(charring).kilnSet,
    furnaceSet: () => there(ashing).furnaceSet,
    moistureWet: () => shares.moistureWet,
    volatile: () => there(charring).shares.volatile,
    charYield: () => there(charring).shares.charYield,
    ashShare: () => there(ashing).shares.ash,
    formula: () => there(sheet.composition).formula,
    carbon: () => there(sheet.composition).carbon,
    hydrogen: () => there(sheet.composition).hydrogen,
    oxygen: () => there(sheet.composition).oxygen,
    nitrogen: () => there(sheet.composition).nitrogen,
    sulfur: () => there(sheet.composition).sulfur,
    massIn: () => there(charring).comparison.massIn,
    massOut: () => there(charring).comparison.massOut,
    notCovered: () => there(charring).comparison.notCovered,
    dryMass: () => there(charring).comparison.dry,
    vesselZeroBefore: () => there(emptyVessel.zeros).before,
    vesselZeroAfter: () => there(emptyVessel.zeros).after,
    charZeroBefore: () => there(charring?.weighing.zeros).before,
    charZeroAfter: () => there(charring?.weighing.zeros).after,
    ashZeroBefore: () => there(ashing?.weighing.zeros).before,
    ashZeroAfter: () => there(ashing?.weighing.zeros).after,
    zeroBefore1: () => inTable(1, columns.zeros?.before),
    zeroAfter1: () => inTable(1, columns.zeros?.after),
    zeroAfter2: () => inTable(2, columns.zeros?.after),
    room1: () => inTable(1, columns.temperatures?.room),
    warmth1: () => inTable(1, columns.temperatures?.warmth),
    room2: () => inTable(2, columns.temperatures?.room),
    warmth2: () => inTable(2, columns.temperatures?.warmth),
  };
}

export type NamedCell = keyof ReturnType<typeof namedCells>;
