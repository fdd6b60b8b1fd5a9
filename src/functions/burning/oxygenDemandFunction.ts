import { numberText } from "../../inputs/numberText";
import { burnableAtoms } from "../../chemistry/burning/burnableAtoms";
import {
  COMBUSTION,
  oxygenDemand,
  oxygenMolarMass,
  oxygenPerMole,
  oxygenTakenBy,
  type EndsAs,
  type NitrogenTo,
  type SulfurTo,
} from "../../chemistry/burning/oxygenDemand";
import { freeHalogen, HALOGENS } from "../../chemistry/burning/halogenProducts";
import { ROUNDING_RESIDUE } from "../../chemistry/burning/roundingResidue";
import type { Formula } from "../../chemistry/Formula";
import { molarMass } from "../../chemistry/molarMass";
import { parseFormula } from "../../chemistry/parseFormula";
import { choice } from "../../inputs/choice";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { SURPLUS, WATER_AND_FIRE_NITROGEN, WATER_AND_FIRE_SULFUR } from "../../problems/functions/burningProblems";
import { cellFunction } from "../cellFunction";
import { molarMassInCells, oxygenInCells, typedFormulaOf } from "../inCells/formulaInCells";
import { isTypedText } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { wordInCells } from "../wordInCells";
import { OXIDISERS } from "./cautions";

export const oxygenDemandFunction = cellFunction({
  name: "OXYGENDEMAND",
  summary: "Oxygen that complete burning takes up, O2 per gram of the compound [g/g]. Negative where the formula carries more oxygen than it needs.",
  inputs: {
    formula: formulaText('Chemical formula, such as "C6H10O5".'),
    nitrogenTo: {
      ...optional(choice<NitrogenTo>('What nitrogen ends as: "N2" (burning), "NH3" or "HNO3" (water trade).', ["N2", "NH3", "HNO3"]), "N2"),
      detail: "It settles nitrogen alone: sulfur still ends as in burning until sulfurTo is given.",
    },
    sulfurTo: {
      ...optional(choice<SulfurTo>('What sulfur ends as: "SO2" (burning) or "H2SO4" (water trade).', ["SO2", "H2SO4"]), "SO2"),
      detail: "It settles sulfur alone: nitrogen still ends as in burning until nitrogenTo is given.",
    },
  },
  result: { about: "Oxygen demand", unit: "g/g" },
  compute: ({ formula, nitrogenTo, sulfurTo }) => oxygenDemand(parseFormula(formula), endsAs(nitrogenTo, sulfurTo)),
  working: ({ formula, nitrogenTo, sulfurTo }) => steps(parseFormula(formula), endsAs(nitrogenTo, sulfurTo)),
  inManyCells: ({ formula: typed, nitrogenTo, sulfurTo }) => {
    const formula = typedFormulaOf(typed);
    return formula && demandInCells(formula, nitrogenTo, sulfurTo);
  },
  examples: [
    { cell: '=RETORT.OXYGENDEMAND("C6H10O5")', gives: 1.1840805225081872, about: "Cellulose: 1 g takes up 1.18 g of oxygen." },
    {
      cell: '=RETORT.OXYGENDEMAND("C2H5NO2", "HNO3")',
      gives: 1.4919072295416098,
      about: "Glycine, with its nitrogen oxidised to nitrate as in water.",
    },
  ],
  source:
    "Stoichiometry of complete burning: CO2, H2O, N2, SO2, HX (X2 where hydrogen and alkali metal run out), P4O10, oxides of Li Na K Mg Ca Ba Zn Cu Al Fe(III) Si; " +
    "alkali halides stay. NH3, HNO3 and H2SO4 as the theoretical oxygen demand of OECD Test Guideline 301, annex (from memory); there halogens end as HX throughout, with hydrogen from the water. Atomic weights CIAAW 2021.",
  caution: OXIDISERS,
});

