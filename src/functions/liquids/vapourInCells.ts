import { OXYGEN_IN_AIR } from "../../chemistry/burning/airDemand";
import { oxygenFactors } from "../../chemistry/burning/oxygenDemandUltimate";
import { ELEMENTS, type Elements, fitted, heatingFactor, LARGEST_SUM, SLACK } from "../../liquids/vapourComposition";
import { outsideFit, VAPOUR_HELD } from "../../problems/functions/liquidProblems";
import { charHoldsMoreThanFeed, notOneDrySample, yieldLeavesNothing } from "../../problems/sharing/plainCellProblems";
import { label } from "../inCells/formulaInCells";
import type { RefusalInCells } from "../inCells/RefusalInCells";
import { textInCells } from "../inCells/sentenceInCells";
import type { TableInCells } from "../inCells/Workings";
import { put } from "../inCells/typedInCells";
import { operand } from "../operand";
import { COMPOSITION_LABELS } from "./compositionLabels";

type Texts = Readonly<Record<"feedCarbon" | "feedHydrogen" | "feedOxygen" | "charCarbon" | "charHydrogen" | "charOxygen" | "yield", string>>;
type ElementTexts = Readonly<Record<keyof Elements, string>>;

const feedOf = (texts: Texts): ElementTexts => ({
  carbon: operand(texts.feedCarbon),
  hydrogen: operand(texts.feedHydrogen),
  oxygen: operand(texts.feedOxygen),
});
const charOf = (texts: Texts): ElementTexts => ({
  carbon: operand(texts.charCarbon),
  hydrogen: operand(texts.charHydrogen),
  oxygen: operand(texts.charOxygen),
});

const leftOf = (texts: Texts, element: keyof Elements): string => `${feedOf(texts)[element]}-${operand(texts.yield)}*${charOf(texts)[element]}`;

const sumOf = (texts: ElementTexts): string => ELEMENTS.map((element) => texts[element]).join("+");

/** What `vapourComposition` refuses. */
export const vapourRefusals = (texts: Texts): readonly RefusalInCells[] => [
  { when: `${operand(texts.yield)}>=1`, says: yieldLeavesNothing },
  { when: `(${sumOf(feedOf(texts))}>${LARGEST_SUM})+(${sumOf(charOf(texts))}>${LARGEST_SUM})`, says: notOneDrySample },
  { when: ELEMENTS.map((element) => `(${leftOf(texts, element)}<-${SLACK})`).join("+"), says: charHoldsMoreThanFeed },
];

/** The table of VAPOUR.COMPOSITION. */
export function vapourTable(texts: Texts): TableInCells {
  const [feed, char, share] = [feedOf(texts), charOf(texts), operand(texts.yield)];
  const vapourOf = (element: keyof Elements): string => `(MAX(0,${leftOf(texts, element)})/(1-${share}))`;
  const vapour: ElementTexts = { carbon: vapourOf("carbon"), hydrogen: vapourOf("hydrogen"), oxygen: vapourOf("oxygen") };
  const all = [
    { name: "feed", of: feed, amount: "1" },
    { name: "char", of: char, amount: share },
    { name: "vapour", of: vapour, amount: `(1-${share})` },
  ];
  const row = (name: string, write: (of: ElementTexts, amount: string) => string): string[] => [
    label(name),
    ...all.map(({ of, amount }) => write(of, amount)),
  ];
  const whole = heatInCells(feed);
  const labels = COMPOSITION_LABELS;
  return [
    labels.headings.map(label),
    ...ELEMENTS.map((element) => row(labels[element], (of) => of[element])),
    row(labels.rest, (of) => `1-${ELEMENTS.map((element) => of[element]).join("-")}`),
    row(labels.amount, (_, amount) => amount),
    row(labels.demand, oxygenInCells),
    row(labels.air, (of) => `MAX(0,${oxygenInCells(of)})/${OXYGEN_IN_AIR}`),
    row(labels.heat, heatInCells),
    row(labels.share, (of, amount) => `IF(${whole}>0,${amount}*(${heatInCells(of)})/(${whole}),"")`),
    [label(labels.note), `${textInCells(VAPOUR_HELD)}&${all.map(({ name, of }) => outsideInCells(name, of)).join("&")}`, '""', '""'],
  ];
}

function oxygenInCells({ carbon, hydrogen, oxygen }: ElementTexts): string {
  const factors = oxygenFactors();
  return `${factors.carbon}*${carbon}+${factors.hydrogen}*${hydrogen}-${oxygen}`;
}

const heatInCells = (of: ElementTexts): string => ELEMENTS.map((element) => `${put(heatingFactor(element))}*${of[element]}`).join("+");

/** What is said of the elements outside the correlation, "" where there is none. */
function outsideInCells(name: string, of: ElementTexts): string {
  const isOutside = (element: keyof Elements): string => {
    const [least, most] = fitted(element);
    return `(${of[element]}<${least})+(${of[element]}>${most})`;
  };
  const listed = ELEMENTS.map((element) => `IF(${isOutside(element)},", ${element}","")`).join("&");
  const [before = "", after = ""] = `; ${outsideFit(name, ["\u0001"])}`.split("\u0001");
  return `IF(${ELEMENTS.map(isOutside).join("+")}=0,"",${label(before)}&MID(${listed},3,99)&${label(after)})`;
}
