import { OXYGEN_IN_AIR } from "../../chemistry/burning/airDemand";
import { atomicWeight } from "../../chemistry/atomicWeights";
import { burnedFormula, LARGEST_SUM, SMALLEST_SUM, type BurnedGram } from "../../chemistry/burning/burnedGram";
import { oxygenFactors } from "../../chemistry/burning/oxygenDemandUltimate";
import { ROUNDING_RESIDUE } from "../../chemistry/burning/roundingResidue";
import { numberText } from "../../inputs/numberText";
import { AIR_NITROGEN, NO_ASH_WEIGHED, openAnalysis, SOLIDS_OF_FORMULA } from "../../problems/functions/burningProblems";
import {
  analysisIncomplete,
  analysisOpen,
  ashBesideSolids,
  oneComposition,
  takesUpNothing,
  weighingsOutOfOrder,
} from "../../problems/sharing/plainCellProblems";
import { label, typedFormulaOf } from "../inCells/formulaInCells";
import type { RefusalInCells } from "../inCells/RefusalInCells";
import { isTypedNumber, put } from "../inCells/typedInCells";
import type { TableInCells } from "../inCells/Workings";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { LARGEST_CLOSED, SMALLEST_CLOSED } from "./compared";

type Texts = Readonly<Record<"vessel" | "dry" | "char" | "ash" | "formula" | "carbon" | "hydrogen" | "oxygen" | "nitrogen" | "sulfur", string>>;

const ELEMENTS = ["carbon", "hydrogen", "oxygen", "nitrogen", "sulfur"] as const;

/** 1 where an optional weighing or share is given: blank, spaces and 0 are not. */
const isGiven = (text: string): string => (text === "" ? "0" : isTypedNumber(text) ? "1" : `IF(ISNUMBER(${text}),${operand(text)}<>0,0)`);

/** The ash of a gram of dry sample, 0 where none was weighed. */
function ashFractionInCells({ vessel, dry, ash }: Texts): string {
  if (ash === "") return "0";
  const empty = numberInCells(vessel, 0);
  const share = `(${operand(ash)}-${empty})/(${operand(dry)}-${empty})`;
  return isTypedNumber(ash) ? share : `IF(${isGiven(ash)},${share},0)`;
}

/** What `compared` refuses beside the order of vessel, dry and char. */
export function compositionRefusals(texts: Texts): readonly RefusalInCells[] {
  const { vessel, dry, char, ash, formula } = texts;
  const empty = numberInCells(vessel, 0);
  const ashOrder = `IF(${isGiven(ash)},(${operand(ash)}>${operand(dry)})+(${operand(ash)}<${empty})+(${operand(ash)}>${operand(char)}),0)`;
  const order: RefusalInCells[] = ash === "" ? [] : [{ when: ashOrder, says: weighingsOutOfOrder(["vessel", "ash", "char"]) }];
  const ashFraction = ashFractionInCells(texts);
  const parsed = typedFormulaOf(formula);
  if (parsed !== undefined) {
    const given = ELEMENTS.map((element) => isGiven(texts[element])).filter((one) => one !== "0");
    const leavesSolids = burnedFormula(parsed, 0).solid > 0;
    return [
      ...order,
      { when: given.length === 0 ? "0" : given.join("+"), says: oneComposition },
      { when: leavesSolids && ash !== "" ? `${ashFraction}>0` : "0", says: ashBesideSolids },
    ];
  }
  const sum = sumInCells(texts, ashFraction);
  return [
    ...order,
    { when: `(${isGiven(texts.carbon)})*(${isGiven(texts.hydrogen)})=0`, says: analysisIncomplete },
    { when: outside(sum, SMALLEST_SUM, LARGEST_SUM), says: analysisOpen },
    { when: `${analysedInCells(texts, ashFraction).oxygenTaken}<0`, says: takesUpNothing },
  ];
}

const outside = (sum: string, least: number, most: number): string =>
  `(${sum}<${least}-${put(ROUNDING_RESIDUE)})+(${sum}>${most}+${put(ROUNDING_RESIDUE)})`;

const sumInCells = (texts: Texts, ashFraction: string): string =>
  `(${ELEMENTS.map((element) => numberInCells(texts[element], 0)).join("+")}+${ashFraction})`;

type BurnedTexts = Readonly<Record<keyof BurnedGram, string>>;

