import { choice } from "../../inputs/choice";
import { baseVolume, dilutionFactor, liquidDensity, molarity, titratedSample } from "../../inputs/kinds/titration";
import { optional } from "../../inputs/optional";
import { acidFromTitration, aceticMolarMass, MOST_IN_A_MILLILITRE, type SampleUnit, type Titration } from "../../liquids/acidFromTitration";
import { AS_ACETIC, PER_MILLILITRE } from "../../problems/functions/liquidProblems";
import { blankNotBelow, moreAcidThanWhole } from "../../problems/sharing/plainCellProblems";
import { plainNumber } from "../../problems/quoted";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";
import { TITRATED_LIQUIDS } from "./cautions";

const UNITS: readonly SampleUnit[] = ["g", "mL"];

export const acidFromTitrationFunction = cellFunction({
  name: "ACID.FROMTITRATION",
  summary: "Acids of wood vinegar or vinegar by titration, as acetic acid: g per g of sample, or g per mL for a sample in mL without a density.",
  inputs: {
    volume: baseVolume("Base used to the end point [mL]."),
    concentration: molarity("Base [mol/L], such as 0.1."),
    sample: { ...titratedSample("Sample taken, in the unit given next."), detail: "What was taken before any dilution." },
    unit: choice<SampleUnit>("Unit of the sample.", UNITS),
    density: {
      ...optional(liquidDensity("Density of the sample [g/mL]."), "a sample in mL is answered per mL"),
      detail: "Not needed for a sample in g.",
    },
    blank: optional(baseVolume("Base that the titration takes without a sample [mL]."), "none"),
    dilution: {
      ...optional(dilutionFactor("Made-up volume over titrated volume."), "1, the sample titrated whole"),
      detail: "10 where 10 mL of 100 mL were titrated.",
    },
  },
  result: { about: "Acids, as acetic", unit: "" },
  compute: (read) => acidFromTitration(given(read)).content,
  working: (read) => {
    const titration = given(read);
    const { volume, blank, concentration, dilution, sample, unit, density } = titration;
    const { grams, content, isPerMillilitre } = acidFromTitration(titration);
    const perGram = unit === "mL" && density !== undefined ? `(${inFigures(sample)} × ${inFigures(density)})` : inFigures(sample);
    return [
      `acid in the sample = (${inFigures(volume)} - ${inFigures(blank)}) × ${inFigures(concentration)} × ${plainNumber(aceticMolarMass())} / 1000 × ${inFigures(dilution)} = ${inFigures(grams)} g`,
      `acids, as acetic = ${inFigures(grams)} / ${perGram} = ${inFigures(content)} g per ${isPerMillilitre ? "mL" : "g"}`,
      ...(isPerMillilitre ? [PER_MILLILITRE] : []),
      AS_ACETIC,
    ];
  },
  refusesInCells: (texts) => {
    const { volume, unit, density, blank } = texts;
    const most = wordInCells(unit, [["mL", `IF(${isGivenInCells(density)},1,${MOST_IN_A_MILLILITRE})`]], "1");
    return [
      { when: `${numberInCells(blank, 0)}>=${operand(volume)}`, says: blankNotBelow },
      { when: `${contentInCells(texts)}>${most}`, says: moreAcidThanWhole },
    ];
  },
  inCells: (texts) => contentInCells(texts),
  examples: [
    { cell: '=RETORT.ACID.FROMTITRATION(27.8, 0.1, 2, "g")', gives: 0.08347228, about: "Wood vinegar with 8.3 % of acids." },
    {
      cell: '=RETORT.ACID.FROMTITRATION(16.8, 0.1, 2, "mL", 1.005, 0.1)',
      gives: 0.0498939502487562,
      about: "A sample in mL with its density: g per g.",
    },
    { cell: '=RETORT.ACID.FROMTITRATION(13.9, 0.1, 10, "mL", "", "", 10)', gives: 0.08347228, about: "10 mL of 100 mL titrated; g per mL." },
  ],
  source:
    "One mole of base for one of acid, M of acetic acid 60.052 g/mol; follows from the definition. Phenols are titrated in part and a dark colour hides the end point, pH 8.2: dilute, or use a meter (common practice, no source).",
  caution: TITRATED_LIQUIDS,
});

type Texts = Readonly<Record<"volume" | "concentration" | "sample" | "unit" | "density" | "blank" | "dilution", string>>;

/** Grams of acid per unit of the sample, in a cell formula. */
function contentInCells({ volume, concentration, sample, unit, density, blank, dilution }: Texts): string {
  const used = blank === "" ? operand(volume) : `(${operand(volume)}-${numberInCells(blank, 0)})`;
  const times = dilution === "" ? "" : `*${numberInCells(dilution, 1)}`;
  const grams = `${used}*${operand(concentration)}*${aceticMolarMass() / 1000}${times}/${operand(sample)}`;
  const perMillilitre = density === "" ? "1" : wordInCells(unit, [["mL", numberInCells(density, 1)]], "1");
  return perMillilitre === "1" ? grams : `${grams}/${perMillilitre}`;
}

type Read = Omit<Titration, "blank" | "dilution"> & Readonly<Record<"blank" | "dilution", number | undefined>>;

const given = ({ blank = 0, dilution = 1, ...rest }: Read): Titration => ({ ...rest, blank, dilution });
