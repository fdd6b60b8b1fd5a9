import { detailBox } from "../constantWeightArguments";
import { glossary } from "../glossary";
import { LIGHTER_PER_CELSIUS } from "../lighterPerCelsius";
import { sampleCells } from "../sampleCells";
import { IN_ORDER, type CheckFormula } from "./Check";

const MILLIGRAMS_PER_GRAM = 1000;

/** Whether each weigh-in was cold enough for this balance; the warmest one with the error of the published case, as a hint. */
export const warmthCheck: CheckFormula = (rows, sample) => {
  const cells = sampleCells(rows, sample);
  const { cold = "", warmer = "" } = rows.table.letters;
  const [flags, above] = [cells.stretch(cold), cells.stretch(warmer)];
  const { warm, chilled } = glossary.cold;
  const milligrams = `ROUND(MAX(${above})*${LIGHTER_PER_CELSIUS.grams * MILLIGRAMS_PER_GRAM}/${LIGHTER_PER_CELSIUS.per},1)`;
  const light =
    `"weigh-in "&MATCH(MAX(${above}),${above},0)&" was "&ROUND(MAX(${above}),0)&" °C above the room and reads light: ` +
    `this vessel by an unknown amount; the published case, a 17 g porcelain crucible, by up to "&${milligrams}&" mg"`;
  return (
    `IF(OR(COUNT(${above})=0,COUNT(${detailBox(rows, "readability")})=0),"",IF(COUNTIF(${flags},"${warm}")>0,${light},` +
    `IF(COUNTIF(${flags},"${chilled}")>0,"weighed colder than the room: it reads heavy, and damp settles on it",${IN_ORDER})))`
  );
};