function analysedInCells(texts: Texts, ashFraction: string): BurnedTexts {
  const [carbon, hydrogen, oxygen, nitrogen, sulfur] = ELEMENTS.map((element) => numberInCells(texts[element], 0)) as [
    string,
    string,
    string,
    string,
    string,
  ];
  const factors = oxygenFactors();
  const oxide = (element: string, atoms: number, oxygens: number): string =>
    `(${atoms}*${atomicWeight(element)}+${oxygens}*${atomicWeight("O")})/(${atoms}*${atomicWeight(element)})`;
  return {
    oxygenTaken: `(${factors.carbon}*${carbon}+${factors.hydrogen}*${hydrogen}+${factors.sulfur}*${sulfur}-${oxygen})`,
    carbonDioxide: `${carbon}*${oxide("C", 1, 2)}`,
    water: `${hydrogen}*${oxide("H", 2, 1)}`,
    otherGases: `(${nitrogen}+${sulfur}*${oxide("S", 1, 2)})`,
    solid: ashFraction,
    notCovered: `(1-${sumInCells(texts, ashFraction)})`,
  };
}

function formulaInCells(base: BurnedGram, ashFraction: string): BurnedTexts {
  const share = (grams: number): string => (ashFraction === "0" ? numberText(grams) : `(1-${ashFraction})*${numberText(grams)}`);
  return {
    oxygenTaken: share(base.oxygenTaken),
    carbonDioxide: share(base.carbonDioxide),
    water: share(base.water),
    otherGases: share(base.otherGases),
    solid: `(${ashFraction}+${share(base.solid)})`,
    notCovered: "0",
  };
}

/** The table of BURN.COMPARE, refused throughout without a composition; undefined where a formula stands in a cell. @throws InputProblem for one that cannot be burned */
export function comparisonInCells(texts: Texts): TableInCells | undefined {
  const { vessel, dry: loaded, char: charred, formula } = texts;
  const parsed = typedFormulaOf(formula);
  if (parsed === undefined && formula !== "") return undefined;
  const empty = numberInCells(vessel, 0);
  const [dry, char] = [`(${operand(loaded)}-${empty})`, `(${operand(charred)}-${empty})`];
  const ashFraction = ashFractionInCells(texts);
  const base = parsed && burnedFormula(parsed, 0);
  const gram = base === undefined ? analysedInCells(texts, ashFraction) : formulaInCells(base, ashFraction);
  const both = (name: string, whenCharred: string, perGram: string): string[] => [
    label(name),
    whenCharred,
    `(${whenCharred})/${dry}`,
    `${dry}*(${perGram})`,
    perGram,
  ];
  const gas = (name: string, perGram: string): string[] => [label(name), '""', '""', `${dry}*(${perGram})`, perGram];
  const gone = `${gram.carbonDioxide}+${gram.water}+${gram.otherGases}`;
  const headings = [
    "Dry sample, two ways",
    "Charred without air [g]",
    "Charred without air [g per g dry]",
    "Burned in the open [g]",
    "Burned in the open [g per g dry]",
  ];
  return [
    headings.map(label),
    both("In: dry sample", dry, "1"),
    both("In: oxygen taken up", "0", gram.oxygenTaken),
    both("In, together", dry, `1+${gram.oxygenTaken}`),
    both("Stays: char, or ash", char, gram.solid),
    both("Leaves: vapours, or burned gases", `${dry}-${char}`, gone),
    gas("of these CO2", gram.carbonDioxide),
    gas("of these H2O", gram.water),
    gas("of these other gases and smoke", gram.otherGases),
    both("Not covered by the analysis", "0", gram.notCovered),
    both("Out, together", dry, `${gram.solid}+${gone}+${gram.notCovered}`),
    both("Air that brings the oxygen", "0", `${gram.oxygenTaken}/${OXYGEN_IN_AIR}`),
    [notesInCells(texts, ashFraction, base), '""', '""', '""', '""'],
  ];
}

// A spreadsheet writes a number into a text with as many figures as it likes.
const DECIMALS = 4;

// A number that stands nowhere else in the sentence, to find the place of the sum in it.
const MARK = 7;

function notesInCells(texts: Texts, ashFraction: string, base: BurnedGram | undefined): string {
  const { ash } = texts;
  const withoutAsh = label(`${AIR_NITROGEN} ${base !== undefined && base.solid > 0 ? SOLIDS_OF_FORMULA : NO_ASH_WEIGHED}`);
  const notes = ash === "" ? withoutAsh : isTypedNumber(ash) ? label(AIR_NITROGEN) : `IF(${isGiven(ash)},${label(AIR_NITROGEN)},${withoutAsh})`;
  if (base !== undefined) return notes;
  const sum = sumInCells(texts, ashFraction);
  const [before = "", after = ""] = ` ${openAnalysis(MARK, SMALLEST_CLOSED, LARGEST_CLOSED)}`.split(` ${MARK} `);
  return `${notes}&IF(${outside(sum, SMALLEST_CLOSED, LARGEST_CLOSED)},${label(`${before} `)}&ROUND(${sum},${DECIMALS})&${label(` ${after}`)},"")`;
}
