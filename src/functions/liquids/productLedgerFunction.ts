import { presentMassFraction, wetMoisture } from "../../inputs/kinds/shares";
import { standardUncertainty } from "../../inputs/kinds/statistics";
import { mass } from "../../inputs/kinds/weighings";
import { NOTHING_CAUGHT, productMass } from "../../inputs/kinds/products";
import { optional } from "../../inputs/optional";
import { COVERAGE, productLedger, type LedgerEntries, type ProductLedger } from "../../liquids/productLedger";
import {
  LEDGER_BY_DIFFERENCE,
  LEDGER_GAS_NOT_TOLD,
  LEDGER_WITHOUT_U,
  ledgerCloses,
  ledgerOpen,
  lessWaterThanFeed,
} from "../../problems/functions/liquidProblems";
import { tableFunction, type Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { CAUGHT_VAPOURS } from "./cautions";
import { ledgerRefusals, ledgerTable } from "./ledgerInCells";
import { HEADINGS, LABELS } from "./ledgerLabels";

export const productLedgerFunction = tableFunction({
  name: "PRODUCT.LEDGER",
  summary: "Where a feed went, as a table: char, liquids, gas and water formed, in grams and per gram of dry feed, with what is unaccounted.",
  inputs: {
    feed: mass("Feed as weighed in, without its vessel [g]."),
    moisture: wetMoisture("Water in the feed as weighed, wet basis [fraction]; of a dried one 0."),
    char: mass("Char, cooled closed, without its vessel [g]."),
    liquids: {
      ...productMass(`All liquids caught [g], or "${NOTHING_CAUGHT}".`),
      detail: "Receivers, and what trap, tube and lid gained. The water of the feed is among them.",
    },
    gas: optional(mass("Gas measured [g]."), "gas is the difference and holds every leak"),
    u: {
      ...optional(standardUncertainty("Standard uncertainty of each mass [g]."), "no verdict"),
      detail: "As READING.U gives it, with its tared TRUE.",
    },
    liquidsWater: optional(presentMassFraction("Water in the liquids [fraction]."), "the water formed stays open"),
  },
  result: { about: "Ledger of the products", unit: "" },
  computeTable: (read) => table(read, productLedger(read)),
  working: (read) => steps(read, productLedger(read)),
  refusesInCells: ledgerRefusals,
  inManyCells: ledgerTable,
  examples: [
    {
      cell: '=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75, "", 0.05)',
      gives: [
        ["Ledger", "Mass [g]", "g per g dry feed"],
        ["Feed as weighed", 200, 1.1428571428571428],
        ["of it water", 25, 0.14285714285714285],
        ["Dry feed", 175, 1],
        ["Char", 50, 0.2857142857142857],
        ["Liquids caught", 75, 0.42857142857142855],
        ["of them water", "", ""],
        ["Water formed", "", ""],
        ["Liquids less feed water", 50, 0.2857142857142857],
        ["Gas, by difference: holds every leak", 75, 0.42857142857142855],
        ["Products together", 200, 1.1428571428571428],
        ["Unaccounted", 0, 0],
        ["its standard uncertainty", 0.08660254037844388, 0.0004948716593053936],
        [
          "Verdict",
          "gas by difference: the sum is the feed by construction and proves nothing; the gas holds every leak, every film left in the tube and every error",
          "",
        ],
      ],
      about: "Apple prunings with an eighth of water: 50 g of char, 75 g in the receivers.",
    },
    {
      cell: "=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75, 70, 0.05, 0.6)",
      gives: [
        ["Ledger", "Mass [g]", "g per g dry feed"],
        ["Feed as weighed", 200, 1.1428571428571428],
        ["of it water", 25, 0.14285714285714285],
        ["Dry feed", 175, 1],
        ["Char", 50, 0.2857142857142857],
        ["Liquids caught", 75, 0.42857142857142855],
        ["of them water", 45, 0.2571428571428571],
        ["Water formed", 20, 0.11428571428571428],
        ["Liquids less feed water", 50, 0.2857142857142857],
        ["Gas, measured", 70, 0.4],
        ["Products together", 195, 1.1142857142857143],
        ["Unaccounted", 5, 0.02857142857142857],
        ["its standard uncertainty", 0.1, 0.0005714285714285715],
        ["Verdict", "open: 5 g went unweighed, more than 2 u; look for leaks, films in tube and lid, and gas not measured", ""],
      ],
      about: "With the gas measured, the ledger can be seen not to close.",
    },
  ],
  source: "Conservation of mass; yields on dry feed. Uncertainty: GUM (JCGM 100:2008) equation 10, one u for each mass in the sum.",
  caution: CAUGHT_VAPOURS,
});

function table(read: LedgerEntries, ledger: ProductLedger): readonly (readonly Shown[])[] {
  const row = (label: string, grams: number | undefined): readonly Shown[] =>
    grams === undefined ? [label, "", ""] : [label, grams, grams / ledger.dryFeed];
  return [
    HEADINGS,
    row(LABELS.feed, read.feed),
    row(LABELS.feedWater, ledger.feedWater),
    row(LABELS.dryFeed, ledger.dryFeed),
    row(LABELS.char, read.char),
    row(LABELS.liquids, read.liquids),
    row(LABELS.inLiquids, ledger.waterInLiquids),
    row(LABELS.formed, ledger.waterFormed),
    row(LABELS.made, ledger.madeLiquids),
    row(ledger.isGasMeasured ? LABELS.measured : LABELS.byDifference, ledger.gas),
    row(LABELS.products, ledger.products),
    row(LABELS.unaccounted, ledger.unaccounted),
    row(LABELS.uncertainty, ledger.uncertainty),
    [LABELS.verdict, verdict(ledger), ""],
  ];
}

function verdict({ isGasMeasured, gas, unaccounted, uncertainty, waterFormed, madeLiquids }: ProductLedger): string {
  const made = waterFormed ?? madeLiquids;
  const water = made < 0 ? lessWaterThanFeed(-made) : "";
  const isWithin = (grams: number): boolean => uncertainty !== undefined && Math.abs(grams) <= COVERAGE * uncertainty;
  if (!isGasMeasured) return `${isWithin(gas) ? LEDGER_GAS_NOT_TOLD : LEDGER_BY_DIFFERENCE}${water}`;
  if (uncertainty === undefined) return `${LEDGER_WITHOUT_U}${water}`;
  return `${isWithin(unaccounted) ? ledgerCloses(unaccounted) : ledgerOpen(unaccounted)}${water}`;
}

function steps({ feed, moisture, char, liquids, u, liquidsWater }: LedgerEntries, ledger: ProductLedger): readonly string[] {
  const { feedWater, dryFeed, isGasMeasured, gas, products, unaccounted, weighed, uncertainty, madeLiquids, waterFormed } = ledger;
  const caught = `${inFigures(char)} + ${inFigures(liquids)}`;
  return [
    `feed water = ${inFigures(feed)} × ${inFigures(moisture)} = ${inFigures(feedWater)} g`,
    `dry feed = ${inFigures(feed)} - ${inFigures(feedWater)} = ${inFigures(dryFeed)} g`,
    `char yield = ${inFigures(char)} / ${inFigures(dryFeed)} = ${inFigures(char / dryFeed)} per g dry feed`,
    `liquids less feed water = ${inFigures(liquids)} - ${inFigures(feedWater)} = ${inFigures(madeLiquids)} g`,
    ...(waterFormed === undefined || liquidsWater === undefined
      ? []
      : [`water formed = ${inFigures(liquids)} × ${inFigures(liquidsWater)} - ${inFigures(feedWater)} = ${inFigures(waterFormed)} g`]),
    ...(isGasMeasured
      ? [
          `products = ${caught} + ${inFigures(gas)} = ${inFigures(products)} g`,
          `unaccounted = ${inFigures(feed)} - ${inFigures(products)} = ${inFigures(unaccounted)} g`,
        ]
      : [`gas, by difference = ${inFigures(feed)} - (${caught}) = ${inFigures(gas)} g`]),
    ...(uncertainty === undefined || u === undefined
      ? []
      : [`standard uncertainty = sqrt(${weighed}) × ${inFigures(u)} = ${inFigures(uncertainty)} g for ${weighed} masses`]),
    verdict(ledger),
  ];
}
