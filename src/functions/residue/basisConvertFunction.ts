import { choice } from "../../inputs/choice";
import { ashShare, fraction, NO_ASH, presentMoisture } from "../../inputs/kinds/shares";
import { optional } from "../../inputs/optional";
import { BASES, BASIS_QUANTITIES, convertBasis, dryGrams, moistureOn, waterShare } from "../../residue/convertBasis";
import { basisIncomplete, lessThanItsWater, noConversion, wholeOrMoreThere } from "../../problems/sharing/plainCellProblems";
import { shareSlack } from "../../weighing/roundingSlack";
import { cellFunction } from "../cellFunction";
import type { RefusalInCells } from "../inCells/RefusalInCells";
import { isTypedNumber, isTypedText, put } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { type WordCase, wordInCells } from "../wordInCells";
import { neededInCells } from "./neededInCells";

export const basisConvertFunction = cellFunction({
  name: "BASIS.CONVERT",
  summary: "A share carried from one basis to another: as received, as analysed, dry or ash-free (dry and ash-free) [fraction].",
  inputs: {
    value: fraction("Share on the basis it is on [fraction]."),
    from: choice("Basis the share is on, one of four.", BASES),
    to: choice("Basis wanted, one of four.", BASES),
    moistureReceived: {
      ...optional(presentMoisture("Moisture as received, wet basis [fraction]; needed for that basis."), "not given"),
      detail: "A sample without moisture is on the dry basis.",
    },
    moistureAnalysis: optional(presentMoisture("Moisture of the sample as analysed, wet basis [fraction]; needed for that basis."), "not given"),
    ash: {
      ...optional(ashShare('Ash on the dry basis [fraction], or "none"; needed for the ash-free basis.'), "not given"),
      detail: "Ash as analysed or as received: carry it to dry first.",
    },
    quantity: {
      ...optional(choice("What the share is of, where that matters.", BASIS_QUANTITIES), "other"),
      detail:
        "Hydrogen and oxygen: the share on a moist basis includes that of the moisture, as an analyser reads it; leave the word out if it does not. Moisture is refused, and ash on the ash-free basis.",
    },
  },
  result: { about: "The share on the basis wanted", unit: "fraction" },
  compute: ({ value, from, to, quantity, ...composition }) => convertBasis(value, from, to, composition, quantity),
  working: ({ value, from, to, quantity = "other", ...composition }) => {
    const answer = inFigures(convertBasis(value, from, to, composition, quantity));
    if (from === to) return [`${to} = ${inFigures(value)}, as given`];
    const inWater = waterShare(quantity);
    const [wetFrom, wetTo] = [inWater * moistureOn(from, composition), inWater * moistureOn(to, composition)];
    const given = wetFrom === 0 ? inFigures(value) : `(${inFigures(value)} - ${inFigures(wetFrom)})`;
    const added = wetTo === 0 ? "" : ` + ${inFigures(wetTo)}`;
    return [
      `dry sample in 1 g ${from} = ${inFigures(dryGrams(from, composition))} g; to 1 g ${to} belong ${inFigures(dryGrams(to, composition))} g`,
      ...(inWater === 0
        ? []
        : [`${quantity} in water = ${inFigures(inWater)} per gram; in the moisture ${inFigures(wetFrom)}, then ${inFigures(wetTo)}`]),
      `${to} = ${given} / ${inFigures(dryGrams(from, composition))} x ${inFigures(dryGrams(to, composition))}${added} = ${answer}`,
    ];
  },
  refusesInCells: basisRefusals,
  inCells: basisInCells,
  examples: [
    { cell: '=RETORT.BASIS.CONVERT(0.45, "as received", "dry", 0.1)', gives: 0.5 },
    {
      cell: '=RETORT.BASIS.CONVERT(0.12, "as analysed", "as received", 0.1, 0.02)',
      gives: 0.11020408163265305,
      about: "12.0 % of ash at 2.0 % of moisture is 11.0 % at 10 %.",
    },
    {
      cell: '=RETORT.BASIS.CONVERT(0.06, "as analysed", "dry", "", 0.08, "", "hydrogen")',
      gives: 0.05548637005394901,
      about: "Of the 6.0 % of hydrogen 0.9 % was in the moisture.",
    },
    { cell: '=RETORT.BASIS.CONVERT(0.76, "dry", "ash-free", "", "", 0.05)', gives: 0.8 },
  ],
  source: "ISO 16993 (from memory) and ISO 1170, table 1; hydrogen and oxygen of the moisture as in ASTM D3180. Heating values do not convert here.",
});

