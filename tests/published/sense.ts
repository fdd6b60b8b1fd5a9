import { halfLastDigit } from "./halfLastDigit";
import { published, type Published } from "./Published";

// As printed, in percent.
const MOST_WOODS: readonly (readonly [quantity: string, least: string, most: string])[] = [
  ["volatile matter", "74", "82"],
  ["fixed carbon", "17", "23"],
  ["ash", "0.5", "2.2"],
  ["carbon", "49.6", "53.1"],
  ["hydrogen", "5.8", "6.7"],
  ["oxygen", "39.8", "43.8"],
  ["moisture", "36", "58"],
];
const NUT_SHELLS: readonly (readonly [quantity: string, least: string, most: string])[] = [
  ["carbon", "47.4", "53.5"],
  ["hydrogen", "5.8", "6.7"],
  ["oxygen", "35.5", "41.6"],
  ["nitrogen", "0.5", "1.6"],
];

const share = (percent: number): number => Number((percent / 100).toPrecision(12));

/** Inside at both printed ends, outside half a printed digit beyond them, and both ends in the sentence. */
const band = (feedstock: string, source: string, rows: readonly (readonly [string, string, string])[]): Published[] =>
  published(
    "read as printed",
    source,
    rows.flatMap(([quantity, least, most]) => {
      const call = (percent: number): string => `=RETORT.TYPICALRANGE("${quantity}", ${share(percent)}, "${feedstock}")`;
      const limits = `the ${share(Number(least))} to ${share(Number(most))} of `;
      return [
        [call(Number(least)), "inside: "],
        [call(Number(most)), "inside: "],
        [call(Number(least)), limits],
        [call(Number(least) - halfLastDigit(least)), "outside: "],
        [call(Number(most) + halfLastDigit(most)), "outside: "],
      ] as const;
    }),
  );

export const sense: readonly Published[] = [
  ...band("wood", 'MIL-HDBK-1003/6, table 12, "most woods"', MOST_WOODS),
  ...band("nut shells", "Energy Sources 24 (2002) 215, nut shells", NUT_SHELLS),
  ...published(
    "worked by hand",
    "MIL-HDBK-1003/6, wood: 8560 to 9130 Btu/lb at 2.326 kJ/kg for 1 Btu/lb (international table) is 19.91 to 21.24 MJ/kg",
    [
      ['=RETORT.TYPICALRANGE("heating value", 19.9, "wood")', "the 19.9 to 21.2 MJ/kg of "],
      ['=RETORT.TYPICALRANGE("heating value", 19.9, "wood")', "inside: "],
      ['=RETORT.TYPICALRANGE("heating value", 21.25, "wood")', "outside: "],
    ],
  ),
];
