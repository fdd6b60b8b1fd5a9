import { COVERAGE, LARGEST_SHARE } from "../../liquids/productLedger";
import {
  LEDGER_BY_DIFFERENCE,
  LEDGER_GAS_NOT_TOLD,
  LEDGER_WITHOUT_U,
  ledgerCloses,
  ledgerOpen,
  lessWaterThanFeed,
} from "../../problems/functions/liquidProblems";
import { balanceTooCoarseHere, charAboveTheDryFeed, productsAboveTheFeed } from "../../problems/sharing/plainCellProblems";
import { SIZE_FIGURES } from "../../problems/quoted";
import { label } from "../inCells/formulaInCells";
import { SLACK } from "../inCells/orderInCells";
import type { RefusalInCells } from "../inCells/RefusalInCells";
import { filledInCells, significantInCells, textInCells } from "../inCells/sentenceInCells";
import type { TableInCells } from "../inCells/Workings";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { HEADINGS, LABELS } from "./ledgerLabels";

type Texts = Readonly<Record<"feed" | "moisture" | "char" | "liquids" | "gas" | "u" | "liquidsWater", string>>;

/** As `productLedger` has it. */
function ledgerInCells({ feed, moisture, char, liquids, gas, u, liquidsWater }: Texts) {
  const [whole, solid, caught] = [operand(feed), operand(char), numberInCells(liquids, 0)];
  const water = `(${whole}*${operand(moisture)})`;
  const isMeasured = isGivenInCells(gas);
  const products = `(${solid}+${caught}${gas === "" ? "" : `+${numberInCells(gas, 0)}`})`;
  return {
    ...{ whole, solid, caught, water, isMeasured, products },
    dry: `(${whole}-${water})`,
    rest: `(${whole}-${products})`,
    isSure: isGivenInCells(u),
    u: numberInCells(u, 0),
    uncertainty: `(${numberInCells(u, 0)}*SQRT(2+(${caught}>0)+(${isMeasured})))`,
    isWaterKnown: isGivenInCells(liquidsWater),
    inLiquids: `(${caught}*${numberInCells(liquidsWater, 0)})`,
    made: `(${caught}-${water})`,
  };
}

/** What `productLedger` refuses. */
export function ledgerRefusals(texts: Texts): readonly RefusalInCells[] {
  const { whole, solid, products, dry, u, uncertainty } = ledgerInCells(texts);
  return [
    { when: `${u}>${LARGEST_SHARE}*${whole}`, says: balanceTooCoarseHere, noAnswer: true },
    { when: `${products}-${whole}>${COVERAGE}*${uncertainty}+${SLACK}`, says: productsAboveTheFeed },
    { when: `${solid}-${dry}>${COVERAGE}*${u}*SQRT(2)+${SLACK}`, says: charAboveTheDryFeed },
  ];
}

/** The table of PRODUCT.LEDGER. */
export function ledgerTable(texts: Texts): TableInCells {
  const ledger = ledgerInCells(texts);
  const { whole, solid, caught, water, dry, isMeasured, products, rest, isSure, uncertainty, isWaterKnown, inLiquids, made } = ledger;
  const row = (name: string, grams: string, isThere = "1"): string[] =>
    isThere === "0"
      ? [label(name), '""', '""']
      : [label(name), ...[grams, `${grams}/${dry}`].map((text) => (isThere === "1" ? text : `IF(${isThere},${text},"")`))];
  const gasLabel = choose(isMeasured, label(LABELS.measured), label(LABELS.byDifference));
  const gas = choose(isMeasured, numberInCells(texts.gas, 0), rest);
  return [
    HEADINGS.map(label),
    row(LABELS.feed, whole),
    row(LABELS.feedWater, water),
    row(LABELS.dryFeed, dry),
    row(LABELS.char, solid),
    row(LABELS.liquids, caught),
    row(LABELS.inLiquids, inLiquids, isWaterKnown),
    row(LABELS.formed, `(${inLiquids}-${water})`, isWaterKnown),
    row(LABELS.made, made),
    [gasLabel, gas, `${gas}/${dry}`],
    row(LABELS.products, choose(isMeasured, products, whole)),
    row(LABELS.unaccounted, choose(isMeasured, rest, "0")),
    row(LABELS.uncertainty, uncertainty, isSure),
    [label(LABELS.verdict), verdictInCells(ledger), '""'],
  ];
}

const choose = (isSo: string, then: string, otherwise: string): string =>
  isSo === "0" ? otherwise : isSo === "1" ? then : `IF(${isSo},${then},${otherwise})`;

// Prints as itself in three figures, and stands nowhere else in a sentence.
const MARK = 4.56;

const sized = (sentence: string, grams: string): string => filledInCells(sentence, [[String(MARK), significantInCells(grams, SIZE_FIGURES)]]);

function verdictInCells({ isMeasured, rest, isSure, uncertainty, isWaterKnown, inLiquids, water, made }: ReturnType<typeof ledgerInCells>): string {
  const formed = choose(isWaterKnown, `(${inLiquids}-${water})`, made);
  const isWithin = choose(isSure, `ABS(${rest})<=${COVERAGE}*${uncertainty}`, "FALSE");
  const byDifference = `IF(${isWithin},${textInCells(LEDGER_GAS_NOT_TOLD)},${textInCells(LEDGER_BY_DIFFERENCE)})`;
  const judged = `IF(${isWithin},${sized(ledgerCloses(MARK), rest)},${sized(ledgerOpen(MARK), rest)})`;
  const measured = choose(isSure, judged, textInCells(LEDGER_WITHOUT_U));
  return `${choose(isMeasured, measured, byDifference)}&IF(${formed}<0,${sized(lessWaterThanFeed(MARK), `(-${formed})`)},"")`;
}
