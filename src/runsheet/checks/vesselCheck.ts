import { sampleCells } from "../sampleCells";
import { IN_ORDER, type CheckFormula } from "./Check";

// A sample below this share of its vessel, 1 in 100, is more often a slip than a sample; common practice, no source.
const VESSEL_PER_SAMPLE = 100;

/** Whether the vessel was weighed, and the sample stands above it. */
export const vesselCheck: CheckFormula = (rows, sample) => {
  const cells = sampleCells(rows, sample);
  const { vessel, moist } = cells;
  return (
    `IF(COUNT(${cells.stretch(rows.table.letters.loaded)})=0,"",IF(COUNT(${vessel})=0,"empty vessel not weighed",IF(COUNT(${moist})=0,"",` +
    `IF(${moist}<=${vessel},"moist weighing not above the empty vessel: typed without the vessel, or cells swapped",` +
    `IF((${moist}-${vessel})*${VESSEL_PER_SAMPLE}<${vessel},"moist weighing barely above the empty vessel: wrong vessel, or cells swapped",${IN_ORDER})))))`
  );
};
