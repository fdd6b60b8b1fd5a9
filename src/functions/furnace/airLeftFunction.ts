import { airLeft, OXYGEN_BY_VOLUME } from "../../furnace/airLeft";
import { vesselVolumes } from "../../inputs/kinds/gases";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { VENTED_VESSEL } from "./cautions";

export const airLeftFunction = cellFunction({
  name: "AIRLEFT",
  summary:
    "Share of its first air that a well-mixed vented vessel still holds after so many of its own volumes of gas have flowed through [fraction].",
  inputs: {
    volumes: {
      ...vesselVolumes("Gas over vessel: GASVOLUME divided by the vessel's volume."),
      detail: "Both at the temperature of the vessel, or both cold.",
    },
  },
  result: { about: "Air left", unit: "fraction" },
  compute: ({ volumes }) => airLeft(volumes),
  working: ({ volumes }) => {
    const left = airLeft(volumes);
    return [
      `air left = e^-${inFigures(volumes)} = ${inFigures(left)}`,
      `oxygen left = ${OXYGEN_BY_VOLUME} x ${inFigures(left)} = ${inFigures(OXYGEN_BY_VOLUME * left)} by volume`,
      "from 20.95 to 1 % of oxygen takes 3.04 volumes; in a mixed vessel only, and not with a lid that leaks in",
    ];
  },
  inCells: ({ volumes }) => `EXP(-${operand(volumes)})`,
  examples: [{ cell: "=RETORT.AIRLEFT(5)", gives: 0.006737946999085467, about: "Five volumes leave 0.7 %." }],
  source: "Dilution of a perfectly mixed vessel, e^-N; oxygen 20.95 % of dry air by volume. A plug of gas would sweep faster, a dead corner slower.",
  caution: VENTED_VESSEL,
});
