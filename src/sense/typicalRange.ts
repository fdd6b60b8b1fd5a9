import { plainNumber } from "../problems/quoted";
import {
  insideRange,
  noPrintedValue,
  noValueToJudge,
  outsideRange,
  printedValue,
  unknownRangeWord,
  valueBelowZero,
  valueLooksLikeKilojoules,
  valueLooksLikePercent,
  valueNotANumber,
} from "../problems/functions/rangeProblems";
import { NO_SOURCE, plantMatter, RANGE_QUANTITIES, rangeUnit, typicalBands, type RangeQuantity, type TypicalBands } from "./typicalBands";
import { typicalRows } from "./typicalRows";

type Given = number | string | boolean | undefined;

/** Every feedstock word: the published bands first, then the single materials. */
export const FEEDSTOCKS: readonly string[] = [...typicalBands, ...typicalRows].map(({ feedstock }) => feedstock);

/** What each share is a share of, where that is not the dry sample alone. */
const RECKONED: Readonly<Partial<Record<RangeQuantity, string>>> = { moisture: "wet basis", "char yield": "dry, at 450 to 900 °C" };

// A share worked out as 2.2 / 100 is a hair above 0.022 in binary.
export const RANGE_ROUNDING = 1e-12;

// Hydrogen burns with 142 MJ/kg, all else with less than 100 (heat of formation of water, from memory).
export const MOST_HEATING = 100;

/**
 * Whether a result lies in the band that is printed for such material, in words with the source. Slips and unknown words
 * are answered in words too; nothing is thrown. A 0 counts as nothing given where the band does not reach down to 0.
 * @param quantity one of RANGE_QUANTITIES
 * @param value fraction; MJ/kg for a heating value
 * @param feedstock one of FEEDSTOCKS; undefined or 0 for plant matter at large
 */
export function typicalRange(quantity: Given, value: Given, feedstock: Given): string {
  const asked = wordIn(RANGE_QUANTITIES, quantity);
  if (asked === undefined) return unknownRangeWord("quantity", quantity === 0 ? undefined : quantity, RANGE_QUANTITIES);
  const material = feedstock === undefined || feedstock === 0 ? plantMatter.feedstock : wordIn(FEEDSTOCKS, feedstock);
  if (material === undefined) return unknownRangeWord("feedstock", feedstock, FEEDSTOCKS);
  return slipIn(asked, value) ?? judged(asked, value as number, material);
}

function wordIn<W extends string>(words: readonly W[], given: Given): W | undefined {
  const plain = String(given).trim().replace(/\s+/g, " ").toLowerCase();
  return words.find((word) => word.toLowerCase() === plain);
}

function slipIn(quantity: RangeQuantity, value: Given): string | undefined {
  const advice = quantity === "heating value" ? "Give MJ/kg, such as 19.8." : "Give a fraction, such as 0.35 or 35%.";
  if (value === undefined || (value === 0 && plantMatter.bands[quantity][0] > 0)) return noValueToJudge(advice);
  if (typeof value !== "number") return valueNotANumber(value, advice);
  if (value < 0) return valueBelowZero(value, rangeUnit(quantity));
  if (quantity === "heating value") return value > MOST_HEATING ? valueLooksLikeKilojoules(value, MOST_HEATING) : undefined;
  return value > 1 ? valueLooksLikePercent(value) : undefined;
}

/** The band that a result is held against; undefined for words that are not known. */
export function bandOf(quantity: Given, feedstock: Given): readonly [least: number, most: number] | undefined {
  const asked = wordIn(RANGE_QUANTITIES, quantity);
  const material = feedstock === undefined ? plantMatter.feedstock : wordIn(FEEDSTOCKS, feedstock);
  return asked === undefined || material === undefined ? undefined : bandsFor(asked, material).band;
}

function bandsFor(quantity: RangeQuantity, feedstock: string): { readonly own: TypicalBands; readonly band: readonly [number, number] } {
  const own = typicalBands.find((bands) => bands.feedstock === feedstock && bands.bands[quantity] !== undefined) ?? plantMatter;
  return { own, band: own.bands[quantity] ?? plantMatter.bands[quantity] };
}

function judged(quantity: RangeQuantity, value: number, feedstock: string): string {
  const { own, band } = bandsFor(quantity, feedstock);
  const source = own === plantMatter && !typicalRows.some(({ values }) => quantity in values) ? NO_SOURCE : own.source;
  const result = { quantity, value, reckoned: RECKONED[quantity] ?? "dry", band, unit: rangeUnit(quantity), of: own.called, source };
  const known = printed(quantity, feedstock);
  return value < band[0] - RANGE_ROUNDING || value > band[1] + RANGE_ROUNDING
    ? outsideRange(result, known, adviceFor(quantity))
    : insideRange(result, known);
}

/** Only what charring changes can tell of air that leaked in. */
const adviceFor = (quantity: RangeQuantity): string => (CHARRED.includes(quantity) ? "Check tare, basis and air leak." : "Check tare and basis.");

const CHARRED: readonly RangeQuantity[] = ["volatile matter", "fixed carbon", "ash", "char yield"];

/** What is known of the feedstock itself, where its own band did not serve. */
function printed(quantity: RangeQuantity, feedstock: string): string {
  if (typicalBands.some((bands) => bands.feedstock === feedstock && bands.bands[quantity] !== undefined)) return "";
  const row = typicalRows.find((candidate) => candidate.feedstock === feedstock);
  const value = row?.values[quantity];
  return row === undefined || value === undefined ? noPrintedValue(feedstock) : printedValue(feedstock, value, rangeUnit(quantity), row.source);
}

/** What is printed of a quantity, a line for the bands and one for the single materials; none for an unknown word. */
export function rangeEvidence(quantity: unknown): readonly string[] {
  const asked = RANGE_QUANTITIES.find((word) => word === String(quantity).trim().toLowerCase());
  if (asked === undefined) return [];
  const bands = typicalBands.flatMap(({ feedstock, bands: { [asked]: band } }) =>
    band === undefined ? [] : [`${feedstock} ${plainNumber(band[0])} to ${plainNumber(band[1])}`],
  );
  const rows = typicalRows.flatMap(({ feedstock, values: { [asked]: value } }) =>
    value === undefined ? [] : [`${feedstock} ${plainNumber(value)}`],
  );
  return [`bands of ${asked}: ${bands.join("; ")}`, ...(rows.length === 0 ? [] : [`printed: ${rows.join("; ")}`])];
}
