import { detailBox } from "../constantWeightArguments";
import { materialStands } from "../materialStands";
import { sampleCells } from "../sampleCells";
import { IN_ORDER, type CheckFormula } from "./Check";

/** Whether the vessel's material stands the hottest that oven, kiln and furnace are set to. */
export const materialCheck: CheckFormula = (rows, sample) => {
  const cells = sampleCells(rows, sample);
  const [material, stands] = [detailBox(rows, "material"), materialStands(rows)];
  const set = [detailBox(rows, "oven"), cells.heating("kilnSet"), cells.heating("furnaceSet")].filter((cell) => cell !== "").join(",");
  return (
    `IF(OR(COUNTA(${material})=0,COUNT(${set})=0),"",IF(ISERROR(${stands}),"this material is not in the list at the foot of the sheet",` +
    `IF(MAX(${set})>${stands},"set to "&MAX(${set})&" °C, above the "&${stands}&" °C that "&${material}&" stands: change vessel or programme",${IN_ORDER})))`
  );
};
