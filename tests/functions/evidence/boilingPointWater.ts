import fc from "fast-check";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { law, numberBy } from "../laws/Law";

const PASCALS = "Give pascals: 1013.25 hPa is 101325.";

// IAPWS-IF97, equation 30, the saturation pressure in MPa at a temperature in K: the other direction, with the coefficients of table 34.
function saturationPressure(kelvin: number): number {
  const theta = kelvin - 0.23855557567849 / (kelvin - 650.17534844798);
  const a = theta ** 2 + 1167.0521452767 * theta - 724213.16703206;
  const b = -17.073846940092 * theta ** 2 + 12020.82470247 * theta - 3232555.0322333;
  const c = 14.91510861353 * theta ** 2 - 4823.2657361591 * theta + 405113.40542057;
  return ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4;
}

export const evidence: FunctionEvidence = {
  name: "BOILINGPOINT.WATER",
  answer: ["Boiling point of water", "°C"],
  published: [
    ...published("read as printed", "IAPWS R7-97(2012), table 36, in K less 273.15: 372.755919 at 0.1, 453.035632 at 1 and 584.149488 at 10 MPa", [
      ["=RETORT.BOILINGPOINT.WATER(100000)", "99.605919"],
      ["=RETORT.BOILINGPOINT.WATER(1000000)", "179.885632"],
      ["=RETORT.BOILINGPOINT.WATER(10000000)", "310.999488"],
    ]),
    ...published("from memory", "steam tables after IAPWS-IF97: saturation temperatures from 5 kPa to the critical point", [
      ["=RETORT.BOILINGPOINT.WATER(5000)", "32.875"],
      ["=RETORT.BOILINGPOINT.WATER(10000)", "45.81"],
      ["=RETORT.BOILINGPOINT.WATER(20000)", "60.059"],
      ["=RETORT.BOILINGPOINT.WATER(50000)", "81.317"],
      ["=RETORT.BOILINGPOINT.WATER(200000)", "120.212"],
      ["=RETORT.BOILINGPOINT.WATER(500000)", "151.836"],
      ["=RETORT.BOILINGPOINT.WATER(22064000)", "373.946"],
    ]),
    ...published("from memory", "steam tables: water boils at 99.974 degC under one standard atmosphere, and at 96.69 under 90 kPa", [
      ["=RETORT.BOILINGPOINT.WATER(101325)", "99.974"],
      ["=RETORT.BOILINGPOINT.WATER(90000)", "96.69"],
    ]),
  ],
  laws: [
    law("BOILINGPOINT.WATER")("is where the saturation pressure of IF97's other equation is the pressure given", (call) => {
      fc.assert(
        fc.property(between(1_200, 20_000_000), (pascals) => {
          expect((saturationPressure(numberBy(call)("BOILINGPOINT.WATER", pascals) + 273.15) * 1e6) / pascals).toBeCloseTo(1, 8);
        }),
      );
    }),
  ],
  refusals: [
    ["=RETORT.BOILINGPOINT.WATER()", `#VALUE! pressure: nothing here (blank or 0). ${PASCALS}`],
    ['=RETORT.BOILINGPOINT.WATER("sea level")', `#VALUE! pressure: "sea level" is not a pressure over water. ${PASCALS}`],
    [
      "=RETORT.BOILINGPOINT.WATER(1013.25)",
      `#VALUE! pressure: 1013.25 Pa is too low for air and looks like hPa, kPa or bar. ${PASCALS}`,
      "other unit of mass, density or pressure",
    ],
    ["=RETORT.BOILINGPOINT.WATER(90)", `#VALUE! pressure: 90 Pa is too low for air and looks like hPa, kPa or bar. ${PASCALS}`],
    ["=RETORT.BOILINGPOINT.WATER(30000000)", `#VALUE! pressure: 30000000 Pa is above 22064000 Pa, where water no longer boils. ${PASCALS}`],
  ],
};