interface BasisTexts {
  readonly value: string;
  readonly from: string;
  readonly to: string;
  readonly moistureReceived: string;
  readonly moistureAnalysis: string;
  readonly ash: string;
  readonly quantity: string;
}

/** The conversion with built-in functions: through the dry sample, the water's own hydrogen or oxygen taken out and put back. */
function basisInCells(texts: BasisTexts): string {
  const { value, from, to } = texts;
  if (isTypedText(from) && isTypedText(to)) return isWord(to, from.slice(1, -1).trim()) === "1" ? value : carriedInCells(texts);
  return `IF(TRIM(${from})=TRIM(${to}),${value},${carriedInCells(texts)})`;
}

function carriedInCells({ value, from, to, quantity, ...composition }: BasisTexts): string {
  const [dryFrom, dryTo] = [dryGramsInCells(from, composition), dryGramsInCells(to, composition)];
  const inWater = wordInCells(quantity, [waterCase("hydrogen"), waterCase("oxygen")], "0");
  if (inWater === "0") return `${operand(value)}/${operand(dryFrom)}*${operand(dryTo)}`;
  const moist = (basis: string): string => `${operand(inWater)}*${operand(moistureInCells(basis, composition))}`;
  return `(${operand(value)}-${moist(from)})/${operand(dryFrom)}*${operand(dryTo)}+${moist(to)}`;
}

/** 1 where an argument is this word, else 0. */
const isWord = (text: string, word: string): string => wordInCells(text, [[word, "1"]], "0");

/** What `residue/convertBasis` refuses, in its order. */
function basisRefusals(texts: BasisTexts): readonly RefusalInCells[] {
  const { value, from, to, quantity, moistureReceived, moistureAnalysis, ash } = texts;
  const isSame = isTypedText(from) && isTypedText(to) ? isWord(to, from.slice(1, -1).trim()) : `(TRIM(${from})=TRIM(${to}))`;
  const unlessSame = (when: string): string => (isSame === "0" ? when : `IF(${isSame},0,${when})`);
  const missing = (basis: string): string =>
    wordInCells(
      basis,
      [
        ["as received", isMissing(moistureReceived)],
        ["as analysed", isMissing(moistureAnalysis)],
        ["ash-free", isMissing(ash, NO_ASH)],
      ],
      "0",
    );
  const inWater = wordInCells(quantity, [waterCase("hydrogen"), waterCase("oxygen")], "0");
  const ofMoisture = `${operand(inWater)}*${operand(moistureInCells(from, texts))}`;
  const noBasis: readonly WordCase[] = [
    ["ash", `${isWord(from, "ash-free")}+${isWord(to, "ash-free")}`],
    ["moisture", `1-${isSame}`],
  ];
  return [
    { when: wordInCells(quantity, noBasis, "0"), says: noConversion },
    { when: unlessSame(`${missing(from)}+${missing(to)}`), says: basisIncomplete },
    { when: inWater === "0" ? "0" : unlessSame(`${operand(value)}<${ofMoisture}-${put(shareSlack)}`), says: lessThanItsWater },
    { when: `${basisInCells(texts)}>=1-${put(shareSlack)}`, says: wholeOrMoreThere },
  ];
}

function isMissing(text: string, word = ""): string {
  if (text === "") return "1";
  if (isTypedText(text) || isTypedNumber(text)) return "0";
  return `IF(ISNUMBER(${text}),${text}=0,${word === "" ? "1" : `TRIM(${text})<>"${word}"`})`;
}

type CompositionTexts = Pick<BasisTexts, "moistureReceived" | "moistureAnalysis" | "ash">;

const waterCase = (element: string): WordCase => [element, String(waterShare(element))];

const moistureInCells = (basis: string, { moistureReceived, moistureAnalysis }: CompositionTexts): string =>
  wordInCells(
    basis,
    [
      ["as received", neededInCells(moistureReceived)],
      ["as analysed", neededInCells(moistureAnalysis)],
    ],
    "0",
  );

function dryGramsInCells(basis: string, composition: CompositionTexts): string {
  const moisture = moistureInCells(basis, composition);
  const moist = moisture === "0" ? "1" : `1-${moisture}`;
  return wordInCells(basis, [["ash-free", `1/(1-${neededInCells(composition.ash, NO_ASH)})`]], moist);
}
