import { sampleColumnCell } from "../bySample";
import { analysedPercent, LEAST_ANALYSED_PERCENT } from "../analysedPercent";
import { COLUMNS } from "../columns";
import { detailBox } from "../constantWeightArguments";
import { COMPOSITION } from "../quantities";
import { sampleCells } from "../sampleCells";
import { IN_ORDER, type CheckFormula } from "./Check";

// Ultimate analyses seldom add up closer than this, %: even careful ones of reference pine miss by 3 to 5 % (NIST, MaCFP).
const UNEXPLAINED_PERCENT = 3;

/** Whether as much comes out of the comparison with open burning as goes in, and the analysis explains the sample. */
export const closureCheck: CheckFormula = (rows, sample) => {
  if (rows.burning === undefined) return '""';
  const { comparison, composition } = rows.burning;
  const [massIn, massOut, notCovered, dry] = (["massIn", "massOut", "notCovered", "dry"] as const).map((quantity) =>
    sampleColumnCell(comparison[quantity], sample),
  ) as [string, string, string, string];
  const { vessel, dry: dryWeighing, heating } = sampleCells(rows, sample);
  const [formula, carbon, hydrogen] = COMPOSITION.map((part) => `$${COLUMNS.value}$${composition[part]}`) as [string, string, string];
  const sum = analysedPercent(rows, sample);
  const isPartial = `AND(COUNTA(${formula})=0,COUNT(${carbon},${hydrogen})=2,${sum}<${LEAST_ANALYSED_PERCENT})`;
  const step = detailBox(rows, "readability");
  const percent = `ROUND(100*${notCovered}/${dry},0)`;
  return (
    `IF(COUNT(${vessel},${dryWeighing},${heating("char")})<3,"",IF(${isPartial},"fractions and ash add up to "&${sum}&" % so far: the comparison waits for ${LEAST_ANALYSED_PERCENT} %",` +
    `IF(ISERROR(${massIn}),"see the comparison with open burning",IF(COUNT(${massIn},${massOut},${notCovered},${dry},${step})<5,"",` +
    `IF(ABS(${massIn}-${massOut})>${step},"what goes in and what comes out differ by more than a display step",` +
    `IF(ABS(${notCovered})*100>${UNEXPLAINED_PERCENT}*${dry},"analysis and ash leave "&${percent}&" % of the dry sample unexplained",${IN_ORDER}))))))`
  );
};