const endsAs = (nitrogenTo: NitrogenTo = COMBUSTION.nitrogenTo, sulfurTo: SulfurTo = COMBUSTION.sulfurTo): EndsAs => ({
  nitrogenTo,
  sulfurTo,
});

/** Says so where one of nitrogen and sulfur ends as in the water trade and the other as in burning. */
function mixedTrades({ nitrogenTo, sulfurTo }: EndsAs): readonly string[] {
  const [burnsNitrogen, burnsSulfur] = [nitrogenTo === COMBUSTION.nitrogenTo, sulfurTo === COMBUSTION.sulfurTo];
  if (burnsNitrogen === burnsSulfur) return [];
  return [burnsSulfur ? WATER_AND_FIRE_SULFUR : WATER_AND_FIRE_NITROGEN];
}

function steps(formula: Formula, ends: EndsAs): readonly string[] {
  const atoms = burnableAtoms(formula);
  const perMole = oxygenPerMole(atoms, ends);
  const taken = [...atoms].map(([element, count]) => (count * oxygenTakenBy(element, ends)) / 2);
  const bound = taken.reduce((sum, moles) => sum + moles, 0);
  const demand = oxygenDemand(formula, ends);
  return [
    ...formula.notes,
    ...(atoms.has("N") ? [`nitrogen ends as ${ends.nitrogenTo}`] : []),
    ...(atoms.has("S") ? [`sulfur ends as ${ends.sulfurTo}`] : []),
    ...(atoms.has("N") && atoms.has("S") ? mixedTrades(ends) : []),
    `O2 per mol = ${[...atoms].map(([element, count]) => `${element} ${inFigures(count)} × ${oxygenTakenBy(element, ends) / 2}`).join(" + ")} = ${inFigures(bound)} mol`,
    ...(Math.abs(perMole - bound) > ROUNDING_RESIDUE
      ? [`with halogen that leaves as X2 = ${inFigures(bound)} + ${inFigures(perMole - bound)} = ${inFigures(perMole)} mol`]
      : []),
    `oxygen demand = ${inFigures(perMole)} × ${inFigures(oxygenMolarMass())} / ${inFigures(molarMass(formula))} = ${inFigures(demand)} g O2 per g`,
    ...(demand < 0 ? [SURPLUS] : []),
  ];
}

/** Half the oxygen atoms that each element takes up, times the molar mass of O2, over that of the fuel, all written out. */
function demandInCells(formula: Formula, nitrogenTo: string, sulfurTo: string): string | undefined {
  const atoms = burnableAtoms(formula);
  const isAsked = [nitrogenTo, sulfurTo].some((text) => text !== "" && !isTypedText(text));
  // Free halogens take part in burning alone, so that a word in a cell would change the sum itself.
  if (isAsked && [...atoms.keys()].some((element) => HALOGENS.includes(element))) return undefined;
  const takes = (element: string, ends: Partial<EndsAs> = {}): string => numberText(oxygenTakenBy(element, { ...COMBUSTION, ...ends }));
  const taken = (element: string): string => {
    if (element === "N")
      return wordInCells(
        nitrogenTo,
        (["NH3", "HNO3"] as const).map((ends) => [ends, takes("N", { nitrogenTo: ends })]),
        takes("N"),
      );
    return element === "S" ? wordInCells(sulfurTo, [["H2SO4", takes("S", { sulfurTo: "H2SO4" })]], takes("S")) : takes(element);
  };
  const isInWater = [nitrogenTo, sulfurTo].some(
    (text) =>
      wordInCells(
        text,
        [
          ["NH3", "1"],
          ["HNO3", "1"],
          ["H2SO4", "1"],
        ],
        "0",
      ) !== "0",
  );
  const free = isAsked || isInWater ? 0 : freeHalogen(atoms);
  const terms = [...atoms].map(([element, count]) => `${numberText(count)}*(${taken(element)})`);
  return `(${[...terms, ...(free === 0 ? [] : [`${numberText(free)}/2`])].join("+")})/2*${oxygenInCells()}/${molarMassInCells(formula.atoms)}`;
}
